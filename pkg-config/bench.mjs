// Times of the shipped module: `node bench.mjs TABLE`. The middle of several runs; ratios to one full answer first.
import { writeFile } from "node:fs/promises";
import * as boughline from "boughline";

const person = { bodyMass: "80 kg", climbHeight: "11 m", stature: "1.75 m", measuredPull: "520 N" };
const climb = { ...person, rig: "tail-3" };
const loads = { ...climb, anchor: "canopy", crotchHeight: "14 m", backup: "tail-knot" };
const cases = [
  ["one climb, full effort (4000 samples)", () => boughline.canIClimb(climb)],
  ["one climb while typing (200 samples)", () => boughline.canIClimb(climb, null, 200)],
  ["all rigs side by side, full effort", () => boughline.advantage(person)],
  ["all rigs side by side while typing", () => boughline.advantage(person, null, 200)],
  ["map of 48 by 32", () => boughline.feasibilityMap(person, null, 48, 32)],
  ["map of 120 by 80", () => boughline.feasibilityMap(person, null, 120, 80)],
  ["map of 200 by 200", () => boughline.feasibilityMap(person, null, 200, 200)],
  ["what each part carries, full effort", () => boughline.loads(loads)],
  ["what each part carries while typing", () => boughline.loads(loads, null, 200)],
  ["how much rope", () => boughline.ropeLength({ crotchHeight: "12 m", anchor: "base" })],
];

/** Milliseconds of a call: the middle of `times` runs after one that warms up. */
function middle(call, times = 9) {
  const reply = call();
  if (!reply.ok) throw new Error(JSON.stringify(reply.errors));
  const took = Array.from({ length: times }, () => {
    const start = performance.now();
    call();
    return performance.now() - start;
  });
  return took.sort((a, b) => a - b)[times >> 1];
}

const rows = cases.map(([name, call]) => [name, middle(call)]);
const [, unit] = rows[0];
const lines = rows.map(([name, took]) => `| ${name} | ${(took / unit).toFixed(2)} | ${took.toFixed(1)} |`);
const text = `| what | over one full climb | ms here |\n|---|---|---|\n${lines.join("\n")}\n`;
await writeFile(process.argv[2], text);
console.log(text);
