// "What if I am stuck?" as somebody uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, numbersShown, problem, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const PLAN = "bodyMass=80kg&climbHeight=10m&rig=tail-3&crotchHeight=14m&secondPerson=rescuer";

async function opened(rest = "", options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}rescue.html${rest && `#v=1&q=rescue&f=1&u=si&${rest}`}`);
  if (rest) await settled(page);
  return page;
}
const first = (page) => page.locator("#first").innerText();
const way = (page, noun) => page.locator("#ways .way", { has: page.locator("h3", { hasText: noun }) });
const listed = (page, id) => page.locator(`#${id} > li`).allInnerTexts();

test("mass, height, rig, anchor and a second person give the clock, every way and what to see to", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  await box(page, "bodyMass").fill("80");
  await box(page, "climbHeight").fill("10");
  await box(page, "rig").selectOption("tail-3");
  await box(page, "anchor").selectOption("base-lowerable");
  await box(page, "secondPerson").selectOption("rescuer");
  await settled(page);
  assert.match(await first(page), /^In time on paper: .*No time is safe\.$/u);
  assert.match(await page.locator("[data-figure=rescueClock] summary").innerText(), /7\s*min/u);
  assert.equal(await page.locator("#ways .way").count(), 4);
  assert.match(await way(page, "at the foot lets you down").locator("h3").innerText(), /◆ the quickest without your help/u);
  assert.equal(await page.locator("#ways h3", { hasText: "◆" }).count(), 1);
  assert.equal(await page.locator("#timeline svg").count(), 1);
  assert.deepEqual(page.complaints, []);
});

test("on a canopy anchor it is not in time, and says what would change it", async () => {
  const page = await opened(`${PLAN}&anchor=canopy`);
  assert.match(await first(page), /^Not in time/u);
  assert.match(await page.locator("#second").innerText(), /an anchor at the foot that pays out/u);
  const none = way(page, "at the foot lets you down");
  assert.match(await none.innerText(), /No way here\. /u);
  assert.equal(await none.locator("ol").count(), 0, "what is no way has no stages");
});

test("an edit changes answer and what to see to at once", async () => {
  const page = await opened(`${PLAN}&anchor=canopy`);
  const [said, before] = [await first(page), await listed(page, "before")];
  assert.ok(before.some((text) => /second rope/u.test(text)));
  await box(page, "anchor").selectOption("base-lowerable");
  assert.match(await first(page), /^In time on paper/u);
  assert.notEqual(await first(page), said);
  const now = await listed(page, "before");
  assert.ok(now.every((text) => !/second rope/u.test(text)), now.join(" "));
  await box(page, "secondPerson").selectOption("");
  assert.doesNotMatch(await first(page), /^In time/u, "nobody there lets nobody down");
});

test("every stage of a way is a row of the table beneath the bars", async () => {
  const page = await opened(`${PLAN}&anchor=base-lowerable`);
  await page.locator("#timeline summary").click();
  // Whoever hangs still does not come down by themselves: the first way is not drawn.
  const stages = await page.locator("#ways .way:not(:first-child) ol > li").count();
  assert.ok(stages > 5);
  assert.equal(await page.locator("#timeline tbody tr").count(), stages);
});

for (const width of [320, 1280]) {
  test(`the line of minutes crosses no name, and no name another, at ${width} px`, async () => {
    const page = await opened(`${PLAN}&anchor=base-lowerable`, { viewport: { width, height: 800 } });
    const { names, dashes } = await page.$eval("#timeline svg", (drawing) => {
      const line = drawing.querySelector(".limit");
      const x = line.getBBox().x;
      const [, ...runs] = line.getAttribute("d").split("M");
      return {
        names: [...drawing.querySelectorAll(".noun, .limit-word")].map((one) => ({ text: one.textContent, at: one.getBBox() })).map(({ text, at }) => ({ text, left: at.x, right: at.x + at.width, top: at.y, bottom: at.y + at.height })),
        dashes: runs.map((run) => /\s(?<from>[\d.]+)V(?<to>[\d.]+)/u.exec(run).groups).map(({ from, to }) => ({ x, from: Number(from), to: Number(to) })),
      };
    });
    assert.ok(names.length >= 3 && dashes.length >= 3);
    for (const [i, { text, left, right, top, bottom }] of names.entries()) {
      const air = (bottom - top) / 4; // a box of letters is taller than the letters
      assert.ok(dashes.every(({ x, from, to }) => x < left || x > right || to < top + air || from > bottom - air), text);
      for (const other of names.slice(i + 1)) assert.ok(Math.min(bottom, other.bottom) - Math.max(top, other.top) <= air || other.left >= right || other.right <= left, `${text} / ${other.text}`);
    }
  });
}

test("hauling needs no sideways scrolling on a phone", async () => {
  const page = await opened(`${PLAN}&anchor=base`, { viewport: { width: 390, height: 844 } });
  assert.equal(await page.locator("#hauls tbody tr").count(), 4);
  assert.equal(await page.locator("#hauls .scroll").evaluate((one) => one.scrollWidth - one.clientWidth), 0);
});

for (const [what, text] of [["an empty box", ""], ["a wrong box", "1,200"]]) {
  test(`${what} hides every number, and putting it right shows them again`, async () => {
    const page = await opened(`${PLAN}&anchor=base-lowerable`);
    assert.notDeepEqual(await numbersShown(page), []);
    await box(page, "climbHeight").fill(text);
    assert.deepEqual(await numbersShown(page), [], "at once");
    await settled(page);
    assert.deepEqual(await numbersShown(page), []);
    if (text) assert.ok(await problem(page, "climbHeight").isVisible());
    await box(page, "climbHeight").fill("10");
    await settled(page);
    assert.notDeepEqual(await numbersShown(page), []);
  });
}

test("no answer gives leave", async () => {
  for (const anchor of ["canopy", "base", "base-lowerable"]) {
    const page = await opened(`${PLAN}&anchor=${anchor}`);
    assert.doesNotMatch((await page.locator("#answer").innerText()).replaceAll("No time is safe", ""), /\bsafe\b/iu);
  }
});

test("the plan to print has room for names, the height and the stages, and is there in print", async () => {
  const page = await opened(`${PLAN}&anchor=base-lowerable`);
  const plan = await listed(page, "plan");
  assert.match(plan[0], /Who gets me down: _+/u);
  assert.ok(plan.some((text) => /Height: 10 m\. On the ground within 7 min/u.test(text)));
  assert.equal(plan.filter((text) => /^\d\. /u.test(text)).length, await way(page, "at the foot lets you down").locator("li").count());
  await page.emulateMedia({ media: "print" });
  assert.ok(await page.locator("#plan li").last().isVisible());
  assert.ok(await page.locator("#before li").first().isVisible());
  assert.ok(await box(page, "bodyMass").isVisible());
  assert.equal(await page.locator("button:visible").count(), 0);
});
