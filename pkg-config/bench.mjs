// Times of the shipped module: `node bench.mjs CLOCK TABLE`. The middle of several runs, as ratios within one run: to a
// native build, whose CLOCK is examples/bench.rs, and then to one full answer.
import { execFileSync } from "node:child_process";
import { writeFile } from "node:fs/promises";
import * as boughline from "boughline";
import * as twin from "./twin.mjs";

const [clock, table] = process.argv.slice(2);
const [FULL, TYPING, ROUNDS] = [20000, 500, 9];
// So high that it takes some 60 strokes.
const person = { bodyMass: "80 kg", climbHeight: "8.8 m", stature: "1.75 m", measuredPull: "520 N" };
const climb = { ...person, rig: "tail-3" };
const loads = { ...climb, anchor: "canopy", crotchHeight: "14 m", backup: "tail-knot" };
const cases = [
  [`one climb, full effort (${FULL} samples)`, () => boughline.canIClimb(unasked(), null, FULL)],
  [`one climb while typing (${TYPING} samples)`, () => boughline.canIClimb(unasked(), null, TYPING)],
  ["all rigs side by side, full effort", () => boughline.advantage(person)],
  ["all rigs side by side while typing", () => boughline.advantage(person, null, TYPING)],
  ["map of 48 by 32", () => boughline.feasibilityMap(person, null, 48, 32)],
  ["map of 120 by 80", () => boughline.feasibilityMap(person, null, 120, 80)],
  ["map of 200 by 200", () => boughline.feasibilityMap(person, null, 200, 200)],
  ["what each part carries, full effort", () => boughline.loads(loads)],
  ["what each part carries while typing", () => boughline.loads(loads, null, TYPING)],
  ["what length of cord", () => boughline.cutLength({ cordUse: "prusik", ropeDiameter: "11 mm", hitchCord: "8 mm" })],
  ["how much rope", () => boughline.ropeLength({ crotchHeight: "12 m", anchor: "base" })],
];

/** The climb with a pull that was not asked about the time before: the module goes on where it stopped with the same. */
function unasked() {
  unasked.pull = unasked.pull === 520 ? 521 : 520;
  return { ...climb, measuredPull: `${unasked.pull} N` };
}

const middle = (times) => times.sort((a, b) => a - b)[times.length >> 1];

/** Milliseconds of a call. */
function took(call) {
  const start = performance.now();
  const reply = call();
  const time = performance.now() - start;
  if (!reply.ok) throw new Error(JSON.stringify(reply.errors));
  return time;
}

/** Milliseconds of one native answer, and how many samples it has. */
function natively() {
  const words = ["1", `${FULL}`, ...Object.entries(climb).flat()];
  const [samples, time] = execFileSync(clock, words, { encoding: "utf8" }).split(" ").map(Number);
  return { samples, time };
}

// Turn and turn about, so that a machine that is busy now and then slows all three.
const ways = { native: [], WASM: [], "plain JavaScript": [] };
for (let round = 0; round <= ROUNDS; round++) {
  ways.native.push(natively().time);
  ways.WASM.push(took(() => boughline.canIClimb(unasked(), null, FULL)));
  ways["plain JavaScript"].push(took(() => twin.canIClimb(climb, null, FULL)));
  // The first round warms up.
  if (round === 0) for (const times of Object.values(ways)) times.pop();
}
const { figures, effort } = boughline.canIClimb(climb, null, FULL).answer;
const strokes = Math.round(figures.find(({ id }) => id === "strokes").value);
if (natively().samples !== effort.samples) throw new Error("Native build and module are not of the same sources: run pkg-config/build.");

/** A table of times over a unit. */
const rows = (what, over, unit, times) => [
  `| ${what} | over ${over} | ms here |`, "|---|---|---|",
  ...times.map(([name, time]) => `| ${name} | ${(time / unit).toFixed(2)} | ${time.toFixed(1)} |`),
];
const three = Object.entries(ways).map(([name, times]) => [name, middle(times)]);
const each = cases.map(([name, call]) => [name, (took(call), middle(Array.from({ length: ROUNDS }, () => took(call))))]);
const text = [
  ...rows(`${effort.samples} sampled climbs of ${strokes} strokes`, "native", three[0][1], three), "",
  ...rows("what", "one full climb", each[0][1], each), "",
].join("\n");
await writeFile(table, text);
console.log(text);
