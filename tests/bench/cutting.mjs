// How many cutting plans the shipped module proves, and how long it takes.
//
// Realistic: cords of 0.3 to 4 m to the centimetre, evenly; two to six lengths of hank of 5 to 50 m to the metre, evenly,
// half of the plans priced (a metre out of a longer hank a little cheaper), a quarter with a remnant at home. Thirds: cords
// of 2.8 to 3.8 m out of hanks of 7 and 10 m, of which three go into one or do not: the hard kind.
import * as boughline from "boughline";
import { chance } from "../lib/chance.mjs";
import { middle } from "./times.mjs";

export const PLANS = 100;
export const LIMIT = 200; // milliseconds
const COUNTS = [12, 20, 40, 55];

/** A die whose throws are always the same: whole numbers from `least` to `most`. */
function dice(seed) {
  const draw = chance(seed);
  return (least, most) => least + Math.floor(draw() * (most - least + 1));
}

function realistic(seed, count) {
  const from = dice(seed);
  const cords = Array.from({ length: count }, () => `1 ~ 6 mm ~ ${from(30, 400)} cm`);
  const priced = from(0, 1) === 0;
  const hanks = Array.from({ length: from(2, 6) }, () => {
    const metres = from(5, 50);
    return `any ~ ${metres} m${priced ? ` ~ ${(metres * (100 - metres + from(0, 20))) / 100}` : ""}`;
  });
  if (from(0, 3) === 0) hanks.push(`any ~ ${from(50, 600)} cm ~ 0 ~ x1`);
  return { cords: spread(cords), hanks: hanks.join("\n") };
}

function thirds(seed, count) {
  const from = dice(seed);
  return { cords: spread(Array.from({ length: count }, () => `1 ~ 6 mm ~ ${from(280, 380)} cm`)), hanks: "any ~ 10 m\nany ~ 7 m" };
}

/** Cords of one length in one row: a list takes 60 rows, so the lengths are brought to as many where there are more. */
function spread(cords) {
  const counts = new Map();
  for (const cord of cords) counts.set(cord, (counts.get(cord) ?? 0) + 1);
  return [...counts].map(([cord, count]) => cord.replace(/^1/u, String(count))).slice(0, 60).join("\n");
}

/** A plan's time in ms, and what was proved of it. */
function planned(draft) {
  const start = performance.now();
  const reply = boughline.cutPlan(draft);
  const ms = performance.now() - start;
  if (!reply.ok) throw new Error(JSON.stringify(reply.errors));
  const [{ standing, proof }] = reply.answer.kinds;
  return { ms, proved: standing === "proved", whole: proof.includes("Nor does any") };
}

/** `{ kind, count, proved, inTime, whole, middle, slowest }` for each kind of plan and count of cords. */
export function cutting() {
  planned(realistic(1, COUNTS[0])); // compiles what it needs
  return [["realistic", realistic], ["thirds", thirds]].flatMap(([kind, of]) => COUNTS.map((count) => {
    const all = Array.from({ length: PLANS }, (_, seed) => planned(of(seed + 1, count)));
    const those = (which) => all.filter(which).length;
    return {
      kind, count, proved: those(({ proved }) => proved), inTime: those(({ proved, ms }) => proved && ms <= LIMIT),
      whole: those(({ whole }) => whole), middle: middle(all.map(({ ms }) => ms)), slowest: Math.max(...all.map(({ ms }) => ms)),
    };
  }));
}
