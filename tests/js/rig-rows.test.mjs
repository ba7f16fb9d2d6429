import assert from "node:assert/strict";
import { test } from "node:test";
import { NEW_STOP, withMoved, withRope, withStop, withWord, withoutStop } from "../../www/js/rig-rows.js";

const stop = (does, on = "climber") => ({ does, on, with: "" });
const rig = [[stop("tied", "tree"), stop("hitch"), stop("hand")], [stop("tied", "upper"), stop("turn")]];
const does = (ropes) => ropes.map((stops) => stops.map((one) => one.does).join(" "));

test("rows are changed in copies", () => {
  const before = JSON.stringify(rig);
  assert.equal(withWord(rig, 0, 1, "with", "2 m")[0][1].with, "2 m");
  for (const change of [withStop(rig, 0), withoutStop(rig, 0, 0), withMoved(rig, 0, 0, 1), withRope(rig)]) assert.notEqual(change, rig);
  assert.equal(JSON.stringify(rig), before);
});

test("a new stop comes before the hand, else at the end", () => {
  assert.deepEqual(does(withStop(rig, 0)), [`tied hitch ${NEW_STOP.does} hand`, "tied turn"]);
  assert.deepEqual(does(withStop(rig, 1)), ["tied hitch hand", `tied turn ${NEW_STOP.does}`]);
});

test("a rope goes with its last stop", () => {
  assert.deepEqual(does(withoutStop(withoutStop(rig, 1, 0), 1, 0)), ["tied hitch hand"]);
});

test("a stop moves along its rope and not past its ends", () => {
  assert.deepEqual(does(withMoved(rig, 0, 0, 1)), ["hitch tied hand", "tied turn"]);
  assert.deepEqual(does(withMoved(rig, 0, 0, -1)), does(rig));
  assert.deepEqual(does(withMoved(rig, 0, 2, 1)), does(rig));
});
