// The same bits natively and in the module that is shipped (wasm-pack's own tests run the one before wasm-opt).
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { shipped, wasmInside } from "./shipped.mjs";

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

test("the page holds the module of the npm package", () => {
  assert.ok(wasmInside(readFileSync("dist/index.html", "utf8")).equals(readFileSync("dist/npm/boughline_bg.wasm")));
});

test("every worked row has the same bits natively and as shipped", async (t) => {
  const library = shipped();
  const rows = workedRows();
  assert.ok(rows.length > 0, `${path} holds no row`);
  const ask = { "can-i-climb": library.canIClimb, "advantage": library.advantage, "loads": library.loads, "rope-length": library.ropeLength, "cut-length": library.cutLength, "cut-plan": library.cutPlan, "coming-down": library.comingDown, "rescue": library.rescue };
  for (const [index, { question, draft, view, figures }] of rows.entries()) {
    await t.test(`row ${index + 1}: ${question} ${JSON.stringify(draft)}`, () => {
      assert.ok(Object.keys(figures).length > 0, "the row has no figure");
      const reply = ask[question](draft, view);
      assert.ok(reply.ok, JSON.stringify(reply.errors));
      const here = Object.fromEntries(placed(reply.answer).map(([place, { value, low, high }]) => [place, [value, low, high].map(bits)]));
      const native = Object.fromEntries(Object.entries(figures).map(([id, hexes]) => [id, hexes.map(written)]));
      // Only the figures the row names, but each of those whole.
      assert.deepEqual(Object.fromEntries(Object.keys(native).map((id) => [id, here[id]])), native);
    });
  }
});
