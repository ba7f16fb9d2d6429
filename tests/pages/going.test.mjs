// How the climb goes, on the page of "Can I climb this?".
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, settled, unfold } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const KNOWN = "bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=650N";
const LATE = "bodyMass=80kg&climbHeight=25m&rig=tail-5&stature=1.75m&measuredPull=600N";
const FAILS = "bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=505N";

async function opened(plan, options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}index.html#v=1&q=can-i-climb&f=1&u=si&${plan}`);
  await unfold(page);
  return page;
}
const figure = async (page, id) => {
  const found = page.locator(`[data-figure="${id}"] .value`);
  return (await found.count()) === 0 ? null : found.innerText();
};

test("with strength and strokes known the climb is drawn, told, and in a table", async () => {
  const page = await opened(KNOWN);
  assert.equal(await page.locator("#going h2").innerText(), "How the climb goes");
  const told = await page.locator("#going .told").innerText();
  assert.match(told, /rest of .+ after each pull you are up in .+ min, after \d+ strokes\.$/u);
  assert.equal(await page.locator("#going svg .drawn-line").count(), 3);
  assert.equal(await page.locator("#going svg .limit").count(), 2);
  assert.deepEqual(await page.locator("#going .legend .letter").allTextContents(), ["a", "b", "c"]);
  await page.locator("#going .as-table summary").click();
  const rows = await page.$$eval("#going tbody tr", (all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  assert.ok(rows.length >= 10 && rows.length <= 20, `${rows.length}`);
  assert.equal(rows.at(-1)[3], "the top");
  assert.equal(rows.at(-1)[0], await figure(page, "strokes"));
  assert.equal(rows.at(-1)[2], "11 m");
  assert.equal(rows[0][3], `rest ${await figure(page, "paceRest")}`);
  assert.equal(rows.at(-1)[4], await figure(page, "leftAtTop"));
  assert.equal(await figure(page, "turnBackStrokes"), null);
  assert.deepEqual(page.complaints, []);
});

test("nothing of it stands there while strength is not known, or once it is taken away", async () => {
  const page = await opened("bodyMass=80kg&climbHeight=11m&rig=tail-3");
  assert.equal(await page.locator("#going").isVisible(), false);
  assert.equal(await figure(page, "halfwayStrokes"), null);
  await page.goto("about:blank");
  await page.goto(`${site.url}index.html#v=1&q=can-i-climb&f=1&u=si&${KNOWN}`);
  assert.ok(await page.locator("#going").isVisible());
  await box(page, "measuredPull").fill("");
  await settled(page);
  assert.equal(await page.locator("#going").isVisible(), false);
  assert.equal(await page.locator("#going svg").count(), 0);
});

test("a climb that takes longer than is allowed says where to go down, in text, figures and table", async () => {
  const page = await opened(LATE);
  const told = await page.locator("#going .told").innerText();
  const strokes = await figure(page, "turnBackStrokes");
  assert.match(told, /When the 30 min allowed are over, you are at [\d.]+ m\./u);
  assert.ok(told.endsWith(`Go down after stroke ${strokes}, at ${await figure(page, "turnBackTime")}, from ${await figure(page, "turnBackHeight")}.`), told);
  assert.ok(Number(strokes) < Number(await figure(page, "halfwayStrokes")));
  const row = page.locator("#going tbody tr", { hasText: "time to go down" });
  assert.equal(await row.locator("th").textContent(), strokes);
});

test("where no rest is long enough it says how far up, how far short and how far down", async () => {
  const page = await opened(FAILS);
  const height = await figure(page, "heightReached");
  const told = await page.locator("#going .told").innerText();
  assert.ok(told.includes(`you come ${height} up`) && told.includes(`${await figure(page, "stillToTop")} below`), told);
  assert.ok(told.includes(`it is ${height} down`), told);
  assert.equal(await figure(page, "paceRest"), null);
  assert.equal(await figure(page, "leftAtTop"), null);
});

for (const width of [320, 360, 1280]) {
  test(`nothing runs out of a page ${width} wide`, async () => {
    const page = await opened(LATE, { viewport: { width, height: 800 } });
    await page.locator("#going .as-table summary").click();
    const [wide, there] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    assert.ok(wide <= there, `${wide} of ${there}`);
  });
}
