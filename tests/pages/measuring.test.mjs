// The walk-throughs of measuring oneself: reached by keys, drawn, named, and readable on the narrowest phone.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, pullBox } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const WALKS = ["hanging-scale", "chair-scale", "ten-repetitions", "grip-squeeze", "knee-height-trial"];
const PAGES = ["index.html", "advantage.html"];
const PHONE = { viewport: { width: 320, height: 640 } };

const summaryOf = (page, walk) => page.locator(`#${walk} > summary`);

/** Opens a walk-through as keys do, with every group that it is in. */
async function openByKeys(page, walk) {
  for (const group of await page.locator(`details:has(#${walk}) > summary, #${walk} > summary`).all()) {
    if (await group.evaluate((one) => one.parentElement.open)) continue;
    await group.focus();
    await page.keyboard.press("Enter");
  }
}

async function opened(name, options) {
  const page = await site.page(options);
  await page.goto(site.url + name);
  // What is wrong stays in view, so that the ways to a grip stand beside those to a pull.
  await page.getByLabel("my grip").check();
  await box(page, "gripRight").fill("no");
  await page.getByLabel("a pull I measured").check();
  for (const walk of WALKS) await openByKeys(page, walk);
  return page;
}

for (const name of PAGES) {
  test(`keys open each walk-through and close it: ${name}`, async () => {
    const page = await opened(name);
    for (const walk of WALKS) {
      assert.ok(await page.locator(`#${walk} ol`).isVisible(), walk);
      await summaryOf(page, walk).press("Enter");
      assert.ok(await page.locator(`#${walk} ol`).isHidden(), walk);
    }
    assert.deepEqual(page.complaints, []);
  });

  test(`each walk-through has three to five steps, what to write, what spoils it, what to be careful about: ${name}`, async () => {
    const page = await opened(name);
    for (const walk of WALKS) {
      const steps = await page.locator(`#${walk} ol > li`).count();
      assert.ok(steps >= 3 && steps <= 5, `${walk} has ${steps}`);
      assert.deepEqual(await page.locator(`#${walk} dt`).allInnerTexts(), ["Write down", "What spoils it", "Be careful"]);
      assert.ok((await page.locator(`#${walk} dd`).allInnerTexts()).every((text) => text.length > 30));
    }
  });

  test(`each drawing is an image with a name and a description, in words one can read: ${name}`, async () => {
    const page = await opened(name, PHONE);
    const seen = new Set();
    for (const walk of WALKS) {
      const drawing = page.locator(`#${walk}`).getByRole("img");
      assert.equal(await drawing.count(), 1, walk);
      const said = await drawing.evaluate((one) => ["aria-labelledby", "aria-describedby"].map((name) => document.getElementById(one.getAttribute(name)).textContent.trim()));
      assert.ok(said[0].length > 10 && said[1].length > said[0].length, walk);
      for (const text of said) seen.add(text);
      const found = await drawing.evaluate((one) => {
        const scale = one.getScreenCTM().a;
        const frame = one.viewBox.baseVal;
        const texts = [...one.querySelectorAll("text, tspan[x]")].filter((text) => text.tagName !== "text" || !text.querySelector("tspan[x]"));
        const boxes = texts.map((text) => ({ text: text.textContent, size: parseFloat(getComputedStyle(text).fontSize) * scale, at: (text.closest("text")).getBBox() }));
        return {
          small: boxes.filter(({ size }) => size < 12),
          outside: boxes.filter(({ at }) => at.x < 0 || at.y < 0 || at.x + at.width > frame.width || at.y + at.height > frame.height),
          count: boxes.length,
        };
      });
      assert.ok(found.count >= 4, walk);
      assert.deepEqual([found.small, found.outside], [[], []], walk);
    }
    assert.equal(seen.size, 2 * WALKS.length, "each its own");
  });

  test(`no words of a drawing lie on other words: ${name}`, async () => {
    const page = await opened(name, PHONE);
    const pairs = await page.$$eval(".how", (all) => all.flatMap((one) => {
      const boxes = [...one.querySelectorAll("text")].map((text) => ({ text: text.textContent, at: text.getBBox() }));
      const over = (a, b) => a.x < b.x + b.width && b.x < a.x + a.width && Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 3;
      return boxes.flatMap((one, i) => boxes.slice(i + 1).filter((other) => over(one.at, other.at)).map((other) => `${one.text} / ${other.text}`));
    }));
    assert.deepEqual(pairs, []);
  });

  test(`nothing scrolls sideways at 320 px with every walk-through open: ${name}`, async () => {
    const page = await opened(name, PHONE);
    const widths = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
    assert.ok(widths[0] <= widths[1], `${widths[0]} px of ${widths[1]}`);
  });

  test(`the group of what was measured leads to the ways of measuring it: ${name}`, async () => {
    const page = await site.page();
    await page.goto(site.url + name);
    await page.locator("summary", { hasText: "What you measured" }).click();
    await page.getByRole("link", { name: "Three ways to measure a pull" }).press("Enter");
    assert.ok(await summaryOf(page, "hanging-scale").isVisible());
    assert.equal(await page.evaluate(() => document.activeElement.closest("details").id), "pull-ways");
  });
}

test("lines of a drawing have one weight and the colour of the words", async () => {
  for (const options of [{}, { colorScheme: "dark" }]) {
    const page = await opened("index.html", options);
    const found = await page.$$eval(".how :is(path, circle, rect, use)", (all) => all.map((one) => {
      const { stroke, strokeWidth } = getComputedStyle(one);
      return `${stroke === getComputedStyle(one.closest("details")).color} ${strokeWidth}`;
    }));
    assert.ok(found.length > 20);
    assert.deepEqual([...new Set(found)], ["true 1.6px"]);
  }
});

test("paper shows the walk-throughs that were open and no others", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await (await pullBox(page)).fill("41");
  await openByKeys(page, "chair-scale");
  await page.emulateMedia({ media: "print" });
  assert.ok(await page.locator("#chair-scale ol").isVisible());
  for (const walk of ["hanging-scale", "grip-squeeze"]) assert.ok(await page.locator(`#${walk} ol`).isHidden(), walk);
});

test("a rig that others haul puts away the ways of measuring one's own pull and grip", async () => {
  const page = await opened("index.html");
  await box(page, "gripRight").fill("");
  await box(page, "rig").selectOption("ground-3");
  for (const walk of ["hanging-scale", "chair-scale", "ten-repetitions", "grip-squeeze"]) assert.ok(await summaryOf(page, walk).isHidden(), walk);
});
