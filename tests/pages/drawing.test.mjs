// The drawing of every rig that can be chosen, measured where it is shown.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, settled, unfold } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const FOUR_CARRIAGES = "tied tree, hitch upper, hitch upper-2, hitch upper-3, hitch upper-4, hitch climber, turn climber, turn upper-4, turn climber, turn upper-3, turn climber, turn upper-2, turn climber, turn upper, hand climber";
const HELPED = "tied climber, turn tree, hitch upper, turn ground, turn upper, helper ground 150 N; tied upper, turn climber ring, turn upper 85 %, hand climber";

async function drawn(rig, { width = 320, more = "", colorScheme = "dark" } = {}) {
  const page = await site.page({ viewport: { width, height: 900 }, colorScheme });
  await page.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=si&bodyMass=140kg&climbHeight=20m&rig=${rig}${more}`);
  await unfold(page);
  await settled(page); // the drawing is made anew with the full answer
  return page;
}

/** What is wrong with the words of the drawing on a page. */
const faults = (page) => page.locator(".rig-drawing").evaluate((svg) => {
  const frame = svg.getBoundingClientRect();
  const all = [...svg.querySelectorAll("text")].map((one) => ({ text: one.textContent, at: one.getBoundingClientRect(), px: parseFloat(getComputedStyle(one).fontSize) * svg.getScreenCTM().a }));
  const meet = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  const ropes = [...svg.querySelectorAll("path.rope")].filter((one) => one.getBBox().width === 0).map((one) => one.getBoundingClientRect());
  return [
    ...all.flatMap((one, i) => all.slice(i + 1).filter(({ at }) => meet(one.at, at)).map((other) => `${one.text} on ${other.text}`)),
    ...all.filter(({ at }) => ropes.some((rope) => meet(rope, at))).map(({ text }) => `${text} on a rope`),
    ...all.filter(({ at }) => at.left < frame.left || at.right > frame.right || at.top < frame.top || at.bottom > frame.bottom).map(({ text }) => `${text} is outside`),
    ...all.filter(({ px }) => px < 11).map(({ text, px }) => `${text} has ${px} px`),
  ];
});

/** A wide drawing has a frame of its own that keys can scroll; the page stays as wide as the screen. */
async function assertReached(page) {
  await page.waitForTimeout(100); // a frame is marked once it has been measured
  const frame = page.locator(".drawing-frame");
  const scrolls = await page.locator(".rig-drawing").evaluate((svg) => svg.getBoundingClientRect().width > svg.parentElement.clientWidth + 1);
  if (scrolls) {
    assert.match(await frame.getAttribute("aria-label"), /scrolls sideways/u);
    await frame.focus();
    await page.keyboard.press("ArrowRight");
    await page.waitForFunction(() => document.querySelector(".drawing-frame").scrollLeft > 0);
  } else {
    assert.equal(await page.locator(".drawing-frame[tabindex]").count(), 0);
  }
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
}

test("every rig that can be chosen has words that lie on nothing, no smaller than 11 px, on a phone and on a wide screen", async () => {
  const page = await site.page();
  await page.goto(site.url);
  const rigs = (await box(page, "rig").locator("option").evaluateAll((all) => all.map((one) => one.value))).filter((rig) => rig !== "" && rig !== "own");
  assert.ok(rigs.length >= 13);
  for (const rig of rigs) {
    for (const backup of ["none", "second-hitch"]) {
      const shown = await drawn(rig, { more: `&backup=${backup}` });
      for (const width of [320, 1280]) {
        await shown.setViewportSize({ width, height: 900 });
        assert.deepEqual(await faults(shown), [], `${rig}, ${backup}, ${width} px`);
        await assertReached(shown);
      }
      assert.deepEqual(shown.complaints, []);
      await shown.context().close();
    }
  }
});

test("so has a rig of one's own with four carriages, and one with two ropes and a helper on the ground", async () => {
  for (const own of [FOUR_CARRIAGES, HELPED]) {
    const page = await drawn("own");
    await page.locator("[name=ownRig]").fill(own.replace("; ", "\n"));
    await settled(page);
    assert.deepEqual(await faults(page), [], own);
    await assertReached(page);
  }
});

test("in print a wide drawing is whole", async () => {
  const page = await drawn("own", { width: 700 });
  await page.locator("[name=ownRig]").fill(FOUR_CARRIAGES);
  await settled(page);
  assert.ok((await page.locator(".rig-drawing").boundingBox()).width > 400);
  await page.setViewportSize({ width: 380, height: 900 });
  await page.emulateMedia({ media: "print" });
  const [drawing, frame] = await Promise.all([".rig-drawing", ".drawing-frame"].map((part) => page.locator(part).boundingBox()));
  assert.ok(drawing.width <= frame.width + 1, `${drawing.width} of ${frame.width}`);
});

test("in forced colours lines and words are those of the system", async () => {
  const page = await site.page({ forcedColors: "active" });
  await page.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=20m&rig=tail-5`);
  await settled(page);
  const colours = await page.locator(".rig-drawing").evaluate((svg) => {
    const ink = getComputedStyle(document.body).color;
    return [...svg.querySelectorAll(".line:not(.reversed), .single")].map((one) => getComputedStyle(one).stroke).filter((stroke) => stroke !== ink);
  });
  assert.deepEqual(colours, []);
});
