// A hand-made model in plain JavaScript, with a generator of its own, comes to what the library comes to.
import assert from "node:assert/strict";
import { test } from "node:test";
import * as boughline from "boughline";
import * as twin from "../../pkg-config/twin.mjs";
import { bits } from "../../pkg-config/twin-draws.mjs";

const first = bits();

/** The first number from the state that the paper starts from (from memory). */
test("the twin draws what the paper's generator draws", () => assert.equal(first, 3701687786));

const SAMPLES = 20000;
const climber = { bodyMass: "80 kg", climbHeight: "8.8 m", stature: "1.75 m", measuredPull: "520 N", rig: "tail-3" };
// One who tires, one who comes up, and one whose short arms gain little and sometimes nothing.
const plans = [
  climber,
  { ...climber, bodyMass: "60 kg", measuredPull: "700 N", climbHeight: "5 m" },
  { ...climber, stature: "0.9 m", measuredPull: "900 N" },
];
/** What the twin says nothing of: how the likely climb goes, and what no sample changes. */
const unsampled = new Set([
  "paceRest", "paceEvery", "paceTime", "longRest", "leftAtTop", "heightReached", "stillToTop", "heightInTime", "halfwayStrokes", "turnBackLeft",
  "turnBackStrokes", "turnBackTime", "turnBackHeight", "idealAdvantage",
]);

/** An answer's figures by id, and its strands' tensions. */
const figures = ({ figures, drawing }) => [
  ...figures.filter(({ id }) => !unsampled.has(id)),
  ...drawing.ropes[0].strands.map(({ tension }, at) => ({ ...tension, id: `strand${at}` })),
];
/** A number; what has no end is null where it crosses. */
const number = (value) => value ?? Infinity;

for (const plan of plans) {
  const { answer } = boughline.canIClimb(plan, null, SAMPLES);
  const samples = answer.effort.samples;
  const { figures: twins } = twin.canIClimb(plan, null, samples).answer;
  const { columns } = twin.climbs(plan, samples);
  const of = (id) => twins.find((figure) => figure.id === id);
  const name = `${plan.bodyMass}, ${plan.stature}`;

  test(`both tell the same figures: ${name}`, () => {
    const ids = (list) => list.map(({ id }) => id).sort();
    assert.deepEqual(ids(figures(answer)), ids(twins));
  });

  test(`likely figures are the same: ${name}`, () => {
    for (const { id, value } of figures(answer).filter(({ id }) => !id.toLowerCase().endsWith("chance"))) {
      const [one, other] = [number(value), of(id).value];
      assert.ok(one === other || Math.abs(one / other - 1) < 1e-9, `${id}: ${one}, ${other}`);
    }
  });

  // Both are estimates of so many samples: four standard errors of their difference.
  const within = (one, other) => Math.abs(one - other) <= 4 * Math.sqrt(2 * Math.max(other * (1 - other), 1 / samples) / samples);

  test(`chances agree: ${name}`, () => {
    for (const id of ["chance", "reachChance"]) {
      const one = figures(answer).find((figure) => figure.id === id).value;
      assert.ok(within(one, of(id).value), `${id}: ${one}, ${of(id).value}`);
    }
  });

  test(`percentiles agree: ${name}`, () => {
    for (const { id, value, low, high } of figures(answer).filter(({ id }) => id in columns)) {
      for (const [end, share] of [[low, 0.05], [high, 0.95]]) {
        // An end that the likely value lies beyond is the likely value.
        if (number(end) === number(value)) continue;
        const under = columns[id].filter((sample) => sample < number(end)).length / samples;
        const upTo = columns[id].filter((sample) => sample <= number(end)).length / samples;
        assert.ok(under <= share || within(under, share), `${id}: ${share} at ${end}, where the twin has ${under}`);
        assert.ok(upTo >= share || within(upTo, share), `${id}: ${share} at ${end}, where the twin has ${upTo}`);
      }
    }
  });
}
