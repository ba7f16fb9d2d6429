import assert from "node:assert/strict";
import { test } from "node:test";
import { textWidth } from "../../www/js/label-layout.js";
import { stepLayout } from "../../www/js/step-layout.js";

const stop = (noun, moved = false, kind = "hitch") => ({ kind, noun, moved });
const LONG = "second pulley that runs with the upper hitch on the haul cord";
const ROPES = [
  [stop("anchor", false, "tied")],
  [stop("anchor", false, "tied"), stop("upper hitch", true), stop("lower hitch"), stop("hands", false, "hand")],
  [stop(LONG), stop(LONG, true), stop("hands", true, "hand"), stop(LONG)],
];

test("stops follow one another from the anchor down, and keep what they are", () => {
  for (const rope of ROPES) {
    const { stops } = stepLayout(rope);
    assert.deepEqual(stops.map(({ kind, moved }) => ({ kind, moved })), rope.map(({ kind, moved }) => ({ kind, moved })));
    stops.slice(1).forEach(({ y }, i) => assert.ok(y > stops[i].y + 18, "no mark lies on the next"));
  }
});

test("a name is whole, wraps where it is long, and says when its stop is moved", () => {
  for (const rope of ROPES) {
    stepLayout(rope).stops.forEach(({ rows }, i) =>
      assert.equal(rows.map(({ text }) => text).join(" "), rope[i].noun + (rope[i].moved ? ", moved" : "")));
  }
  assert.ok(stepLayout([stop(LONG)]).stops[0].rows.length > 2);
});

test("no name lies on another, and all are inside", () => {
  for (const rope of ROPES) {
    const { width, height, beside, stops } = stepLayout(rope);
    const rows = stops.flatMap((one) => one.rows);
    rows.slice(1).forEach(({ y }, i) => assert.ok(y - rows[i].y >= 14 - 1e-9, `${rows[i].text} / ${rows[i + 1].text}`));
    for (const { text, y } of rows) assert.ok(y - 9 >= 0 && y + 3 <= height && beside + textWidth(text, 12) <= width, text);
    for (const { y } of stops) assert.ok(y - 9 >= 0 && y + 9 <= height);
  }
});
