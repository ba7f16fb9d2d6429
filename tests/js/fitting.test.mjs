import assert from "node:assert/strict";
import { test } from "node:test";
import { conditionOf, fits } from "../../www/js/fitting.js";

test("a box belongs to the choices that its condition names", () => {
  const condition = conditionOf("rig=tail-3,tail-5");
  assert.equal(condition.field, "rig");
  assert.ok(fits(condition, "tail-3") && fits(condition, "tail-5"));
  assert.ok(!fits(condition, "tail-7"));
});

test("or to all choices but these", () => {
  const condition = conditionOf("rig!=ground-1,ground-3");
  assert.ok(fits(condition, "tail-3"));
  assert.ok(!fits(condition, "ground-3"));
});

test("while nobody has chosen, only the boxes that need no choice are there", () => {
  assert.ok(!fits(conditionOf("rig=tail-3"), ""));
  assert.ok(fits(conditionOf("rig!=tail-3"), ""));
});

test("a condition that cannot be read is none", () => {
  for (const text of ["", "rig", "rig=", "rig=a,", "rig=a b", "=a", "rig==a"]) assert.equal(conditionOf(text), null, text);
});

test("a group of choices is named once, and stands for each of them", () => {
  assert.deepEqual(conditionOf("rig!=moving-rope,@ground").choices, ["moving-rope", "ground-1", "ground-3", "ground-5", "ground-9"]);
  assert.ok(fits(conditionOf("rig=@tail,own"), "tail-5") && fits(conditionOf("rig=@tail,own"), "own"));
  for (const text of ["rig=@nobody", "anchor=@ground", "rig=@", "rig=@constructor"]) assert.equal(conditionOf(text), null, text);
});
