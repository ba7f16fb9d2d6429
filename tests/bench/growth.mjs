// How the time of each question grows with its size.
import * as boughline from "boughline";
import { grown } from "./grown.mjs";
import { asking, draftFor } from "./plans.mjs";
import { inTurn, middle } from "./times.mjs";

const ROUNDS = 7;
const SIDE_BY_SIDE = 4000; // the most samples of what is many climbs or many states

const bySamples = (question, sizes) => sizes.map((samples) => ({ size: samples, call: asking(question, draftFor(question), samples) }));

/** The climb from so many metres: the strokes that it takes, and the time. */
const byStrokes = (heights) => heights.map((climbHeight) => {
  const draft = { ...draftFor("can-i-climb"), climbHeight };
  const { figures } = boughline.canIClimb(draft).answer;
  return { size: Math.round(figures.find(({ id }) => id === "strokes").value), call: asking("can-i-climb", draft, 20000) };
});

/** A rig of one's own with so many turns, half at the climber and half at the upper hitch. 28 are the most that can be written so. */
function written(turns) {
  const pair = "turn climber bearing-pulley, turn upper bearing-pulley";
  return `tied tree, hitch upper, hitch climber, ${Array(turns / 2).fill(pair).join(", ")}, hand climber`;
}

const byTurns = (question, effort) => [2, 4, 8, 16, 28].map((turns) => ({
  size: turns, call: asking(question, { ...draftFor(question), rig: "own", ownRig: written(turns) }, effort),
}));

/** One hitch from so many coils; twenty are the most that a box takes. */
const byCoils = () => [1, 2, 5, 10, 20].map((coils) => ({
  size: coils, call: asking("cut-length", { ...draftFor("cut-length"), hitchCoils: String(coils) }, 1),
}));

const byCells = () => [50, 100, 200].map((side) => ({ size: side * side, call: asking("map", draftFor("map"), side) }));

/** Every question with what it grows with, and its points. */
const series = () => [
  ["climb", "samples", bySamples("can-i-climb", [500, 2000, 20000])],
  ["all rigs side by side", "samples of each", bySamples("advantage", [500, 2000, SIDE_BY_SIDE])],
  ["what each part carries", "samples", bySamples("loads", [500, 2000, SIDE_BY_SIDE])],
  ["down again", "samples", bySamples("coming-down", [500, 2000, SIDE_BY_SIDE])],
  ["climb, 20,000 samples", "strokes", byStrokes(["2.9 m", "8.8 m", "29.3 m"])],
  ["climb, 500 samples", "turns of a rig of one’s own", byTurns("can-i-climb", 500)],
  ["all rigs side by side, 500 samples", "turns of the one of one’s own", byTurns("advantage", 500)],
  ["what each part carries, 500 samples", "turns of a rig of one’s own", byTurns("loads", 500)],
  ["how much rope", "turns of a rig of one’s own", byTurns("rope-length", 1)],
  ["what length of cord", "coils of its hitch", byCoils()],
  ["down again, 500 samples", "turns of a rig of one’s own", byTurns("coming-down", 500)],
  ["if I am stuck", "turns of a rig of one’s own", byTurns("rescue", 1)],
  ["map of weight and pull", "cells", byCells()],
];

/** `{ question, by, rows }` of every series; that of the cutting plans is of what `cutting()` found. */
export function growth(cutting) {
  const all = series();
  const times = inTurn(all.flatMap(([, , points]) => points.map(({ call }) => call)), ROUNDS).map(middle);
  const timed = all.map(([question, by, points]) => [question, by, points.map(({ size }) => ({ size, ms: times.shift() }))]);
  const cut = ["realistic", "thirds"].map((kind) => [
    `out of which hanks, ${kind}`, "cords to cut", cutting.filter((row) => row.kind === kind).map(({ count, middle }) => ({ size: count, ms: middle })),
  ]);
  return [...timed, ...cut].map(([question, by, points]) => ({ question, by, rows: grown(points) }));
}
