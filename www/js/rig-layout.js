import { nameRows, bands } from "./rig-bands.js";
import { bodyBoxes, overlaps, ropeBoxes } from "./rig-boxes.js";
import { labels, nameTexts } from "./rig-labels.js";
import { plans } from "./rig-plans.js";
import { scaleStrip, scaleWidth } from "./rig-scale.js";
import { joins, seatPlace, seated } from "./rig-seat.js";
import { threads } from "./rig-threads.js";
import { textBox, textWidth } from "./text-box.js";

export { lines } from "./text-box.js";

// Where everything in a rig's drawing goes. No DOM here: numbers and words only.
// A drawing is tried by several plans, the most readable first, until its words lie on nothing.

const LEAST_WIDTH = 320;
const NARROW = 323; // words of a drawing that is no wider have about 11 px on the narrowest phone
const EDGE = 12;
const WORDS = 64; // right of the last column

/** The letter by which a crowded drawing and its table name a stop. */
export function keyOf(index) {
  return String.fromCharCode(65 + (index % 26)) + (index >= 26 ? Math.floor(index / 26) : "");
}

/** The letters of the stops of each rope; a loose tail has none, as nothing is said of it. */
export function keysOf(ropes) {
  let index = 0;
  return ropes.map(({ stops }) => stops.map(({ kind }) => {
    if (kind === "free") return "";
    index += 1;
    return keyOf(index - 1);
  }));
}

/** The x of each column, with room kept beside those where somebody sits. */
function columnPlaces(count, start, pitch, gaps) {
  return Array.from({ length: count + 1 }, (_, c) =>
    start + c * pitch + gaps.filter(({ before }) => before <= c && before < count).reduce((sum, { room }) => sum + room, 0));
}

/** Sets across where every stop is; down there is only what the bands gave it. */
function placeAcross(ropes, xs) {
  const keys = keysOf(ropes);
  for (const [rope, { stops }] of ropes.entries()) {
    for (const [at, stop] of stops.entries()) {
      const [enter, leave] = [xs[stop.column], xs[stop.column + (stop.bends ? 1 : 0)]];
      stop.key = keys[rope][at];
      stop.radius = (leave - enter) / 2;
      stop.x = stop.wheel ? enter + stop.radius : enter;
      stop.enter = { x: enter, y: 0 };
      stop.leave = { x: leave, y: 0 };
    }
  }
}

/** A rope's strands as lines; a loose tail has no tension to tell. */
function runs({ stops, strands }) {
  return strands.slice(0, Math.max(0, stops.length - 1)).map((strand, i) => {
    const [from, to] = [stops[i], stops[i + 1]];
    return { x1: from.leave.x, y1: from.y, x2: to.enter.x, y2: to.y, text: to.kind === "free" ? null : strand.tension.text };
  });
}

/** The signs that the letters leave unsaid, in words. */
function signTexts(stops, x, y) {
  const signs = [
    stops.some(({ state }) => state === "grips") ? "■ grips" : null,
    stops.some(({ state }) => state === "slides") ? "□ slides" : null,
    stops.some(({ single }) => single) ? "◇ single" : null,
  ].filter(Boolean);
  if (signs.length === 0) return [];
  const text = { rows: [signs.join("   ")], x, y, className: "key" };
  return [{ ...text, box: textBox(text), of: null }];
}

/** Whether a figure sits on nothing else of the drawing. */
function sitsFree({ hand, hangers, figure }, others, gutter, width) {
  return figure.boxes.every((limb) => limb.left >= gutter && limb.right <= width && !others.some((one) => (hand === null || one.of !== hand) && overlaps(limb, one)) && !hangers.some((one) => overlaps(limb, one)));
}

/** What every plan for a drawing begins with: the ropes followed, and the margin for the strip and the names. */
function groundwork(drawing) {
  const threaded = threads(drawing.ropes);
  const strip = scaleWidth(drawing.levels);
  const names = Math.max(44, ...drawing.levels.flatMap(nameRows).map((row) => textWidth(row, "name")));
  return { threaded, count: Math.max(1, ...threaded.map(({ last }) => last + 1)), strip, gutter: Math.ceil(strip + 6 + names + 6) };
}

/** Whether words would make a drawing too wide, before it is tried. */
function tooWide({ words, bridge, lead, pitch }, { count, gutter }) {
  return words && gutter + bridge + 4 + lead + (count - 1) * pitch + WORDS > NARROW;
}

/** The drawing by one plan, with the count of what found no place in it. */
function tried(drawing, plan, { threaded, count, strip, gutter }) {
  const ropes = threaded.map((rope) => ({ ...rope, stops: rope.stops.map((stop) => ({ ...stop })) }));
  const stops = ropes.flatMap((rope) => rope.stops);
  const places = drawing.levels.map((level, i) => level.kind === "climber" ? seatPlace(stops.filter((stop) => stop.level === i), ropes, plan) : null);
  const gaps = places.flatMap((place) => place?.gap ? [place.gap] : []);
  const xs = columnPlaces(count, gutter + plan.bridge + 4 + plan.lead, plan.pitch, gaps);
  placeAcross(ropes, xs);
  const right = places.some((place) => place !== null && place.way > 0) ? 66 : plan.bridge + 6;
  const width = Math.ceil(Math.max(LEAST_WIDTH, xs[count - 1] + Math.max(right, plan.words ? WORDS : 0)));
  const layout = { width, gutter, dense: !plan.words, pitch: plan.pitch, names: strip + 6 };
  if (plan.words && width > NARROW) return { ...layout, misfits: Infinity };

  layout.levels = bands(drawing.levels, ropes, plan);
  const last = layout.levels.at(-1);
  const floor = (last ? last.top + last.height : EDGE) + plan.tail;
  for (const stop of stops) {
    if (stop.level === null) stop.y = floor;
    stop.enter.y = stop.y;
    stop.leave.y = stop.y;
  }
  layout.ropes = ropes.map((rope) => ({ ...rope, runs: runs(rope) }));
  const signs = plan.words ? [] : signTexts(stops, layout.names, floor + 28);
  layout.room = floor + EDGE;
  layout.height = layout.room + (signs.length > 0 ? 24 : 0);
  layout.joins = joins(layout.levels, stops, plan.bridge);
  layout.seats = places.filter(Boolean).map((place) => seated(place, plan));
  layout.scale = scaleStrip(layout.levels.map((level, i) => ({ ...level, height: drawing.levels[i].height })), EDGE + 10, floor - 10);
  const fixed = [...ropeBoxes(layout.ropes), ...bodyBoxes(layout.levels, layout), ...layout.joins.flatMap(({ boxes }) => boxes)];
  layout.boxes = [...fixed, ...layout.seats.flatMap(({ boxes }) => boxes)];
  const solid = fixed.filter(({ kind }) => kind !== "ground" && kind !== "limb");
  const crowded = layout.seats.filter((seat) => !sitsFree(seat, solid, gutter - 4, width)).length;
  if (crowded > 0 && plan.seat !== "apart") return { ...layout, misfits: Infinity };
  const { texts, misfits } = labels(layout, plan, layout.boxes);
  layout.texts = [...nameTexts(layout.levels, layout.names), ...texts, ...signs, ...(layout.scale?.ticks.map(({ text }) => text) ?? [])];
  return { ...layout, misfits };
}

const known = new WeakMap();

/** Places for a drawing: `width`, `height`, `levels`, for each rope its stops and runs, and every text with its place. */
export function rigLayout(drawing) {
  if (known.has(drawing)) return known.get(drawing);
  const base = groundwork(drawing);
  let best = null;
  for (const plan of plans(drawing)) {
    if (tooWide(plan, base)) continue;
    const layout = tried(drawing, plan, base);
    if (best === null || layout.misfits < best.misfits || (layout.misfits === best.misfits && layout.width < best.width)) best = layout;
    if (best.misfits === 0 && (best.width <= NARROW || plan.seat === "apart")) break;
  }
  known.set(drawing, best);
  return best;
}
