import assert from "node:assert/strict";
import { test } from "node:test";
import { alike, barOf, wordsOf } from "../../www/js/cutting-layout.js";

const line = (value, noun = "") => ({ noun, value, text: `${value} m` });
const hank = { noun: "hank of 10 m", value: 10, cuts: [line(4, "haul cord"), line(3)], left: line(2.9, "left over"), lost: line(0.1, "cuts and ends") };

test("the pieces of a bar are to scale, side by side, and fill it", () => {
  const { pieces } = barOf(hank, 500);
  let x = 0;
  for (const [at, piece] of pieces.entries()) {
    assert.ok(Math.abs(piece.x - x) < 1e-9, `piece ${at}`);
    x += piece.width;
  }
  assert.ok(Math.abs(x - 500) < 1e-9);
  assert.deepEqual(pieces.map(({ kind }) => kind), ["cut", "cut", "left", "lost"]);
  assert.ok(Math.abs(pieces[0].width - 200) < 1e-9);
});

test("a label never stands out of its piece: name and length, length, upright, or none", () => {
  const of = (value, width) => barOf({ ...hank, cuts: [line(value, "foot loop")] }, width).pieces[0];
  assert.deepEqual([of(4, 500).label, of(4, 500).standing], ["foot loop 4 m", "along"]);
  assert.deepEqual([of(2, 300).label, of(2, 300).standing], ["2 m", "along"]);
  assert.deepEqual([of(0.5, 300).label, of(0.5, 300).standing], ["0.5 m", "upright"]);
  assert.deepEqual([of(0.2, 300).label, of(0.2, 300).standing], ["", "none"]);
});

test("what is left of nothing is not drawn", () => {
  assert.deepEqual(barOf({ ...hank, left: line(0, "left over") }, 100).pieces.map(({ kind }) => kind), ["cut", "cut", "lost"]);
});

test("hanks that are cut alike stand together, and are told in words", () => {
  const other = { ...hank, cuts: [line(3)] };
  assert.deepEqual(alike([hank, { ...hank }, other, hank]).map(({ from, to }) => [from, to]), [[1, 2], [3, 3], [4, 4]]);
  assert.equal(wordsOf(hank), "haul cord 4 m, 3 m; left over 2.9 m; cuts and ends 0.1 m");
});
