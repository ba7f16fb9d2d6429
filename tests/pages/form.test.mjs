import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, boxes, fillNeeded, numbersShown, problem, reading, settled, verdict, pullBox } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

async function opened(hash = "") {
  const page = await site.page();
  await page.goto(site.url + hash);
  return page;
}

test("three boxes filled give what a pull takes, and say what a verdict still needs", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  await fillNeeded(page);
  await settled(page);
  const { verdict, first, second, figures } = await reading(page);
  assert.match(verdict, /no verdict yet/iu);
  assert.ok(first.length > 20 && second.length > 20);
  assert.ok(figures.some((text) => /\d+ N\b/u.test(text)), "a pull in newtons");
  assert.ok(await page.locator("#can-enter a[href='#can-i-climb-measuredPull']").isVisible());
  assert.equal(await page.locator("#can-enter li:not(:has(a))").count(), 0, "what can be entered leads to its box");
  assert.match(await page.locator("#can-enter").innerText(), /way down/u);
  assert.match(await page.locator("#effort").innerText(), /doing the sum \d+ times .* nobody made these climbs/u);
  assert.equal(await page.locator("#assumed").isVisible(), (await page.locator("#assumed").textContent()) !== "");
  assert.equal(await page.locator("#drawing svg[role=img] desc").count(), 1);
  assert.ok((await page.locator("#tables tbody tr").count()) >= 8);
  assert.deepEqual(page.complaints, []);
});

for (const { who, plan, pull, words, planned } of [
  { who: "strong and light", plan: { bodyMass: "60", climbHeight: "6" }, pull: "700 N", words: /at your limit/iu, planned: /within reach on paper/iu },
  { who: "heavy, hand over hand", plan: { bodyMass: "140", climbHeight: "25", rig: "hand-over-hand" }, pull: "200 N", words: /out of reach as rigged/iu, planned: /out of reach as rigged/iu },
]) {
  test(`a verdict is a shape, a word and two sentences: ${who}`, async () => {
    const page = await opened();
    await fillNeeded(page, plan);
    await (await pullBox(page)).fill(pull);
    await box(page, "stature").fill("172 cm");
    await settled(page);
    const said = await reading(page);
    assert.match(said.verdict, words);
    assert.ok(said.first.length > 20 && said.second.length > 20);
    assert.ok(said.figures.length >= 10, `${said.figures.length} figures`);
    assert.notEqual(await page.locator(".verdict .shape path").getAttribute("d"), "");
    assert.match(await page.locator("#can-enter").innerText(), /way down/iu);
    await page.locator("summary", { hasText: "Time, the way down" }).click();
    await box(page, "wayDown").selectOption("descend");
    await box(page, "secondPerson").selectOption("rescuer");
    await settled(page);
    assert.match((await reading(page)).verdict, planned);
    assert.ok(await page.locator("#can-enter").isHidden(), "all that can be entered is");
  });
}

test("the example fills the form, is marked as one, and loses the mark when changed", async () => {
  const page = await opened();
  const mark = page.locator("#example-mark");
  await page.click("#show-example");
  assert.ok(await mark.isVisible());
  assert.ok(await verdict(page).isVisible());
  await settled(page);
  assert.deepEqual(await page.locator(".error:visible").count(), 0);
  await page.reload();
  assert.ok(await mark.isVisible(), "also when its link is opened");
  await box(page, "climbHeight").fill("9 m");
  assert.ok(await mark.isHidden());
  await page.click("#start-again");
  assert.equal((await boxes(page)).bodyMass, "");
  assert.deepEqual(await numbersShown(page), []);
  await settled(page);
  assert.ok(!page.url().includes("#"));
});

for (const wiping of [["#show-example"], ["#start-again"], ["#show-example", "#start-again"]]) {
  test(`what was typed can be put back after ${wiping.join(" and ")}, until the next typing`, async () => {
    const page = await opened();
    const putBack = page.locator("#put-back");
    assert.ok(await page.locator("#start-again").isHidden(), "an empty form has nothing to start again");
    await fillNeeded(page, { bodyMass: "8x", climbHeight: "8,25" });
    await box(page, "climbHeight").fill("9");
    await box(page, "climbHeight").blur();
    assert.ok(await putBack.isHidden());
    await settled(page);
    const typed = await boxes(page);
    for (const button of wiping) {
      await page.locator(button).focus();
      await page.keyboard.press("Enter");
    }
    assert.notDeepEqual(await boxes(page), typed);
    assert.notEqual(await page.evaluate(() => document.activeElement.tagName), "BODY", "the focus is not lost");
    await putBack.click();
    assert.deepEqual(await boxes(page), typed);
    assert.ok(await putBack.isHidden());
    await page.click(wiping[0]);
    assert.ok(await putBack.isVisible());
    await box(page, "bodyMass").fill("70");
    assert.ok(await putBack.isHidden());
  });
}

test("after an example alone there is nothing of one’s own to put back", async () => {
  const page = await opened();
  await page.click("#show-example");
  await page.click("#start-again");
  assert.ok(await page.locator("#put-back").isHidden());
  assert.equal(await page.evaluate(() => document.activeElement.id), "show-example");
});

test("boxes that the chosen rig has no use for are put away, keep what is in them, and never hide a fault", async () => {
  const page = await opened();
  await fillNeeded(page);
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  const shown = async () => (await page.$$eval("details [data-for] [data-field]", (all) => all.filter((one) => one.checkVisibility()).map((one) => one.dataset.field))).join(" ");
  assert.equal(await shown(), "upperTurn upperEfficiency lowerTurn lowerEfficiency hitchDrag stackLength setback backup");
  await box(page, "backup").selectOption("tail-knot");
  assert.match(await shown(), /knotSlack/u);
  await box(page, "stackLength").fill("50 cm");
  await box(page, "rig").selectOption("hand-over-hand");
  assert.equal(await shown(), "setback backup knotSlack");
  await settled(page);
  assert.match(page.url(), /stackLength=50cm/u, "still in the link");
  await box(page, "rig").selectOption("tail-3");
  assert.equal(await box(page, "stackLength").inputValue(), "50 cm");
  await box(page, "stackLength").fill("long");
  await box(page, "rig").selectOption("hand-over-hand");
  await settled(page);
  assert.equal(await shown(), "stackLength setback backup knotSlack");
  assert.ok(await problem(page, "stackLength").isVisible());
});

test("mass, height, one way of knowing the strength, stature and rig are asked for before anything is unfolded", async () => {
  const page = await opened();
  const asked = async () => page.$$eval("form [data-field]", (all) => all.filter((one) => one.checkVisibility()).map((one) => one.dataset.field));
  assert.deepEqual(await asked(), ["bodyMass", "climbHeight", "age", "sex", "stature", "rig"]);
  await box(page, "rig").selectOption("ground-3");
  assert.deepEqual(await asked(), ["bodyMass", "climbHeight", "rig", "helperPull"], "who hauls from the ground asks nothing of the climber's arms");
  await page.locator("summary", { hasText: "What you measured" }).click();
  assert.equal(await page.locator("legend:visible", { hasText: "Your pull" }).count(), 0, "no heading over nothing");
});

test("every rig is asked for its own parts and no others", async () => {
  const page = await opened();
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  const turns = async (rig) => {
    await box(page, "rig").selectOption(rig);
    return page.$$eval("[data-field*=Turn]", (all) => all.filter((one) => one.checkVisibility()).map((one) => one.dataset.field).join(" "));
  };
  const pair = "upperTurn lowerTurn";
  const pairs = `${pair} upperTurn2 lowerTurn2`;
  for (const [rig, parts] of Object.entries({
    "hand-over-hand": "", "moving-rope": "topTurn",
    "tail-3": pair, "tail-5": pairs, "tail-7": `${pairs} upperTurn3 lowerTurn3`,
    "haul-cord-2": "upperTurn", "haul-cord-3": pair, "haul-cord-4": `${pair} upperTurn2`, "haul-cord-5": pairs,
    "ground-1": "topTurn", "ground-3": `topTurn ${pair}`, "ground-5": `topTurn ${pairs}`, "ground-9": `topTurn ${pairs}`,
  })) assert.equal(await turns(rig), parts, rig);
});

test("the hint on units promises what every box takes", async () => {
  const page = await opened();
  const hint = await page.locator("#view .hint").innerText();
  const pairs = [["bodyMass", ["80 kg", "12 st 8 lb"]], ["climbHeight", ["11 m", "36 ft"]], ["measuredPull", ["45 kgf", "100 lbf"]]];
  await box(page, "rig").selectOption("tail-3");
  for (const at of [0, 1]) {
    for (const [name, texts] of pairs) {
      assert.ok(hint.includes(texts[at]), `${texts[at]} is not in the hint`);
      if (name === "measuredPull") await pullBox(page);
      await box(page, name).fill(texts[at]);
    }
    await settled(page);
    assert.equal(await page.locator(".error:visible").count(), 0);
    assert.ok(await verdict(page).isVisible());
  }
});

test("on a phone the bar below the form shows the pull while there is no verdict", async () => {
  const page = await site.page({ viewport: { width: 390, height: 844 } });
  await page.goto(site.url);
  await fillNeeded(page);
  await settled(page);
  const pull = (await page.locator("[data-figure=pullNeeded] .value").innerText()).replace(/\s/gu, " ");
  const glance = page.locator("#glance");
  assert.equal((await glance.innerText()).replace(/\s/gu, " "), `No verdict yet: one pull takes about ${pull}`);
  await (await pullBox(page)).fill("600 N");
  await settled(page);
  assert.equal(await glance.innerText(), await verdict(page).innerText());
});

test("the words of the trade are explained on the page", async () => {
  const page = await site.page({ javaScriptEnabled: false });
  await page.goto(site.url);
  await page.locator("summary", { hasText: "Words used here" }).click();
  for (const word of ["rope’s tail", "friction hitch", "lower hitch", "upper hitch", "turn", "crotch", "stroke", "setback", "stack length", "real advantage", "single part"]) {
    const line = page.locator("dt", { hasText: new RegExp(`^${word}$`, "u") }).locator("+ dd");
    assert.ok(await line.isVisible(), word);
    assert.ok((await line.innerText()).length > 20, word);
  }
});

test("the example in feet and pounds is a plan without errors too", async () => {
  const page = await opened();
  await page.getByLabel("feet and pounds").check();
  await page.click("#show-example");
  await settled(page);
  assert.ok(await page.locator("#example-mark").isVisible());
  assert.match((await reading(page)).figures.join(" "), /lbf/u);
});

test("every figure says how it comes about", async () => {
  const page = await opened();
  await page.click("#show-example");
  const rows = page.locator(".figure details");
  const count = await rows.count();
  for (let i = 0; i < count; i += 1) {
    await rows.nth(i).locator("summary").click();
    const workings = await rows.nth(i).locator(".workings").innerText();
    assert.ok(workings.trim().length > 10, `figure ${i + 1} has no workings`);
  }
  await box(page, "bodyMass").fill("70");
  assert.equal(await page.locator(".figure details[open]").count(), count, "opened workings stay open while numbers change");
});

test("numbers go at once when a box cannot be read, and its sentence comes when it is left", async () => {
  const page = await opened();
  await fillNeeded(page);
  await box(page, "bodyMass").fill("8x");
  assert.deepEqual(await numbersShown(page), []);
  assert.ok(await problem(page, "bodyMass").isHidden(), "not while typing");
  await box(page, "bodyMass").blur();
  await problem(page, "bodyMass").waitFor();
  const sentence = await problem(page, "bodyMass").innerText();
  assert.equal(await box(page, "bodyMass").getAttribute("aria-invalid"), "true");
  assert.ok((await page.locator("#errors li").allInnerTexts()).some((text) => sentence.endsWith(text)), "the same words in the summary");
  await page.locator("#errors a").first().click();
  assert.equal(await page.evaluate(() => document.activeElement.name), "bodyMass");
  assert.equal(await box(page, "bodyMass").inputValue(), "8x");
  await box(page, "bodyMass").fill("80");
  assert.ok(await problem(page, "bodyMass").isHidden());
  assert.ok(await verdict(page).isVisible());
});

test("the sentence comes a second after the last key when the box is not left", async () => {
  const page = await opened();
  await fillNeeded(page);
  await box(page, "bodyMass").fill("nobody");
  await settled(page);
  assert.ok(await problem(page, "bodyMass").isVisible());
});

test("80 means 80 kg while it is typed, and says so when the box is left", async () => {
  const page = await opened();
  await fillNeeded(page);
  await box(page, "bodyMass").focus();
  assert.ok(await verdict(page).isVisible());
  await box(page, "bodyMass").blur();
  assert.equal(await box(page, "bodyMass").inputValue(), "80 kg");
  assert.equal(await box(page, "climbHeight").inputValue(), "8 m");
});

test("another unit system changes the answers and never what was typed", async () => {
  const page = await opened();
  await fillNeeded(page, { bodyMass: "80", climbHeight: "8.5" });
  await settled(page);
  const metric = await reading(page);
  await page.getByLabel("feet and pounds").check();
  await settled(page);
  const us = await reading(page);
  assert.match(us.figures.join(" "), /lbf/u);
  assert.notDeepEqual(us.figures, metric.figures);
  const typed = await boxes(page);
  assert.equal(typed.bodyMass, "80 kg");
  assert.equal(typed.climbHeight, "8.5 m");
  assert.match(await page.locator("label[for=can-i-climb-kitMass]").textContent(), /lb/u);
  await page.getByLabel("metric").check();
  await settled(page);
  assert.deepEqual(await reading(page), metric);
  await page.getByLabel("1,5").check();
  await settled(page);
  assert.match((await reading(page)).figures.join(" "), /\d,\d/u);
  assert.equal((await boxes(page)).climbHeight, "8.5 m");
});

test("a form filled wrongly throughout loses nothing and names every box", async () => {
  const page = await opened();
  for (const group of await page.locator("form > details > summary").all()) await group.click();
  await box(page, "rig").selectOption("tail-7"); // the rig of the most parts
  await box(page, "backup").selectOption("tail-knot");
  const wrong = ["1,200", "-4", "abc", "1e999", "12 parsecs", "NaN", "nought", "1.2.3"];
  const names = await page.$$eval("form [data-field] input", (all) => all.filter((one) => one.checkVisibility()).map((one) => one.name));
  assert.ok(names.length >= 20, `${names.length} boxes`);
  for (const [i, name] of names.entries()) await box(page, name).fill(wrong[i % wrong.length]);
  await settled(page);
  const tidied = await boxes(page);
  for (const [i, name] of names.entries()) {
    assert.ok(tidied[name].startsWith(wrong[i % wrong.length]), `${name} holds ${tidied[name]}`);
    assert.ok(await problem(page, name).isVisible(), `${name} has no sentence`);
  }
  const summary = await page.locator("#errors li").allInnerTexts();
  for (const name of names) {
    const sentences = await problem(page, name).textContent();
    assert.ok(summary.some((text) => sentences.includes(text)), `${name} is not in the summary`);
  }
  assert.ok(await page.locator("#outcome").isHidden() && await page.locator("#numbers").isHidden());
});

test("one quiet sentence is said about a second after the last change, and nothing jumps", async () => {
  const page = await opened();
  await fillNeeded(page);
  await box(page, "bodyMass").fill("");
  await box(page, "bodyMass").focus();
  const status = page.locator("#status");
  const said = await status.textContent();
  const scrolled = await page.evaluate(() => scrollY);
  await page.keyboard.type("82");
  assert.equal(await status.textContent(), said, "not while typing");
  await settled(page);
  assert.ok((await status.textContent()).startsWith(await verdict(page).innerText()));
  assert.equal(await page.evaluate(() => document.activeElement.name), "bodyMass");
  assert.equal(await page.evaluate(() => scrollY), scrolled);
});

test("a sentence that appears does not push away what is being pressed", async () => {
  const page = await opened();
  await box(page, "bodyMass").fill("8x");
  await page.locator("summary", { hasText: "Your rig’s parts" }).click();
  assert.ok(await box(page, "setback").isVisible(), "the press landed");
  await problem(page, "bodyMass").waitFor();
});
