// "What does each part carry?" as somebody uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, numbersShown, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const PLAN = "bodyMass=80kg&kitMass=0kg&rig=tail-3&anchor=canopy";

async function opened(rest = "", options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}loads.html${rest && `#v=1&q=loads&f=1&u=si&${rest}`}`);
  return page;
}
const state = (page, id) => page.locator(`[data-state="${id}"]`);

test("mass, rig and anchor give every state, and those that cannot be say why", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  await box(page, "bodyMass").fill("80");
  await box(page, "rig").selectOption("tail-3");
  await box(page, "anchor").selectOption("canopy");
  await settled(page);
  assert.equal(await page.locator("#states .state").count(), 7);
  assert.match(await state(page, "caught").locator(".what").textContent(), /It takes a second hitch above it to catch you/u);
  await state(page, "lowered").locator("summary").click();
  assert.match(await state(page, "lowered").innerText(), /nothing of it can be given or taken on the ground/u);
  assert.equal(await state(page, "lowered").locator("svg").count(), 0);
  assert.match(await state(page, "resting").locator(".singles").innerText(), /does not see a worn, misrigged or cross-loaded part/u);
  assert.deepEqual(page.complaints, []);
});

test("the drawing marks the single parts that the table names, and at rest has no hand", async () => {
  const page = await opened(PLAN);
  const resting = state(page, "resting");
  const single = await resting.locator("tr", { hasText: "single" }).locator("th").allInnerTexts();
  assert.deepEqual(single.map((text) => text.replace(/\s*◆.*/u, "")).slice(0, 4), ["Climbing rope", "Anchor", "Cord of the lower hitch", "Connector at the lower hitch"]);
  assert.equal(await resting.locator("svg .single").count(), 2);
  assert.doesNotMatch(await resting.locator("desc").textContent(), /hands/u);
});

test("a second hitch leaves the lower one no longer single", async () => {
  const page = await opened(`${PLAN}&backup=second-hitch`);
  const single = await state(page, "resting").locator("tr", { hasText: "◆" }).locator("th").allInnerTexts();
  assert.ok(single.every((text) => !text.includes("hitch")), single.join());
});

test("heights bring the slip, its chart with both limits, and a table", async () => {
  const page = await opened(PLAN);
  assert.ok(await page.locator("#slip").isHidden());
  await page.locator("summary", { hasText: "Heights and a slip" }).click();
  await box(page, "crotchHeight").fill("14 m");
  await box(page, "climbHeight").fill("10 m");
  await settled(page);
  assert.ok(await page.locator("#slip").isVisible());
  assert.equal(await page.locator("#slip-chart .limit").count(), 2);
  assert.equal(await page.locator("#slip-chart tbody tr").count(), 2);
  assert.equal(await state(page, "slipping").locator("svg").count(), 1);
});

test("a part that may fail comes first, with a sign, a word and not by colour alone", async () => {
  const page = await opened(`${PLAN}&ropeStrength=1kN`);
  assert.match(await page.locator("#first").innerText(), /may be loaded past what it bears/u);
  assert.match(await state(page, "resting").locator("tr[data-standing=short]").first().innerText(), /▲/u);
});

test("dead wood is refused, and no limb is called safe", async () => {
  const page = await opened(`${PLAN}&limbWood=dead&limbDiameter=60cm&species=white-oak`);
  assert.match(await page.locator("#limb-text").innerText(), /always refused/u);
  assert.doesNotMatch(await page.locator("#answer").innerText(), /\bsafe\b/iu);
});

test("nothing is wider than a phone, in any state opened", async () => {
  const page = await opened(`${PLAN}&crotchHeight=14m&climbHeight=10m`, { viewport: { width: 320, height: 640 } });
  await page.$$eval("#states details", (all) => { for (const one of all) one.open = true; });
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
});

test("on a phone each state has its name in one piece, and each part how it stands, without scrolling", async () => {
  const page = await opened(`${PLAN}&ropeStrength=1kN&crotchHeight=14m&climbHeight=10m`, { viewport: { width: 320, height: 640 } });
  for (const one of await page.locator(".state summary .noun").all()) {
    assert.ok((await one.boundingBox()).height < 60, await one.innerText());
  }
  const cells = await page.$$eval('[data-state="resting"] tbody td:nth-child(2)', (all) => all.map((one) => one.getBoundingClientRect().right));
  assert.ok(cells.length > 5 && cells.every((right) => right <= 320), `${cells}`);
});

test("on a wide screen the table of a state needs no scrolling, and no number stands apart from its unit", async () => {
  const page = await opened(PLAN, { viewport: { width: 1280, height: 900 } });
  assert.equal(await state(page, "resting").locator(".parts").evaluate((one) => one.scrollWidth - one.clientWidth), 0);
  const heights = await state(page, "resting").locator(".whole").evaluateAll((all) => all.map((one) => one.getClientRects().length));
  assert.ok(heights.length > 10 && heights.every((count) => count === 1));
});

test("a state with a part that may fail says so on its fold, in words and in the colour of warnings", async () => {
  const page = await opened(`${PLAN}&ropeStrength=1kN`);
  await settled(page);
  const standing = state(page, "resting").locator(".standing");
  assert.match(await standing.innerText(), /^▲ \d+ may be loaded past/u);
  const [said, word] = await Promise.all([standing, state(page, "resting").locator(".grave-word").first()].map((one) => one.evaluate((node) => getComputedStyle(node).color)));
  assert.equal(said, word);
});
