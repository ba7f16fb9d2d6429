// Chromium behind the small interface of drivers/index.mjs.
import { createRequire } from "node:module";

const { chromium } = createRequire(new URL("../../../pkg-config/package.json", import.meta.url))("playwright-core");

export async function start({ scripts = true } = {}) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
  const page = await (await browser.newContext({ javaScriptEnabled: scripts })).newPage();
  const complaints = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  return {
    version: `Chromium ${browser.version()}`,
    complaints,
    async open(address) {
      await page.goto("about:blank");
      await page.goto(address, { timeout: 60000 });
    },
    evaluate: (work, given) => page.evaluate(work, given),
    async type(selector, text) {
      await page.focus(selector);
      await page.keyboard.type(text);
    },
    press: (key) => page.keyboard.press(key),
    click: (selector) => page.click(selector),
    close: () => browser.close(),
  };
}
