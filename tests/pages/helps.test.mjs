// What would help most, and the steps in which a full answer comes, on the page of "Can I climb this?".
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, pullBox } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const PLAN = "bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=580N&upperTurn=carabiner";

async function opened(plan) {
  const page = await site.page();
  await page.goto(`${site.url}index.html#v=1&q=can-i-climb&f=1&u=si&${plan}`);
  return page;
}
const samples = async (page) => Number(/sum (\d+) times/u.exec(await page.locator("#effort").innerText())?.[1]);

test("what helps comes after the answer, the most helpful first, and goes with the first key", async () => {
  const page = await opened(PLAN);
  await page.locator("#helps").waitFor({ state: "visible" });
  assert.match(await page.locator("#helps .told").innerText(), /^Most would help: pulleys wherever the rope slides/u);
  const chances = await page.$$eval("#helps tbody tr", (rows) =>
    rows.map((row) => Number(/M0 4H([\d.]+)/u.exec(row.querySelector(".fill").getAttribute("d"))[1])));
  assert.ok(chances.length >= 7, `${chances.length}`);
  const changes = chances.slice(1);
  assert.deepEqual(changes, [...changes].sort((one, other) => other - one));
  await box(page, "bodyMass").pressSequentially("1");
  assert.equal(await page.locator("#helps").isVisible(), false, "a comparison of another plan");
});

test("a full answer comes in steps that the next key stops", async () => {
  const page = await opened(PLAN);
  await page.locator("#helps").waitFor({ state: "visible" });
  assert.equal(await samples(page), 20_000);
  // All counts that were in view, from the key on.
  await page.evaluate(() => {
    window.seen = [];
    new MutationObserver(() => window.seen.push(document.getElementById("effort").textContent))
      .observe(document.getElementById("effort"), { childList: true, characterData: true, subtree: true });
  });
  await (await pullBox(page)).fill("590 N");
  assert.equal(await samples(page), 500, "while typing");
  await page.locator("#helps").waitFor({ state: "visible" });
  const counts = (await page.evaluate(() => window.seen)).map((text) => Number(/sum (\d+) times/u.exec(text)?.[1]));
  assert.deepEqual([...new Set(counts)], [500, 4000, 8000, 12000, 16000, 20000]);
  await (await pullBox(page)).fill("595 N");
  await (await pullBox(page)).fill("600 N");
  assert.equal(await samples(page), 500);
});

test("without a strength there is nothing to compare", async () => {
  const page = await opened("bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m");
  await page.waitForTimeout(2500);
  assert.equal(await page.locator("#helps").isVisible(), false);
});
