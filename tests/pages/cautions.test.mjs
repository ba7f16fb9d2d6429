// Whatever page shows an answer shows its cautions beside it: on a phone, wide, and in print, without anything opened.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import * as library from "boughline";
import { cautionsOf } from "../../www/js/answer-words.js";
import { questionsOf } from "../../www/js/questions.js";
import { bench, pageBytes, pageNames, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const PLAN = "f=1&u=si&bodyMass=120kg&climbHeight=12m&rig=tail-3&stature=170cm&gripRight=400N&legs=none&trunk=unsteady&crotchHeight=14m&anchor=canopy&cordUse=distel&ropeDiameter=10mm&hitchCord=7mm&upperTurn=carabiner&ropeOwned=20m&brake=none&descentSpeed=1m/s&slack=1m&cords=2~6mm~1.8m";
/** The pages with an answer, and the questions that each answers. */
const PAGES = {
  "index.html": ["can-i-climb"], "advantage.html": ["advantage"], "loads.html": ["loads"], "rope-length.html": ["rope-length"],
  "cord.html": ["cut-length", "cut-plan"], "coming-down.html": ["coming-down"], "rescue.html": ["rescue"],
};
/** And those with answers in another form. */
const OTHERS = ["compare.html", "trip-sheet.html", "pocket.html", "embedding.html"];

function told(question) {
  const { draft, view } = library.readLink(`v=1&q=${question}&${PLAN}`);
  const reply = questionsOf(library)[question](draft, view);
  assert.ok(reply.ok, `${question}: ${JSON.stringify(reply.errors)}`);
  return cautionsOf(reply.answer).map(({ text }) => text);
}
/** What can be read of the cautions without opening anything, and where they stand below the answer. */
const read = (page, where = ".cautions li") => page.$$eval(where, (all) => all.filter((one) => one.checkVisibility({ contentVisibilityAuto: false, opacityProperty: true, visibilityProperty: true })).map((one) => one.textContent));

/** Every one of these is among what can be read. */
function holds(texts, shown, where) {
  assert.ok(texts.length >= 2, where);
  for (const text of texts) assert.ok(shown.some((one) => one.includes(text)), `${where}: ${text}\nis not among\n${shown.join("\n")}`);
}

test("every page that can show an answer is tried here", async () => {
  for (const name of await pageNames()) {
    const answers = /id="(?:outcome|paper|first-plan)"|<boughline-question/u.test((await pageBytes(name)).split("<script")[0]);
    assert.equal(name in PAGES || OTHERS.includes(name), answers, name);
  }
});

for (const [name, questions] of Object.entries(PAGES)) {
  test(`${name}: each caution stands with the answer, on a phone, wide and in print`, async () => {
    for (const viewport of [{ width: 390, height: 800 }, { width: 1280, height: 900 }]) {
      const page = await site.page({ viewport });
      await page.goto(`${site.url}${name}#v=1&q=${questions[0]}&${PLAN}`);
      await settled(page);
      for (const media of ["screen", "print"]) {
        await page.emulateMedia({ media });
        const shown = await read(page);
        for (const question of questions) holds(told(question), shown, `${name}, ${viewport.width}, ${media}`);
        assert.equal((await read(page, ".always li")).length, 4, `${name}: what stands always, ${media}`);
        const graves = await page.$$eval(".cautions li.grave", (all) => all.filter((one) => one.checkVisibility() && one.textContent.startsWith("▲ Warning:")).length);
        assert.ok(graves >= (questions.includes("cut-plan") ? 1 : 2), `${name}: ${graves} that can kill are marked`);
      }
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    }
  });
}

test("the trip sheet has those of all answers, printed too", async () => {
  const page = await site.page();
  await page.goto(`${site.url}trip-sheet.html#v=1&q=can-i-climb&${PLAN}`);
  await page.waitForFunction(() => document.getElementById("status").textContent.startsWith("Every part"), undefined, { timeout: 60000 });
  const all = ["can-i-climb", "loads", "rope-length", "cut-plan", "coming-down", "rescue"].flatMap(told);
  for (const media of ["screen", "print"]) {
    await page.emulateMedia({ media });
    const shown = await read(page, "#paper li");
    holds([...all, "This is arithmetic, not training."], shown, `trip sheet, ${media}`);
  }
});

test("two plans side by side have those of both, printed too", async () => {
  const page = await site.page();
  const plan = `v=1&q=can-i-climb&${PLAN}`;
  await page.goto(`${site.url}compare.html#${plan}&${plan.replace("tail-3", "haul-cord-3")}`);
  await settled(page);
  for (const media of ["screen", "print"]) {
    await page.emulateMedia({ media });
    holds([...told("can-i-climb"), "Nothing pulls the hitch up as you rise"], await read(page), `compare, ${media}`);
    assert.equal((await read(page, ".always li")).length, 4, media);
  }
});

test("the pocket edition has them on whatever page is open", async () => {
  const page = await site.page();
  await page.goto(`${site.url}pocket.html#loads/v=1&q=loads&${PLAN}`);
  await settled(page);
  holds(told("loads"), await read(page), "pocket");
});
