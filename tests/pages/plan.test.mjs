// One plan for all pages: what was said on one is there on the other.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, boxes, fillNeeded, numbersShown, onDisk, pageBytes, problem, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const CLIMB = "index.html";
const ADVANTAGE = "advantage.html";
const LOADS = "loads.html";
const ROPE = "rope-length.html";
const CORD = "cord.html";
const DOWN = "coming-down.html";
const STUCK = "rescue.html";
const NAMES = {
  [CLIMB]: "Can I climb this?", [ADVANTAGE]: "Which advantage?", [LOADS]: "What does each part carry?", [ROPE]: "How much rope?",
  [CORD]: "What length of cord?", [DOWN]: "Can I get down again?", [STUCK]: "What if I am stuck?",
};
const to = (page, name) => page.locator("nav.pages a", { hasText: NAMES[name] });
const tight = (all) => Object.fromEntries(Object.entries(all).map(([id, text]) => [id, text.replace(/\s/gu, "")]));

/** Goes to the other page by its link. */
async function go(page, name) {
  await Promise.all([page.waitForURL((url) => url.pathname.endsWith(name)), to(page, name).click()]);
  await page.locator(".live:visible").first().waitFor();
}

async function opened(name = CLIMB, base = site.url) {
  const page = await site.page();
  await page.goto(base + name);
  return page;
}

for (const [where, base] of [["over http", () => site.url], ["from disk", () => onDisk]]) {
  test(`what is said on one page is there on the other, both ways: ${where}`, async () => {
    const page = await opened(CLIMB, base());
    await fillNeeded(page, { bodyMass: "83.5", climbHeight: "9" });
    await page.getByLabel("feet and pounds").check();
    await box(page, "kitMass").evaluate((one) => { one.closest("details").open = true; });
    await box(page, "kitMass").fill("15");
    const said = await boxes(page);
    await go(page, ROPE); // no pause for typing to count as stopped
    assert.ok(await page.getByLabel("feet and pounds").isChecked());
    assert.equal(await box(page, "rig").inputValue(), "tail-3");
    assert.equal(await page.locator("#notices li").count(), 0);
    await box(page, "crotchHeight").fill("36");
    await box(page, "anchor").selectOption("base");
    await box(page, "ropeTail").evaluate((one) => { one.closest("details").open = true; });
    await box(page, "ropeTail").fill("20");
    await go(page, CLIMB);
    assert.deepEqual(tight(await boxes(page)), tight({ ...said, kitMass: "15 lb", crotchHeight: "36 ft", anchor: "base" }));
    assert.ok(!("ropeTail" in said), "it has no box there, and is carried");
    await box(page, "climbHeight").fill("8 m");
    await go(page, ROPE);
    assert.equal(tight(await boxes(page)).crotchHeight, "36ft");
    assert.equal(await box(page, "anchor").inputValue(), "base");
    assert.equal(tight(await boxes(page)).ropeTail, "20in");
    assert.notDeepEqual(await numbersShown(page), []);
    assert.deepEqual(page.complaints, []);
  });
}

test("a link followed by keys alone takes along what was typed a moment before", async () => {
  const page = await opened();
  await fillNeeded(page);
  await box(page, "bodyMass").fill("91");
  await to(page, ROPE).focus();
  await Promise.all([page.waitForURL(/rope-length/u), page.keyboard.press("Enter")]);
  assert.match(page.url(), /bodyMass=91kg/u);
});

test("a link opened aside or copied by its address holds what was typed a moment before", async () => {
  const page = await opened();
  await fillNeeded(page);
  await box(page, "bodyMass").fill("92");
  await to(page, ROPE).click({ button: "right" });
  assert.match(await to(page, ROPE).getAttribute("href"), /^rope-length\.html#v=1&q=rope-length&.*bodyMass=92kg/u);
});

test("what a page has no box for stays through editing, reloading and copying, unseen", async () => {
  const page = await opened();
  await fillNeeded(page, { bodyMass: "83.5" });
  await go(page, ROPE);
  await box(page, "crotchHeight").fill("12 m");
  await settled(page);
  assert.match(page.url(), /bodyMass=83\.5kg/u);
  await page.reload();
  await box(page, "anchor").selectOption("base");
  await settled(page);
  assert.match(page.url(), /bodyMass=83\.5kg/u);
  assert.ok(!(await page.locator("body").innerText()).includes("83"), "nothing of it is shown");
  await page.click("#copy-link");
  await page.locator("#copied-text", { hasText: "It carries your weight and strength." }).waitFor();
  assert.match(await page.locator("#copied-link").inputValue(), /bodyMass=83\.5kg/u);
  await page.click("#copy-link-without");
  await page.locator("#copied-text", { hasText: "Your weight and strength, and what else you said of your body, are not in it." }).waitFor();
  const without = await page.locator("#copied-link").inputValue();
  assert.match(without, /crotchHeight=12m.*climbHeight=8m|climbHeight=8m.*crotchHeight=12m/u);
  assert.doesNotMatch(without, /bodyMass|83/u);
});

test("a link is not said to carry weight and strength that nobody entered", async () => {
  const page = await opened(ROPE);
  await box(page, "crotchHeight").fill("11 m");
  await settled(page);
  await page.click("#copy-link");
  await page.locator("#copied-text", { hasText: "Your weight and strength, and what else you said of your body, are not in it." }).waitFor();
});

test("start again drops what is carried, and putting back brings it again", async () => {
  const page = await opened();
  await fillNeeded(page);
  await go(page, ROPE);
  await box(page, "crotchHeight").fill("11 m");
  await settled(page);
  const before = page.url();
  await page.click("#start-again");
  await settled(page);
  assert.ok(!page.url().includes("#"));
  assert.equal(await to(page, CLIMB).getAttribute("href"), CLIMB);
  await page.click("#put-back");
  await settled(page);
  assert.equal(page.url(), before);
  await go(page, CLIMB);
  assert.equal(tight(await boxes(page)).bodyMass, "80kg");
});

test("what was said of the climb is there for the way down and for a rescue, and comes back with what was added", async () => {
  const page = await opened();
  await fillNeeded(page);
  await go(page, DOWN);
  assert.equal(await page.locator("#steps > li").count(), 7);
  await box(page, "brake").evaluate((one) => { one.closest("details").open = true; });
  await box(page, "brake").selectOption("redirect");
  await go(page, STUCK);
  assert.equal(tight(await boxes(page)).climbHeight, "8m");
  await box(page, "anchor").selectOption("base-lowerable");
  await settled(page);
  assert.ok(await page.locator("#outcome").isVisible());
  await go(page, DOWN);
  assert.equal(await box(page, "brake").inputValue(), "redirect");
  assert.equal(await box(page, "anchor").inputValue(), "base-lowerable");
  assert.equal(tight(await boxes(page)).bodyMass, "80kg");
  assert.deepEqual(page.complaints, []);
});

test("the example is one plan on both pages", async () => {
  const page = await opened(ROPE);
  await page.click("#show-example");
  assert.ok(await page.locator("#example-mark").isVisible());
  await go(page, CLIMB);
  assert.ok(await page.locator("#example-mark").isVisible());
  assert.ok(await page.locator("#outcome").isVisible());
});

test("what cannot be read goes along in no link, which is said, and is there on coming back", async () => {
  const page = await opened();
  // So that the page is truly built anew on coming back.
  await page.evaluate(() => addEventListener("unload", () => {}));
  await fillNeeded(page, { bodyMass: "8x", climbHeight: "9" });
  await settled(page);
  assert.match(await page.locator("#stays").innerText(), /goes into no link/u);
  await go(page, ROPE);
  assert.doesNotMatch(page.url(), /bodyMass/u);
  assert.match(page.url(), /climbHeight=9m/u);
  assert.equal(await page.locator("#stays").isVisible(), false);
  await page.goBack();
  await problem(page, "bodyMass").waitFor();
  assert.equal((await boxes(page)).bodyMass, "8x");
  assert.equal(tight(await boxes(page)).climbHeight, "9m");
  assert.equal(await box(page, "rig").inputValue(), "tail-3");
  await box(page, "bodyMass").fill("80");
  await settled(page);
  assert.ok(await page.locator("#stays").isHidden());
  await page.reload();
  assert.equal(tight(await boxes(page)).bodyMass, "80kg", "once it can be read the address holds it");
});

test("coming back finds everything as it was left", async () => {
  const page = await opened();
  await page.evaluate(() => addEventListener("unload", () => {}));
  await fillNeeded(page);
  const said = await boxes(page);
  await go(page, ROPE);
  await page.goBack();
  await page.locator("#outcome").waitFor();
  assert.deepEqual(tight(await boxes(page)), tight({ ...said, bodyMass: "80 kg", climbHeight: "8 m" }));
});

test("a copy of the live page keeps what it carries", async () => {
  const page = await opened();
  await fillNeeded(page);
  await go(page, ROPE);
  await box(page, "crotchHeight").fill("11 m");
  await settled(page);
  const copy = await site.page();
  await copy.goto(await site.saved(await page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`)));
  await settled(copy);
  assert.match(await to(copy, CLIMB).getAttribute("href"), /^index\.html#v=1&q=can-i-climb&.*bodyMass=80kg/u);
});

test("a link made for another page is taken over, and says which page it was made for", async () => {
  const page = await site.page();
  await page.goto(`${site.url}${ROPE}#v=1&q=can-i-climb&f=1&u=si&bodyMass=64kg&climbHeight=9m&rig=tail-3`);
  assert.deepEqual(await page.locator("#notices li").allInnerTexts(), ["This link was made for the page “Can I climb this?”; what it says is taken over here."]);
  await settled(page);
  assert.match(page.url(), /q=rope-length&.*bodyMass=64kg/u);
});

test("what another page's field cannot be is told and left out, so that nothing unseen blocks the form", async () => {
  const page = await site.page();
  await page.goto(`${site.url}${ROPE}#v=1&q=rope-length&f=1&u=si&bodyMass=stout&crotchHeight=11m&anchor=base`);
  assert.match(await page.locator("#notices li").innerText(), /“stout” for “.+”, which cannot be read: it is left out/u);
  await box(page, "crotchHeight").fill("12 m");
  await settled(page);
  assert.match(page.url(), /crotchHeight=12m/u);
  assert.doesNotMatch(page.url(), /stout/u);
});

test("each page marks itself among the pages, and its own link changes nothing", async () => {
  for (const name of [CLIMB, ADVANTAGE, LOADS, ROPE, DOWN, STUCK]) {
    const page = await opened(name);
    assert.equal(await page.locator("nav.pages a").count(), 8);
    assert.deepEqual(await page.locator("nav.pages [aria-current=page]").allInnerTexts(), [await page.locator("h1").innerText()]);
    const first = page.locator("form [data-field] input").first();
    await first.fill("8x");
    await settled(page);
    const before = page.url();
    await to(page, name).click();
    assert.equal(page.url(), before);
    assert.equal(await first.inputValue(), "8x");
  }
});

test("without scripts the links are plain ones", async () => {
  const page = await site.page({ javaScriptEnabled: false });
  await page.goto(site.url);
  await to(page, ROPE).click();
  await page.waitForURL((url) => url.pathname.endsWith(ROPE));
  assert.equal(page.url(), site.url + ROPE);
  assert.ok((await pageBytes(ROPE)).includes(`<a href="${CLIMB}"`));
});
