// "Can I get down again?" as somebody uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, numbersShown, problem, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const PLAN = "bodyMass=80kg&kitMass=0kg&climbHeight=10m&rig=tail-3";

async function opened(rest = "", options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}coming-down.html${rest && `#v=1&q=coming-down&f=1&u=si&${rest}`}`);
  if (rest) await settled(page);
  return page;
}
const steps = (page) => page.locator("#steps > li");
const hold = (page) => page.locator("[data-figure=holdForce] summary").innerText();
const unfold = (page, name) => page.locator("form > details > summary", { hasText: name }).click();

test("mass, height and rig give seven steps, each with what holds meanwhile and a drawing", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  assert.equal(await steps(page).count(), 0);
  await box(page, "bodyMass").fill("80");
  await box(page, "climbHeight").fill("10");
  await box(page, "rig").selectOption("tail-3");
  await settled(page);
  assert.deepEqual(await steps(page).evaluateAll((all) => all.map((one) => one.dataset.step)),
    ["rest", "back-up", "take-off", "set-brake", "weigh-brake", "free-brake", "move-knot"]);
  for (const held of await page.locator("#steps .held").allInnerTexts()) {
    assert.match(held, /^Held by your /u);
    assert.doesNotMatch(held, /hand/u, "hands hold nobody");
  }
  assert.equal(await page.locator("#steps svg").count(), 7);
  assert.ok(await page.locator("#no-steps").isHidden());
  assert.deepEqual(page.complaints, []);
});

test("what is moved in a step is said in words and broken in the drawing", async () => {
  const page = await opened(PLAN);
  const step = page.locator("[data-step=take-off]");
  assert.match((await step.locator("svg").textContent()), /upper hitch,\s*moved/u);
  const dashes = await step.locator("svg .moved").evaluateAll((all) => all.map((one) => getComputedStyle(one).strokeDasharray));
  assert.ok(dashes.length > 0 && dashes.every((dash) => dash !== "none"), dashes.join());
});

test("somebody who is hauled has no steps, and is told why", async () => {
  const page = await opened("bodyMass=80kg&climbHeight=10m&rig=ground-3");
  assert.match(await page.locator("#no-steps").innerText(), /Nobody comes down on this rig by themselves/u);
  assert.equal(await steps(page).count(), 0);
  assert.ok(await page.locator("#steps-key").isHidden(), "and no key to a drawing that is not there");
  assert.equal(await page.locator("[data-figure=holdForce]").count(), 0);
});

test("a hand is held against its grip, and an edit changes the number at once", async () => {
  const page = await opened(`${PLAN}&gripRight=390N&gripLeft=390N`);
  assert.match(await page.locator("#first").innerText(), /On paper your weaker hand stops you/u);
  const munter = await hold(page);
  await unfold(page, "Friction, hand and speed");
  await box(page, "brake").selectOption("none");
  assert.notEqual(await hold(page), munter, "at once");
  assert.match(await hold(page), /785/u, "all of the weight");
  await settled(page);
  assert.doesNotMatch(await page.locator("#first").innerText(), /On paper your weaker hand stops you/u);
});

test("turns are asked for only where there are turns", async () => {
  const page = await opened(PLAN);
  await unfold(page, "Friction, hand and speed");
  assert.ok(await box(page, "brakeTurns").isHidden());
  await box(page, "brake").selectOption("turns");
  assert.ok(await box(page, "brakeTurns").isVisible());
});

test("a cord that gets too hot slows the way down and is warned of", async () => {
  const hot = `${PLAN}&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm&heatShare=0.3`;
  const page = await opened(hot);
  assert.match(await page.locator("#second").innerText(), /the cord of the hitch likely gets too hot/u);
  const fast = await opened(`${hot}&descentSpeed=60m-per-min`);
  assert.match(await fast.locator("#answer").innerText(), /Warning: The cord of your hitch likely melts/u);
});

test("a rope that ends above the ground is warned of", async () => {
  const page = await opened(`${PLAN}&crotchHeight=12m&anchor=base&ropeOwned=25m`);
  assert.match(await page.locator("#answer").innerText(), /ends about 2\.2 m above the ground/u);
});

for (const [what, text] of [["an empty box", ""], ["a wrong box", "1,200"]]) {
  test(`${what} hides every number, and putting it right shows them again`, async () => {
    const page = await opened(`${PLAN}&gripRight=390N`);
    assert.notDeepEqual(await numbersShown(page), []);
    await box(page, "bodyMass").fill(text);
    assert.deepEqual(await numbersShown(page), [], "at once");
    await settled(page);
    assert.deepEqual(await numbersShown(page), []);
    if (text) assert.ok(await problem(page, "bodyMass").isVisible());
    await box(page, "bodyMass").fill("80");
    await settled(page);
    assert.notDeepEqual(await numbersShown(page), []);
  });
}

test("no name in a drawing lies on another, nor outside it, whatever the rig", async () => {
  const backed = ["none", "second-hitch", "tail-knot"].map((backup) => `tail-3&backup=${backup}`);
  const own = "own&ownRig=tied.tree--hitch.upper--hitch.climber--turn.climber.ring--turn.upper.bearing-pulley--knot.upper.2m--hand.climber";
  for (const rig of [...backed, "moving-rope", "tail-7", "haul-cord-5", "hand-over-hand", own]) {
    const page = await opened(`bodyMass=80kg&climbHeight=10m&rig=${rig}`, { viewport: { width: 390, height: 844 } });
    const found = await page.$$eval("#steps svg", (drawings) => drawings.flatMap((drawing) => {
      const { width, height } = drawing.viewBox.baseVal;
      const all = [...drawing.querySelectorAll("text")].map((one) => ({ text: one.textContent, at: one.getBBox() }));
      const outside = all.filter(({ at }) => at.x < 0 || at.y < -1 || at.x + at.width > width || at.y + at.height > height + 1);
      // A box of letters is taller than the letters: a quarter of it is air.
      const pairs = all.flatMap((one, i) => all.slice(i + 1).filter(({ at }) =>
        Math.min(one.at.y + one.at.height, at.y + at.height) - Math.max(one.at.y, at.y) > at.height / 4).map((other) => `${one.text} / ${other.text}`));
      return [...outside.map(({ text }) => text), ...pairs];
    }));
    assert.deepEqual(found, [], rig);
    assert.ok((await steps(page).count()) > 0, rig);
  }
});

test("in print the plan and every step are there, and nothing to press", async () => {
  const page = await opened(`${PLAN}&gripRight=390N`);
  await page.emulateMedia({ media: "print" });
  assert.ok(await box(page, "bodyMass").isVisible());
  assert.ok(await box(page, "gripRight").isVisible());
  for (const step of await steps(page).all()) assert.ok(await step.locator(".held").isVisible());
  assert.ok(await page.locator("#steps svg").first().isVisible());
  assert.equal(await page.locator("button:visible").count(), 0);
});
