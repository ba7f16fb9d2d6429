import assert from "node:assert/strict";
import { test } from "node:test";
import { timelineLayout } from "../../www/js/timeline-layout.js";

const clock = { value: 420 };
const way = (noun, ...ends) => ({ noun, stages: ends.map((to, i) => ({ from: i === 0 ? 0 : ends[i - 1], to })) });

test("bars begin at nought, follow on one another, and keep their proportion", () => {
  const { rows, limit } = timelineLayout([way("let down", 30, 60, 210)], clock, 420);
  const [{ parts }] = rows;
  assert.equal(parts[0].from, 0);
  parts.slice(1).forEach(({ from }, i) => assert.equal(from, parts[i].to));
  assert.ok(Math.abs(parts[2].to / limit - 0.5) < 1e-9);
});

test("whatever is longest fits, and the minutes that count are always seen", () => {
  for (const ways of [[way("short", 10)], [way("long", 30, 3600)], [way("one", 5), way("other", 9000)]]) {
    const { rows, right, limit, height, foot } = timelineLayout(ways, clock, 300);
    for (const { parts, y, height: bar } of rows) {
      assert.ok(parts.at(-1).to <= right + 1e-9);
      assert.ok(y + bar <= foot);
    }
    assert.ok(limit <= right && foot < height);
  }
});

test("a long name takes more rows and pushes its bar down", () => {
  const noun = "a haul at the foot lifts you off the tie, then lets you down slowly and by friction";
  const { rows } = timelineLayout([way(noun, 60), way("short", 60)], clock, 300);
  assert.ok(rows[0].names.length > 1);
  assert.ok(rows[0].names.at(-1).y <= rows[0].y);
  assert.ok(rows[1].names[0].y > rows[0].y + rows[0].height);
});
