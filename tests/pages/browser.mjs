// One Chromium and one server of dist/ for a file of page tests.
import { createRequire } from "node:module";
import { mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { siteServer } from "../../pkg-config/site.mjs";

const require = createRequire(new URL("../../pkg-config/package.json", import.meta.url));
const { chromium } = require("playwright-core");

export const axePath = require.resolve("axe-core/axe.min.js");

const root = fileURLToPath(new URL("../../", import.meta.url));
const dist = process.env.DIST ?? join(root, "dist");
const FLAGS = [
  "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync",
];

/** A published page's bytes. */
export const pageBytes = (name = "index.html") => readFile(join(dist, name), "utf8");

/** Has the page lay out what it leaves until somebody comes near. */
export const layOutAll = (page) => page.$$eval("section", (all) => { for (const one of all) one.style.contentVisibility = "visible"; });

/** The names of all published pages. */
export const pageNames = async () => (await readdir(dist)).filter((name) => name.endsWith(".html")).sort();

/** The folder of the published pages, as an address on disk. */
export const onDisk = `${pathToFileURL(dist).href}/`;

/** Starts browser, server and a folder for saved copies; `close` ends all three. Without leave a page keeps nothing. */
export async function bench({ published = dist } = {}) {
  const server = await siteServer({ folder: published, rules: join(root, "netlify.toml") });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  const url = `http://127.0.0.1:${server.address().port}/`;
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS });
  const folder = await mkdtemp(join(tmpdir(), "boughline-pages-"));
  let copies = 0;
  return {
    url,
    /** Whether the browser is still there. */
    connected: () => browser.isConnected(),
    /** Ends the server alone, as where there is no network. */
    async cutOff() {
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
    /** A page in a context of its own. Whatever it complains of is kept in `page.complaints`. */
    async page(options = {}, before = async () => {}) {
      const context = await browser.newContext({ viewport: { width: 1100, height: 900 }, serviceWorkers: "block", locale: "en-GB", ...options });
      const page = await context.newPage();
      page.setDefaultTimeout(Number(process.env.PATIENCE ?? 20000));
      page.complaints = [];
      page.on("pageerror", (error) => page.complaints.push(error.message));
      page.on("console", (message) => message.type() === "error" && page.complaints.push(message.text()));
      page.on("response", (response) => response.ok() || page.complaints.push(`${response.status()} ${response.url()}`));
      await before(page);
      return page;
    },
    /** Writes a saved copy and answers with its file:// address. */
    async saved(text, ending = "html") {
      copies += 1;
      const path = join(folder, `copy ${copies}.${ending}`);
      await writeFile(path, text);
      return pathToFileURL(path).href;
    },
    async close() {
      await browser.close();
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
      await rm(folder, { recursive: true });
    },
  };
}

export const box = (page, field) => page.locator(`[data-field=${field}] :is(input, select)`);
export const problem = (page, field) => page.locator(`[data-field=${field}] .error`);
export const verdict = (page) => page.locator("#verdict-text");

/** Fills what is needed, as somebody would: by typing. */
export async function fillNeeded(page, { bodyMass = "80", climbHeight = "8", rig = "tail-3" } = {}) {
  await box(page, "bodyMass").pressSequentially(bodyMass);
  await box(page, "climbHeight").pressSequentially(climbHeight);
  await box(page, "rig").selectOption(rig);
}

/** Says that the strength is known by a pull, and its box. */
export async function pullBox(page) {
  await page.getByLabel("a pull I measured").check();
  return box(page, "measuredPull");
}

/** Opens what folds on a phone. */
export const unfold = (page) => page.evaluate(() => document.querySelectorAll(".fold").forEach((fold) => { fold.open = true; }));

/** Waits until typing counts as stopped and everything late has been said, however busy the machine is. */
export async function settled(page) {
  // The last step of a full answer is due 1.3 s after the last key.
  await page.waitForTimeout(1400);
  // A timer set now runs after those of the page that were due before.
  await page.evaluate(() => new Promise((done) => { setTimeout(done, 0); }));
}

/** What a plan came to: verdict, its two sentences, and every figure with its range. */
export async function reading(page) {
  const figures = page.locator(".figure summary");
  return {
    verdict: await verdict(page).innerText(),
    first: await page.locator("#first").innerText(),
    second: await page.locator("#second").innerText(),
    figures: await figures.allInnerTexts(),
  };
}

/** Every box and choice as it stands. */
export const boxes = (page) =>
  page.$$eval("form [data-field] :is(input, select)", (all) => Object.fromEntries(all.map((one) => [one.name, one.value])));

/** Every number that can be seen where results stand. */
export async function numbersShown(page) {
  const seen = await page.locator("#outcome, #numbers, #glance").evaluateAll((all) =>
    all.filter((one) => one.checkVisibility()).map((one) => one.innerText).join("\n"));
  return seen.match(/\d[\d.,]*/gu) ?? [];
}
