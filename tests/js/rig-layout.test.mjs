import assert from "node:assert/strict";
import { test } from "node:test";
import { keyOf, lines, rigLayout } from "../../www/js/rig-layout.js";

const stop = (kind, level, noun = kind) => ({ kind, level, noun, state: null, single: false });
const levels = (...kinds) => kinds.map((kind) => ({ id: kind, kind, noun: kind }));
const rope = (...stops) => ({
  noun: "rope", stops, strands: stops.slice(1).map((_, i) => ({ tension: { value: i, low: i, high: i, text: `${i} N` } })),
});
const pairs = (count) => Array.from({ length: count }, () => [stop("turn", 2), stop("turn", 1)]).flat();
const tail = (count) => ({
  text: "", levels: levels("tree", "carriage", "climber"),
  ropes: [rope(stop("tied", 0), stop("hitch", 1), stop("hitch", 2), ...pairs(count), stop("hand", 2), stop("free", null))],
});
const handOverHand = {
  text: "", levels: levels("tree", "climber"),
  ropes: [rope(stop("tied", 0), stop("hand", 1), stop("hitch", 1), stop("free", null))],
};
const movingRope = {
  text: "", levels: levels("tree", "climber"),
  ropes: [rope(stop("tied", 1), stop("turn", 0), stop("hand", 1), stop("hitch", 1), stop("free", null))],
};

test("bodies stand from the top down without overlapping", () => {
  for (const drawing of [tail(1), tail(3), handOverHand, movingRope]) {
    const { levels, height } = rigLayout(drawing);
    for (let i = 1; i < levels.length; i += 1) assert.ok(levels[i - 1].top + levels[i - 1].height < levels[i].top);
    assert.ok(levels.at(-1).top + levels.at(-1).height < height);
  }
});

test("every stop and strand is inside the drawing", () => {
  for (const drawing of [tail(1), tail(2), tail(3), handOverHand, movingRope]) {
    const { width, height, ropes } = rigLayout(drawing);
    for (const { stops, runs } of ropes) {
      for (const { x, y, radius } of stops) assert.ok(x - radius > 0 && x + radius < width && y > 0 && y < height);
      for (const { x1, y1, x2, y2 } of runs) assert.ok([x1, x2].every((x) => x > 0 && x < width) && [y1, y2].every((y) => y > 0 && y < height));
    }
  }
});

test("a rope crosses to the next column only where it turns back", () => {
  const columns = ({ ropes }) => ropes[0].stops.map((one) => one.column);
  assert.deepEqual(columns(rigLayout(tail(1))), [0, 0, 0, 0, 1, 2, 2]);
  assert.deepEqual(columns(rigLayout(handOverHand)), [0, 0, 0, 0]);
  assert.deepEqual(columns(rigLayout(movingRope)), [0, 0, 1, 1, 1]);
});

test("strands between bodies are upright", () => {
  for (const drawing of [tail(1), tail(3), movingRope]) {
    for (const { x1, x2 } of rigLayout(drawing).ropes[0].runs) assert.equal(x1, x2);
  }
});

test("two stops on one body do not lie on each other", () => {
  const [, hand, hitch] = rigLayout(handOverHand).ropes[0].stops;
  assert.ok(hitch.y > hand.y);
  const stops = rigLayout(tail(1)).ropes[0].stops;
  assert.ok(stops[3].y > stops[2].y, "the lower turn hangs below the lower hitch");
});

test("a backup and a knot take places of their own", () => {
  const drawing = tail(1);
  drawing.ropes = [rope(stop("tied", 0), stop("hitch", 1), stop("hitch", 2, "second hitch"), stop("hitch", 2), stop("turn", 2), stop("turn", 1), stop("knot", 1), stop("hand", 2), stop("free", null))];
  const { ropes: [{ stops }], levels: [, carriage, climber] } = rigLayout(drawing);
  assert.ok(stops[2].y < stops[3].y && stops[3].y < stops[4].y && stops[4].y <= climber.top + climber.height);
  assert.ok(stops[6].y > stops[5].y && stops[6].y < carriage.top + carriage.height);
  assert.deepEqual(stops.map((one) => one.column), [0, 0, 0, 0, 0, 1, 2, 2, 2]);
});

test("hands with a column to themselves come down to the lowest part of their body, others stay in the rope's order", () => {
  const at = ({ ropes }) => ropes[0].stops.find((one) => one.kind === "hand").rank;
  assert.equal(at(rigLayout(tail(1))), 1);
  assert.equal(at(rigLayout(handOverHand)), 0);
  assert.equal(at(rigLayout(movingRope)), 0);
});

test("a turn opens towards the strands that leave it", () => {
  const [, , , lower, upper] = rigLayout(tail(1)).ropes[0].stops;
  assert.equal(lower.opens, -1);
  assert.equal(upper.opens, 1);
});

test("tensions stand on strands that have a length, and not on a loose tail", () => {
  const texts = rigLayout(tail(1)).ropes[0].runs.map((run) => run.text);
  assert.deepEqual(texts, ["0 N", "1 N", "2 N", "3 N", "4 N", null]);
});

test("a turn passed straight through bends nothing", () => {
  const drawing = {
    text: "", levels: levels("tree", "carriage", "climber"),
    ropes: [rope(stop("tied", 0), stop("turn", 1), stop("hitch", 2), stop("free", null))],
  };
  assert.deepEqual(rigLayout(drawing).ropes[0].stops.map((one) => one.bends), [false, false, false, false]);
});

test("a rope that turns back at a hitch, or hangs loose from one it came up to, takes a column of its own", () => {
  const drawing = { text: "", levels: levels("tree", "carriage", "climber"), ropes: [rope(stop("tied", 0), stop("hitch", 2), stop("hitch", 1), stop("free", null))] };
  const { stops, runs } = rigLayout(drawing).ropes[0];
  assert.deepEqual(stops.map((one) => [one.column, one.bends, one.wheel]), [[0, false, false], [0, true, false], [1, true, false], [2, false, false]]);
  assert.equal(new Set(runs.map(({ x1 }) => x1)).size, 3);
});

test("a drawing that is no wider than a phone is told in words where they fit", () => {
  for (const drawing of [tail(1), handOverHand, movingRope]) {
    const { dense, width } = rigLayout(drawing);
    assert.ok(!dense && width <= 323, `${dense} ${width}`);
  }
  assert.ok(rigLayout(tail(3)).width < 460, "a 7:1 in letters");
});

test("several ropes stand side by side", () => {
  const drawing = { ...tail(1), ropes: [rope(stop("tied", 0), stop("hitch", 2), stop("free", null)), rope(stop("tied", 2), stop("turn", 1), stop("hand", 2), stop("free", null))] };
  const [main, cord] = rigLayout(drawing).ropes;
  assert.ok(Math.max(...main.stops.map((one) => one.column)) < Math.min(...cord.stops.map((one) => one.column)));
  assert.equal([...main.stops, ...cord.stops].map((one) => one.key).join(""), "ABCDE", "no letter is lost on a loose tail");
});

test("only a crowded drawing is keyed by letters", () => {
  assert.equal(rigLayout(tail(1)).dense, false);
  assert.equal(rigLayout(tail(2)).dense, true);
  assert.equal(keyOf(0), "A");
  assert.equal(keyOf(26), "A1");
});

test("an empty drawing breaks nothing", () => {
  const { width, height } = rigLayout({ text: "", levels: [], ropes: [] });
  assert.ok(width > 0 && height > 0);
});

test("names are broken between words only", () => {
  assert.deepEqual(lines("upper hitch and its pulley", 11), ["upper hitch", "and its", "pulley"]);
  assert.deepEqual(lines("", 5), []);
});
