import assert from "node:assert/strict";
import { test } from "node:test";
import { piecesOf } from "../../www/js/numerals.js";

const texts = ["352 N", "6 ft 3 in", "2.35", "1,5 m", "107 %", "1\u00a0200 N", "1 h 20 min", "none", ""];

test("the pieces of a text joined again are the text", () => {
  for (const text of texts) assert.equal(piecesOf(text).map((piece) => piece.text).join(""), text);
});

test("numerals are told from units", () => {
  const numerals = (text) => piecesOf(text).filter((piece) => piece.numeral).map((piece) => piece.text);
  assert.deepEqual(numerals("6 ft 3 in"), ["6", "3"]);
  assert.deepEqual(numerals("1,5 m"), ["1,5"]);
  assert.deepEqual(numerals("1\u00a0200 N"), ["1\u00a0200"]);
  assert.deepEqual(numerals("none"), []);
});
