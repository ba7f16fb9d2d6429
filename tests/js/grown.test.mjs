// What the benchmark says of growth.
import assert from "node:assert/strict";
import { test } from "node:test";
import { grown, proportion } from "../bench/grown.mjs";

test("each size is told by the one before it", () => {
  const rows = grown([{ size: 10, ms: 2 }, { size: 20, ms: 4 }, { size: 80, ms: 6 }, { size: 160, ms: 24 }]);
  assert.deepEqual(rows.map(({ larger, longer }) => [larger, longer]), [[null, null], [2, 2], [4, 1.5], [2, 4]]);
  assert.deepEqual(rows.map(({ word }) => word), ["", "in proportion", "less than in proportion", "more than in proportion"]);
});

test("a quarter either way is noise", () => {
  assert.equal(proportion(2, 2.5), "in proportion");
  assert.equal(proportion(2, 2.51), "more than in proportion");
  assert.equal(proportion(2, 1.6), "in proportion");
  assert.equal(proportion(2, 1.59), "less than in proportion");
});

test("of one size nothing is said", () => {
  assert.deepEqual(grown([{ size: 5, ms: 1 }]), [{ size: 5, ms: 1, larger: null, longer: null, word: "" }]);
  assert.deepEqual(grown([]), []);
});
