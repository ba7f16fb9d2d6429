import assert from "node:assert/strict";
import { test } from "node:test";
import { hintText } from "../../www/js/hint.js";

test("a hint says what is taken when a box stays empty", () => {
  assert.equal(hintText({ hint: "Harness, rope, clothes.", likely: "8 kg", options: null }), "Harness, rope, clothes. Left empty: 8 kg.");
});

test("under a choice stands what it means, and before one is made what stands by itself", () => {
  const options = [{ id: "upright", hint: "Sitting up." }, { id: "leaning-back", hint: "Lying back." }];
  const field = { hint: "", likely: "upright", options };
  assert.equal(hintText(field), "Sitting up.");
  assert.equal(hintText(field, "leaning-back"), "Lying back.");
  assert.equal(hintText({ ...field, hint: "How you pull.", likely: null }), "How you pull.");
  assert.equal(hintText(field, ""), "");
});

test("nothing to say is an empty hint", () => {
  assert.equal(hintText({ hint: "", likely: null, options: null }), "");
});
