// Every page in every state, in every look: nothing that keeps anybody out.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { axePath, bench, layOutAll, pageBytes, pageNames, settled } from "./browser.mjs";
import { statesOf } from "./states.mjs";

const WIDE = { width: 1100, height: 900 };
const PHONE = { width: 320, height: 640 };
const DESK = { width: 1280, height: 900 };
const COLOURS = ["color-contrast", "link-in-text-block"];
/** What is asked of each look; wide and narrow pages are asked everything once, further colours what hangs on colours. */
const LOOKS = {
  light: { media: { colorScheme: "light", forcedColors: "none" }, size: WIDE },
  dark: { media: { colorScheme: "dark", forcedColors: "none" }, size: WIDE, rules: COLOURS },
  "forced colours": { media: { colorScheme: "light", forcedColors: "active" }, size: WIDE, rules: COLOURS },
  "320 px, dark": { media: { colorScheme: "dark", forcedColors: "none" }, size: PHONE },
};

let site;
before(async () => { site = await bench(); });
after(() => site.close());

/** What axe finds on the page as it stands. */
const violations = (page, rules) => page.evaluate(async (rules) => {
  const found = await globalThis.axe.run(document, { resultTypes: ["violations"], ...(rules && { runOnly: rules }) });
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
}, rules);

/** Links on the page that lead to no place on it. */
const lost = (page) => page.$$eval("a[href^='#']", (all) => all
  .map((one) => decodeURIComponent(one.hash.slice(1)))
  // A plan is no place, nor is a page of the pocket edition.
  .filter((place) => !/^(?:v=|[\w-]+\/)/u.test(place) && document.getElementById(place) === null));

/** How many words of the answer were looked at, and those with less than seven to one against their ground. */
const pale = (page) => page.evaluate(async () => {
  const found = await globalThis.axe.run("#answer", { runOnly: ["color-contrast-enhanced"], rules: { "color-contrast-enhanced": { enabled: true } } });
  return { seen: found.passes[0]?.nodes.length ?? 0, pale: found.violations.flatMap(({ nodes }) => nodes.map((node) => node.html)) };
});

/** What makes the page scroll sideways; nothing where it does not. */
const tooWide = (page) => page.evaluate(() => {
  const { scrollWidth, clientWidth } = document.documentElement;
  if (scrollWidth <= clientWidth) return [];
  const out = [...document.querySelectorAll("body *")].filter((one) => one.getBoundingClientRect().right > clientWidth && !one.closest("svg, .scroll"));
  return [`${scrollWidth} px of ${clientWidth}`, ...out.slice(0, 5).map((one) => one.outerHTML.slice(0, 120))];
});

for (const name of await pageNames()) {
  for (const [state, { fragment = "", reach }] of Object.entries(statesOf(name, await pageBytes(name)))) {
    test(`axe finds nothing and nothing scrolls sideways: ${name}, ${state}`, async (t) => {
      // The page's own policy rightly refuses foreign scripts; axe comes in past it.
      const page = await site.page({ bypassCSP: true });
      await page.goto(site.url + name + fragment);
      await settled(page);
      await reach(page);
      await layOutAll(page);
      await page.addScriptTag({ path: axePath });
      assert.equal(await page.locator("h1").count(), 1);
      assert.deepEqual(await lost(page), []);
      for (const [look, { media, size, rules }] of Object.entries(LOOKS)) {
        await t.test(look, async () => {
          await page.emulateMedia(media);
          await page.setViewportSize(size);
          assert.deepEqual(await violations(page, rules), []);
          if (state === "answered" && size === WIDE && media.forcedColors === "none") {
            const words = await pale(page);
            assert.deepEqual(words.pale, [], "answers have seven to one");
            assert.ok(words.seen > 20);
          }
          assert.deepEqual(await tooWide(page), []);
        });
      }
      for (const size of [PHONE, DESK]) {
        await t.test(`${size.width} px, letters twice as large`, async () => {
          await page.setViewportSize(size);
          await page.evaluate(() => { document.documentElement.style.fontSize = "200%"; });
          assert.deepEqual(await tooWide(page), []);
        });
      }
      await page.context().close();
    });
  }

  test(`axe finds nothing on a page that is not calculating: ${name}`, async () => {
    const page = await site.page({ bypassCSP: true }, (page) => page.addInitScript(() => { delete Document.prototype.adoptedStyleSheets; }));
    await page.goto(site.url + name);
    await page.addScriptTag({ path: axePath });
    assert.deepEqual(await violations(page), []);
    await page.context().close();
  });
}
