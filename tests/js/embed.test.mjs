import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import * as engine from "boughline";
import { boxesFor, changesIn, givenBy, namesIn, unseenText } from "../../www/js/embed-given.js";
import { QUESTIONS } from "../../www/js/embed-questions.js";
import { questionsOf } from "../../www/js/questions.js";
import { answerSentence, cautionsOf, sentencesOf } from "../../www/js/answer-words.js";

const nothing = { plan: null, units: null, decimal: null, data: {} };
const rows = engine.fields();

test("every question of the library can be embedded, and compared", () => {
  const asked = [...new Set(rows.flatMap(({ questions }) => questions))].sort();
  const answering = Object.entries(questionsOf(engine)).filter(([, ask]) => typeof ask === "function").map(([id]) => id);
  assert.deepEqual([[...QUESTIONS.keys()].sort(), answering.sort()], [asked, asked]);
});

test("what the page round it says: a plan, values that win over it, units that win over its own", () => {
  const given = givenBy({ plan: "https://x.example/rope-length.html#v=1&q=rope-length&f=1&u=us&crotchHeight=30ft&anchor=base", units: "si", decimal: ",", data: { crotchHeight: "9 m", bodyMass: " ", testid: "a" } }, engine);
  assert.deepEqual(given.draft, { crotchHeight: "9 m", anchor: "base" });
  assert.deepEqual(given.view, { system: "si", decimal: "," });
  assert.deepEqual(given.unknown, ["testid"]);
  assert.deepEqual(givenBy(nothing, engine), { draft: {}, view: { system: "si", decimal: "." }, notices: [], unknown: [] });
  assert.deepEqual(givenBy({ ...nothing, units: "furlongs", decimal: "x" }, engine).view, { system: "si", decimal: "." });
  assert.equal(givenBy({ ...nothing, plan: "v=9&q=what" }, engine).notices.length, 2);
});

test("every question asks at the start for what its first errors name, in the order people are asked", () => {
  for (const [name, { ask, wanted }] of QUESTIONS) {
    const lacking = engine[ask]({}).errors;
    const boxes = boxesFor({ chosen: [], given: { kitMass: "8 kg" }, lacking, wanted }, rows);
    for (const id of [...lacking.flatMap(({ fields }) => fields), ...wanted, "kitMass"]) assert.ok(boxes.includes(id), `${name}: ${id}`);
    assert.deepEqual(boxes, rows.map(({ id }) => id).filter((id) => boxes.includes(id)));
    assert.ok(boxes.length <= 8, `${name} has ${boxes.length} boxes`);
  }
});

test("boxes that were chosen stand in their order, each once, and only fields", () => {
  const chosen = namesIn(" rig,  bodyMass rig nonsense");
  assert.deepEqual(boxesFor({ chosen, given: { anchor: "base" }, lacking: [], wanted: ["stature"] }, rows), ["rig", "bodyMass"]);
  assert.deepEqual(namesIn(null), []);
});

test("only what changed is taken anew", () => {
  assert.deepEqual(changesIn({ rig: "tail-3", anchor: "base", testid: "1" }, { rig: "tail-5", bodyMass: "80 kg", testid: "2" }, engine),
    { bodyMass: "80 kg", rig: "tail-5", anchor: "" });
});

test("whatever has no box is said in words", () => {
  assert.equal(unseenText({}, rows), "");
  assert.equal(unseenText({ bodyMass: "80 kg", legs: "none" }, rows),
    `Set by the page this stands in: body mass, 80 kg; your legs, ${rows.find(({ id }) => id === "legs").options.find(({ id }) => id === "none").noun}.`);
});

test("a verdict stands above the sentences; without one the first of them does", () => {
  assert.deepEqual(sentencesOf({ verdict: { text: "V" }, first: "A.", second: "B." }), { headline: "V", sentences: ["A.", "B."] });
  assert.deepEqual(sentencesOf({ first: "A.", second: "", buy: "C.", limb: { text: "D." } }), { headline: "A.", sentences: ["C.", "D."] });
  assert.equal(answerSentence({ verdict: { text: "V" }, first: "A." }), "V. A.");
});

test("every caution of an answer stands there, and those of the rig it names", () => {
  for (const [name, { ask }] of QUESTIONS) {
    const draft = { bodyMass: "70 kg", climbHeight: "6 m", rig: "tail-3", measuredPull: "500 N", pullTaken: "overhead", pullArms: "two", stature: "175 cm", crotchHeight: "12 m", anchor: "canopy", cordUse: "prusik", ropeDiameter: "11 mm", hitchCord: "8 mm", cords: "2~6mm~1.8m" };
    const { answer } = engine[ask](draft, undefined, 50);
    const shown = cautionsOf(answer).map(({ text }) => text);
    const least = answer.rigs?.find((rig) => rig.least)?.cautions ?? [];
    for (const { id, text } of [...answer.cautions, ...least]) assert.equal(shown.includes(text), id !== "arithmetic", `${name}: ${id}`);
    assert.equal(new Set(shown).size, shown.length);
  }
});

test("questions are called and found as the site's own menu has them", () => {
  const menu = readFileSync("www/parts/header.html", "utf8");
  for (const [, page, name, title] of menu.matchAll(/<a href="([\w-]+\.html)" data-page="([\w-]+)">([^<]+)</g)) {
    if (name === "trip-sheet") continue; // all of them on paper, and not one that is asked
    const { page: ours, title: called } = QUESTIONS.get(name);
    assert.deepEqual([ours, called], [page, title]);
  }
});

test("on paper and where two are compared they are called the same", () => {
  const options = readFileSync("www/compare.html", "utf8").matchAll(/<option value="([\w-]+)">([^<]+)</g);
  const called = [...QUESTIONS].map(([name, { title }]) => [name, title]);
  assert.deepEqual([...options].map(([, name, title]) => [name, title]), called);
  assert.deepEqual(called.map(([name]) => [name, engine.asText(name, {}, {}, "text", "").split("\n")[0]]), called);
});
