import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { fields } from "boughline";
import { bench, box, boxes, fillNeeded, pullBox, reading, settled, verdict } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const CLIPBOARD = { permissions: ["clipboard-read", "clipboard-write"] };

async function planned(options) {
  const page = await site.page(options);
  await page.goto(site.url);
  await fillNeeded(page, { bodyMass: "83.5", climbHeight: "11" });
  await (await pullBox(page)).fill("95 lbf");
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  await box(page, "lowerTurn").selectOption("bush-pulley");
  await box(page, "setback").fill("2 in");
  await page.getByLabel("feet and pounds").check();
  await settled(page);
  return page;
}

test("the link in the address bar, opened anew, gives the same form and the same answer", async () => {
  const page = await planned();
  assert.match(page.url(), /#v=1&q=can-i-climb&/u);
  assert.match(page.url(), /[a-z0-9]$/iu);
  const other = await site.page();
  await other.goto(page.url());
  await settled(other);
  assert.deepEqual(await reading(other), await reading(page));
  const canonical = (all) => Object.fromEntries(Object.entries(all).map(([id, text]) => [id, text.replace(/\s/gu, "")]));
  assert.deepEqual(canonical(await boxes(other)), canonical(await boxes(page)));
  assert.ok(await other.getByLabel("feet and pounds").isChecked());
  assert.equal(other.url(), page.url(), "and makes the same link again");
});

test("a link pasted into an open page replaces its plan", async () => {
  const page = await planned();
  await page.evaluate(() => { location.hash = "v=1&q=can-i-climb&f=1&u=si&bodyMass=64kg&climbHeight=9m&rig=tail-3"; });
  await settled(page);
  const typed = await boxes(page);
  assert.match(typed.bodyMass, /^64 ?kg$/u);
  assert.equal(typed.measuredPull, "");
  assert.ok(await page.getByLabel("metric").isChecked());
});

test("unknown parts of a link are told and change nothing else", async () => {
  const page = await site.page();
  await page.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=si&bodyMass=64kg&climbHeight=9m&rig=tail-3&wingspan=2m`);
  await settled(page);
  assert.match(await page.locator("#notices").innerText(), /wingspan/u);
  assert.ok(await page.locator("#outcome").isVisible());
  assert.match(page.url(), /wingspan/u, "the link stays as it was opened");
  await box(page, "bodyMass").fill("65 kg");
  await settled(page);
  assert.doesNotMatch(page.url(), /wingspan/u, "until the plan is another");
});

test("a link that went through HTML opens without a word about it", async () => {
  const page = await site.page();
  await page.goto(`${site.url}#v=1&amp;q=can-i-climb&amp;f=1&amp;u=us&amp;bodyMass=64kg&amp;climbHeight=9m&amp;rig=tail-3`);
  await settled(page);
  assert.ok(await page.locator("#notices").isHidden());
  assert.equal((await boxes(page)).rig, "tail-3");
  assert.ok(await page.getByLabel("feet and pounds").isChecked());
  assert.doesNotMatch(page.url(), /amp;/u);
});

test("the link of a comparison shows its first plan, says so once, and leads to both", async () => {
  const plan = "v=1&q=can-i-climb&f=1&u=si&bodyMass=64kg&climbHeight=9m&rig=tail";
  for (const name of ["index.html", "pocket.html", "trip-sheet.html"]) {
    const page = await site.page();
    await page.goto(`${site.url}${name}#${plan}-3&${plan}-5`);
    await settled(page);
    assert.deepEqual(await page.locator("#notices li").allInnerTexts(), ["This link holds two plans; the first is shown here.", "Compare two plans: both of this link"]);
    await page.locator("#notices a").click();
    await page.locator("#second-plan h3").waitFor();
    assert.match(await page.locator("#first-link").inputValue(), /tail-3$/u);
    assert.match(await page.locator("#second-link").inputValue(), /tail-5$/u);
  }
});

test("a page that asks nothing keeps the plan for the way back", async () => {
  const page = await planned();
  const plan = page.url();
  for (const name of ["How it is reckoned", "About", "A question in your own page"]) {
    await page.getByRole("link", { name }).click();
    await page.waitForLoadState();
    if (name === "How it is reckoned") await page.locator("nav.contents a, .contents a").first().click(); // a place takes the address
    await page.getByRole("link", { name: "Can I climb this?" }).first().click();
    await settled(page);
    assert.equal(page.url(), plan.replace("/#", "/index.html#"), name);
  }
  // Nor does the detour lead to a question that says the plan was meant for another.
  await page.getByRole("link", { name: "About" }).click();
  await page.getByRole("link", { name: "How much rope?" }).first().click();
  await page.locator("#answer").waitFor();
  assert.match(page.url(), /rope-length\.html#v=1&q=rope-length&/u);
  assert.equal(await page.locator("#notices li").count(), 0);
  await page.goBack();
  await page.getByRole("link", { name: /^Pocket edition/u }).click();
  await settled(page);
  assert.equal((await boxes(page)).lowerTurn, "bush-pulley");
});

test("a link of a form that this page does not know is told and kept", async () => {
  const page = await site.page();
  await page.goto(`${site.url}#v=99&q=can-i-climb&bodyMass=64kg`);
  await settled(page);
  assert.ok((await page.locator("#notices li").count()) >= 1);
  assert.match(page.url(), /v=99/u);
});

test("a choice in a link that this page does not know is asked for by the name of its box", async () => {
  const page = await site.page();
  await page.goto(`${site.url}#v=1&q=can-i-climb&f=1&u=si&bodyMass=64kg&climbHeight=9m&rig=tail-9`);
  const noun = (await page.locator("label[for=can-i-climb-rig]").innerText()).trim().toLowerCase();
  const notices = (await page.locator("#notices li").allInnerTexts()).map((text) => text.toLowerCase());
  assert.deepEqual(notices, [`this link asks for “tail-9” in the box “${noun}”, which this page does not know; choose one.`]);
  await settled(page);
  assert.match(page.url(), /tail-9/u);
});

test("what cannot be read is neither put into the address nor copied", async () => {
  const page = await planned();
  const before = page.url();
  await box(page, "setback").fill("some");
  await settled(page);
  assert.equal(page.url(), before);
  for (const button of ["#copy-link", "#copy-link-without"]) {
    await page.click(button);
    assert.equal(await page.locator("#copied-text").innerText(), "First mend the boxes marked above.");
    assert.ok(await page.locator("#copied-link").isHidden());
  }
  await box(page, "setback").fill("3 in");
  await settled(page);
  await page.click("#copy-link");
  assert.equal(await page.locator("#copied-link").inputValue(), page.url());
});

test("an address is left alone while nothing can be written into it", async () => {
  const page = await site.page();
  await page.goto(site.url);
  await box(page, "bodyMass").fill("sixty");
  await settled(page);
  assert.equal(page.url(), site.url);
});

test("copying gives the whole link and says what it carries", async () => {
  const page = await planned(CLIPBOARD);
  assert.ok(await page.locator("#from-file").isHidden(), "a page that has an address does not speak of files");
  await page.click("#copy-link");
  await page.locator("#copied-text", { hasText: "weight and strength" }).waitFor();
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), page.url());
  await box(page, "setback").fill("3 in");
  assert.ok(await page.locator("#copied").isHidden(), "a copied link that no longer holds is put away");
});

test("a short link leaves out what nobody said, stays under 300 characters, and gives the same answer", async () => {
  const page = await planned(CLIPBOARD);
  const long = page.url();
  await page.click("#copy-link-short");
  await page.locator("#copied-text", { hasText: "A later edition" }).waitFor();
  const short = await page.locator("#copied-link").inputValue();
  assert.ok(short.length < 300 && short.length < long.length, `${short.length} of ${long.length}`);
  const other = await site.page();
  await other.goto(short);
  await settled(other);
  await settled(page);
  assert.deepEqual(await reading(other), await reading(page));
  assert.equal(other.url(), long, "the page that opens it writes out what it takes for granted");
});

test("an answer is copied as text that ends with the link back to it, and never one that is not in view", async () => {
  const page = await planned(CLIPBOARD);
  await page.click("#copy-answer");
  await page.locator("#copied-text", { hasText: "weight and strength" }).waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(text.startsWith(`Can I climb this?\n${await verdict(page).innerText()}\n${await page.locator("#first").innerText()}\n`), text);
  const other = await site.page();
  await other.goto(text.split("\n").at(-2));
  await settled(other);
  assert.deepEqual(await reading(other), await reading(page));
  await box(page, "bodyMass").fill("heavy");
  await page.click("#copy-answer");
  await page.locator("#copied-text", { hasText: "no answer to copy" }).waitFor();
  assert.ok(await page.locator("#copied-link").isHidden());
});

test("a device that shares is handed the link, and one that does not has no such button", async () => {
  const page = await site.page({}, async (fresh) => {
    await fresh.addInitScript(() => { navigator.share = async (what) => { window.shared = what; }; });
  });
  await page.goto(site.url);
  await fillNeeded(page);
  await settled(page);
  await page.click("#share-link");
  assert.equal(await page.evaluate(() => window.shared.url), page.url());
  assert.match(await page.evaluate(() => window.shared.title), /Can I climb/u);
  const plain = await planned();
  assert.ok(await plain.locator("#share-link").isHidden());
});

test("a link can be made that carries neither weight nor strength", async () => {
  const page = await planned(CLIPBOARD);
  await page.click("#copy-link-without");
  await page.locator("#copied-text").waitFor();
  const text = await page.locator("#copied-link").inputValue();
  assert.match(text, /climbHeight=/u);
  assert.doesNotMatch(text, /bodyMass|measuredPull|83/u);
  const other = await site.page();
  await other.goto(text);
  assert.equal((await boxes(other)).bodyMass, "");
  assert.ok(await other.locator("#to-enter").isVisible(), "what was left out is asked for");
});

test("whatever the library calls private stays out of that link, whichever page it was entered on", async () => {
  const plan = {
    bodyMass: "83kg", climbHeight: "11m", rig: "tail-3", kitMass: "7kg", measuredPull: "520N", gripRight: "40kgf", gripLeft: "38kgf",
    age: "40", stature: "1.7m", handTravel: "60cm", forearmGirth: "27cm",
  };
  const hidden = fields().filter((row) => row.private).map(({ id }) => id);
  assert.ok(hidden.includes("trunk") && hidden.includes("forearmGirth"));
  plan.trunk = fields().find(({ id }) => id === "trunk").options.at(-1).id;
  for (const id of ["sex", "training", "pullArms", "climbArms"]) {
    plan[id] = fields().find((row) => row.id === id).options.find((option) => option.id !== fields().find((row) => row.id === id).likely).id;
  }
  for (const [name, question] of [["index.html", "can-i-climb"], ["loads.html", "loads"], ["coming-down.html", "coming-down"], ["rescue.html", "rescue"]]) {
    const page = await site.page(CLIPBOARD);
    await page.goto(`${site.url}${name}#v=1&q=${question}&f=1&u=si&${new URLSearchParams(plan)}`);
    await settled(page);
    assert.ok(await page.locator("#notices").isHidden(), await page.locator("#notices").innerText());
    const copied = async (button) => {
      await page.click(button);
      await page.locator("#copied-text", { hasText: "weight and strength" }).waitFor();
      const link = await page.locator("#copied-link").inputValue();
      // A choice that nobody made may stand in a link as what was taken for granted; what was entered may not.
      return hidden.filter((id) => id in plan && new RegExp(`[&#]${id}=${plan[id]}`, "u").test(link));
    };
    assert.deepEqual((await copied("#copy-link")).sort(), hidden.filter((id) => id in plan).sort());
    assert.deepEqual(await copied("#copy-link-without"), []);
    assert.doesNotMatch(await page.locator("#copied-link").inputValue(), /trunk|training/u, "nor what was only taken for granted");
  }
});

test("links to places on the page leave the plan in the address", async () => {
  const page = await planned();
  const before = page.url();
  await page.locator("#can-enter a").first().click();
  assert.equal(page.url(), before);
  assert.notEqual(await page.evaluate(() => document.activeElement.tagName), "BODY");
});
