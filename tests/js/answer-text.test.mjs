import assert from "node:assert/strict";
import { test } from "node:test";
import { canIClimb, ropeLength, version } from "boughline/inline";
import { answerText } from "../../www/js/answer-text.js";

const LINK = "https://example.org/#v=1&q=can-i-climb";

test("an answer as text has its sentences, every figure with its range, what is missing, every caution and the link", () => {
  const { answer } = canIClimb({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", measuredPull: "520 N" }, null, 500);
  const text = answerText("Can I climb this?", answer, LINK, version());
  const lines = text.split("\n");
  assert.deepEqual(lines.slice(0, 4), ["Can I climb this?", answer.verdict.text, answer.first, answer.second]);
  for (const { noun, text: shown, range } of answer.figures) {
    assert.ok(lines.includes(`- ${noun}: ${shown}${range ? ` (${range})` : ""}`), noun);
  }
  for (const { text: caution, grave } of answer.cautions) assert.ok(lines.includes(`- ${grave ? "Warning: " : ""}${caution}`), caution);
  assert.ok(answer.cautions.some(({ grave }) => grave));
  for (const { message } of answer.missing) assert.ok(lines.includes(`- ${message}`), message);
  assert.deepEqual(lines.slice(-2), [LINK, `Boughline ${version().version}, figures ${version().figures}`]);
});

test("an answer without a verdict or anything missing has no heading over nothing", () => {
  const { answer } = ropeLength({ crotchHeight: "12 m", anchor: "canopy" });
  const text = answerText("How much rope?", answer, LINK, version());
  assert.ok(text.startsWith(`How much rope?\n${answer.first}\n`));
  assert.doesNotMatch(text, /Not entered yet|undefined|null/u);
});
