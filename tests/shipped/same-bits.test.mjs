// The same bits natively and in the module that is shipped (the tests of the boundary run another, before wasm-opt).
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { parts } from "../../pkg-config/parts.mjs";
import { draftOf } from "../../www/js/draft.js";
import { inside, wasmInside, whole } from "./shipped.mjs";

const path = process.env.WORKED_JSON ?? "target/worked.json";

/** Rows the native test wrote: `[{ question, draft, figures: { place: [value, low, high] } }]`, bits in hexadecimal. */
function workedRows() {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch (error) {
    throw new Error(`${path} is written by the Rust tests: run pkg-config/test --only rust first (${error.code ?? error.message}).`);
  }
}

/** The bits of a number; what has no end is null on both sides. */
const bits = (number) => {
  if (number === null) return null;
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, number);
  return view.getBigUint64(0).toString(16).padStart(16, "0");
};
const written = (hex) => hex === null ? null : hex.replace(/^0x/, "").toLowerCase().padStart(16, "0");

/** The figures of an answer by their place: the id, or those of a state or rig and of its figure. */
const placed = ({ figures, states = [], rigs = [], kinds = [], pieces = [], ways = [], hauls = [], limb = null }) => [
  ...figures.map((figure) => [figure.id, figure]),
  ...pieces.map(({ length }) => [length.id, length]),
  ...[...rigs, ...kinds].flatMap(({ id, figures: own }) => own.map((figure) => [`${id}/${figure.id}`, figure])),
  ...states.flatMap(({ id, total, items = [] }) => [...items, total].filter(Boolean).map((figure) => [`${id}/${figure.id}`, figure])),
  ...ways.filter(({ total }) => total !== null).map(({ id, total }) => [`${id}/${total.id}`, total]),
  ...hauls.flatMap(({ id, pull, people }) => [pull, people].map((figure) => [`${id}/${figure.id}`, figure])),
  ...(limb?.figures ?? []).map((figure) => [figure.id, figure]),
  ...states.flatMap(({ id, parts = [] }) => parts.flatMap((part) => [part.load, part.peak, part.strength, part.ratio].filter(Boolean).map((figure) => [`${id}/${part.id}/${figure.id}`, figure]))),
];

/** Each question's function, and the page that asks it. */
const asked = {
  "can-i-climb": ["canIClimb", "index"],
  "advantage": ["advantage", "advantage"],
  "loads": ["loads", "loads"],
  "rope-length": ["ropeLength", "rope-length"],
  "cut-length": ["cutLength", "cord"],
  "cut-plan": ["cutPlan", "cord"],
  "coming-down": ["comingDown", "coming-down"],
  "rescue": ["rescue", "rescue"],
};

test("each page holds the module of its part, and the inline entry that of the package", () => {
  for (const [page, part] of Object.entries(parts)) {
    assert.ok(wasmInside(`dist/${page}.html`).equals(wasmInside(`dist/npm/inline/${part}.js`)), page);
  }
  assert.ok(wasmInside("dist/npm/inline.js").equals(readFileSync("dist/npm/boughline_bg.wasm")));
});

test("every worked row has the same bits natively and inside its page, and the whole module says the same", async (t) => {
  const library = await whole();
  const pages = {};
  for (const page of Object.keys(parts)) pages[page] = await inside(page);
  const rows = workedRows();
  assert.deepEqual([...new Set(rows.map(({ question }) => question))].sort(), Object.keys(asked).sort());
  for (const [index, { question, draft, view, figures }] of rows.entries()) {
    await t.test(`row ${index + 1}: ${question} ${JSON.stringify(draft)}`, () => {
      assert.ok(Object.keys(figures).length > 0, "the row has no figure");
      const [name, page] = asked[question];
      const reply = pages[page][name](draft, view);
      assert.ok(reply.ok, JSON.stringify(reply.errors));
      assert.deepEqual(library[name](draft, view), reply);
      const here = Object.fromEntries(placed(reply.answer).map(([place, { value, low, high }]) => [place, [value, low, high].map(bits)]));
      const native = Object.fromEntries(Object.entries(figures).map(([id, hexes]) => [id, hexes.map(written)]));
      // Only the figures the row names, but each of those whole.
      assert.deepEqual(Object.fromEntries(Object.keys(native).map((id) => [id, here[id]])), native);
    });
  }
});

test("what a page asks beside its question is what the whole answers", async () => {
  const library = await whole();
  const plan = { bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", measuredPull: "400 N" };
  assert.deepEqual((await inside("index")).whatHelps(plan, {}, 100), library.whatHelps(plan, {}, 100));
  assert.deepEqual((await inside("advantage")).feasibilityMap(plan, {}, 12, 8), library.feasibilityMap(plan, {}, 12, 8));
  assert.deepEqual((await inside("cord")).readRows("hanks", "any~10m~20"), library.readRows("hanks", "any~10m~20"));
});

test("a link written on any page to any question says the same plan, and no choice is left to a later default", async () => {
  const library = await whole();
  const plan = { bodyMass: "80kg", climbHeight: "11m", crotchHeight: "14m", anchor: "canopy", rig: "tail-3", cordUse: "distel", ropeDiameter: "11mm", hitchCord: "8mm" };
  for (const page of Object.keys(parts)) {
    const own = await inside(page);
    for (const question of Object.keys(asked)) {
      const [short, long] = [library, own].map((module) => new Map(module.writeLink(question, plan, {}).split("&").map((part) => part.split("="))));
      assert.ok(short.size > 8, question);
      for (const [id, value] of short) assert.equal(long.get(id), value, `${page}: ${id} of ${question}`);
      if (asked[question][1] === page) assert.deepEqual(long, short);
    }
  }
});

test("a link to the trip sheet written on any page says the plan that the whole writes", async () => {
  const library = await whole();
  const { lists } = await import("../../dist/npm/told.js");
  const likely = Object.fromEntries(lists.fields().filter((row) => row.options && row.likely).map((row) => [row.id, row.likely]));
  const plans = [{}, { crotchHeight: "14m", anchor: "canopy" }, { bodyMass: "80kg", climbHeight: "11m", crotchHeight: "14m", anchor: "canopy", rig: "tail-3", cordUse: "distel", ropeDiameter: "11mm", hitchCord: "8mm" }];
  for (const page of Object.keys(parts)) {
    const own = await inside(page);
    for (const plan of plans) {
      const [short, long] = [library, own].map((module) => module.writeLink("trip-sheet", plan, {}));
      for (const part of short.split("&")) assert.ok(long.split("&").includes(part), `${page}: ${part}`);
      // A page leaves out what stands where it stands anyway.
      const taken = draftOf(Object.entries(library.readLink(long).draft), (id, text) => text, {}, likely);
      assert.equal(library.writeLink("trip-sheet", taken, {}), short, page);
    }
  }
});
