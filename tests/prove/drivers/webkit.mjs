// WebKitGTK's small browser, over plain WebDriver, behind the small interface of drivers/index.mjs.
import { spawn } from "node:child_process";
import { readdirSync, existsSync } from "node:fs";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

const KEYS = { Tab: "\uE004", Enter: "\uE007", ArrowDown: "\uE015", ArrowRight: "\uE014", Space: " " };
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

/** The browser that Debian puts beside the library. */
function miniBrowser() {
  if (process.env.MINIBROWSER) return process.env.MINIBROWSER;
  for (const triple of readdirSync("/usr/lib")) {
    for (const version of ["4.1", "4.0", "6.0"]) {
      const path = `/usr/lib/${triple}/webkit2gtk-${version}/MiniBrowser`;
      if (existsSync(path)) return path;
    }
  }
  throw new Error("Install WebKitGTK's MiniBrowser, or set MINIBROWSER to it.");
}

const freePort = () => new Promise((found) => {
  const server = createServer().listen(0, "127.0.0.1", () => {
    const { port } = server.address();
    server.close(() => found(port));
  });
});

/** Calls until it answers; a browser takes a while to start. */
async function patiently(call, times = 100) {
  for (let i = 0; ; i += 1) {
    try {
      return await call();
    } catch (error) {
      if (i === times) throw error;
      await new Promise((later) => { setTimeout(later, 100); });
    }
  }
}

/** A screen that nobody sees, where there is none. */
async function screen() {
  if (process.env.DISPLAY) return { display: process.env.DISPLAY, end() {} };
  const child = spawn("Xvfb", ["-displayfd", "3", "-screen", "0", "1280x1000x24", "-nolisten", "tcp"], { stdio: ["ignore", "ignore", "ignore", "pipe"] });
  const number = await new Promise((told, failed) => {
    child.stdio[3].once("data", (data) => told(String(data).trim()));
    child.once("error", failed);
    child.once("exit", () => failed(new Error("Xvfb did not start.")));
  });
  return { display: `:${number}`, end: () => child.kill() };
}

/** What it cannot be brought to, and why. */
export const lacks = { scripts: "its driver needs scripts", forcedColours: "the engine has none", pdf: "its driver does not print" };

/** A folder of settings for the toolkit, which is where the engine learns whether somebody wants nothing to move. */
async function settings(calm) {
  const folder = await mkdtemp(join(tmpdir(), "boughline-webkit-"));
  await mkdir(join(folder, "gtk-3.0"));
  await writeFile(join(folder, "gtk-3.0", "settings.ini"), `[Settings]\ngtk-enable-animations=${calm ? 0 : 1}\n`);
  // Buttons and the address no wider than they must be, lest they hold the window open.
  await writeFile(join(folder, "gtk-3.0", "gtk.css"), "headerbar *, toolbar *, entry, button { min-width: 0; margin: 0; padding: 0; font-size: 1px; }\n");
  return folder;
}

export async function start({ calm = false } = {}) {
  const { display, end } = await screen();
  const config = await settings(calm);
  const port = await freePort();
  const env = { ...process.env, DISPLAY: display, LANG: "en_GB.UTF-8", LANGUAGE: "en_GB", XDG_CONFIG_HOME: config, LIBGL_ALWAYS_SOFTWARE: "1", WEBKIT_DISABLE_COMPOSITING_MODE: "1", WEBKIT_DISABLE_DMABUF_RENDERER: "1" };
  const driver = spawn("WebKitWebDriver", [`--port=${port}`], { env, stdio: "ignore" });
  driver.once("error", () => {}); // that it is not there is told by its silence
  const leave = async () => {
    driver.kill();
    end();
    await rm(config, { recursive: true, force: true });
  };
  const call = async (method, path, body) => {
    const reply = await fetch(`http://127.0.0.1:${port}${path}`, { method, ...(body && { body: JSON.stringify(body), headers: { "Content-Type": "application/json" } }) });
    const { value } = await reply.json();
    if (!reply.ok) throw new Error(`${value.error}: ${value.message}`);
    return value;
  };
  const session = () => call("POST", "/session", {
    capabilities: { alwaysMatch: { "webkitgtk:browserOptions": { binary: miniBrowser(), args: ["--automation"] }, timeouts: { script: 60000, pageLoad: 60000 } } },
  });
  const { sessionId, capabilities } = await patiently(() => call("GET", "/status")).then(session).catch(async (error) => {
    await leave();
    throw new Error(`WebKitWebDriver did not open a browser: ${error.message}`);
  });
  const here = (method, path, body) => call(method, `/session/${sessionId}${path}`, body);
  const found = async (selector) => (await here("POST", "/element", { using: "css selector", value: selector }))[ELEMENT];
  const strike = (keys) => here("POST", "/actions", {
    actions: [{ type: "key", id: "keys", actions: keys.flatMap((value) => [{ type: "keyDown", value }, { type: "keyUp", value }]) }],
  });
  const evaluate = (work, given = null) => here("POST", "/execute/async", {
    script: `const done = arguments[arguments.length - 1];
      Promise.resolve((${work})(arguments[0])).then((value) => done({ value }), (error) => done({ error: String(error) }));`,
    args: [given],
  }).then((reply) => {
    if (reply.error) throw new Error(reply.error);
    return reply.value;
  });
  return {
    version: `WebKitGTK ${capabilities.browserVersion}`,
    complaints: [],
    deaf: "errors unheard: its driver does not tell them",
    async open(address) {
      await here("POST", "/url", { url: "about:blank" });
      await here("POST", "/url", { url: address });
    },
    evaluate,
    async type(selector, text) {
      await evaluate((selector) => { document.querySelector(selector).focus(); }, selector);
      await strike([...text]);
    },
    press: (key) => strike([KEYS[key] ?? key]),
    click: async (selector) => here("POST", `/element/${await found(selector)}/click`, {}),
    /** What the window has beside the page is added to it. */
    async resize(width, height) {
      for (let tries = 0; tries < 3; tries += 1) {
        const [page, rect] = [await evaluate(() => [innerWidth, innerHeight]), await here("GET", "/window/rect")];
        if (page[0] === width && page[1] === height) return;
        await here("POST", "/window/rect", { width: rect.width + width - page[0], height: rect.height + height - page[1] });
      }
    },
    async close() {
      await here("DELETE", "").catch(() => {});
      await leave();
    },
  };
}
