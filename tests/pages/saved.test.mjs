import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, boxes, fillNeeded, pageBytes, reading, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

async function changedFromDisk(page) {
  const old = await reading(page);
  await box(page, "bodyMass").fill("97");
  await settled(page);
  const now = await reading(page);
  assert.notDeepEqual(now.figures, old.figures);
  assert.match(now.figures.join(" "), /\d+ N\b/u);
}

test("the bytes as served compute from disk", async () => {
  const page = await site.page();
  await page.goto(await site.saved(await pageBytes()));
  await fillNeeded(page);
  await settled(page);
  await changedFromDisk(page);
  assert.deepEqual(page.complaints, []);
});

test("the live page as a browser writes it keeps what was typed, and computes from disk", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await fillNeeded(page, { bodyMass: "83.5", climbHeight: "11" });
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  await box(page, "lowerTurn").selectOption("bush-pulley");
  await page.getByLabel("1,5").check();
  await settled(page);
  const text = await page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`);
  const copy = await site.page();
  await copy.goto(await site.saved(text));
  await settled(copy);
  assert.deepEqual(await boxes(copy), await boxes(page));
  assert.deepEqual(await reading(copy), await reading(page));
  assert.equal(await copy.locator("#drawing svg").count(), 1, "drawn anew, not twice");
  await changedFromDisk(copy);
  const again = await site.page();
  await again.goto(await site.saved(await copy.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`)));
  await settled(again);
  assert.deepEqual(await reading(again), await reading(copy), "a copy of a copy too");
});

test("from disk a link is made that another copy opens", async () => {
  const page = await site.page();
  const address = await site.saved(await pageBytes());
  await page.goto(address);
  await fillNeeded(page);
  await settled(page);
  const warned = await page.locator("#from-file").isVisible();
  await page.click("#copy-link");
  await page.locator("#copied-text", { hasText: "weight and strength" }).waitFor();
  const text = await page.locator("#copied-link").inputValue();
  assert.match(text, /^(#|https:\/\/)[^ ]*v=1&/u);
  assert.doesNotMatch(text, /file:/u);
  const said = await page.locator("#copied-text").innerText();
  assert.equal(said.startsWith("Part of a link: paste it after the address of any copy of this page."), text.startsWith("#"));
  assert.equal(warned, text.startsWith("#"), "said beside the button before it is pressed");
  assert.match(await page.locator(".foot").innerText(), /Save page as/u);
  const other = await site.page();
  await other.goto(address + text.slice(text.indexOf("#")));
  await settled(other);
  assert.deepEqual(await reading(other), await reading(page));
});

test("the rope's page computes from disk, as served and as a browser writes the live page", async () => {
  const page = await site.page();
  await page.goto(await site.saved(await pageBytes("rope-length.html")));
  await box(page, "crotchHeight").fill("11 m");
  await box(page, "anchor").selectOption("base");
  await settled(page);
  const said = async (one) => [await one.locator("#first").innerText(), await one.locator(".figure summary").allInnerTexts(), await one.locator(".state summary").allInnerTexts()];
  const copy = await site.page();
  await copy.goto(await site.saved(await page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`)));
  await settled(copy);
  assert.deepEqual(await said(copy), await said(page));
  assert.equal(await copy.locator(".state[open]").count(), 1);
  assert.equal(await copy.locator(".state[open] svg").count(), 1, "drawn anew, not twice");
  await box(copy, "crotchHeight").fill("12 m");
  await settled(copy);
  assert.notDeepEqual(await said(copy), await said(page));
});

for (const name of ["coming-down.html", "rescue.html"]) {
  test(`${name} computes from disk, as served and as a browser writes the live page`, async () => {
    const page = await site.page();
    await page.goto(await site.saved(await pageBytes(name)));
    await fillNeeded(page, { rig: "moving-rope" }); // which has no anchor to choose
    await settled(page);
    const said = async (one) => [await one.locator("#first").innerText(), await one.locator(".figure summary").allInnerTexts(), await one.locator("#steps, #ways").innerText()];
    const copy = await site.page();
    await copy.goto(await site.saved(await page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`)));
    await settled(copy);
    assert.deepEqual(await said(copy), await said(page));
    const drawings = "#steps svg, #ways .way"; // alone on a moving rope there is no way to draw a time of
    assert.ok((await page.locator(drawings).count()) > 0);
    assert.equal(await copy.locator(drawings).count(), await page.locator(drawings).count(), "drawn anew, not twice");
    await box(copy, "climbHeight").fill("12 m");
    await settled(copy);
    assert.notDeepEqual(await said(copy), await said(page));
  });
}
