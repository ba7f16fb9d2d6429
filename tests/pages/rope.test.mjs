// "How much rope?" as somebody uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, numbersShown, problem, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

async function opened(hash = "", options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}rope-length.html${hash}`);
  return page;
}
const plan = (rest) => `#v=1&q=rope-length&f=1&u=si&${rest}`;
const written = (page, field) => page.locator(`[data-field=${field}] textarea`);
const BASE = plan("crotchHeight=11m&anchor=base");

test("a height and an anchor give a length, item by item", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  await box(page, "crotchHeight").fill("11");
  await box(page, "anchor").selectOption("base");
  await settled(page);
  assert.match(await page.locator("h2#first").innerText(), /\d/u);
  assert.ok((await page.locator(".figure").count()) >= 1);
  assert.ok((await page.locator("#status").textContent()).includes(await page.locator("#first").innerText()));
  assert.ok((await page.locator(".state").count()) >= 2);
  assert.deepEqual(page.complaints, []);
});

test("the state that decides is open and marked in words, and no other", async () => {
  const page = await opened(BASE);
  assert.equal(await page.locator(".state[open]").count(), 1);
  assert.match(await page.locator(".state[open] summary").innerText(), /◆ decides the length/u);
  assert.equal(await page.locator(".decides", { hasText: "decides" }).count(), 1);
  const table = page.locator(".state[open] table");
  assert.deepEqual(await table.locator("thead th").allInnerTexts(), ["Item", "Length", "Range"]);
  assert.ok((await table.locator("tbody tr").count()) >= 3);
  const total = await table.locator("tfoot td").first().innerText();
  assert.equal(await page.locator(".state[open] .value").innerText(), total);
});

test("a state that was opened or closed stays so while numbers change", async () => {
  const page = await opened(BASE);
  const states = page.locator(".state");
  const before = await states.evaluateAll((all) => all.map((one) => one.open));
  for (const summary of await page.locator(".state summary").all()) await summary.click();
  await box(page, "crotchHeight").fill("11.5 m");
  await settled(page);
  assert.deepEqual(await states.evaluateAll((all) => all.map((one) => one.open)), before.map((open) => !open));
});

test("the picture has every drawn item's length beside it, inside its frame and clear of other words", async () => {
  for (const rest of ["crotchHeight=11m&anchor=base", "crotchHeight=11m&anchor=canopy", "crotchHeight=4m&anchor=base", "crotchHeight=60m&anchor=canopy",
    "crotchHeight=14m&anchor=canopy-cord&footOffset=3m", "crotchHeight=14m&anchor=canopy-link&redirectRope=4m", "crotchHeight=14m&anchor=canopy-hitch&rig=tail-7",
    "crotchHeight=14m&anchor=base-lowerable&rig=tail-5&redirectRope=4m&footOffset=9m", "crotchHeight=14m&rig=moving-rope", "crotchHeight=14m&rig=ground-9"]) {
    for (const width of [320, 1280]) {
      const page = await opened(plan(rest), { viewport: { width, height: 900 } });
      await settled(page); // the picture is made anew with the full answer
      const svg = page.locator(".state[open] svg[role=img]");
      const items = await page.locator(".state[open] tbody tr").evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
      const texts = await svg.locator("text").allTextContents();
      const words = await svg.locator("desc").textContent();
      for (const [noun, length] of items) {
        assert.ok(words.includes(`${noun} ${length}`), `${noun} is not in the words`);
        assert.ok(texts.some((text) => text.includes(length)), `${rest}: ${noun} has no length in the picture`);
      }
      const wrong = await svg.evaluate((frame) => {
        const outer = frame.getBoundingClientRect();
        const all = [...frame.querySelectorAll("text")].map((one) => ({ text: one.textContent, at: one.getBoundingClientRect() }));
        const outside = all.filter(({ at }) => at.left < outer.left || at.right > outer.right || at.top < outer.top || at.bottom > outer.bottom);
        const overlaps = all.filter((one, i) => all.slice(i + 1).some(({ at }) =>
          at.left < one.at.right && one.at.left < at.right && at.top + 2 < one.at.bottom && one.at.top + 2 < at.bottom));
        return [...outside, ...overlaps].map(({ text }) => text);
      });
      assert.deepEqual(wrong, [], `${rest} at ${width} px`);
      const size = await svg.locator("text").first().evaluate((one) => parseFloat(getComputedStyle(one).fontSize) * one.getScreenCTM().a);
      assert.ok(size > 10, `words of ${size} px`);
    }
  }
});

test("every anchor can be chosen, and its note says what it is in plain words", async () => {
  const page = await opened(plan("crotchHeight=11m"));
  for (const anchor of ["canopy", "canopy-cord", "canopy-link", "canopy-hitch", "base", "base-lowerable"]) {
    await box(page, "anchor").selectOption(anchor);
    await settled(page);
    assert.ok((await page.locator("[data-field=anchor] .hint").innerText()).length > 40, anchor);
    assert.match(await page.locator("h2#first").innerText(), /^About \d+ m of rope/u);
    const states = await page.locator(".state").evaluateAll((all) => all.map((one) => one.dataset.state));
    assert.equal(states.includes("lowered"), anchor === "base-lowerable");
    const dashed = await page.locator("[data-state=down] svg .dashed").count();
    assert.equal(dashed, ["canopy-cord", "canopy-link", "canopy-hitch"].includes(anchor) ? 1 : 0, anchor);
  }
  assert.deepEqual(page.complaints, []);
});

test("it says which length to buy, out of those that somebody writes down", async () => {
  const page = await opened(BASE);
  await settled(page);
  assert.match(await page.locator("#buy").innerText(), /^The shortest to buy is 40 m; about .+ left over/u);
  await page.locator("summary", { hasText: "Ropes to choose from" }).click();
  await written(page, "ropeStock").fill("32; 37.5");
  await written(page, "ropeStock").blur();
  await settled(page);
  assert.equal(await written(page, "ropeStock").inputValue(), "32 m; 37.5 m");
  assert.match(await page.locator("#buy").innerText(), /^The shortest to buy is 32 m/u);
  assert.match(page.url(), /ropeStock=32m--37\.5m/u);
  await written(page, "ropeStock").fill("32 m; thirty");
  await written(page, "ropeStock").blur();
  await problem(page, "ropeStock").filter({ hasText: "“thirty” among the lengths" }).waitFor();
  assert.deepEqual(await numbersShown(page), []);
});

test("a rope that is too short ends above the ground, in words and in the picture; a longer one says how high it goes", async () => {
  const page = await opened(`${BASE}&ropeOwned=20m`);
  await settled(page);
  assert.match(await page.locator("#owned").innerText(), /it is too short\.$/u);
  assert.match(await page.locator("#answer-cautions").innerText(), /ends about 5\.2 m above the ground/u);
  const down = page.locator("[data-state=down]");
  await down.locator("summary").click();
  assert.match(await down.locator("svg").textContent(), /end above the.*5\.2 m/u);
  assert.equal(await down.locator("svg .dashed").count(), 1);
  await box(page, "ropeOwned").fill("40 m");
  await settled(page);
  assert.match(await page.locator("#owned").innerText(), /^Your 40 m goes over a crotch up to 15\.8 m high.*it reaches on paper\.$/u);
  assert.equal(await down.locator("svg .dashed").count(), 0);
});

test("without a height the rope somebody has says how high it goes", async () => {
  const page = await opened(plan("anchor=base&ropeOwned=30m"));
  await settled(page);
  assert.match(await page.locator("h2#first").innerText(), /^Your 30 m goes over a crotch up to 10\.8 m high/u);
  assert.ok(await page.locator("#buy").isHidden() && await page.locator("#owned").isHidden());
  assert.match(await page.locator("#glance").innerText(), /^Your 30 m/u);
  assert.match(await page.locator("#status").textContent(), /10\.8 m/u);
});

test("a rig of one's own is written on this page too", async () => {
  const page = await opened(BASE);
  await page.locator("summary", { hasText: "The rig and where you start" }).click();
  await box(page, "rig").selectOption("own");
  await page.getByRole("button", { name: "Begin with an example" }).click();
  await settled(page);
  assert.match(await page.locator("h2#first").innerText(), /^About \d+ m of rope/u);
  assert.deepEqual(page.complaints, []);
});

test("the example shows an answer and goes away again", async () => {
  const page = await opened();
  await page.locator("#show-example").click();
  await settled(page);
  assert.match(await page.locator("h2#first").innerText(), /^About \d+ m of rope/u);
  assert.ok(await page.locator("#example-mark").isVisible());
  await page.locator("#start-again").click();
  assert.deepEqual(await numbersShown(page), []);
});

test("what cannot be read takes every number away and is told beside its box", async () => {
  const page = await opened(BASE);
  await box(page, "crotchHeight").fill("eleven");
  assert.deepEqual(await numbersShown(page), []);
  await box(page, "crotchHeight").blur();
  await problem(page, "crotchHeight").waitFor();
  await page.locator("#errors a").first().click();
  assert.equal(await page.evaluate(() => document.activeElement.name), "crotchHeight");
});

test("units and decimal mark change the lengths everywhere and nothing that was typed", async () => {
  const page = await opened(BASE);
  await page.getByLabel("feet and pounds").check();
  await settled(page);
  for (const part of ["#first", ".figures", "#states", ".state[open] svg"]) assert.match(await page.locator(part).textContent(), /\bft\b/u, part);
  assert.match(await box(page, "crotchHeight").inputValue(), /^11 ?m$/u);
});

test("it is used by keys alone", async () => {
  const page = await opened();
  const reach = async (wanted) => {
    for (let i = 0; i < 60; i += 1) {
      await page.keyboard.press("Tab");
      const ring = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
      assert.notEqual(ring, "none");
      if (await page.evaluate((selector) => document.activeElement.matches(selector), wanted)) return;
    }
    assert.fail(`Tab never reached ${wanted}`);
  };
  await reach("nav.pages [aria-current]");
  await reach("[name=crotchHeight]");
  await page.keyboard.type("11");
  await reach("[name=anchor]");
  await page.keyboard.press("ArrowDown");
  await settled(page);
  await reach(".figure summary");
  await page.keyboard.press("Enter");
  assert.ok(await page.locator(".figure .workings").first().isVisible());
  await reach(".state summary");
  await reach("#copy-link");
  await page.keyboard.press("Enter");
  await page.locator("#copied-text", { hasText: /\w/u }).waitFor();
});

test("in print the length and the picture are there and the buttons are not", async () => {
  const page = await opened(BASE);
  await page.emulateMedia({ media: "print" });
  assert.ok(await page.locator("#first").isVisible());
  assert.ok(await page.locator(".state[open] svg").isVisible());
  assert.equal(await page.locator("button:visible").count(), 0);
});
