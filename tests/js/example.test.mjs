import assert from "node:assert/strict";
import { test } from "node:test";
import { exampleDraft, isExample } from "../../www/js/example.js";

test("each system's example is recognised", () => {
  assert.ok(isExample(exampleDraft("si")));
  assert.ok(isExample(exampleDraft("us")));
});

test("one changed, added or missing number takes the mark away", () => {
  const { kitMass, ...without } = exampleDraft("si");
  assert.ok(!isExample(without));
  assert.ok(!isExample({ ...exampleDraft("si"), bodyMass: "69 kg" }));
  assert.ok(!isExample({ ...exampleDraft("si"), setback: "5 cm" }));
  assert.ok(!isExample({}));
});

test("a choice that stands where it stands by itself makes no difference", () => {
  const { pullTaken, ...without } = exampleDraft("si");
  assert.ok(isExample(without, { pullTaken }));
  assert.ok(isExample({ ...exampleDraft("si"), posture: "upright" }, { posture: "upright" }));
});

test("a changed example draft does not change the next one", () => {
  exampleDraft("si").bodyMass = "1 kg";
  assert.notEqual(exampleDraft("si").bodyMass, "1 kg");
});

test("a link writes the same amounts without spaces", () => {
  const tight = Object.fromEntries(Object.entries(exampleDraft("us")).map(([id, text]) => [id, text.replace(/\s/gu, "")]));
  assert.ok(isExample(tight));
});
