// The whole of it without a pointer.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, verdict, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const focused = (page) => page.evaluate(() => {
  const one = document.activeElement;
  return one.id || one.name || one.textContent.trim().slice(0, 40);
});

/** Presses Tab until what is wanted has the focus; each stop on the way must be visible. */
async function tabTo(page, wanted, most = 60) {
  for (let i = 0; i < most; i += 1) {
    await page.keyboard.press("Tab");
    const ring = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
    assert.notEqual(ring, "none", `${await focused(page)} shows no focus`);
    if ((await focused(page)).startsWith(wanted)) return;
  }
  assert.fail(`Tab never reached ${wanted}`);
}

test("form, folded groups, units, workings and link are reached and used by keys alone", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await page.keyboard.press("Tab");
  assert.equal(await focused(page), "To the answer");
  await tabTo(page, "can-i-climb-bodyMass");
  await page.keyboard.type("80");
  await tabTo(page, "can-i-climb-climbHeight", 1);
  await page.keyboard.type("8");
  await settled(page);
  assert.ok(await verdict(page).isVisible());
  await tabTo(page, "strengthWay", 1);
  await page.keyboard.press("ArrowDown");
  await tabTo(page, "can-i-climb-gripRight", 1);
  await tabTo(page, "How to measure your grip", 2);
  await page.getByLabel("my grip").focus();
  await page.keyboard.press("ArrowDown");
  await tabTo(page, "can-i-climb-measuredPull", 1);
  await page.keyboard.type("41");
  await tabTo(page, "to-pull-ways", 1);
  await tabTo(page, "can-i-climb-stature", 1);
  assert.equal(await box(page, "measuredPull").inputValue(), "41 kgf");
  await tabTo(page, "can-i-climb-rig", 1);
  for (let option = 0; option < 3; option += 1) await page.keyboard.press("ArrowDown");
  await settled(page);
  assert.equal(await box(page, "rig").inputValue(), "tail-3");

  await tabTo(page, "What you measured");
  await page.keyboard.press("Enter");
  await tabTo(page, "can-i-climb-pullTaken", 2);

  await tabTo(page, "system");
  await page.keyboard.press("ArrowRight");
  assert.ok(await page.getByLabel("feet and pounds").isChecked());

  await page.locator(".figure summary").first().waitFor();
  const first = (await page.locator(".figure summary .noun").first().textContent()).slice(0, 20);
  await tabTo(page, first);
  await page.keyboard.press("Enter");
  assert.ok(await page.locator(".figure .workings").first().isVisible());

  await tabTo(page, "copy-link");
  await page.keyboard.press("Enter");
  await page.locator("#copied-text", { hasText: /\w/u }).waitFor();
});

test("Enter in a box finishes typing and loses nothing", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await box(page, "bodyMass").fill("80");
  await box(page, "bodyMass").press("Enter");
  await settled(page);
  assert.match(await box(page, "bodyMass").inputValue(), /^80/u);
  assert.equal(new URL(page.url()).search, "");
});

test("a link in the summary of errors leads into a folded group", async () => {
  const page = await site.page();
  await page.goto(`${site.url}`);
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  await box(page, "setback").fill("zz");
  await box(page, "setback").blur();
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  assert.ok(await box(page, "setback").isHidden());
  await page.locator("#errors a").first().focus();
  await page.keyboard.press("Enter");
  assert.ok(await box(page, "setback").isVisible());
  assert.equal(await focused(page), "can-i-climb-setback");
});

for (const [name, question, figure] of [["coming-down.html", "coming-down", "holdForce"], ["rescue.html", "rescue", "rescueClock"]]) {
  test(`form, folded groups, workings and link are reached and used by keys alone: ${name}`, async () => {
    const page = await site.page();
    await page.goto(site.url + name);
    await tabTo(page, `${question}-bodyMass`);
    await page.keyboard.type("80");
    await tabTo(page, `${question}-climbHeight`, 1);
    await page.keyboard.type("8");
    await tabTo(page, `${question}-rig`, 1);
    for (let option = 0; option < 2; option += 1) await page.keyboard.press("ArrowDown");
    await settled(page);
    assert.equal(await box(page, "rig").inputValue(), "moving-rope");
    const workings = page.locator(`[data-figure=${figure}] .workings`);
    assert.ok(await page.locator("#first").isVisible());
    await tabTo(page, "system");
    await tabTo(page, (await page.locator(`[data-figure=${figure}] summary .noun`).textContent()).slice(0, 20));
    await page.keyboard.press("Enter");
    assert.ok(await workings.first().isVisible());
    await tabTo(page, "copy-link");
    await page.keyboard.press("Enter");
    await page.locator("#copied-text", { hasText: /\w/u }).waitFor();
  });
}
