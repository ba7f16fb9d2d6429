import assert from "node:assert/strict";
import { test } from "node:test";
import { STANDINGS, standingOf } from "../../www/js/rig-list.js";

const word = (standing, figures, cautions) =>
  STANDINGS[standingOf({ standing, figures: figures.map((id) => ({ id })), cautions: cautions.map((id) => ({ id })) })].word;

test("what is said of a rig that works is said of the height only where the whole climb was reckoned", () => {
  assert.equal(word("works", ["chance", "reachChance"], []), "comes to the height in time");
  assert.equal(word("works", ["chance", "reachChance"], ["hard-pull"]), "comes to the height in time");
  assert.equal(word("works", ["chance"], []), "one pull succeeds");
  assert.equal(word("works", ["chance"], ["hard-pull"]), "one pull succeeds, few will follow");
});

test("a rig that does not work is not said to, whatever was reckoned", () => {
  for (const figures of [[], ["reachChance"]]) {
    assert.equal(word("at-limit", figures, ["hard-pull"]), "at your limit");
    assert.equal(word("out", figures, []), "out of reach");
    assert.equal(word("not-known", figures, []), "strength not known");
  }
});
