import assert from "node:assert/strict";
import { test } from "node:test";
import { chartLayout, chartRows, headOf, ticks } from "../../www/js/chart-layout.js";
import { coarse, mapLayout, runsOf } from "../../www/js/map-layout.js";

test("ticks are round, inside, and about as many as asked for", () => {
  assert.deepEqual(ticks(40, 160, 6), [40, 60, 80, 100, 120, 140, 160]);
  assert.deepEqual(ticks(0, 1568, 5), [0, 500, 1000, 1500]);
  assert.deepEqual(ticks(88.18, 352.7, 6), [100, 150, 200, 250, 300, 350]);
  assert.deepEqual(ticks(5, 5, 4), [5]);
  assert.deepEqual(ticks(0, 1, 5), [0, 0.2, 0.4, 0.6, 0.8, 1]);
  for (let most = 1; most < 5000; most = Math.ceil(most * 1.3)) {
    const found = ticks(0, most, 5);
    assert.ok(found.length >= 3 && found.length <= 11 && found.every((tick) => tick >= 0 && tick <= most * 1.0001), `${most}: ${found}`);
  }
});

const chart = {
  noun: "Pull against weight", text: "", x: { noun: "mass", unit: "kg", least: 40, most: 160 }, y: { noun: "pull", unit: "N", least: 0, most: 1000 },
  lines: [{ id: "one", noun: "one", points: [{ x: 40, y: 100 }, { x: 160, y: 400 }] }, { id: "two", noun: "two", points: [{ x: 40, y: 250 }, { x: 160, y: 1000 }] }],
  bands: [{ noun: "arms", low: 300, high: 380 }], marks: [{ noun: "limit", y: 500 }], you: 100,
};

test("a chart puts its numbers where its axes say", () => {
  const { left, right, top, bottom, lines, bands, marks, you } = chartLayout(chart);
  assert.deepEqual([lines[0].points[0].x, lines[0].points[1].x], [left, right]);
  assert.equal(lines[1].points[1].y, top);
  assert.equal(marks[0].y, (top + bottom) / 2);
  assert.equal(you, (left + right) / 2);
  assert.ok(bands[0].top < bands[0].bottom && bands[0].bottom < bottom);
  assert.equal(chartLayout({ ...chart, you: 20 }).you, null);
  assert.deepEqual(chartRows(chart), [["one", "100", "400"], ["two", "250", "1000"]]);
});

const map = { rows: ["..aa", ".aab", "aabb"], x: { least: 40, most: 100 }, y: { least: 50, most: 250 }, you: { x: 60, y: 150, text: "You" } };

test("every cell of a map is in one run, and regions have their letters inside", () => {
  const runs = runsOf(map.rows);
  assert.equal(runs.reduce((sum, { from, to }) => sum + to - from, 0), 12);
  const { regions, you, left, right, top, bottom } = mapLayout(map);
  assert.deepEqual(regions.map(({ letter, cells }) => [letter, cells]), [[".", 3], ["a", 6], ["b", 3]]);
  for (const { at } of regions) assert.ok(at.x > left && at.x < right && at.y > top && at.y < bottom);
  // The second of four columns, the second of three rows.
  assert.ok(Math.abs(you.x - (left + (right - left) * 0.375)) < 1e-9 && Math.abs(you.y - (top + bottom) / 2) < 1e-9);
});

test("the coarse table has the corners of the map, the strongest pull first", () => {
  const { heads, rows } = coarse(map, 2, 3);
  assert.deepEqual(heads, [40, 100]);
  assert.deepEqual(rows, [{ pull: 250, cells: ["a", "b"] }, { pull: 150, cells: [".", "b"] }, { pull: 50, cells: [".", "a"] }]);
});

test("heads of a table are whole on a long axis, and differ on a short one", () => {
  assert.equal(headOf(66.7, { least: 40, most: 160 }), "67");
  assert.deepEqual([1.5, 1.958, 12.5].map((x) => headOf(x, { least: 1.5, most: 12.5 })), ["1.5", "2", "12.5"]);
});
