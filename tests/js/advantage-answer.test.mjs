import assert from "node:assert/strict";
import { test } from "node:test";
import { glanceText } from "../../www/js/advantage-answer.js";
import { cautionsOf } from "../../www/js/answer-words.js";

const rig = (noun, standing, more = {}) => ({ noun, standing, least: false, hauled: false, figures: [], cautions: [], ...more });

test("the short answer names the least rig, a helper's where none else works, and says when strength is not known", () => {
  const out = rig("hand over hand", "out");
  assert.equal(glanceText({ rigs: [rig("tail 3:1", "works", { least: true }), out] }), "On paper, least kit for one pull: tail 3:1");
  const whole = rig("tail 3:1", "works", { least: true, figures: [{ id: "reachChance" }] });
  assert.equal(glanceText({ rigs: [whole, out] }), "On paper, least kit for the height: tail 3:1");
  assert.equal(glanceText({ rigs: [rig("over the crotch", "works", { hauled: true }), out] }), "On paper, only with a helper: over the crotch");
  assert.equal(glanceText({ rigs: [rig("over the crotch", "out", { hauled: true }), out] }), "No rig here succeeds on paper yet");
  const unknown = [rig("over the crotch", "works", { hauled: true }), rig("tail 3:1", "not-known")];
  assert.equal(glanceText({ rigs: unknown }), "Your strength is not known yet");
});

test("cautions of a rig are there where the short answer names it, and only there", () => {
  const of = (text) => ({ cautions: [{ id: "of-a-rig", text }] });
  const [least, helped] = [rig("tail 3:1", "works", { least: true, ...of("Of the tail.") }), rig("over the crotch", "works", { hauled: true, ...of("Of the helper.") })];
  const [out, unknown] = [rig("hand over hand", "out", of("Of the hands.")), rig("tail 3:1", "not-known", of("Of the tail."))];
  for (const [rigs, noun, wanted] of [
    [[helped, least, out], "tail 3:1", ["Of the tail."]],
    [[helped, out], "over the crotch", ["Of the helper."]],
    [[helped, unknown], "", []],
    [[out], "", []],
  ]) {
    const texts = cautionsOf({ cautions: [], rigs }).map(({ text }) => text);
    assert.deepEqual(texts, wanted);
    const named = rigs.map((one) => one.noun).filter((one) => glanceText({ rigs }).endsWith(`: ${one}`));
    assert.deepEqual(named, noun === "" ? [] : [noun]);
  }
});
