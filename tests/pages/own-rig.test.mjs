// A rig of one's own: as text and by choosing, both in step.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, problem, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const text = (page) => page.locator("[name=ownRig]");
const THREE = "tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper bearing-pulley, hand climber";

async function opened(options = {}, rest = "rig=own") {
  const page = await site.page(options);
  await page.goto(`${site.url}index.html#v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=11m&measuredPull=520N&stature=1.75m&${rest}`);
  return page;
}
const figure = (page, id) => page.locator(`[data-figure="${id}"] .value`).innerText();

test("the boxes of an own rig are there for an own rig alone", async () => {
  const page = await opened({}, "rig=tail-3");
  assert.equal(await text(page).isVisible(), false);
  await box(page, "rig").selectOption("own");
  assert.ok(await text(page).isVisible());
  await settled(page);
  assert.match(await page.locator("#waiting").innerText(), /own rig/iu);
});

test("a 3:1 written down gives the figures of the 3:1 that one can choose", async () => {
  const page = await opened();
  await text(page).fill(THREE);
  await settled(page);
  const own = [await figure(page, "pullNeeded"), await figure(page, "realAdvantage"), await figure(page, "strokes")];
  await box(page, "rig").selectOption("tail-3");
  await settled(page);
  assert.deepEqual([await figure(page, "pullNeeded"), await figure(page, "realAdvantage"), await figure(page, "strokes")], own);
  assert.deepEqual(page.complaints, []);
});

test("a 3:1 is built by keys alone, without a word of the notation", async () => {
  const page = await opened();
  const press = async (name) => {
    await page.getByRole("button", { name, exact: true }).focus();
    await page.keyboard.press("Enter");
  };
  const choose = async (label, option) => page.getByLabel(label, { exact: true }).selectOption(option);
  await press("Add a rope");
  const stops = [["hitch", "upper"], ["hitch", "climber"], ["turn", "climber"], ["turn", "upper"], ["hand", "climber"]];
  for (const [at, [does, on]] of stops.entries()) {
    const stop = at + 2;
    if (stop > 2) await press("Add a stop to rope 1");
    await choose(`What the rope does: rope 1, stop ${stop}`, does);
    await choose(`Where: rope 1, stop ${stop}`, on);
  }
  await settled(page);
  assert.equal(await figure(page, "idealAdvantage"), "3");
  assert.match(await text(page).inputValue(), /^tied tree, hitch upper, hitch climber, turn climber/u);
});

test("text and rows follow each other, and rows wait for text that cannot be read", async () => {
  const page = await opened();
  await text(page).fill(THREE);
  assert.equal(await page.locator("[data-rig-editor] [data-stop]").count(), 6);
  await page.getByLabel("With what: rope 1, stop 5").fill("0.8");
  await page.keyboard.press("Tab");
  assert.match(await text(page).inputValue(), /turn upper 0\.8/u);
  await text(page).fill(THREE.replace("tree", "trea"));
  await settled(page);
  assert.match(await problem(page, "ownRig").innerText(), /trea/u);
  assert.match(await page.locator("[data-rig-editor] .hint").innerText(), /as soon as the text can be read/u);
  assert.equal(await page.locator("[data-rig-editor] [data-stop]").count(), 6);
  await page.getByRole("button", { name: "Remove: rope 1, stop 6" }).click();
  await settled(page);
  assert.match(await problem(page, "ownRig").innerText(), /hand/u);
});

test("what is wrong with a rig is told once typing stops, in the text box and in the boxes of a row", async () => {
  const page = await opened();
  await text(page).focus();
  await text(page).pressSequentially(THREE.replace("hand climber", "hand climbed"));
  await settled(page);
  assert.match(await problem(page, "ownRig").innerText(), /climbed/u);
  await text(page).fill(THREE);
  await page.getByLabel("With what: rope 1, stop 5").fill("");
  await page.getByLabel("With what: rope 1, stop 5").pressSequentially("rung");
  await settled(page);
  assert.equal(await page.evaluate(() => document.activeElement.getAttribute("aria-label")), "With what: rope 1, stop 5", "nobody has left the box");
  assert.match(await problem(page, "ownRig").innerText(), /rung/u);
  await page.keyboard.press("Control+A");
  await page.keyboard.type("ring");
  await settled(page);
  assert.ok(await problem(page, "ownRig").isHidden());
});

test("an example is offered only where nothing is typed", async () => {
  const page = await opened();
  const example = page.getByRole("button", { name: "Begin with an example" });
  assert.ok(await example.isVisible());
  await text(page).fill("tied trea");
  assert.ok(await example.isHidden());
  await text(page).fill("");
  await example.click();
  assert.ok(await example.isHidden());
  assert.match(await text(page).inputValue(), /^tied/u);
});

test("a text that cannot be read is not lost when a row takes its place", async () => {
  const page = await opened();
  const wrong = THREE.replace("tree", "trea");
  await text(page).fill(THREE);
  const back = page.getByRole("button", { name: "Put back what I wrote" });
  assert.ok(await back.isHidden());
  await text(page).fill(wrong);
  await page.getByRole("button", { name: "Later: rope 1, stop 4" }).click();
  assert.notEqual(await text(page).inputValue(), wrong);
  await page.getByLabel("Where: rope 1, stop 2").selectOption("climber");
  await back.click();
  assert.equal(await text(page).inputValue(), wrong);
  assert.ok(await back.isHidden());
  assert.deepEqual(page.complaints, []);
});

for (const width of [320, 1100, 1280]) {
  test(`no box of the editor clips its words, on a page ${width} wide`, async () => {
    const page = await opened({ viewport: { width, height: 900 } });
    await text(page).fill(THREE);
    const clipped = await page.$$eval("[data-rig-editor] :is(select, input)", (all) => {
      const pen = document.createElement("canvas").getContext("2d");
      return all.filter((one) => one.checkVisibility()).flatMap((one) => {
        pen.font = getComputedStyle(one).font;
        const texts = one.matches("select") ? [...one.options].map(({ text }) => text) : [one.value];
        const room = one.clientWidth - 16 - (one.matches("select") ? 20 : 0); // padding, and a select's arrow
        return texts.filter((word) => pen.measureText(word).width > room).map((word) => `${word}: ${pen.measureText(word).width} of ${room}`);
      });
    });
    assert.deepEqual([...new Set(clipped)], []);
  });
}

test("it travels in the link, and to the list of all rigs", async () => {
  const page = await opened();
  await text(page).fill(THREE);
  await settled(page);
  const link = page.url();
  assert.match(link, /ownRig=tied\.tree--hitch\.upper/u);
  const again = await site.page();
  await again.goto(link);
  assert.equal(await text(again).inputValue(), THREE);
  assert.equal(await again.locator("[data-rig-editor] [data-stop]").count(), 6);
  await again.locator("nav.pages a", { hasText: "Which advantage?" }).click();
  await again.waitForURL(/advantage/u);
  assert.equal(await again.locator('.rig[data-rig="own"]').count(), 1);
});

test("every button and box of the editor is big enough for cold hands, on a page 320 wide", async () => {
  const page = await opened({ viewport: { width: 320, height: 800 } });
  await text(page).fill(THREE);
  const small = await page.$$eval("[data-rig-editor] :is(button, select, input)", (all) => all
    .filter((one) => one.checkVisibility()).map((one) => one.getBoundingClientRect())
    .filter(({ width, height, right }) => width < 44 || height < 43.5 || right > 320).length);
  assert.equal(small, 0);
});
