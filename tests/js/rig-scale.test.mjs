import assert from "node:assert/strict";
import { test } from "node:test";
import { rigLayout } from "../../www/js/rig-layout.js";
import { heightRows } from "../../www/js/rig-tables.js";

const stop = (kind, level) => ({ kind, level, noun: kind, state: null, single: false });
const rig = (...heights) => ({
  text: "",
  levels: heights.map(([noun, height, at]) => ({ id: noun, kind: noun, noun, ...(at === undefined ? {} : { height, at }) })),
  ropes: [{ noun: "rope", stops: [stop("tied", 0), stop("hitch", 1), stop("free", null)], strands: [{ tension: { text: "9 N" } }, { tension: { text: "0 N" } }] }],
});
const scaled = (...heights) => rigLayout(rig(...heights)).scale;

test("without heights there is no strip, no table and no room for them", () => {
  const drawing = rig(["tree"], ["climber"]);
  assert.equal(rigLayout(drawing).scale, null);
  assert.deepEqual(heightRows(drawing), []);
  assert.ok(rigLayout(drawing).gutter < rigLayout(rig(["tree", 9, "9 m"], ["climber", 1, "1 m"])).gutter);
});

test("a strip is to scale from the ground to the highest body", () => {
  const { top, bottom, ground, ticks } = scaled(["tree", 14, "14 m"], ["carriage", 7, "7 m"], ["climber", 3.5, "3.5 m"]);
  assert.equal(ground, bottom);
  const share = ticks.map(({ y }) => (bottom - y) / (bottom - top));
  assert.deepEqual(share.map((one) => Number(one.toFixed(6))), [1, 0.5, 0.25]);
  assert.deepEqual(ticks.map(({ text }) => text.rows), [["14 m"], ["7 m"], ["3.5 m"]]);
});

test("heights too near each other keep their ticks and move their words, in order and inside", () => {
  const { top, bottom, ticks } = scaled(["tree", 20, "20 m"], ["carriage", 0.2, "0.2 m"], ["climber", 0.1, "0.1 m"], ["ground", 0, "0 m"]);
  for (let i = 1; i < ticks.length; i += 1) {
    assert.ok(ticks[i].textY - ticks[i - 1].textY >= 16);
    assert.ok(ticks[i].y - ticks[i - 1].y > 0);
  }
  assert.ok(ticks.every(({ textY }) => textY >= top && textY <= bottom));
});

test("one height of two bodies is told once in the strip and twice in the table", () => {
  const heights = [["tree", 5, "5 m"], ["carriage", 1, "1 m"], ["climber", 1, "1 m"]];
  assert.equal(scaled(...heights).ticks.length, 2);
  assert.deepEqual(heightRows(rig(...heights)), [["tree", "5 m"], ["carriage", "1 m"], ["climber", "1 m"]]);
});

test("all at nought, below the ground or without a number, nothing breaks", () => {
  for (const heights of [[["tree", 0, "0 m"], ["climber", 0, "0 m"]], [["tree", 5, "5 m"], ["climber", -2, "−2 m"]], [["tree", NaN, "?"], ["climber", 2, "2 m"]]]) {
    const { top, bottom, ticks } = scaled(...heights);
    assert.ok(ticks.length > 0 && ticks.every(({ y, textY }) => y >= top && y <= bottom && Number.isFinite(textY)));
  }
});
