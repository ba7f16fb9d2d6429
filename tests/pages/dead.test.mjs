// A page that is not calculating must never show a number, whatever killed it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, fillNeeded, numbersShown, pageBytes, settled } from "./browser.mjs";

/** Each page with a way to an answer, and a box of it. */
const PAGES = [
  { name: "index.html", fill: fillNeeded, boxed: "bodyMass" },
  {
    name: "rope-length.html", boxed: "crotchHeight",
    async fill(page) {
      await box(page, "crotchHeight").fill("8");
      await box(page, "anchor").selectOption("base");
    },
  },
  { name: "coming-down.html", fill: fillNeeded, boxed: "bodyMass" },
  {
    name: "rescue.html", boxed: "bodyMass",
    async fill(page) {
      await fillNeeded(page);
      await box(page, "anchor").selectOption("base-lowerable");
      await box(page, "secondPerson").selectOption("rescuer");
    },
  },
];

let site;
const lives = new Map(); // each live page, with an answer in it, as a browser saves it
before(async () => {
  site = await bench();
  for (const { name, fill } of PAGES) {
    const page = await site.page();
    await page.goto(site.url + name);
    await fill(page);
    await settled(page);
    assert.notDeepEqual(await numbersShown(page), [], "there is an answer to hide");
    lives.set(name, await page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`));
  }
});
after(() => site.close());

async function assertDead(page, why) {
  assert.doesNotMatch(await page.locator("#answer").innerText(), /\d/u);
  assert.deepEqual(await numbersShown(page), []);
  const notice = await page.locator("#not-calculating").innerText();
  assert.match(notice, /This page is not calculating/u);
  assert.match(notice, why);
}

/** The same page with one letter of its script changed, so that its policy refuses it. */
function broken(html) {
  const start = html.lastIndexOf("<script>") + "<script>".length;
  const at = html.indexOf("a", start);
  assert.ok(at >= start);
  return `${html.slice(0, at)}b${html.slice(at + 1)}`;
}

function middleOfLibrary(html) {
  const start = html.lastIndexOf('id="library">');
  const end = html.indexOf("</script>", start);
  assert.ok(start > 0 && end - start > 100000);
  return Math.floor((start + end) / 2);
}

/** The same page with one letter of its library changed, of which its policy says nothing. */
function falsified(html) {
  const at = middleOfLibrary(html);
  return `${html.slice(0, at)}${html[at] === "A" ? "B" : "A"}${html.slice(at + 1)}`;
}

for (const { name, fill, boxed } of PAGES) {
  test(`${name}, with one letter of its library changed, or cut off in the middle of it`, async () => {
    const whole = lives.get(name);
    for (const html of [falsified(await pageBytes(name)), falsified(whole), whole.slice(0, middleOfLibrary(whole))]) {
      const page = await site.page();
      await page.goto(await site.saved(html));
      await assertDead(page, /its script did not start/u);
    }
  });

  test(`${name}, with one byte of its script changed`, async () => {
    for (const html of [await pageBytes(name), lives.get(name)]) {
      const page = await site.page();
      await page.goto(await site.saved(broken(html)));
      await assertDead(page, /its script did not start/u);
      assert.ok(page.complaints.some((text) => /Content Security Policy/iu.test(text)), "refused by its policy");
    }
  });

  test(`${name}, with its script cut off in the middle`, async () => {
    const page = await site.page();
    await page.goto(await site.saved(lives.get(name).slice(0, lives.get(name).lastIndexOf("<script>") + 2000)));
    await assertDead(page, /its script did not start/u);
  });

  test(`${name}, with scripts switched off`, async () => {
    for (const html of [await pageBytes(name), lives.get(name)]) {
      const page = await site.page({ javaScriptEnabled: false });
      await page.goto(await site.saved(html));
      await assertDead(page, /scripts do not run here/u);
    }
    const page = await site.page({ javaScriptEnabled: false });
    await page.goto(site.url + name);
    await assertDead(page, /scripts do not run here/u);
  });

  test(`${name}, without adopted style sheets`, async () => {
    const page = await site.page({}, (page) => page.addInitScript(() => { delete Document.prototype.adoptedStyleSheets; }));
    await page.goto(site.url + name);
    await fill(page);
    await settled(page);
    await assertDead(page, /lacks what the page needs/u);
  });

  test(`${name}, with adopted style sheets that do nothing`, async () => {
    const page = await site.page({}, (page) => page.addInitScript(() => { CSSStyleSheet.prototype.replaceSync = () => {}; }));
    await page.goto(site.url + name);
    await fill(page);
    await settled(page);
    await assertDead(page, /lacks what the page needs/u);
  });

  test(`${name}, without WebAssembly`, async () => {
    const page = await site.page({}, (page) => page.addInitScript(() => { delete globalThis.WebAssembly; }));
    await page.goto(site.url + name);
    await assertDead(page, /WebAssembly/u);
  });

  test(`${name}, saved in the form that runs no scripts`, async () => {
    const page = await site.page();
    await page.goto(site.url + name);
    await fill(page);
    await settled(page);
    const session = await page.context().newCDPSession(page);
    const { data } = await session.send("Page.captureSnapshot", { format: "mhtml" });
    const copy = await site.page();
    await copy.goto(await site.saved(data, "mhtml"));
    await assertDead(copy, /Why:/u);
  });

  test(`${name}, when something breaks while it runs, until it works again`, async () => {
    const page = await site.page();
    await page.goto(site.url + name);
    await fill(page);
    await page.evaluate(() => {
      globalThis.kept = document.createElementNS;
      document.createElementNS = () => { throw new Error("broken on purpose"); };
    });
    await box(page, boxed).fill("81");
    await assertDead(page, /the calculation failed/u);
    assert.equal(await box(page, boxed).inputValue(), "81");
    await page.evaluate(() => { document.createElementNS = globalThis.kept; });
    await box(page, boxed).fill("82");
    await settled(page);
    assert.ok(await page.locator("#not-calculating").isHidden());
    assert.notDeepEqual(await numbersShown(page), []);
  });
}
