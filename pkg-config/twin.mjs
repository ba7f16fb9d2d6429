// One question, answered a second time in plain JavaScript: can somebody climb on their rope's own tail as a 3:1, with a
// pull that was measured? What the module is timed against (bench.mjs), and a check of its model by a hand-made one
// (tests/packaging/twin.test.mjs): no rig is worked out here, the formulas are written down.
// Figures and their sources are those of the library, whose names they have here.
import { normal, triangular } from "./twin-draws.mjs";

const GRAVITY = 9.80665;
/** [low, likely, high] of what varies, where nothing else is said. */
const LIKELY = {
  kit: [4, 8, 15], throughTheStroke: [0.65, 0.70, 0.74], day: [0.95, 1, 1.05], shareOfReach: [0.55, 0.70, 0.85],
  back: [0.02, 0.05, 0.10], stack: [0.30, 0.45, 0.70], upperTurn: [0.83, 0.90, 0.95], lowerTurn: [0.83, 0.90, 0.95],
  drag: [0.80, 0.90, 1], pulling: [1.2, 1.35, 1.5], resetting: [4, 8, 15], roughness: [1.2, 1.5, 2],
  pullOverGrip: [0.50, 0.65, 0.85], rope: [0.60, 0.75, 1], bar: [1.07, 1.26, 1.58], faster: [1.6, 2.4, 3.8],
  modulus: [19.6e3, 80e3, 89e3], peak: [0.7, 1, 1.3], keptUp: [0.4, 0.5, 0.6],
};
const TIME_ALLOWED = 1800;
const ROPE_PER_RISE = 3;
const LONGEST_REST = 600;
const WALKING_DOWN = 0.5;
const ELBOW = { fatigue: 0.01086, recovery: 0.00225, rest: 4.93 };
const HAND = { fatigue: 0.01227, recovery: 0.00134, rest: 9.1 };

/** A draft's text in an SI unit as a number. */
function si(draft, id, unit) {
  const text = /^([0-9.]+) ?([a-zA-Z]+)$/.exec(draft[id] ?? "");
  if (text?.[2] !== unit) throw new Error(`The twin reads ${id} in ${unit} only, as "10 ${unit}".`);
  return Number(text[1]);
}

/** How many times the strength of one pull so many pulls take, with a rest between each two. */
function strengthFor(muscles, faster, pull, rest, pulls) {
  const one = (muscles.fatigue * faster / muscles.recovery) * (1 - Math.exp(-muscles.recovery * pull));
  const fades = -muscles.recovery * (pull + muscles.rest * rest);
  return 1 + one * (1 - Math.exp(pulls * fades)) / (1 - Math.exp(fades));
}

/** The shortest rest with which pulls at a share of one's strength last, at least `least`; endless where none is. */
function shortestRest(muscles, faster, share, pull, pulls, least) {
  const lasts = (rest) => share * strengthFor(muscles, faster, pull, rest, pulls) <= 1;
  if (lasts(least)) return least;
  let [short, long] = [0, LONGEST_REST];
  if (!lasts(long)) return Infinity;
  for (let halving = 0; halving < 13; halving++) {
    const middle = (short + long) / 2;
    if (lasts(middle)) long = middle;
    else short = middle;
  }
  return long;
}

/** What so many strokes come to; endless strokes of nothing are endless too. */
const times = (strokes, each) => strokes === Infinity ? strokes : strokes * each;

/** One climb by its figures: `of` picks a value of a spread, `deviations` is how far off the mean the climber's reach is. */
function climb({ mass, height, stature, measured }, of, deviations) {
  const upperTurn = of(LIKELY.upperTurn);
  const lowerTurn = of(LIKELY.lowerTurn);
  const climberWeight = (mass + of(LIKELY.kit)) * GRAVITY;
  // From the hand: up round the upper turn, down round the lower one, past the sliding hitch to the upper one.
  const pastUpper = upperTurn;
  const pastLower = pastUpper * lowerTurn;
  const pastHitch = pastLower * of(LIKELY.drag);
  const realAdvantage = 1 + pastUpper + pastHitch;
  const pullNeeded = climberWeight / realAdvantage;

  const toChest = 0.4802 * stature + 0.0012 + 0.046 * deviations;
  const toLap = 0.6940 * stature - 0.1061 + 0.041 * deviations;
  const topGap = of(LIKELY.stack);
  const handTravel = toChest * of(LIKELY.shareOfReach);
  const rise = Math.min(handTravel / ROPE_PER_RISE, Math.max(toLap - topGap, 0));
  const gain = rise - of(LIKELY.back);
  const taken = rise * ROPE_PER_RISE;
  const strokes = gain > 0 ? height / gain : Infinity;
  const ropeStretch = (height + topGap) * climberWeight / of(LIKELY.modulus);
  const emptyStrokes = taken > 0 ? ropeStretch * ROPE_PER_RISE / taken : Infinity;
  const allStrokes = strokes + emptyStrokes;
  const strokeWork = taken * pullNeeded;

  const armPull = measured * of(LIKELY.day) * of(LIKELY.throughTheStroke);
  const grip = armPull / of(LIKELY.pullOverGrip);
  const onRope = of(LIKELY.rope);
  const handHold = Math.max(grip * onRope, measured * onRope / of(LIKELY.bar));
  const armShare = pullNeeded / armPull;
  const handShare = pullNeeded / handHold;
  const powerKeptUp = 107 * grip / (95 * GRAVITY) * of(LIKELY.peak) * of(LIKELY.keptUp);
  const powerNeeded = times(allStrokes, strokeWork) / TIME_ALLOWED;

  const pulling = of(LIKELY.pulling);
  const resetting = of(LIKELY.resetting);
  const faster = of(LIKELY.faster);
  const endless = allStrokes === Infinity;
  const rest = ([muscles, share]) =>
    endless ? Infinity : shortestRest(muscles, faster, share, pulling, allStrokes, resetting);
  const restEach = Math.max(rest([ELBOW, armShare]), rest([HAND, handShare]));
  const left = TIME_ALLOWED / allStrokes - pulling;
  const most = Math.min(left, LONGEST_REST);
  const slow = left < resetting;
  const strain = ([muscles, share]) =>
    slow ? Infinity : share * strengthFor(muscles, faster, pulling, most, allStrokes);
  const one = gain > 0 ? Math.max(armShare, handShare) : Infinity;
  const whole = gain > 0
    ? Math.max(one, strain([ELBOW, armShare]), strain([HAND, handShare]), powerNeeded / powerKeptUp)
    : Infinity;
  const lastingTime = times(allStrokes, pulling + restEach);
  const ropeHandled = times(strokes, taken);
  return {
    one, whole, climberWeight, realAdvantage, pullNeeded, armPull, armShare, handHold, handShare, handTravel, gain, strokes,
    ropeHandled, strokeWork, work: ropeHandled * pullNeeded,
    workingTime: strokes * (pulling + resetting), restEach, lastingTime, hangingTime: lastingTime + height / WALKING_DOWN,
    powerNeeded, powerKeptUp, ropeStretch, emptyStrokes, allStrokes, topGap,
    anchorLoad: climberWeight * of(LIKELY.roughness),
    strand0: climberWeight, strand1: pastHitch * pullNeeded, strand2: pastLower * pullNeeded, strand3: pastUpper * pullNeeded,
    strand4: pullNeeded, strand5: 0,
  };
}

/** The likely climb of a draft, and a column for each figure of so many sampled ones. */
export function climbs(draft, samples) {
  const plan = {
    mass: si(draft, "bodyMass", "kg"), height: si(draft, "climbHeight", "m"), stature: si(draft, "stature", "m"),
    measured: si(draft, "measuredPull", "N"),
  };
  if (draft.rig !== "tail-3") throw new Error("The twin knows the rig tail-3 only.");
  const likely = climb(plan, ([, value]) => value, 0);
  const ids = Object.keys(likely);
  const columns = ids.map(() => new Float64Array(samples));
  for (let sample = 0; sample < samples; sample++) {
    const one = climb(plan, triangular, normal());
    for (let at = 0; at < ids.length; at++) columns[at][sample] = one[ids[at]];
  }
  return { likely, columns: Object.fromEntries(ids.map((id, at) => [id, columns[at]])) };
}

/** The share of climbs with at most enough strain to succeed. */
const succeeding = (strains) => strains.reduce((count, strain) => count + (strain <= 1), 0) / strains.length;

/** The answer as `canIClimb` gives it, as far as the twin goes: figures with 5th and 95th percentiles by nearest rank. */
export function canIClimb(draft, _, samples) {
  const { likely, columns: { one, whole, ...columns } } = climbs(draft, samples);
  const figure = (id, value, low, high) => ({ id, value, low: Math.min(low, value), high: Math.max(high, value) });
  const rank = (percent) => Math.max(Math.ceil(samples * percent / 100), 1) - 1;
  const figures = Object.entries(columns).map(([id, column]) => {
    const sorted = column.slice().sort();
    return figure(id, likely[id], sorted[rank(5)], sorted[rank(95)]);
  });
  for (const [id, strains] of Object.entries({ chance: one, reachChance: whole })) {
    const chance = succeeding(strains);
    figures.push(figure(id, chance, chance, chance));
  }
  return { ok: true, answer: { figures, effort: { samples } } };
}
