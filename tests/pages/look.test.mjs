// What can be measured of how the page looks and who can use it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, layOutAll, pageNames, settled } from "./browser.mjs";
import { answered } from "./states.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

for (const name of await pageNames()) {
  test(`whatever can be pressed is 44 px tall on a phone: ${name}`, async () => {
    const page = await site.page({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await page.goto(site.url + name);
    if ((await page.locator("#show-example").count()) > 0) await answered(page);
    await layOutAll(page);
    const small = await page.$$eval("button, summary, select, input:not([type=radio]), label.choice, a, textarea", (all) =>
      // A link inside a sentence is as tall as the sentence (WCAG 2.2, 2.5.8, inline).
      all.filter((one) => one.checkVisibility() && !one.matches(".skip") && (!one.matches("a") || one.parentElement.textContent.trim() === one.textContent.trim()))
        .map((one) => ({ text: one.outerHTML.slice(0, 80), height: one.getBoundingClientRect().height }))
        .filter(({ height }) => height < 44));
    assert.deepEqual(small, []);
  });
}

test("on a wide screen the form stands beside the answer, on a phone above it", async () => {
  const tops = async (page) => Promise.all([".form-side", "#answer"].map(async (part) => page.locator(part).boundingBox()));
  const wide = await site.page({ viewport: { width: 1280, height: 900 } });
  await wide.goto(site.url);
  const [form, answer] = await tops(wide);
  assert.ok(answer.x >= form.x + form.width && Math.abs(answer.y - form.y) < 60);
  const phone = await site.page({ viewport: { width: 390, height: 844 } });
  await phone.goto(site.url);
  const [above, below] = await tops(phone);
  assert.ok(below.y >= above.y + above.height);
});

test("no words of the drawing lie on other words", async () => {
  const backed = ["tail-3", "hand-over-hand"].flatMap((rig) => ["none", "second-hitch", "tail-knot"].map((backup) => `${rig}&backup=${backup}`));
  const others = ["moving-rope", "tail-5", "tail-7", "haul-cord-2", "haul-cord-3", "haul-cord-4", "haul-cord-5", "ground-1", "ground-3", "ground-5", "ground-9"];
  for (const rig of [...backed, ...others]) {
    const page = await site.page();
    await page.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=si&bodyMass=140kg&climbHeight=20m&rig=${rig}`);
    await settled(page); // the drawing is made anew with the full answer
    assert.ok((await page.locator(".rig-drawing text").count()) > 5);
    const overlaps = await page.$$eval(".rig-drawing text", (all) => {
      const placed = all.map((one) => ({ text: one.textContent, at: one.getBoundingClientRect() }));
      return placed.flatMap((one, i) => placed.slice(i + 1)
        .filter(({ at }) => at.left < one.at.right && one.at.left < at.right && at.top < one.at.bottom && one.at.top < at.bottom)
        .map((other) => `${one.text} / ${other.text}`));
    });
    assert.deepEqual(overlaps, [], rig);
    const outside = await page.$$eval(".rig-drawing text", (all) => {
      const frame = all[0].ownerSVGElement.getBoundingClientRect();
      return all.filter((one) => {
        const at = one.getBoundingClientRect();
        return at.left < frame.left || at.right > frame.right || at.top < frame.top || at.bottom > frame.bottom;
      }).map((one) => one.textContent);
    });
    assert.deepEqual(outside, [], rig);
    const adrift = await page.$$eval(".rig-drawing text.stop", (all) => {
      const bands = [...all[0].ownerSVGElement.querySelectorAll(".band")].map((one) => one.getBoundingClientRect());
      return all.filter((one) => {
        const at = one.getBoundingClientRect();
        return !bands.some((band) => at.top >= band.top - 1 && at.bottom <= band.bottom + 1);
      }).map((one) => one.textContent);
    });
    assert.deepEqual(adrift, [], `${rig}: words inside the band of their body`);
    const figure = await page.locator(".rig-drawing .sitter").boundingBox();
    const harness = await page.locator(".rig-drawing .harness").boundingBox(); // the bar, and what reaches it from above and below
    assert.ok(harness.x <= figure.x + figure.width && figure.x <= harness.x + harness.width && figure.y < harness.y + harness.height && harness.y < figure.y + figure.height, `${rig}: somebody hangs from the bar`);
    const onFigure = await page.$$eval(".rig-drawing text", (all) => {
      // Limb by limb: between an arm and the seat there is room for a letter.
      const limbs = [...all[0].ownerSVGElement.querySelectorAll(".sitter *")].map((one) => one.getBoundingClientRect());
      return all.filter((one) => {
        const at = one.getBoundingClientRect();
        return limbs.some((limb) => at.left < limb.right && limb.left < at.right && at.top < limb.bottom && limb.top < at.bottom);
      }).map((one) => one.textContent);
    });
    assert.deepEqual(onFigure, [], `${rig}: words clear of the climber`);
    const tensions = await page.locator(".rig-drawing .tension").count();
    assert.equal(tensions, await page.locator("#tables table").first().locator("tbody tr").count(), `${rig}: every strand has its pull`);
    const singles = await page.locator(".single-word").allInnerTexts();
    assert.ok(singles.length > 0 && singles.every((text) => text === "◆ single: nothing backs it up"));
  }
});

test("in print the answer is there and the buttons are not", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await page.click("#show-example");
  await settled(page);
  await page.emulateMedia({ media: "print" });
  assert.ok(await page.locator("#verdict-text").isVisible());
  assert.ok(await page.locator("#drawing svg").isVisible());
  assert.equal(await page.locator("button:visible").count(), 0);
});

for (const width of [320, 1280]) {
  for (const [name, plan] of [["loads.html", "q=loads&anchor=canopy&crotchHeight=14m"], ["advantage.html", "q=advantage&measuredPull=520N&stature=1.75m"], ["rescue.html", "q=rescue&anchor=base&secondPerson=rescuer"]]) {
    test(`no words of a chart lie on other words: ${name}, ${width} px`, async () => {
      const page = await site.page({ viewport: { width, height: 800 } });
      await page.goto(`${site.url}${name}#v=1&f=1&u=si&bodyMass=80kg&climbHeight=11m&rig=tail-3&${plan}`);
      await settled(page);
      const found = await page.$$eval(".chart:not(.map) text", (all) => {
        const boxes = all.map((one) => ({ text: one.textContent, at: one.getBBox() }));
        const { width: wide, height: high } = all[0].ownerSVGElement.viewBox.baseVal;
        const outside = boxes.filter(({ at }) => at.x < 0 || at.y < 0 || at.x + at.width > wide || at.y + at.height > high);
        // A box of letters is taller than the letters: a quarter of it is air.
        const over = (a, b) => a.x < b.x + b.width && b.x < a.x + a.width && Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > a.height / 4;
        const pairs = boxes.flatMap((one, i) => boxes.slice(i + 1).filter((other) => over(one.at, other.at)).map((other) => `${one.text} / ${other.text}`));
        return { count: boxes.length, outside: outside.map(({ text }) => text), pairs, size: all[0].getBoundingClientRect().height };
      });
      assert.ok(found.count > 8);
      assert.deepEqual([found.outside, found.pairs], [[], []]);
      assert.ok(found.size > 11, `words of ${found.size} px can be read`);
    });
  }
}

for (const forcedColors of ["none", "active"]) {
  test(`a table that goes on at an edge says so, with forced colours ${forcedColors}`, async () => {
    const page = await site.page({ viewport: { width: 320, height: 800 }, forcedColors });
    await page.goto(`${site.url}advantage.html`);
    await page.click("#show-example");
    await settled(page);
    await page.locator("#map .as-table summary").click();
    const tables = page.locator(".scroll:visible");
    assert.equal(await tables.count(), 2);
    for (const table of await tables.all()) {
      assert.equal(await table.getAttribute("tabindex"), "0");
      assert.equal(await table.getAttribute("role"), "region");
      assert.ok((await table.getAttribute("aria-label")) ?? (await table.getAttribute("aria-labelledby")));
      const seen = () => table.evaluate((one) => {
        const { borderRightStyle, borderLeftStyle } = getComputedStyle(one);
        return [one.dataset.edges, borderLeftStyle, borderRightStyle, /goes on sideways/u.test(getComputedStyle(one, "::before").content)];
      });
      assert.deepEqual(await seen(), ["end", "none", "double", true]);
      await table.evaluate((one) => { one.scrollLeft = one.scrollWidth; });
      await page.waitForTimeout(100);
      assert.deepEqual(await seen(), ["start", "double", "none", true]);
    }
  });
}

test("a chart's table that was opened stays open while somebody types", async () => {
  const page = await site.page();
  await page.goto(`${site.url}advantage.html`);
  await page.click("#show-example");
  await settled(page);
  await page.locator("#chart .as-table summary").click();
  await box(page, "bodyMass").fill("70 kg");
  await settled(page);
  assert.ok(await page.locator("#chart table").isVisible());
  assert.ok(!(await page.locator("#map table").isVisible()));
});

test("a figure that fails its limit has a sign and a word, and is not in the colour of what one can do", async () => {
  const page = await site.page();
  const seen = async (pull, id) => {
    await page.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=si&bodyMass=90kg&climbHeight=9m&rig=tail-3&measuredPull=${pull}`);
    await settled(page);
    const row = page.locator(`[data-figure=${id}]`);
    const colour = await row.locator(".numeral").first().evaluate((one) => getComputedStyle(one).color);
    return { colour, said: await row.locator(".fails").innerText() };
  };
  const warn = await (async () => {
    await page.goto(site.url);
    return page.locator(".error").first().evaluate((one) => getComputedStyle(one).color);
  })();
  for (const id of ["armPull", "armShare"]) {
    const [weak, strong] = [await seen("120N", id), await seen("900N", id)];
    assert.equal(weak.colour, warn);
    assert.match(weak.said, /^▲ \w/u);
    assert.notEqual(strong.colour, warn);
    assert.equal(strong.said, "");
  }
});

for (const width of [320, 1100, 1280]) {
  test(`boxes that stand side by side stand level, ${width} px`, async () => {
    const page = await site.page({ viewport: { width, height: 900 } });
    await page.goto(`${site.url}advantage.html`);
    const seen = () => page.$$eval(".pair", (all) => all.filter((pair) => pair.checkVisibility()).map((pair) => [...pair.querySelectorAll(".field")].map((field) => {
      const place = (part) => field.querySelector(part).getBoundingClientRect();
      return { left: place("label").left, label: place("label").top, box: place("input, select").bottom };
    })));
    const pairs = await seen();
    await page.getByLabel("my grip").check();
    pairs.push(...await seen());
    assert.equal(pairs.length, 2);
    for (const [one, other] of pairs) {
      if (one.left === other.left) continue; // one under the other
      assert.deepEqual([one.label, one.box], [other.label, other.box]);
    }
    if (width > 1000) assert.ok(pairs.every(([one, other]) => one.left !== other.left));
  });
}
