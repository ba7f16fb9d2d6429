import assert from "node:assert/strict";
import { test } from "node:test";
import { crotchHeight, ropeExtras, ropeLayout, ropeWords } from "../../www/js/rope-layout.js";
import { figure, ropeLength } from "./rope-engine.mjs";

const drawn = (draft, id = "start") => {
  const { answer } = ropeLength(draft);
  return ropeLayout(answer.states.find((state) => state.id === id), crotchHeight(answer), ropeExtras(answer));
};
const BASE = { crotchHeight: 10, anchor: "base" };
const CANOPY = { crotchHeight: 10, anchor: "canopy" };
const LOWERABLE = { crotchHeight: 10, anchor: "base-lowerable" };
const CORD = { crotchHeight: 10, anchor: "canopy-cord" };
const PLANS = [
  LOWERABLE, CORD, { ...LOWERABLE, inRig: 6, redirectRope: 3, footOffset: 8 }, { ...CORD, redirectRope: 40, footOffset: 100, inRig: 9, ropeSpare: 50 },
  { ...CORD, endsAbove: 4 }, { ...BASE, endsAbove: 9.9, redirectRope: 1 }, { crotchHeight: 1, anchor: "base-lowerable", hitchHeight: 0.5, ropeSpare: 50, footOffset: 100 },
  BASE, CANOPY, { crotchHeight: 4, anchor: "base", ropeTail: 2, ropeSpare: 12 }, { crotchHeight: 60, anchor: "canopy", ropeSpare: 0.2 },
  { crotchHeight: 3, anchor: "canopy", ropeSpare: 20, inRig: 3 }, { crotchHeight: 12, anchor: "canopy", inRig: 5.4 }, { crotchHeight: 2, anchor: "base", hitchHeight: 1.9, inRig: 0.2 },
];
const everyLayout = PLANS.flatMap((plan) => ropeLength(plan).answer.states.map(({ id }) => drawn(plan, id)));

const pointsOf = ({ runs }, id) => runs.find((run) => run.id === id).points;
const along = (points, axes) => points.slice(1).reduce((sum, point, i) => sum + axes.reduce((part, axis) => part + Math.abs(point[axis] - points[i][axis]), 0), 0);
const near = (one, other) => assert.ok(Math.abs(one - other) < 1e-9, `${one} and ${other}`);

test("runs of rope that hang straight are to one scale", () => {
  const layout = drawn(BASE);
  near(along(pointsOf(layout, "up"), ["y"]), 10 * layout.scale);
  near(along(pointsOf(layout, "down"), ["y"]), 8.5 * layout.scale);
});

test("rope in a pile, and rope to and fro in the rig, is as long as its figure but for the steps between two lays", () => {
  const layout = drawn({ ...BASE, ropeSpare: 12, inRig: 5 });
  const spare = pointsOf(layout, "ropeSpare");
  const hung = layout.ground - spare[0].y;
  near(hung + along(spare.slice(2), ["x"]), 12 * layout.scale);
  near(along(pointsOf(layout, "inRig"), ["y"]), 5 * layout.scale);
});

test("everything is inside the drawing, and no rope below the ground", () => {
  for (const { width, height, ground, runs, labels } of everyLayout) {
    for (const { x, y } of runs.flatMap(({ points }) => points)) assert.ok(x > 0 && x < width && y > 0 && y <= ground + 1e-9, `${x} ${y}`);
    for (const { top, height: tall, edge, rows, text, side } of labels) {
      assert.ok(top >= 0 && top + tall <= height && edge > 0 && edge < width);
      const wide = Math.max(...rows.map((row) => row.length * 6.3), text.length * (side === "under" ? 6.3 : 7.5));
      assert.ok(side === "right" ? edge + wide <= width : edge - wide >= 0, `${rows.join(" ")} ${text} is cut off`);
    }
  }
});

test("labels of one side do not lie on each other", () => {
  for (const { labels } of everyLayout) {
    for (const side of ["left", "right", "under"]) {
      const here = labels.filter((label) => label.side === side).sort((a, b) => a.top - b.top);
      for (let i = 1; i < here.length; i += 1) assert.ok(here[i - 1].top + here[i - 1].height <= here[i].top);
    }
  }
});

test("every item has a label, whatever the plan", () => {
  for (const plan of PLANS) {
    for (const state of ropeLength(plan).answer.states) {
      const { labels } = drawn(plan, state.id);
      for (const { noun, text } of state.items) {
        assert.equal(labels.filter((label) => [...label.rows, label.text].join(" ") === `${noun} ${text}`).length, 1, `${state.id}: ${noun}`);
      }
    }
  }
});

test("a rope tied at the foot goes up one side, over, and down the other", () => {
  const layout = drawn(BASE);
  assert.deepEqual(layout.runs.map(({ id }) => id), ["up", "overCrotch", "down", "ropeTail", "ropeSpare"]);
  assert.equal(pointsOf(layout, "up").at(-1).y, pointsOf(layout, "overCrotch")[0].y);
  assert.deepEqual(layout.knots, [{ x: pointsOf(layout, "up")[0].x, y: layout.ground }]);
});

test("a rope tied in the crotch has its knot there, and on the other side the tail that pulls it down", () => {
  const layout = drawn(CANOPY);
  const [knot] = layout.knots;
  assert.ok(knot.y < layout.crotch);
  assert.deepEqual(pointsOf(layout, "tail")[0], knot);
  near(pointsOf(layout, "tail").at(-1).y, layout.ground);
  assert.ok(pointsOf(layout, "tail").at(-1).x < pointsOf(layout, "down")[0].x);
});

test("while such a rope is set the end is tied on the ground and the tail lies there", () => {
  const layout = drawn(CANOPY, "set");
  near(layout.knots[0].y, layout.ground);
  assert.ok(pointsOf(layout, "tail").every(({ y }) => y > layout.ground - 20));
});

test("what lies at the foot to let somebody down lies on the other side than what is loose, with the device between", () => {
  const layout = drawn(LOWERABLE, "lowered");
  const reserve = pointsOf(layout, "reserve");
  near(along(reserve, ["x"]), 10 * layout.scale);
  assert.ok(reserve.every(({ x }) => x <= layout.middle - layout.aside));
  assert.ok(pointsOf(layout, "ropeSpare").every(({ x }) => x >= layout.middle + layout.aside));
  near(layout.knots[0].y, layout.ground);
});

test("a retrieval cord hangs from the knot in the crotch to the ground while somebody is on the rope, and nowhere else", () => {
  for (const id of ["start", "top", "down"]) {
    const layout = drawn(CORD, id);
    const cord = pointsOf(layout, "retrievalCord");
    assert.deepEqual(cord[0], layout.knots[0]);
    near(cord.at(-1).y, layout.ground);
    assert.equal(layout.labels.filter(({ rows }) => rows.join(" ") === "retrieval cord").length, 1);
  }
  assert.ok(!drawn(CORD, "set").runs.some(({ id }) => id === "retrievalCord"));
});

test("a rope that ends above the ground hangs there with its stopper, and the way that is missing is to scale", () => {
  const layout = drawn({ ...BASE, endsAbove: 4 }, "down");
  near((layout.ground - layout.stopper.y) / layout.scale, 4);
  assert.deepEqual(pointsOf(layout, "down").at(-1), layout.stopper);
  near(along(pointsOf(layout, "missing"), ["y"]), 4 * layout.scale);
  assert.ok(!drawn({ ...BASE, endsAbove: 4 }, "start").runs.some(({ id }) => id === "missing"));
});

test("the stopper is where the loose end begins", () => {
  near((drawn(BASE).ground - drawn(BASE).stopper.y) / drawn(BASE).scale, 1.5);
  near(drawn(BASE, "down").stopper.y, drawn(BASE, "down").ground);
  assert.equal(drawn({ ...BASE, ropeTail: 0 }).stopper, null);
  // While a loop is tied on one side the end lies on the other.
  assert.equal(drawn(CORD, "set").stopper.x, drawn(CORD, "set").middle - drawn(CORD, "set").aside);
});

test("a redirect takes as much rope as its figure", () => {
  const layout = drawn({ ...BASE, redirectRope: 3 });
  near(along(pointsOf(layout, "redirectRope").slice(0, -1), ["y"]), 3 * layout.scale);
});

test("the hitch is as high in the drawing as in the tree, and nobody hangs on a rope that reaches the ground", () => {
  const { hitch, ground, scale } = drawn(CANOPY);
  near((ground - hitch.y) / scale, 1.5);
  assert.equal(drawn(CANOPY, "down").hitch, null);
});

test("the crotch is as high as the rope of any state reaches", () => {
  assert.equal(crotchHeight(ropeLength(CANOPY).answer), 10);
  assert.equal(crotchHeight({ states: [] }), 0);
});

test("items that the drawing does not know change nothing in it, and without a rope that comes down there is none", () => {
  const [state] = ropeLength(BASE).answer.states;
  const more = { ...state, items: [...state.items, figure("constructor", "something new", 5)] };
  assert.deepEqual(ropeLayout(more, 10).runs, ropeLayout(state, 10).runs);
  assert.equal(ropeLayout({ ...state, items: [figure("ropeSpare", "spare", 3)] }, 10), null);
  assert.equal(ropeLayout(state, 0), null);
});

test("the drawing in words has every item and what they come to", () => {
  const { states } = ropeLength(BASE).answer;
  const extras = ropeExtras(ropeLength({ ...CORD, endsAbove: 2 }).answer);
  assert.match(ropeWords(states[3], extras), / Beside it: retrieval cord 10\.3 m\. Beside it: your rope’s end above the ground 2\.0 m\.$/u);
  assert.match(ropeWords(states[0], extras), / Beside it: retrieval cord 10\.3 m\.$/u);
  assert.equal(ropeWords(states[1]), "starting the climb: up to the crotch 10.0 m, over the crotch 0.3 m, down from the crotch 8.5 m, in the knot 1.0 m, stopper and tail below it 0.4 m, to spare 1.0 m; in all 21.2 m.");
});
