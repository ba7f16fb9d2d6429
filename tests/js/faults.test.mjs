import assert from "node:assert/strict";
import { test } from "node:test";
import { sentencesFor, sortedFaults } from "../../www/js/faults.js";

const errors = [
  { fields: ["bodyMass"], message: "Enter your weight." },
  { fields: ["climbHeight"], message: "That is no height." },
  { fields: ["upperTurn", "rig"], message: "This rig has no upper turn." },
  { fields: [], message: "Something else." },
];

test("only errors whose every field is empty are still to enter", () => {
  const { toEnter, toRight } = sortedFaults(errors, (id) => id === "bodyMass" || id === "rig");
  assert.deepEqual(toEnter, [errors[0]]);
  assert.deepEqual(toRight, errors.slice(1));
});

test("a sentence that names two fields stands beside both", () => {
  assert.deepEqual(sentencesFor("rig", errors), ["This rig has no upper turn."]);
  assert.deepEqual(sentencesFor("upperTurn", errors), ["This rig has no upper turn."]);
  assert.deepEqual(sentencesFor("hold", errors), []);
});
