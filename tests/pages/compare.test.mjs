import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, onDisk, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const FIRST = "v=1&q=can-i-climb&f=1&u=si&bodyMass=68kg&climbHeight=12m&rig=tail-3&measuredPull=520N&stature=170cm";
const SECOND = FIRST.replace("tail-3", "tail-5").replace("stature=170cm", "kitMass=9kg");
const cells = (page, place) => page.$$eval(`#${place} tbody tr`, (rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)));

test("two links from the address stand side by side: outcomes, figures, what is said otherwise, cautions", async () => {
  const page = await site.page();
  await page.goto(`${site.url}compare.html#${FIRST}&${SECOND}`);
  await settled(page);
  assert.match(await page.locator("#first-plan").innerText(), /The first plan[\s\S]*pull takes about 283 N/u);
  assert.match(await page.locator("#second-plan").innerText(), /The second plan[\s\S]*pull takes about 187 N/u);
  const [pull] = await cells(page, "figures");
  assert.match(pull.join("|"), /^pull one stroke takes\|283 N.*\|187 N.*\|▼ less$/u);
  assert.deepEqual(await cells(page, "said"), [
    ["rig", "self-haul on the rope's tail, 3:1", "self-haul on the rope's tail, 5:1"],
    ["stature", "170 cm", "not said"],
    ["clothes and kit", "not said", "9 kg"],
  ]);
  assert.ok(await page.locator("#cautions-both li").count() >= 4);
  await page.locator("#swap").click();
  assert.equal((await cells(page, "said"))[0].join("|"), "rig|self-haul on the rope's tail, 5:1|self-haul on the rope's tail, 3:1");
  await settled(page);
  assert.equal(new URL(page.url()).hash, `#${SECOND}&${FIRST}`);
  assert.deepEqual(page.complaints, []);
});

test("a link that lacks something or is none says so, and no number of a plan that is gone stays", async () => {
  const page = await site.page({ viewport: { width: 320, height: 700 } });
  await page.goto(`${onDisk}compare.html#${FIRST}`);
  assert.match(await page.locator("#waiting-text").innerText(), /second plan is still missing/u);
  await page.locator("#second-link").fill("v=2&q=loads&height=3");
  await settled(page);
  assert.match(await page.locator("#second-plan").innerText(), /No answer yet[\s\S]*body mass/iu);
  assert.equal(await page.locator("#notices li").count(), 2);
  await page.locator("#question").selectOption("rope-length");
  await settled(page);
  assert.doesNotMatch(await page.locator("#figures").innerText(), /pull one stroke/u);
  await page.locator("#second-link").fill("");
  assert.equal(await page.locator("#comparison").isVisible(), false);
  assert.deepEqual(page.complaints, []);
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 320);
});

test("of a comparison's link put into a box, only the plan that is compared goes into the link", async () => {
  const page = await site.page();
  await page.goto(`${site.url}compare.html#${FIRST}`);
  await page.locator("#first-link").fill(`https://example.org/compare.html#${FIRST}&${SECOND}`);
  await page.locator("#second-link").fill(FIRST.replace("tail-3", "haul-cord-3"));
  await settled(page);
  assert.match(await page.locator("#notices").innerText(), /The first link: This link holds two plans/u);
  await page.waitForFunction(() => /haul-cord-3/u.test(location.hash));
  assert.equal(new URL(page.url()).hash.match(/v=1/gu).length, 2);
});

for (const width of [320, 390]) {
  test(`on a phone of ${width} px both plans are seen, each by its name, and nothing scrolls sideways`, async () => {
    const page = await site.page({ viewport: { width, height: 844 } });
    await page.goto(`${site.url}compare.html#${FIRST}&${SECOND}`);
    await settled(page);
    for (const place of ["figures", "said"]) {
      const seen = await page.$$eval(`#${place} tbody td`, (all) => all.filter((cell) => cell.textContent !== "").map((cell) => ({
        right: cell.getBoundingClientRect().right, name: getComputedStyle(cell, "::before").content, head: cell.dataset.head,
      })));
      assert.ok(seen.length > 4 && seen.every(({ right, name, head }) => right <= width && name.includes(head)));
      assert.equal(await page.locator(`#${place} [tabindex]`).count(), 0);
      assert.ok(await page.getByRole("cell").count() > 4);
    }
  });
}

test("the question and the units that are chosen go along in the link of a comparison", async () => {
  const page = await site.page();
  await page.goto(`${site.url}compare.html#${FIRST}&${SECOND}`);
  await page.getByLabel("feet and pounds").check();
  await page.locator("#question").selectOption("loads");
  await settled(page);
  const other = await site.page();
  await other.goto(page.url());
  await settled(other);
  assert.ok(await other.getByLabel("feet and pounds").isChecked());
  assert.equal(await other.locator("#question").inputValue(), "loads");
  assert.deepEqual(await cells(other, "figures"), await cells(page, "figures"));
});

test("a saved copy of a comparison compares again", async () => {
  const page = await site.page();
  await page.goto(`${site.url}compare.html#${FIRST}&${SECOND}`);
  await settled(page);
  const copy = await site.saved(await page.content());
  const again = await site.page();
  await again.goto(copy);
  await settled(again);
  assert.deepEqual(await cells(again, "figures"), await cells(page, "figures"));
});
