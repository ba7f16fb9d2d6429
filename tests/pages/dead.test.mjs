// A page that is not calculating must never show a number, whatever killed it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, fillNeeded, numbersShown, pageBytes, settled } from "./browser.mjs";

let site;
let live; // the live page, with an answer in it, as a browser saves it
before(async () => {
  site = await bench();
  const page = await site.page();
  await page.goto(site.url);
  await fillNeeded(page);
  await settled(page);
  assert.notDeepEqual(await numbersShown(page), [], "there is an answer to hide");
  live = await page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`);
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
  assert.ok(at > start);
  return `${html.slice(0, at)}b${html.slice(at + 1)}`;
}

test("with one byte of its script changed", async () => {
  for (const html of [await pageBytes(), live]) {
    const page = await site.page();
    await page.goto(await site.saved(broken(html)));
    await assertDead(page, /its script did not start/u);
    assert.ok(page.complaints.some((text) => /Content Security Policy/iu.test(text)), "refused by its policy");
  }
});

test("with its script cut off in the middle", async () => {
  const page = await site.page();
  await page.goto(await site.saved(live.slice(0, live.lastIndexOf("<script>") + 2000)));
  await assertDead(page, /its script did not start/u);
});

test("with scripts switched off", async () => {
  for (const html of [await pageBytes(), live]) {
    const page = await site.page({ javaScriptEnabled: false });
    await page.goto(await site.saved(html));
    await assertDead(page, /scripts do not run here/u);
  }
  const page = await site.page({ javaScriptEnabled: false });
  await page.goto(site.url);
  await assertDead(page, /scripts do not run here/u);
});

test("without adopted style sheets", async () => {
  const page = await site.page({}, (page) => page.addInitScript(() => { delete Document.prototype.adoptedStyleSheets; }));
  await page.goto(site.url);
  await box(page, "bodyMass").fill("80");
  await box(page, "climbHeight").fill("8");
  await box(page, "rig").selectOption("tail-3");
  await settled(page);
  await assertDead(page, /lacks what the page needs/u);
});

test("without WebAssembly", async () => {
  const page = await site.page({}, (page) => page.addInitScript(() => { delete globalThis.WebAssembly; }));
  await page.goto(site.url);
  await assertDead(page, /WebAssembly/u);
});

test("saved in the form that runs no scripts", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await fillNeeded(page);
  await settled(page);
  const session = await page.context().newCDPSession(page);
  const { data } = await session.send("Page.captureSnapshot", { format: "mhtml" });
  const copy = await site.page();
  await copy.goto(await site.saved(data, "mhtml"));
  await assertDead(copy, /Why:/u);
});

test("when something breaks while it runs, until it works again", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await fillNeeded(page);
  await page.evaluate(() => {
    globalThis.kept = document.createElementNS;
    document.createElementNS = () => { throw new Error("broken on purpose"); };
  });
  await box(page, "bodyMass").fill("81");
  await assertDead(page, /the calculation failed/u);
  assert.equal(await box(page, "bodyMass").inputValue(), "81");
  await page.evaluate(() => { document.createElementNS = globalThis.kept; });
  await box(page, "bodyMass").fill("82");
  await settled(page);
  assert.ok(await page.locator("#not-calculating").isHidden());
  assert.notDeepEqual(await numbersShown(page), []);
});
