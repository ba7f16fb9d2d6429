// Ten thousand edits by nobody in particular, all in open pages: `node soak.mjs TABLE [SEED] [EDITS]`. After each, what is
// shown must be what the page's own link comes to; and what a page holds must not grow with what was done in it.
import { fields } from "boughline";
import { besieged } from "../pages/besieged.mjs";
import { bench } from "../pages/browser.mjs";
import { chance } from "../pages/chance.mjs";
import { fullLink, pages } from "./lib/pages.mjs";
import { report, table } from "./lib/table.mjs";

const [path = "target/soak.md", seed = Date.now() % 1e9, edits = 10000] = process.argv.slice(2);
const MOST = 5; // faults told of a page
const QUIET = 2500; // ms; between two steps of an answer the page rests for less than a tenth of that
const LANES = 2; // pages at once
const TIMES = 10; // that it is looked what a page holds
const GROWTH = 1.5; // of the most it held in the first half of the edits, in the second
const AFRESH = 25; // edits after which the full plan is put back: else most that is seen is an empty form
// For boxes of any kind; what the fields give as examples is most of the rest.
const TEXTS = ["", "", "0", "-3", "1e9", "abc", "9", "1,5", "80 kg", "520 N", "45 kgf", "5 ft 7 in", "150 lb", "30 min", "90 %", "2 x 6 mm 1.8 m foot loop", "any 5 m"];
const EXAMPLES = new Map(fields().map(({ id, example }) => [id, example]));

console.log(`seed ${seed}`);

/** Every box and button of the page that somebody could use now: its field, where it is one. Runs in the page. */
function offered() {
  const place = document.querySelector("boughline-question")?.shadowRoot ?? document;
  const boxes = [...place.querySelectorAll("form :is(input, select, textarea), #two-plans :is(textarea, select)")];
  const buttons = ["show-example", "start-again", "put-back", "copy-answer"].map((id) => document.getElementById(id)).filter((one) => one?.checkVisibility());
  globalThis.offered = [...boxes, ...buttons];
  return globalThis.offered.map((one) => one.closest("[data-field]")?.dataset.field ?? null);
}

/** Changes one of what is offered as somebody would, and asks for the link. Runs in the page. */
function edit({ at, which, text }) {
  const one = globalThis.offered[at];
  if (["radio", "checkbox", "button", "submit"].includes(one.type)) one.click();
  else {
    if (one.tagName === "SELECT") one.selectedIndex = Math.floor(which * one.options.length);
    else one.value = text;
    for (const type of ["input", "change", "focusout"]) one.dispatchEvent(new Event(type, { bubbles: true }));
  }
  document.querySelector("form[data-question] ~ * #copy-link, #copy-link")?.click();
}

/** Bytes of memory that the library has taken in a page. */
async function taken(session) {
  const prototype = await session.send("Runtime.evaluate", { expression: "WebAssembly.Memory.prototype" });
  const { objects } = await session.send("Runtime.queryObjects", { prototypeObjectId: prototype.result.objectId });
  const sum = "function () { return this.reduce((sum, { buffer }) => sum + buffer.byteLength, 0); }";
  return (await session.send("Runtime.callFunctionOn", { objectId: objects.objectId, functionDeclaration: sum })).result.value;
}

/** What a page holds, as `{ what: count }`, once the same plan is in it and all that nobody needs is gone. */
async function held(stormed, session, link) {
  await stormed.after(link, false);
  const shown = () => stormed.page.evaluate(() => document.body.innerText);
  for (let before = "", now = await shown(); now !== before; [before, now] = [now, await shown()]) await stormed.page.waitForTimeout(QUIET);
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  const { nodes, jsEventListeners } = await session.send("Memory.getDOMCounters");
  return { "script's MB": usedSize / 1e6, "library's MB": await taken(session) / 1e6, nodes, listeners: jsEventListeners };
}

const site = await bench();
const all = (await pages()).filter(({ html, name }) => /data-field|id="?two-plans/u.test(html) && new RegExp(process.env.PAGES ?? "", "u").test(name));
const rows = [];
const faults = [];

/** Makes a page's share of the edits and notes what it did. */
async function soaked(which, place) {
  const [draw, count, link] = [chance(Number(seed) + place), Math.ceil(edits / all.length), fullLink(which.question ?? "can-i-climb").slice(1)];
  const oneOf = (list) => list[Math.floor(draw() * list.length)];
  const stormed = await besieged(site, which);
  const session = await stormed.page.context().newCDPSession(stormed.page);
  const holds = [];
  let wrong = 0, answers = 0;
  for (let i = 0; i < count; i += 1) {
    if (i % AFRESH === 0) await stormed.after(link, false);
    const places = await stormed.page.evaluate(offered);
    const at = Math.floor(draw() * places.length);
    const example = EXAMPLES.get(places[at])?.replace(/\d+/u, (number) => Math.round(number * (0.5 + draw())));
    const how = { field: places[at], at, which: draw(), text: draw() < 0.9 && example ? example : oneOf(TEXTS) };
    await stormed.page.evaluate(edit, how);
    if (draw() < 0.1) await stormed.page.waitForTimeout(500 * draw());
    const { found, answered } = await stormed.stands();
    answers += answered;
    if (found.length > 0 && ++wrong <= MOST) faults.push(`${which.name}, edit ${i}: ${JSON.stringify(how)}\n${found.map((one) => `* ${one.slice(0, 600)}`).join("\n")}`);
    if (Math.floor((i + 1) * TIMES / count) > holds.length) holds.push(await held(stormed, session, link));
    if (i % 100 === 99) console.log(`${which.name}: ${i + 1}`);
  }
  const most = (part, what) => Math.max(...part.map((one) => one[what]));
  const halves = Object.keys(holds[0]).map((what) => [what, most(holds.slice(0, TIMES / 2), what), most(holds.slice(TIMES / 2), what)]);
  for (const [what, early, late] of halves) {
    if (late > early * GROWTH) faults.push(`${which.name} holds more and more: ${what} at most ${early} in the first half, ${late} in the second`);
  }
  rows[place] = [which.name, count, answers, wrong, ...halves.map(([, early, late]) => `${Number(early.toFixed(1))}, ${Number(late.toFixed(1))}`)];
  console.log(rows[place].join("  "));
  await stormed.close();
}

const queue = [...all.entries()];
await Promise.all(Array.from({ length: LANES }, async () => {
  for (let next = queue.shift(); next; next = queue.shift()) await soaked(next[1], next[0]);
}));
await site.close();
await report(path, "# Edits without end",
  `Seed ${seed}. At fault is an error, a request to elsewhere, or a number that the page's link does not come to. What a page holds is the most of its first and of its second half, each time with the same plan in it.`,
  table(["page", "edits", "answered", "at fault", "script's MB", "library's MB", "nodes", "listeners"], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
