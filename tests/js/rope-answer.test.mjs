import assert from "node:assert/strict";
import { test } from "node:test";
import { decidingState, glanceText } from "../../www/js/rope-answer.js";
import { ropeLength } from "./rope-engine.mjs";

const { answer } = ropeLength({ crotchHeight: 11, anchor: "base" });

test("the state that decides is the one so marked, wherever it stands", () => {
  assert.equal(decidingState(answer).id, "set");
  assert.equal(decidingState({ states: answer.states.map((state) => ({ ...state, decides: state.id === "down" })) }).id, "down");
  assert.equal(decidingState({ states: [] }), null);
});

test("the short answer is the length and the state that asks for it", () => {
  assert.equal(glanceText(answer), `${answer.states[0].total.text} of rope: setting the rope`);
  assert.equal(glanceText({ first: "No rope is needed.", states: [] }), "No rope is needed.");
  assert.equal(glanceText({ ...answer, buy: "", first: "Your 30 m goes up to 9 m." }), "Your 30 m goes up to 9 m.");
});
