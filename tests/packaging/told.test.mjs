// The package says all that the library says, though its module leaves some texts to it.
import assert from "node:assert/strict";
import { resolve } from "node:path";
import { test } from "node:test";
import * as packaged from "boughline";
import { wholeLibrary } from "../../pkg-config/texts.mjs";

const whole = await wholeLibrary(resolve(process.env.CARGO_TARGET_DIR ?? "target", "modules/texts"));
const plan = { bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-5", age: 45, sex: "female", stature: "1.7 m" };
const rope = { crotchHeight: "9 m", anchor: "base" };

const views = [
  undefined, null, {}, "us", 3, { system: "us" }, { decimal: "," }, { system: "us", decimal: "," }, { system: 1, decimal: null },
  { get system() { throw new Error("mine"); }, decimal: "," },
];

test("the fields, hints and reasons are all there, in every view that somebody could give", () => {
  for (const view of views) assert.deepEqual(packaged.fields(view), whole.fields(view));
});

test("what was given is nobody else's", () => {
  packaged.fields()[0].noun = "mine";
  packaged.catalogue().rigs.length = 0;
  assert.deepEqual(packaged.fields(), whole.fields());
  assert.deepEqual(packaged.catalogue(), whole.catalogue());
});

test("so are the rigs, the turns and the sources", () => {
  assert.deepEqual(packaged.catalogue(), whole.catalogue());
  assert.deepEqual(packaged.rigWords(), whole.rigWords());
  assert.deepEqual(packaged.sources(), whole.sources());
});

test("so are the sources that answers cite, and errors are as they are", () => {
  for (const draft of [plan, rope, { cordUse: "hand-loop", slingCord: "6 mm" }, {}, { bodyMass: "" }]) {
    for (const ask of ["canIClimb", "ropeLength", "cutLength", "comingDown", "rescue"].filter((name) => whole[name])) {
      assert.deepEqual(packaged[ask](draft), whole[ask](draft));
    }
  }
});

test("so are those of an answer as text, in either form", () => {
  for (const [question, draft] of [["can-i-climb", plan], ["rope-length", rope], ["cut-length", { cordUse: "hand-loop", slingCord: "6 mm" }], ["rescue", { ...plan, anchor: "base" }], ["loads", { ...plan, anchor: "base" }], ["trip-sheet", plan]]) {
    for (const format of ["text", "markdown"]) {
      assert.equal(packaged.asText(question, draft, null, format), whole.asText(question, draft, null, format));
    }
  }
});
