// Any rig at all: 2,000 drawings from a seed, far odder than anybody would rig.
import assert from "node:assert/strict";
import { test } from "node:test";
import { rigLayout } from "../../www/js/rig-layout.js";
import { chance } from "../lib/chance.mjs";

const COUNT = 2000;

const NOUNS = ["anchor", "hands", "helper", "upper hitch", "second lower turn", "knot in the tail", "fifth upper hitch", "connector at the upper hitch", "hitch tie", "extraordinarily-long-pulley-name"];
const BODIES = ["crotch", "upper hitch", "third upper hitch", "climber", "ground", "an uncommonly long name for a body"];
const TENSIONS = ["0 N", "328 N", "1.29 kN", "73.7 lbf", "1,234–2,345 N", "not known, at least 12,345 N"];

/** A drawing of up to five ropes and forty stops in all; every third has heights. */
export function randomDrawing(seed) {
  const random = chance(seed);
  const below = (n) => Math.floor(random() * n);
  const pick = (all) => all[below(all.length)];
  const kinds = ["tree", ...Array.from({ length: below(6) }, () => "carriage"), "climber", ...(below(2) ? ["ground"] : [])];
  const scale = seed % 3 === 0;
  const levels = kinds.map((kind, i) => ({
    id: `body-${i}`, kind, noun: kind === "climber" ? "climber" : pick(BODIES),
    ...(scale && below(5) > 0 ? { height: (kinds.length - 1 - i) * below(9) / 4, at: `${below(400) / 10} ${pick(["m", "ft"])}` } : {}),
  }));
  const wordy = below(2) === 0;
  let left = 2 + below(39);
  const ropes = Array.from({ length: 1 + below(5) }, (_, r) => {
    const count = Math.max(2, r === 4 ? Math.min(left, 40) : below(left) + 1);
    left = Math.max(2, left - count);
    const stops = Array.from({ length: count }, (_, i) => {
      const end = i === 0 || i === count - 1;
      const kind = end ? pick(count > 2 || i === 0 ? ["tied", "free", "tied", "hitch", "hand"] : ["tied", "hand"]) : pick(["turn", "turn", "turn", "hitch", "hitch", "hand", "knot", "tied"]);
      return {
        kind, level: kind === "free" ? null : below(levels.length), noun: kind === "free" ? "" : wordy ? pick(NOUNS) : kind,
        state: kind === "hitch" ? pick(["grips", "slides"]) : null, single: kind !== "free" && below(3) === 0,
      };
    });
    const text = () => (wordy ? pick(TENSIONS) : `${below(900)} N`);
    return { noun: `rope ${r}`, stops, strands: stops.slice(1).map(() => ({ tension: { value: 1, low: 1, high: 1, text: text() } })) };
  });
  return { levels, ropes, text: "" };
}

const meet = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
/** Words may stand inside their own pulley, whose disc hides the body's lines behind it. */
const own = (text, box) => text.wheel !== undefined && (box.of === text.wheel ? box.kind === "wheel" : ["join", "hanger", "bar", "ground", "limb"].includes(box.kind));
const told = ({ rows, of }, box) => `${rows.join(" ")} of ${of?.kind} on ${box.kind} of ${box.of?.kind ?? "the whole"}`;

/** Everything that is wrong with a layout, in words. */
export function faults({ width, height, levels, ropes, boxes, texts, dense, misfits }) {
  const wrong = misfits > 0 ? [`${misfits} texts have no place`] : [];
  const numbers = (value, path = "") => {
    if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
    return value && typeof value === "object" ? Object.entries(value).flatMap(([key, one]) => ["of", "wheel"].includes(key) ? [] : numbers(one, `${path}.${key}`)) : [];
  };
  wrong.push(...numbers({ width, height, levels, ropes, boxes, texts }).map((path) => `${path} is no number`));
  const outside = ({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height;
  wrong.push(...boxes.filter(outside).map(({ kind }) => `${kind} is outside`));
  wrong.push(...texts.filter(({ box }) => outside(box)).map(({ rows }) => `${rows.join(" ")} is outside`));
  texts.forEach((text, i) => {
    wrong.push(...texts.slice(i + 1).filter(({ box }) => meet(text.box, box)).map((other) => `${text.rows.join(" ")} on ${other.rows.join(" ")}`));
    wrong.push(...boxes.filter((box) => !own(text, box) && meet(text.box, box)).map((box) => told(text, box)));
  });
  const stops = ropes.flatMap((rope) => rope.stops).filter(({ kind }) => kind !== "free");
  const runs = ropes.flatMap((rope) => rope.runs).filter(({ text }) => text !== null);
  for (const one of [...stops, ...runs]) {
    if (!texts.some(({ of }) => of === one)) wrong.push(`${one.key ?? one.text} is not told`);
  }
  if (dense && new Set(stops.map(({ key }) => key)).size !== stops.length) wrong.push("two stops have one letter");
  return wrong;
}

/** Glyphs on glyphs and strands on strands, in words. */
export function knots({ boxes }) {
  const solid = boxes.filter(({ kind }) => kind === "glyph" || kind === "wheel");
  const strands = boxes.filter(({ kind }) => kind === "strand").map((one) => ({ ...one, top: one.top + 3, bottom: one.bottom - 3 }));
  return [
    ...solid.flatMap((one, i) => solid.slice(i + 1).filter((other) => one.of !== other.of && meet(one, other)).map((other) => `${one.of.key} on ${other.of.key}`)),
    ...strands.flatMap((one, i) => strands.slice(i + 1).filter((other) => meet(one, other)).map(() => "a strand on a strand")),
  ];
}

if (!process.env.SCAN) test(`in ${COUNT} random drawings everything is told, inside the frame, and no words lie on words, glyphs or lines, nor glyph on glyph`, () => {
  let roomy = 0;
  for (let seed = 1; seed <= COUNT; seed += 1) {
    const layout = rigLayout(randomDrawing(seed));
    assert.deepEqual([...faults(layout), ...knots(layout)].slice(0, 5), [], `drawing ${seed}`);
    roomy += layout.dense ? 0 : 1;
  }
  assert.ok(roomy > COUNT / 50, "some are told in words");
});
