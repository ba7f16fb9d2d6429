// Ten thousand edits by nobody in particular, all in open pages: `node soak.mjs TABLE [SEED] [EDITS]`. After each, what is
// shown must be what the page's own link comes to; and what a page holds must not grow with what was done in it.
import { fields } from "boughline";
import { chance } from "../lib/chance.mjs";
import { besieged } from "../pages/besieged.mjs";
import { bench } from "../pages/browser.mjs";
import { fullLink, pages } from "./lib/pages.mjs";
import { report, table } from "./lib/table.mjs";

const [path = "target/soak.md", seed = Date.now() % 1e9, edits = 10000] = process.argv.slice(2);
const MOST = 5; // faults told of a page
const QUIET = 2500; // ms; between two steps of an answer the page rests for less than a tenth of that
const LANES = 2; // pages at once
const TIMES = 10; // that it is looked what a page holds
const WARM = 4; // of these in which whatever a page makes once, when it is first asked for, is made
// Drawings come and go, and with them what a page holds at most. A leak grows the least it holds.
const GROWTH = 1.1;
const HELD = ["script's MB", "library's MB", "nodes", "listeners"];
const AFRESH = 25; // edits after which the full plan is put back: else most that is seen is an empty form
// For boxes of any kind; what the fields give as examples is most of the rest.
const TEXTS = ["", "", "0", "-3", "1e9", "abc", "9", "1,5", "80 kg", "520 N", "45 kgf", "5 ft 7 in", "150 lb", "30 min", "90 %", "2 x 6 mm 1.8 m foot loop", "any 5 m"];
const EXAMPLES = new Map(fields().map(({ id, example }) => [id, example]));

console.log(`seed ${seed}`);

/** Every box, and every button that can be seen: the field of each, where it is of one. Runs in the page. */
function offered() {
  const place = document.querySelector("boughline-question")?.shadowRoot ?? document;
  const boxes = [...place.querySelectorAll("form :is(input, select, textarea), #two-plans :is(textarea, select)")];
  const buttons = ["show-example", "start-again", "put-back", "copy-answer"].map((id) => document.getElementById(id)).filter((one) => one?.checkVisibility());
  globalThis.offered = [...boxes, ...buttons];
  return globalThis.offered.map((one) => one.closest("[data-field]")?.dataset.field ?? null);
}

/** Changes one of what is offered as somebody would. Runs in the page. */
function edit({ at, which, text }) {
  const one = globalThis.offered?.[at]; // not there where the page has just been opened anew
  if (["radio", "checkbox", "button", "submit"].includes(one?.type)) one.click();
  else if (one) {
    if (one.tagName === "SELECT") one.selectedIndex = Math.floor(which * one.options.length);
    else one.value = text;
    for (const type of ["input", "change", "focusout"]) one.dispatchEvent(new Event(type, { bubbles: true }));
  }
}

const copyLink = () => document.getElementById("copy-link")?.click();

/** Bytes of memory that the library has taken in a page. */
async function taken(session) {
  const prototype = await session.send("Runtime.evaluate", { expression: "WebAssembly.Memory.prototype" });
  const { objects } = await session.send("Runtime.queryObjects", { prototypeObjectId: prototype.result.objectId });
  const sum = "function () { return this.reduce((sum, { buffer }) => sum + buffer.byteLength, 0); }";
  return (await session.send("Runtime.callFunctionOn", { objectId: objects.objectId, functionDeclaration: sum })).result.value;
}

/** What a page holds, as `{ what: count }`, once the same plan is in it and all that nobody needs is gone. */
async function held({ after, page, asked }, session, link) {
  await after(link, false);
  const shown = () => asked(() => document.body.innerText);
  for (let before = "", now = await shown(); now !== before; [before, now] = [now, await shown()]) await page.waitForTimeout(QUIET);
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
  const fault = (what) => faults.push(`${which.name}: ${what}`);
  const open = async () => {
    const opened = await besieged(site, which);
    return { opened, session: await opened.page.context().newCDPSession(opened.page) };
  };
  let { opened, session } = await open();
  let wrong = 0, answers = 0, links = 0;
  const holds = [];
  for (let i = 0; i < count; i += 1) {
    const how = {};
    try {
      if (i % AFRESH === 0) await opened.after(link, false);
      const places = await opened.asked(offered);
      const at = Math.floor(draw() * places.length);
      const example = EXAMPLES.get(places[at])?.replace(/\d+/u, (number) => Math.round(number * (0.5 + draw())));
      Object.assign(how, { field: places[at], at, which: draw(), text: draw() < 0.9 && example ? example : oneOf(TEXTS) });
      await opened.asked(edit, how);
      await opened.asked(copyLink);
      if (draw() < 0.1) await opened.page.waitForTimeout(500 * draw());
      const { found, answered, linked } = await opened.stands();
      answers += answered;
      links += linked;
      if (found.length > 0 && ++wrong <= MOST) fault(`edit ${i}: ${JSON.stringify(how)}\n${found.map((one) => `* ${one.slice(0, 600)}`).join("\n")}`);
      if (Math.floor((i + 1) * TIMES / count) > holds.length) holds.push(await held(opened, session, link));
    } catch (error) {
      if (++wrong <= MOST) fault(`edit ${i}: ${JSON.stringify(how)}\n* ${error.message.slice(0, 600)}`);
      await opened.close().catch(() => {});
      ({ opened, session } = await open());
    }
    if (i % 100 === 99) console.log(`${which.name}: ${i + 1}`);
  }
  await opened.close();
  const middle = WARM + Math.floor((TIMES - WARM) / 2);
  const [early, late] = [holds.slice(WARM, middle), holds.slice(middle)];
  const least = (part, what) => Math.min(...part.map((one) => one[what]));
  const halves = HELD.map((what) => [what, least(early, what), least(late, what)]);
  for (const [what, before, after] of halves) {
    if (!(after <= before * GROWTH)) fault(`holds more and more: ${what} at least ${before} for a while, ${after} later`);
  }
  if (answers === 0) fault("never answered");
  if (which.question !== null && links === 0) fault("never passed on a link");
  rows[place] = [which.name, count, answers, links, wrong, ...halves.map(([, before, after]) => `${Number(before.toFixed(1))}, ${Number(after.toFixed(1))}`)];
  console.log(rows[place].join("  "));
}

const queue = [...all.entries()];
await Promise.all(Array.from({ length: LANES }, async () => {
  for (let next = queue.shift(); next; next = queue.shift()) await soaked(next[1], next[0]);
}));
await site.close();
await report(path, "# Edits without end",
  `Seed ${seed}. At fault is an error, a request to elsewhere, or an answer that the page's link, or where there is none its form, does not come to. What a page holds is the least for a while and the least later, each time with the same plan in it.`,
  table(["page", "edits", "answered", "by its link", "at fault", ...HELD], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
