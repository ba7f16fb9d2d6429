// The pocket edition: every page in one file, which computes from disk.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { pagesOf } from "../../pkg-config/pocket.mjs";
import { bench, box, fillNeeded, numbersShown, onDisk, pageBytes, reading, settled } from "./browser.mjs";

let site, names;
before(async () => {
  site = await bench();
  names = pagesOf(await readFile("www/parts/header.html", "utf8") + await readFile("www/parts/footer.html", "utf8"));
});
after(() => site.close());

const PLAN = "f=1&u=si&bodyMass=68kg&climbHeight=12m&rig=tail-3&measuredPull=520N&crotchHeight=14m&anchor=canopy"
  + "&cordUse=distel&ropeDiameter=11mm&hitchCord=8mm&wayDown=descend&secondPerson=rescuer";
const serialised = (page) => page.evaluate(() => `<!DOCTYPE html>\n${document.documentElement.outerHTML}`);
const isOpen = (page) => page.evaluate(() => document.querySelector("main").dataset.leaf);

async function opened(address) {
  const page = await site.page();
  await page.goto(address);
  await settled(page);
  return page;
}

/** Goes to another page by the menu, as somebody would. */
async function goTo(page, name) {
  const link = page.locator(`nav.pages a[data-leaf=${name}]`);
  await page.evaluate(() => { for (const group of document.querySelectorAll(".masthead details")) group.open = true; });
  await Promise.all([page.waitForEvent("load"), link.click()]);
  await settled(page);
}

/** What a page says and where everything in it stands, once it has said its last. */
async function looked(page) {
  await settled(page);
  return page.evaluate(() => ({
    title: document.title,
    // Its own link names the page that is open in it.
    text: document.querySelector("main").innerText.replace(/#[\w-]+\/v=/gu, "#v="),
    places: [...document.querySelectorAll("main *")].filter((one) => one.checkVisibility())
      .map((one) => [one.localName, ...["x", "y", "width", "height"].map((side) => Math.round(one.getBoundingClientRect()[side]))].join(" ")),
  }));
}

test("from disk each page in it says the same of a plan as the page itself, and looks the same", async () => {
  assert.ok(names.length >= 7);
  for (const name of names) {
    const question = /data-question="([\w-]+)"/u.exec(await pageBytes(`${name}.html`))?.[1] ?? "can-i-climb";
    const plan = `v=1&q=${question}&${PLAN}`;
    const alone = await opened(`${onDisk}${name}.html#${plan}`);
    const inPocket = await opened(`${onDisk}pocket.html#${name}/${plan}`);
    assert.equal(await isOpen(inPocket), name);
    const [is, should] = [await looked(inPocket), await looked(alone)];
    assert.deepEqual(is.places.find((one, i) => one !== should.places[i]), undefined, name);
    assert.deepEqual(is, should, name);
    const ids = await inPocket.evaluate(() => [...document.querySelectorAll("[id]")].map((one) => one.id));
    assert.equal(new Set(ids).size, ids.length, "no id twice");
    assert.deepEqual(inPocket.complaints, []);
    await Promise.all([alone, inPocket].map((page) => page.context().close()));
  }
});

test("another question takes the plan over, and going back brings the one before", async () => {
  const page = await opened(`${onDisk}pocket.html`);
  await fillNeeded(page);
  await goTo(page, "rescue");
  assert.equal(await box(page, "bodyMass").inputValue(), "80kg");
  await goTo(page, "rope-length");
  assert.equal(await isOpen(page), "rope-length");
  await Promise.all([page.waitForEvent("load"), page.goBack()]);
  await settled(page);
  assert.equal(await isOpen(page), "rescue");
  await page.click("#start-again");
  await settled(page);
  await page.reload();
  await settled(page);
  assert.equal(await isOpen(page), "rescue", "an empty form stays on its page");
  assert.deepEqual(page.complaints, []);
});

test("the page as a browser writes it computes with what was typed, and has the other pages still", async () => {
  const page = await opened(`${onDisk}pocket.html`);
  await goTo(page, "coming-down");
  await fillNeeded(page, { bodyMass: "83.5", climbHeight: "11" });
  await settled(page);
  const copy = await opened(await site.saved(await serialised(page)));
  assert.equal(await isOpen(copy), "coming-down");
  assert.deepEqual(await looked(copy), await looked(page));
  await box(copy, "bodyMass").fill("97");
  await settled(copy);
  assert.notDeepEqual((await looked(copy)).text, (await looked(page)).text);
  await goTo(copy, "index");
  assert.equal(await box(copy, "bodyMass").inputValue(), "97kg");
  assert.match((await reading(copy)).first, /\d/u);
  const again = await opened(await site.saved(await serialised(copy)));
  assert.deepEqual(await reading(again), await reading(copy), "a copy of a copy too");
});

test("a dead copy shows no number", async () => {
  const live = await opened(`${onDisk}pocket.html#v=1&q=can-i-climb&${PLAN}`);
  assert.notDeepEqual(await numbersShown(live), []);
  for (const html of [await pageBytes("pocket.html"), await serialised(live)]) {
    const dead = await site.page({ javaScriptEnabled: false });
    await dead.goto(await site.saved(html));
    assert.deepEqual(await numbersShown(dead), []);
    assert.match(await dead.locator("#not-calculating").innerText(), /scripts do not run here/u);
  }
  const session = await live.context().newCDPSession(live);
  const { data } = await session.send("Page.captureSnapshot", { format: "mhtml" });
  const dead = await site.page();
  await dead.goto(await site.saved(data, "mhtml"));
  assert.deepEqual(await numbersShown(dead), []);
  assert.match(await dead.locator("#not-calculating").innerText(), /Why:/u);
});

test("over http a page hands over the pocket edition with its plan in it", async () => {
  const page = await opened(`${site.url}rope-length.html#v=1&q=rope-length&${PLAN}`);
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#keep-button")]);
  assert.match(download.suggestedFilename(), /^boughline-plan-\d{4}-\d\d-\d\d\.html$/u);
  assert.match(await page.locator("#kept").innerText(), /carries your weight and strength/u);
  const text = await readFile(await download.path(), "utf8");
  const copy = await opened(await site.saved(text));
  assert.equal(await isOpen(copy), "rope-length");
  assert.equal(await copy.locator("#first").innerText(), await page.locator("#first").innerText());
  assert.ok(await copy.locator("#keep-button").isHidden(), "from disk nothing can be fetched");
  assert.ok(await copy.locator("#keep-by-hand").isVisible());
  await box(copy, "crotchHeight").fill("20 m");
  await settled(copy);
  const later = await opened(await site.saved(await serialised(copy)));
  assert.equal(await box(later, "crotchHeight").inputValue(), "20 m", "what was typed since, and not the plan it came with");
  assert.deepEqual([...page.complaints, ...copy.complaints, ...later.complaints], []);
});
