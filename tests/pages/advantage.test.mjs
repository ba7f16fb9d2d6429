// "Which advantage?" as somebody uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, numbersShown, settled, pullBox } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const PERSON = "bodyMass=80kg&climbHeight=11m&stature=1.75m&measuredPull=520N";

async function opened(rest = "", options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}advantage.html${rest && `#v=1&q=advantage&f=1&u=si&${rest}`}`);
  return page;
}
const rigs = (page) => page.$$eval(".rig", (all) => all.map((one) => [one.dataset.rig, one.dataset.standing]));

test("mass, height and strength give every rig in order, and the least that works", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  await box(page, "bodyMass").fill("80");
  await box(page, "climbHeight").fill("11");
  await (await pullBox(page)).fill("700 N");
  await settled(page);
  // Without a length of pull only one pull is reckoned; at nine tenths of what arms give nobody is told that it is a climb.
  const standing = (id) => page.locator(`.rig[data-rig="${id}"] .standing`).innerText();
  assert.match(await standing("tail-3"), /one pull succeeds$/u);
  await (await pullBox(page)).fill("520 N");
  await settled(page);
  assert.match(await standing("tail-3"), /few will follow/u);
  await (await pullBox(page)).fill("700 N");
  await box(page, "stature").fill("1.75 m");
  await settled(page);
  const listed = await rigs(page);
  assert.equal(listed.length, 13);
  assert.deepEqual(listed[0], ["tail-3", "works"]);
  assert.match(await standing("tail-3"), /comes to the height in time/u);
  const order = { works: 0, "one-pull": 0, "at-limit": 1, "not-known": 2, out: 3 };
  assert.deepEqual([...listed].sort((a, b) => order[a[1]] - order[b[1]]), listed);
  assert.equal(await page.locator(".rig.least").count(), 1);
  assert.match(await page.locator("h2#headline").innerText(), /^On paper, least kit for the height: .*3:1$/u);
  assert.match(await page.locator("#first").innerText(), /3:1/u);
  assert.ok((await page.locator("#status").textContent()).includes(await page.locator("#first").innerText()));
  assert.deepEqual(page.complaints, []);
});

test("without strength the pull of each rig is told, and no rig is named", async () => {
  const page = await opened("bodyMass=80kg&climbHeight=11m");
  assert.equal(await page.locator(".rig.least").count(), 0);
  assert.ok((await page.locator('.rig[data-standing="not-known"]').count()) >= 9);
  assert.match(await page.locator("#first").innerText(), /not known/u);
  assert.ok(await page.locator("#can-enter").isVisible());
});

test("a rig opens to its drawing, its figures and the climb on it", async () => {
  const page = await opened(PERSON);
  const rig = page.locator('.rig[data-rig="haul-cord-4"]');
  await rig.locator("summary").click();
  assert.ok(await rig.locator("svg.rig-drawing").isVisible());
  assert.match(await rig.locator(".gear").innerText(), /3 pulleys/u);
  const pull = await rig.locator("summary .value").innerText();
  // Whoever types on finds it open still.
  await box(page, "kitMass").evaluate((one) => { one.closest("details").open = true; });
  await box(page, "kitMass").fill("9 kg");
  assert.ok(await rig.locator("svg.rig-drawing").isVisible());
  await box(page, "kitMass").fill("");
  await settled(page);
  assert.equal(await rig.locator("summary .value").innerText(), pull);
  await rig.getByText("See the climb on this rig").click();
  await page.waitForURL(/index\.html/u);
  assert.equal(await box(page, "rig").inputValue(), "haul-cord-4");
  assert.ok((await page.locator('[data-figure="pullNeeded"] .value').innerText()).includes(pull.split(" ")[0]));
});

test("the rig that was chosen before is marked, and the plan is the same on both pages", async () => {
  const page = await opened(`${PERSON}&rig=tail-5`);
  const rig = page.locator('.rig[data-rig="tail-5"]');
  assert.match(await rig.locator(".mark").textContent(), /the one you chose/u);
  await page.locator("nav.pages a", { hasText: "Can I climb this?" }).click();
  await page.waitForURL(/index\.html/u);
  assert.equal(await box(page, "rig").inputValue(), "tail-5");
  assert.equal(await box(page, "measuredPull").inputValue(), "520N");
});

test("each rig shows what is to be careful about on it, and the answer what holds for all and for the rig it names", async () => {
  const page = await opened(PERSON);
  const cautions = (id) => page.locator(`.rig[data-rig="${id}"] .rig-cautions`).textContent();
  assert.match(await cautions("tail-3"), /Warning: One hitch alone holds you/u);
  assert.match(await cautions("ground-9"), /crush you under a limb/u);
  assert.doesNotMatch(await cautions("tail-3"), /crush/u);
  const all = await page.locator("#answer-cautions").textContent();
  assert.match(all, /Hanging still in a harness/u);
  assert.doesNotMatch(all, /One hitch alone/u, "no rig is named");
  const strong = await opened(PERSON.replace("520N", "900N"));
  await settled(strong);
  assert.match(await strong.locator("#headline").innerText(), /haul cord, 2:1$/u);
  const named = await strong.locator("#answer-cautions").textContent();
  assert.match(named, /One hitch alone holds you[\s\S]*Nothing pulls the hitch up/u);
  assert.doesNotMatch(named, /crush/u);
});

test("the climb on another rig is without one's own test, and says so", async () => {
  const page = await opened(`${PERSON}&rig=tail-3&testMass=94.3kg&testPull=400N`);
  const link = (id) => page.locator(`.rig[data-rig="${id}"] .take`).getAttribute("href");
  const told = (id) => page.locator(`.rig[data-rig="${id}"] .untested`).textContent();
  assert.match(await link("tail-3"), /testMass=94.3kg&testPull=400N/u);
  assert.equal(await told("tail-3"), "");
  assert.doesNotMatch(await link("tail-5"), /test/u);
  assert.match(await told("tail-5"), /without your own test/u);
  const rig = page.locator('.rig[data-rig="tail-5"]');
  await rig.locator("summary").click();
  await rig.getByText("See the climb on this rig").click();
  await page.waitForURL(/index\.html/u);
  await settled(page);
  assert.equal(await page.locator("#errors li").count(), 0);
});

test("chart and map have their tables, and the person stands on the map", async () => {
  const page = await opened(PERSON);
  assert.equal(await page.locator("#chart svg .drawn-line").count(), 9);
  assert.equal(await page.locator("#chart tbody tr").count(), 9);
  assert.equal(await page.locator("#map .you-word").textContent(), "you");
  assert.match(await page.locator("#map .told").nth(1).innerText(), /^You, at 88 kg with kit and 520 N of pull: /u);
  assert.equal(await page.locator("#map tbody tr").count(), 8);
  assert.equal(await page.locator("#map .legend li").count(), 9);
  // Every letter drawn is in the legend.
  const drawn = await page.locator("#map svg .letter").allTextContents();
  const known = await page.locator("#map .legend .letter").allTextContents();
  assert.ok(drawn.length >= 5 && drawn.every((letter) => letter === "none" || known.includes(letter)), `${drawn}`);
});

for (const width of [320, 360, 1280]) {
  test(`nothing runs out of a page ${width} wide`, async () => {
    const page = await opened(PERSON, { viewport: { width, height: 800 } });
    await page.locator(".rig summary").first().click();
    const [wide, there] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    assert.ok(wide <= there, `${wide} of ${there}`);
  });
}
