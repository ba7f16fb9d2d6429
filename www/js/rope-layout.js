// Where the rope of one state runs in a drawing of the tree, to scale. No DOM here: numbers and words only.
// It goes up on the left, over the crotch and down on the right; what is loose hangs to the ground and lies there.

import { lines } from "./rig-layout.js";

const WIDTH = 330;
const HEIGHT = 300; // of the crotch above the ground
const CROWN = 74; // above the crotch
const MIDDLE = 152; // of the trunk
const ASIDE = 28; // from there to a strand
const RISE = 20; // of the rope over the crotch
const LIMB = 64; // from there to words beside the limbs
const LINE = 14; // from one line of writing to the next
const FOLD = 5; // between two lays of rope on the ground
const REACH = 136; // of one lay

/** Rope in a pile on the ground, to and fro, from `start` to `end` of its length; what lies there already is below. */
function piled(x, y, start, end) {
  const row = (length) => Math.floor(length / REACH);
  const place = (length, on) => {
    const along = length - on * REACH;
    return { x: x + (on % 2 === 0 ? along : REACH - along), y: y - on * FOLD };
  };
  const points = [place(start, row(start))];
  for (let on = row(start); on < row(end); on += 1) points.push(place((on + 1) * REACH, on), place((on + 1) * REACH, on + 1));
  return [...points, place(end, row(end))];
}

/** How high the crotch is: as far as the rope of any state reaches. */
export function crotchHeight({ states }) {
  const upright = states.flatMap(({ items }) => items).filter(({ id }) => id === "up" || id === "down");
  return Math.max(0, ...upright.map(({ value }) => value ?? 0));
}

/** Pushes labels of one side apart, downwards and then back up from `floor`. */
function spread(labels, floor) {
  labels.sort((a, b) => a.y - b.y);
  let top = LINE;
  for (const label of labels) {
    label.top = Math.max(label.y - label.height / 2, top);
    top = label.top + label.height + 4;
  }
  let bottom = floor;
  for (const label of [...labels].reverse()) {
    label.top = Math.min(label.top, bottom - label.height);
    bottom = label.top - 4;
  }
}

/** A label beside its place: the noun over several lines, the length under it. */
function beside({ noun, text }, side, at, edge) {
  const rows = lines(noun, 14);
  return { rows, text, side, at, edge, y: at.y, height: (rows.length + 1) * LINE };
}

/** Rope of `length` up and down beside the strand that ends at `from`, in as many turns as there is room for. */
function folded(from, length, room) {
  const turns = Math.ceil(length / 2 / Math.max(room, 1));
  const leg = length / 2 / turns;
  const points = [];
  for (let { x } = from, i = 0; i < turns; i += 1, x += 2 * FOLD) {
    points.push({ x: x + FOLD, y: from.y }, { x: x + FOLD, y: from.y - leg }, { x: x + 2 * FOLD, y: from.y - leg }, { x: x + 2 * FOLD, y: from.y });
  }
  return points;
}

/**
 * Places for a state's items in a tree `tall` metres up to the crotch: `runs` of rope as lists of points, `knots`, the
 * `hitch` between what bears and what hangs loose, and `labels`. None where no rope comes down.
 */
export function ropeLayout({ items }, tall) {
  const item = (id) => items.find((one) => one.id === id && one.value > 0);
  const [up, over, down, inRig, knot, tail] = ["up", "overCrotch", "down", "inRig", "anchorKnot", "tail"].map(item);
  if (down === undefined || !(tall > 0)) return null;

  const scale = HEIGHT / tall; // points a metre
  const ground = CROWN + HEIGHT;
  const [left, right] = [MIDDLE - ASIDE, MIDDLE + ASIDE];
  const crotch = { x: MIDDLE, y: CROWN - RISE };
  const [runs, labels] = [[], []];
  const draw = (id, ...points) => runs.push({ id, points });
  const note = (figure, side, at, edge) => labels.push(beside(figure, side, at, edge));

  // The part that is tied: from the foot or the harness up to the crotch, or a tail that hangs from the crotch.
  const foot = { x: left, y: CROWN + (up?.value ?? 0) * scale };
  if (up) {
    draw("up", foot, { x: left, y: CROWN });
    note(up, "left", { x: left, y: (foot.y + CROWN) / 2 }, left - 16);
  } else if (tail) {
    const end = { x: left, y: Math.min(ground, CROWN + tail.value * scale) };
    draw("tail", crotch, { x: left, y: CROWN, arc: "left" }, end);
    note(tail, "left", { x: left, y: (end.y + CROWN) / 2 }, left - 16);
  }

  // The part that bears: over the crotch and down to the hitch, or to the ground.
  draw("overCrotch", up ? { x: left, y: CROWN } : crotch, { x: right, y: CROWN, arc: "right" });
  if (over) note(over, "right", { x: right - 4, y: CROWN - 12 }, MIDDLE + LIMB);
  const end = { x: right, y: CROWN + down.value * scale };
  const hitch = end.y < ground - 1 ? end : null;
  const folds = inRig ? folded(end, inRig.value * scale, Math.min(60, end.y - CROWN - 8)) : [end];
  const edge = folds.at(-1).x + 16; // of the words on this side, clear of every strand
  draw("down", { x: right, y: CROWN }, end);
  note(down, "right", { x: right, y: (CROWN + end.y) / 2 }, edge);
  if (inRig) {
    draw("inRig", end, ...folds);
    note(inRig, "right", { x: folds.at(-1).x, y: (end.y + folds[1].y) / 2 }, edge);
  }

  // What makes it fast: at the foot, or where a loop is tied before it goes up, or at the crotch.
  const fast = !tail ? foot : up ? end : crotch;
  const knots = knot ? [fast] : [];
  if (knot) {
    if (fast === end) note(knot, "right", fast, edge);
    else note(knot, "left", fast, fast === crotch ? MIDDLE - LIMB : left - 16);
  }

  // What is loose hangs to the ground, and lies there in one pile.
  let pen = end;
  let lain = 0;
  for (const loose of items.filter(({ id, value }) => value > 0 && (id === "ropeTail" || id === "ropeSpare" || (id === "tail" && up)))) {
    const long = loose.value * scale;
    const hung = Math.min(long, Math.max(0, ground - pen.y));
    const start = pen;
    pen = { x: start.x, y: start.y + (lain > 0 ? 0 : hung) };
    const rest = lain > 0 ? long : long - hung;
    const laid = rest > 0.5 ? piled(right, ground - 3, lain, lain + rest) : [];
    draw(loose.id, start, pen, ...laid);
    if (pen.y - start.y > 1) note(loose, "right", { x: start.x, y: (start.y + pen.y) / 2 }, edge);
    else labels.push({ rows: [], text: `${loose.noun} ${loose.text}`, side: "under" });
    if (laid.length > 0) {
      lain += rest;
      pen = laid.at(-1);
    }
  }

  spread(labels.filter(({ side }) => side === "left"), ground - 6);
  spread(labels.filter(({ side }) => side === "right"), ground - 10 - Math.floor(lain / REACH) * FOLD);
  let bottom = ground + 12;
  for (const label of labels.filter(({ side }) => side === "under")) {
    Object.assign(label, { edge: WIDTH - 8, top: bottom, height: LINE });
    bottom += LINE + 4;
  }
  return { width: WIDTH, height: bottom + 6, ground, crotch: CROWN, middle: MIDDLE, aside: ASIDE, rise: RISE, line: LINE, scale, runs, knots, hitch, labels };
}

/** The drawing in words: every item with its length, and what they come to. */
export function ropeWords({ noun, items, total }) {
  return `${noun}: ${items.map((item) => `${item.noun} ${item.text}`).join(", ")}; ${total.noun} ${total.text}.`;
}
