import assert from "node:assert/strict";
import { test } from "node:test";
import { draftOf, sameDraft, withoutPrivate } from "../../www/js/draft.js";

const tidy = (id, text, view) => (/^\d+$/.test(text) ? `${text} ${view.system === "us" ? "lb" : "kg"}` : text);

test("an empty box is left out of the draft, never sent as zero", () => {
  const draft = draftOf([["bodyMass", ""], ["kitMass", "  "], ["climbHeight", "0"]], tidy, { system: "si" });
  assert.deepEqual(draft, { climbHeight: "0 kg" });
});

test("a bare number takes the unit of the view", () => {
  assert.deepEqual(draftOf([["bodyMass", "80"]], tidy, { system: "us" }), { bodyMass: "80 lb" });
});

test("what cannot be read goes to the engine as it was typed", () => {
  assert.deepEqual(draftOf([["bodyMass", "1,200"], ["rig", "??"]], tidy, { system: "si" }), { bodyMass: "1,200", rig: "??" });
});

test("a choice that nobody made is left out, one that somebody made is kept", () => {
  const entries = [["posture", "upright"], ["hold", "hand-loop"]];
  assert.deepEqual(draftOf(entries, tidy, {}, { posture: "upright", hold: "bare-rope" }), { hold: "hand-loop" });
});

test("a draft without what is private keeps the rest", () => {
  const fields = [{ id: "bodyMass", private: true }, { id: "climbHeight", private: false }];
  assert.deepEqual(withoutPrivate({ bodyMass: "80 kg", climbHeight: "11 m" }, fields), { climbHeight: "11 m" });
});

test("drafts are the same in any order and differ by one word or one field", () => {
  assert.ok(sameDraft({ a: "1", b: "2" }, { b: "2", a: "1" }));
  assert.ok(!sameDraft({ a: "1" }, { a: "1 kg" }));
  assert.ok(!sameDraft({ a: "1" }, { a: "1", b: "2" }));
  assert.ok(!sameDraft({ a: "1", b: "2" }, { a: "1", c: "2" }));
});
