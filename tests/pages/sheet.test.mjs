// The trip sheet: the plan of the address on paper, its blanks, its code, and what it says of an empty plan.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import jsQR from "jsqr";
import { axePath, bench, onDisk } from "./browser.mjs";

const PLAN = "#v=1&q=can-i-climb&f=1&u=si&bodyMass=68kg&climbHeight=12m&rig=tail-3&stature=170cm&measuredPull=520N&crotchHeight=14m&anchor=canopy&cordUse=distel&ropeDiameter=11mm&hitchCord=8mm&wayDown=descend&secondPerson=rescuer";
const SECTIONS = ["trip", "verdict", "against", "missing", "before", "rig", "heights", "coming-down", "rescue", "loads", "cautions", "rope", "cords", "shopping", "entered"];

let site;
before(async () => {
  site = await bench();
});
after(() => site.close());

const COMPLETE = "Every part of the trip sheet is worked out.";
async function opened(fragment, { at = site.url, options = {} } = {}) {
  const page = await site.page(options);
  page.setDefaultTimeout(30000);
  await page.goto(`${at}trip-sheet.html${fragment}`);
  if (fragment !== "") await page.waitForFunction((text) => document.getElementById("status").textContent === text, COMPLETE);
  return page;
}
const sections = (page) => page.locator("#paper [data-section]").evaluateAll((nodes) => nodes.map((node) => node.dataset.section));

/** What a reader reads of the code on the screen. */
async function read(page) {
  const { size, runs } = await page.locator("#code svg").evaluate((drawn) => ({
    size: Number(drawn.getAttribute("viewBox").split(" ")[2]),
    runs: [...drawn.querySelector("path").getAttribute("d").matchAll(/M(\d+) (\d+)h(\d+)/g)].map((run) => run.slice(1).map(Number)),
  }));
  const scale = 4;
  const pixels = new Uint8ClampedArray(4 * (size * scale) ** 2).fill(255);
  for (const [x, y, width] of runs) {
    for (let row = y * scale; row < (y + 1) * scale; row += 1) {
      for (let column = x * scale; column < (x + width) * scale; column += 1) pixels.fill(0, 4 * (row * size * scale + column), 4 * (row * size * scale + column) + 3);
    }
  }
  return jsQR(pixels, size * scale, size * scale)?.data;
}

test("a plan becomes a sheet with its drawing, and the code says the link", async () => {
  const page = await opened(PLAN);
  const found = await sections(page);
  assert.deepEqual(found.filter((id) => id !== "missing"), SECTIONS.filter((id) => id !== "missing"));
  assert.equal(await page.locator("#paper svg.rig-drawing").count(), 1);
  const link = await page.locator("#sheet-link").textContent();
  assert.match(link, /\/trip-sheet\.html#v=1&q=trip-sheet&f=1&u=si&bodyMass=68kg&/);
  assert.equal(await read(page), link);
  assert.match(await page.locator("#sheet-date").textContent(), /^Made on \d+ \w+ \d{4}\.$/);
  // It is the same sheet again by that link.
  const again = await opened(link.slice(link.indexOf("#")));
  assert.equal(await again.locator("#paper").innerText(), await page.locator("#paper").innerText());
  assert.deepEqual(page.complaints, []);
});

test("what is written into the blanks stays on the paper and goes into no link", async () => {
  const page = await opened(PLAN);
  await page.getByLabel("Who gets me down:").fill("Xanthe Quill");
  await page.getByLabel("feet and pounds").check();
  await page.waitForFunction(() => document.getElementById("sheet-link").textContent.includes("u=us"));
  assert.equal(await page.getByLabel("Who gets me down:").inputValue(), "Xanthe Quill");
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy as Markdown" }).click();
  await page.locator("#copied-text").filter({ hasText: "Copied." }).waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  assert.match(text, /^# Trip sheet\n/);
  assert.match(text, /\n<http:\/\/127\.0\.0\.1:\d+\/trip-sheet\.html#v=1&q=trip-sheet&.*>\n/);
  const everywhere = text + page.url() + (await page.evaluate(() => JSON.stringify([history.state, { ...localStorage }, { ...sessionStorage }])));
  assert.ok(!everywhere.includes("Xanthe Quill"));
  // Where the clipboard is refused the box holds the text.
  await page.evaluate(() => { navigator.clipboard.writeText = () => Promise.reject(new Error("refused")); });
  await page.getByRole("button", { name: "Copy as text" }).click();
  await page.locator("#copied-text").filter({ hasText: "Copy it from the box." }).waitFor();
  assert.match(await page.locator("#copied-link").inputValue(), /^Trip sheet\n=+\n/);
});

test("an empty plan says where to begin, a half one what each part needs, with links that carry it", async () => {
  const empty = await opened("");
  await empty.locator("#empty").waitFor();
  assert.equal(await empty.locator("#paper").isVisible(), false);
  await empty.getByRole("button", { name: "Show an example" }).click();
  await empty.locator("#paper .verdict").waitFor();

  const half = await opened("#v=1&q=rope-length&f=1&u=si&crotchHeight=14m&anchor=canopy");
  assert.match(await half.locator("[data-section=verdict] .needs").textContent(), /^Needs: body mass; height to climb\.$/);
  assert.equal(await half.locator("[data-section=rope] .needs").count(), 0);
  assert.match(await half.locator("[data-section=verdict] a").getAttribute("href"), /^index\.html#v=1&q=can-i-climb&.*crotchHeight=14m/);
});

test("from disk there is no code, and a sentence says why", async () => {
  const page = await opened(PLAN, { at: onDisk });
  assert.equal(await page.locator("#code svg").count(), 0);
  assert.match(await page.locator("#code-text").textContent(), /^No code: this page was opened from a file/);
  assert.match(await page.locator("#sheet-link").textContent(), /^#v=1&q=trip-sheet&/);
});

test("it prints on a few pages of A4 or letter, dark scheme or not", async () => {
  const page = await opened(PLAN, { options: { colorScheme: "dark" } });
  for (const format of ["A4", "Letter"]) {
    const bytes = await page.pdf({ format, printBackground: false });
    const pages = bytes.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g).length;
    assert.ok(pages <= 3, `${format}: ${pages} pages`);
  }
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  assert.equal(await page.locator("#sheet-form").isVisible(), false);
  assert.equal(await page.locator("#code svg").evaluate((drawn) => getComputedStyle(drawn.querySelector("path")).fill), "rgb(0, 0, 0)");
});

test("nobody is kept out of it", async () => {
  for (const [fragment, options] of [[PLAN, {}], [PLAN, { colorScheme: "dark", viewport: { width: 320, height: 700 } }], ["", {}]]) {
    const page = await opened(fragment, { options: { ...options, bypassCSP: true } });
    if (fragment === "") await page.locator("#empty").waitFor();
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    await page.addScriptTag({ path: axePath });
    const found = await page.evaluate(() => globalThis.axe.run().then(({ violations }) => violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`)));
    assert.deepEqual(found, []);
  }
});
