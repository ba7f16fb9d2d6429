// A newcomer on a phone, by keys alone, from nothing to a first answer that says why, and what is missing before it is a plan.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, boxes, settled, verdict } from "./browser.mjs";

const PHONE = { viewport: { width: 390, height: 844 } };

let site;
before(async () => { site = await bench(); });
after(() => site.close());

async function opened(hash = "", options = PHONE) {
  const page = await site.page(options);
  await page.goto(site.url + hash);
  return page;
}

const focused = (page) => page.evaluate(() => document.activeElement.name ?? "");

/** Counts keys as they are pressed. */
function hands(page) {
  let keys = 0;
  const press = async (key) => { keys += 1; await page.keyboard.press(key); };
  return {
    press,
    type: async (text) => { for (const key of text) await press(key); },
    tabTo: async (name) => {
      for (let i = 0; i < 30; i += 1) {
        if (await focused(page) === name) return;
        await press("Tab");
      }
      assert.fail(`Tab never reached ${name}`);
    },
    get keys() { return keys; },
  };
}

test("mass, height, age and sex are a first answer in under forty keys, with its reason and what is missing", async () => {
  const page = await opened();
  const hand = hands(page);
  const said = [["bodyMass", "80"], ["climbHeight", "6"], ["age", "35"]];
  for (const [name, text] of said) {
    await hand.tabTo(name);
    await hand.type(text);
  }
  await hand.tabTo("sex");
  await hand.press("ArrowDown");
  await settled(page);
  assert.ok(hand.keys < 40, `${hand.keys} keys`); // at a key and a half a second well under a minute
  assert.deepEqual(Object.entries(await boxes(page)).filter(([id, text]) => ["bodyMass", "climbHeight", "age", "sex", "rig"].includes(id) && text !== "").length, 4, "four boxes");
  assert.notEqual(await page.locator("#outcome").getAttribute("data-verdict"), "none");
  assert.match(await page.locator("#first").innerText(), /one pull|your (?:arms|hands)/iu);
  assert.ok((await page.locator("#second").innerText()).length > 20);
  assert.match(await page.locator("#assumed").innerText(), /on a 3:1 on the rope’s own tail until you choose a rig/u);
  const missing = await page.locator("#can-enter").innerText();
  for (const words of [/rig you will climb on/u, /how you come down/iu, /second person/iu]) assert.match(missing, words);
  assert.equal(await page.locator("#glance").innerText(), await verdict(page).innerText());
  assert.ok(!page.url().includes("rig="), "nobody chose a rig");
  assert.deepEqual(page.complaints, []);
});

test("the boxes of a first answer and the bar below them are on the first screen of a phone", async () => {
  const page = await opened();
  // Over an empty form no bar lies.
  await box(page, "bodyMass").fill("80");
  await page.locator("#glance").waitFor();
  assert.equal(await page.evaluate(() => scrollY), 0);
  const bar = await page.locator("#glance").boundingBox();
  assert.ok(bar.y + bar.height <= 844);
  for (const name of ["bodyMass", "climbHeight", "age", "sex"]) {
    const { y, height } = await box(page, name).boundingBox();
    assert.ok(y + height <= bar.y, `${name} ends at ${y + height}, the bar begins at ${bar.y}`);
  }
});

test("a way of knowing one’s strength shows its boxes alone; what is in another stays, counts and is marked", async () => {
  const page = await opened();
  const shown = async () => (await page.$$eval("[data-for^=strengthWay] [data-field]", (all) => all.filter((one) => one.checkVisibility()).map((one) => one.dataset.field))).join(" ");
  assert.equal(await shown(), "age sex");
  await box(page, "bodyMass").fill("80");
  await box(page, "climbHeight").fill("6");
  await page.getByLabel("a pull I measured").check();
  assert.equal(await shown(), "measuredPull");
  await box(page, "measuredPull").fill("520 N");
  await page.getByLabel("my grip").check();
  assert.equal(await shown(), "gripRight gripLeft");
  assert.equal((await boxes(page)).measuredPull, "520 N");
  const note = page.locator("[data-several]");
  assert.ok(await note.isHidden());
  await box(page, "gripRight").fill("300 N");
  assert.ok(await note.isVisible(), "two are entered");
  assert.equal(await page.locator(".choice[data-entered]").count(), 2);
  await page.getByLabel("only age and sex").check();
  await box(page, "age").fill("old");
  await page.getByLabel("my grip").check();
  await settled(page);
  assert.equal(await shown(), "age gripRight gripLeft", "a fault is never put away");
  await box(page, "age").fill("");
  await settled(page);
  await page.reload();
  assert.equal(await shown(), "measuredPull", "a link shows what counts");
  assert.match((await boxes(page)).gripRight, /^300 ?N$/u);
});

test("what is missing leads to its box, folded or put away", async () => {
  const page = await opened("#v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=6m");
  for (const [words, name] of [[/How strong you are/u, "measuredPull"], [/How you come down/u, "wayDown"], [/second person/u, "secondPerson"]]) {
    await page.locator("#can-enter a", { hasText: words }).focus();
    await page.keyboard.press("Enter");
    assert.equal(await focused(page), name);
    assert.ok(await box(page, name).isVisible());
  }
});

test("the next steps are the other questions, and the plan goes along", async () => {
  const page = await opened("#v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=6m&age=35&sex=female");
  await settled(page);
  const steps = await page.$$eval("#next a", (all) => all.map((one) => [one.dataset.page, one.hash.includes("bodyMass=80kg"), one.innerText.length > 40]));
  assert.ok(steps.length >= 6);
  for (const [name, carries, says] of steps) assert.ok(carries && says, name);
});

test("what folds stays as it was put while numbers change, cautions never fold, and print has it all", async () => {
  const page = await opened("#v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=6m&measuredPull=520N&stature=1.75m&rig=tail-3");
  await settled(page);
  assert.equal(await page.locator(".cautions li:visible").count(), await page.locator(".cautions li").count());
  const group = page.locator(".group[data-group='Strokes and rope']");
  const figure = group.locator("[data-figure=strokes]");
  assert.ok(await figure.isHidden());
  await group.locator("> summary").click();
  await page.locator(".group").first().locator("> summary").click();
  await box(page, "bodyMass").fill("70");
  await settled(page);
  assert.ok(await figure.isVisible());
  assert.ok(await page.locator("[data-figure=armPull]").isHidden());
  await page.emulateMedia({ media: "print" });
  assert.equal(await page.locator(".figure:visible").count(), await page.locator(".figure").count());
  assert.ok(await page.locator("#drawing svg").isVisible());
});

test("units and decimal mark are the reader’s usual ones, and a link’s win", async () => {
  // A page is there a little before its script has begun.
  const chosen = (page, label) => page.getByLabel(label).and(page.locator(":checked")).waitFor();
  const us = await opened("", { ...PHONE, locale: "en-US" });
  await chosen(us, "feet and pounds");
  await us.getByLabel("metric").check();
  await settled(us);
  await us.reload();
  await chosen(us, "metric"); // what was chosen stays
  const german = await opened("", { ...PHONE, locale: "de-DE" });
  await chosen(german, "1,5");
  await german.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=us&bodyMass=150lb`);
  await german.reload();
  await chosen(german, "1.5");
  await chosen(german, "feet and pounds");
});
