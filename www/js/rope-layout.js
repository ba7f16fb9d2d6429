// Where the rope of one state runs in a drawing of the tree, to scale. No DOM here: numbers and words only.
// It goes up on the left, over the crotch and down on the right; what is loose hangs to the ground and lies there.

import { lines } from "./rig-layout.js";
import { Pile, folded } from "./rope-lays.js";

const WIDTH = 330;
const HEIGHT = 300; // of the crotch above the ground
const CROWN = 74; // above the crotch
const MIDDLE = 152; // of the trunk
const ASIDE = 28; // from there to a strand
const RISE = 20; // of the rope over the crotch
const LIMB = 64; // from there to words beside the limbs
const LINE = 14; // from one line of writing to the next
const REACH = 136; // of one lay of rope on the ground to the right
const LEFT_REACH = 108; // and to the left
// Rope to and fro beside a strand: its turns, and their legs, which grow where more turns would be needed.
const RIG = { leg: 60, most: 4 };
const DETOUR = { leg: 90, most: 2 };

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
  const rows = lines(noun, side === "left" ? 13 : 14);
  return { rows, text, side, at, edge, y: at.y, height: (rows.length + 1) * LINE };
}

/**
 * Places for a state's items in a tree `tall` metres up to the crotch: `runs` of rope as lists of points, `knots`, the
 * `hitch` between what bears and what hangs loose, the `stopper`, and `labels`. None where no rope comes down. `cord` is
 * the figure of a retrieval cord, `above` that of the height at which the rope that somebody has ends on the way down.
 */
export function ropeLayout({ id, items }, tall, { cord, above } = {}) {
  const item = (name) => items.find((one) => one.id === name && one.value > 0);
  const [up, over, down, redirect, aside, inRig, knot, tail, reserve] =
    ["up", "overCrotch", "down", "redirectRope", "footOffset", "inRig", "anchorKnot", "tail", "reserve"].map(item);
  if (down === undefined || !(tall > 0)) return null;

  const scale = HEIGHT / tall; // points a metre
  const ground = CROWN + HEIGHT;
  const [left, right] = [MIDDLE - ASIDE, MIDDLE + ASIDE];
  const crotch = { x: MIDDLE, y: CROWN - RISE };
  const [runs, labels] = [[], []];
  const draw = (name, ...points) => runs.push({ id: name, points });
  const note = (figure, side, at, edge) => labels.push(beside(figure, side, at, edge));
  const noteUnder = ({ noun, text }) => labels.push({ rows: [], text: `${noun} ${text}`, side: "under" });
  const looped = tail !== undefined || cord !== undefined; // round the crotch

  // A redirect takes rope beside the other side, where there is always room.
  const detour = { x: left, y: CROWN + 8 };
  const turns = redirect ? [...folded(detour, redirect.value * scale, DETOUR.leg, { x: -1, y: 1 }, DETOUR.most), detour] : [detour];
  const leftEdge = Math.min(...turns.map(({ x }) => x)) - 16;
  if (redirect) {
    draw("redirectRope", detour, ...turns);
    note(redirect, "left", { x: leftEdge + 16, y: detour.y + 8 }, leftEdge);
  }

  // The part that is tied: from the foot or the harness up to the crotch, or what hangs there to bring the anchor down.
  const foot = { x: left, y: CROWN + (up?.value ?? 0) * scale };
  const hangs = up ? undefined : tail ?? (knot ? cord : undefined);
  if (up) {
    draw("up", foot, { x: left, y: CROWN });
    note(up, "left", { x: left, y: (foot.y + CROWN) / 2 }, leftEdge);
  } else if (hangs) {
    const end = { x: left, y: Math.min(ground, CROWN + hangs.value * scale) };
    draw(hangs.id, crotch, { x: left, y: CROWN, arc: "left" }, end);
    note(hangs, "left", { x: left, y: (end.y + CROWN) / 2 }, leftEdge);
  }

  // The part that bears: over the crotch and down to the hitch, or to the ground.
  draw("overCrotch", up ? { x: left, y: CROWN } : crotch, { x: right, y: CROWN, arc: "right" });
  if (over) note(over, "right", { x: right - 4, y: CROWN - 12 }, MIDDLE + LIMB);
  const end = { x: right, y: CROWN + down.value * scale };
  const hitch = end.y < ground - 1 ? end : null;
  const room = end.y - CROWN - 8;
  const leg = Math.min(Math.max(RIG.leg, (inRig?.value * scale) / 2 / RIG.most), HEIGHT / 2);
  // Near the crotch the rig has more room below.
  const folds = inRig ? folded(end, inRig.value * scale, leg, { x: 1, y: room < leg ? 1 : -1 }, RIG.most) : [end];
  const edge = folds.at(-1).x + 16; // of the words on this side, clear of every strand
  const short = id === "down" && above?.value > 0 ? Math.min(above.value * scale, room) : 0;
  const reached = { x: right, y: end.y - short };
  draw("down", { x: right, y: CROWN }, reached);
  note(down, "right", { x: right, y: (CROWN + reached.y) / 2 }, edge);
  if (inRig) {
    draw("inRig", end, ...folds);
    note(inRig, "right", { x: folds.at(-1).x, y: (end.y + folds[1].y) / 2 }, edge);
  }

  // What makes it fast: at the foot, or where a loop is tied before it goes up, or at the crotch.
  const fast = !looped ? foot : up ? end : crotch;
  const knots = knot ? [fast] : [];
  if (knot) {
    if (fast === end) note(knot, "right", fast, edge);
    else note(knot, "left", fast, fast === crotch ? MIDDLE - LIMB : leftEdge);
  }

  // What lies at the foot: what can be let out, what runs out to where people stand, and the end that a loop is not tied in.
  const ends = items.filter(({ id: name, value }) => value > 0 && (name === "ropeTail" || name === "ropeSpare"));
  const endLies = looped && up !== undefined;
  const atFoot = new Pile(left, ground - 3, -LEFT_REACH);
  for (const lying of [reserve, aside, ...(endLies ? ends : [])].filter(Boolean)) {
    draw(lying.id, ...atFoot.lay(lying.value * scale));
    noteUnder(lying);
  }

  // What is loose hangs to the ground, and lies there in one pile.
  const pile = new Pile(right, ground - 3, REACH);
  let pen = end;
  let stopper = endLies && ends.some(({ id: name }) => name === "ropeTail") ? foot : null;
  for (const loose of endLies ? [tail].filter(Boolean) : ends) {
    if (short > 0) {
      noteUnder(loose); // it is what is missing
      continue;
    }
    if (loose.id === "ropeTail") stopper = pen;
    const long = loose.value * scale;
    const hung = Math.min(long, Math.max(0, ground - pen.y));
    const start = pen;
    pen = { x: start.x, y: start.y + (pile.lain > 0 ? 0 : hung) };
    const rest = pile.lain > 0 ? long : long - hung;
    const laid = rest > 0.5 ? pile.lay(rest) : [];
    draw(loose.id, start, pen, ...laid);
    if (pen.y - start.y > 1) note(loose, "right", { x: start.x, y: (start.y + pen.y) / 2 }, edge);
    else noteUnder(loose);
    if (laid.length > 0) pen = laid.at(-1);
  }
  if (short > 0) {
    stopper = reached;
    draw("missing", reached, end);
    note(above, "right", { x: right, y: (reached.y + end.y) / 2 }, edge);
  }

  spread(labels.filter(({ side }) => side === "left"), ground - 6 - atFoot.height);
  spread(labels.filter(({ side }) => side === "right"), ground - 10 - pile.height);
  let bottom = ground + 12;
  for (const label of labels.filter(({ side }) => side === "under")) {
    Object.assign(label, { edge: WIDTH - 8, top: bottom, height: LINE });
    bottom += LINE + 4;
  }
  return {
    width: WIDTH, height: bottom + 6, ground, crotch: CROWN, middle: MIDDLE, aside: ASIDE, rise: RISE, line: LINE, scale,
    runs, knots, hitch, stopper, labels,
  };
}

/** The drawing in words: every item with its length, what they come to, and what else is drawn. */
export function ropeWords({ id, noun, items, total }, { cord, above } = {}) {
  const more = [cord, id === "down" && above?.value > 0 ? above : undefined].filter(Boolean);
  return [
    `${noun}: ${items.map((item) => `${item.noun} ${item.text}`).join(", ")}; ${total.noun} ${total.text}.`,
    ...more.map((figure) => `Beside it: ${figure.noun} ${figure.text}.`),
  ].join(" ");
}

/** What is drawn beside the items: the figures of a retrieval cord and of an end above the ground, where there are. */
export function ropeExtras({ figures }) {
  const figure = (id) => figures.find((one) => one.id === id);
  return { cord: figure("retrievalCord"), above: figure("ropeEndsAbove") };
}
