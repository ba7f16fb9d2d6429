// The packed package as others meet it: checked by tools that know packages, and used by every example of `examples/`.
// Their numbers are those of the crate, which `tests/readme.rs` holds the README's block to.
import assert from "node:assert/strict";
import { execFileSync, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { after, before, test } from "node:test";
import { bench } from "../pages/browser.mjs";

const tools = resolve("pkg-config/consumer-tools/node_modules");
const readme = readFileSync("README.md", "utf8");
const printed = /prints:\n\n```text\n(.*?)\n```/su.exec(readme)[1].split("\n").map(squeezed);
const [verdict, first, second] = printed;

let folder, tarball;
before(() => {
  folder = mkdtempSync(join(tmpdir(), "boughline-consumers-"));
  tarball = join(folder, run("npm", ["pack", resolve("dist/npm"), "--silent", "--pack-destination", folder]).trim());
});
after(() => rmSync(folder, { recursive: true, force: true }));

function run(command, args, options = {}) {
  return execFileSync(command, args, { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], ...options });
}
function squeezed(line) {
  return line.replace(/\s+/gu, " ").trim();
}

/** An example in a folder of its own, with the package as npm installs it from the tarball. */
function installed(example) {
  const copy = mkdtempSync(join(folder, `${example}-`));
  cpSync(`examples/${example}`, copy, { recursive: true });
  // npm asks the registry for what a manifest names, needed or not; and without a folder here it looks for a project further up.
  rmSync(join(copy, "package.json"), { force: true });
  mkdirSync(join(copy, "node_modules"));
  const quiet = ["--offline", "--no-audit", "--no-fund", "--ignore-scripts", "--no-save", "--omit=dev"];
  run("npm", ["install", ...quiet, tarball], { cwd: copy });
  return copy;
}

/** An example's project with the bundler beside the package, and what starts it. */
function withBundler() {
  const copy = installed("vite");
  symlinkSync(join(tools, "vite"), join(copy, "node_modules/vite"));
  return { copy, bundler: join(tools, "vite/bin/vite.js") };
}

/** What an example's page shows once it has an answer, served from its folder or by somebody else at `address`. */
async function shown(published, address) {
  const browser = await bench({ published });
  try {
    const page = await browser.page();
    // A browser asks every site for its icon.
    await page.route("**/favicon.ico", (route) => route.fulfill({ body: "" }));
    await page.goto(address ?? browser.url);
    await page.getByRole("status").getByText(verdict).waitFor();
    assert.deepEqual(page.complaints, []);
    return (await page.getByRole("status").textContent()).split("\n").map(squeezed);
  } finally {
    await browser.close();
  }
}

test("the tarball holds what belongs and nothing else", () => {
  const [{ files }] = JSON.parse(run("npm", ["pack", resolve("dist/npm"), "--dry-run", "--json"]));
  const names = files.map(({ path }) => path).filter((path) => !path.startsWith("inline/")).sort();
  assert.deepEqual(names, [
    "LICENSE", "README.md", "boughline.d.ts", "boughline_bg.wasm", "calls.js", "glue.js", "index.d.ts", "index.js",
    "inline.d.ts", "inline.js", "licences.txt", "method.json", "node.js", "package.json", "told.js",
  ]);
  for (const { path } of files) assert.match(path, /^(?:inline\/[a-z-]+(?:\.glue\.js|\.js|\.d\.ts)|[^/]+)$/u);
});

test("publint has nothing to say", () => {
  run(process.execPath, [join(tools, "publint/src/cli.js"), tarball, "--strict"]);
});

test("its types are found the way every loader of modules looks", () => {
  // What `require` cannot load is the profile's to leave out: the package is of ES modules.
  const entries = [".", "inline", "inline/loads", "method.json"];
  run(process.execPath, [join(tools, "@arethetypeswrong/cli/dist/index.js"), tarball, "--profile", "esm-only", "--entrypoints", ...entries]);
});

test("a program for Node, which is the README's, prints the crate's numbers", () => {
  const copy = installed("node");
  const source = readFileSync("examples/node/climb.mjs", "utf8");
  for (const text of [readme, readFileSync("pkg-config/npm/README.md", "utf8")]) {
    assert.ok(text.includes(`\`\`\`js\n${source}\`\`\``), "the README should hold examples/node/climb.mjs");
  }
  assert.ok(source.trimEnd().split("\n").length <= 20, "a program of 20 lines");
  const lines = run(process.execPath, ["climb.mjs"], { cwd: copy }).trimEnd().split("\n").map(squeezed);
  assert.deepEqual(lines, printed);
});

test("a plain page with an import map", async () => {
  const lines = await shown(installed("import-map"));
  assert.deepEqual(lines.slice(0, 3), [verdict, first, second]);
  assert.ok(lines.some((line) => line.startsWith("! This is arithmetic, not training.")));
});

test("a project with a bundler, built", async () => {
  const { copy, bundler } = withBundler();
  run(process.execPath, [bundler, "build", "--logLevel", "warn"], { cwd: copy });
  const lines = await shown(join(copy, "dist"));
  assert.deepEqual(lines.slice(0, 3), [verdict, first, second]);
});

test("a project with a bundler, as its own server gives it", async () => {
  const { copy, bundler } = withBundler();
  const server = spawn(process.execPath, [bundler, "--host", "127.0.0.1", "--port", "0"], { cwd: copy, env: { ...process.env, NO_COLOR: "1" } });
  const late = setTimeout(() => server.kill(), 60000);
  try {
    const address = /http:\/\/\S+:\d+\//u;
    let said = "";
    for await (const text of server.stdout) {
      said += text;
      if (address.test(said)) break;
    }
    assert.match(said, address);
    const lines = await shown(copy, address.exec(said)[0]);
    assert.deepEqual(lines.slice(0, 3), [verdict, first, second]);
  } finally {
    clearTimeout(late);
    server.kill();
  }
});

test("a forum's bot answers a link", () => {
  const copy = installed("forum");
  const plan = "bodyMass=80kg&stature=175cm&measuredPull=640N&rig=tail-3&climbHeight=11m&wayDown=descend&secondPerson=rescuer";
  const answer = (link) => run(process.execPath, ["answer.mjs", link], { cwd: copy });
  const text = answer(`https://example.org/#v=1&q=can-i-climb&u=si&${plan}`);
  for (const line of [verdict, first]) assert.ok(text.includes(line), text);
  assert.match(text, /<https:\/\/example\.org\/#v=1&q=can-i-climb&/u);
  assert.match(text, /This is arithmetic, not training/u);
  assert.match(answer("https://example.org/#v=1&q=trip-sheet&u=si"), /Needs: /u);
  assert.match(answer("https://example.org/#v=1&q=can-i-climb&bodyMass=heavy"), /“heavy” is not a number with a unit/u);
  assert.match(answer("https://example.org/#v=1&q=can-i-climb&colour=red"), /^> .*colour/u);
  const hostile = answer(`https://example.org/#v=1&q=can-i-climb&${plan}&<img src=x onerror=1>=1&[a](b)=1`);
  assert.doesNotMatch(hostile, /(?<!\\)<img|(?<!\\)\]\(/u);
  assert.match(answer(`v=1&q=can-i-climb&u=si&${plan}`), /\n`#v=1&q=can-i-climb&/u);
});
