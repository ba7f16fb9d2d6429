import { crowd, underWheel, within } from "./rig-boxes.js";
import { nameRows, stopRows } from "./rig-bands.js";
import { LINE, textBox } from "./text-box.js";

// Where the words of a rig's drawing stand: each takes the first of its places that lies on nothing. No DOM here.

const STEPS = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88];
const BASE = 4; // from the middle of a line of writing down to its foot

/** Rows beside, above or below a point, as tall as they are. */
function around(rows, { x, y }, aside, above, className) {
  const tall = (rows.length - 1) * LINE;
  const heights = [y + BASE - tall / 2, y - above - tall, y + above + 10];
  return [
    ...heights.map((first) => ({ rows, x: x + aside, y: first, className })),
    ...heights.map((first) => ({ rows, x: x - aside, y: first, className, anchor: "end" })),
    ...[y - above - 10 - tall, y + above + 20].map((first) => ({ rows, x, y: first, className, anchor: "middle" })),
  ];
}

/** Whether words inside a pulley stay inside its circle. */
function inWheel({ x, y, radius }, { rows, ...text }) {
  return rows.every((row, i) => {
    const { left, right, top, bottom } = textBox({ ...text, rows: [row], y: text.y + i * LINE });
    return [[left, top], [right, top], [left, bottom], [right, bottom]].every(([cx, cy]) => Math.hypot(cx - x, cy - y) < radius - 4);
  });
}

function wheelPlaces(stop, rows) {
  const middle = { rows, x: stop.x, y: stop.y + BASE - ((rows.length - 1) * LINE) / 2, className: "stop", anchor: "middle", wheel: stop };
  return inWheel(stop, middle) ? [middle] : [];
}

/** The places of a stop's words, the best first: as wide as they may be, then narrower. */
function* wordPlaces(stop) {
  for (const most of [9, 10, 7, 14]) {
    const rows = stopRows(stop, most);
    if (stop.wheel) yield* wheelPlaces(stop, rows);
    yield* stop.wheel ? around(rows, stop, stop.radius + 5, 10, "stop") : around(rows, stop, stop.single ? 20 : 13, 8, "stop");
  }
}

/** The places of a stop's letter: off the lines that meet here, above and aside first. */
function* letterPlaces(stop) {
  const rows = [stop.key];
  if (stop.wheel) {
    yield* wheelPlaces(stop, rows);
    yield* around(rows, stop, stop.radius + 5, 10, "stop");
    return;
  }
  const near = around(rows, stop, stop.single ? 13 : 10, 9, "stop").slice(1);
  if (stop.kind === "hand") yield near[3]; // the arm comes from the right
  yield* near;
  yield* around(rows, stop, stop.single ? 18 : 11, 8, "stop");
}

/** The places of a strand's tension beside it, level or reading upwards. */
function* tensionPlaces({ x1: x, y1, y2, text }, { turned }, clear) {
  const rows = [text];
  const heights = [...STEPS.map((step) => y1 + (y2 - y1) * step), ...clear.filter((y) => y > Math.min(y1, y2) && y < Math.max(y1, y2))];
  // One side all the way along before the other, so that it is plain whose they are.
  const sides = turned
    ? [{ aside: -7, down: 0, anchor: "middle", turned }, { aside: 20, down: 0, anchor: "middle", turned }]
    : [{ aside: 6, down: 5 }, { aside: -6, down: 5, anchor: "end" }];
  for (const { aside, down, ...rest } of sides) {
    for (const y of heights) yield { rows, x: x + aside, y: y + down, className: "tension", ...rest };
  }
}

/** The names of the bodies, in the margin. */
export function nameTexts(levels, x) {
  return levels.map((level) => {
    const rows = nameRows(level);
    const text = { rows, x, y: level.y + BASE - ((rows.length - 1) * LINE) / 2, className: "name" };
    return { ...text, box: textBox(text), of: level };
  });
}

/** Places every stop's and every strand's words among `boxes`; `misfits` counts those that found no place. */
export function labels({ levels, ropes, gutter, width, room }, plan, boxes) {
  const taken = crowd(boxes);
  const texts = [];
  let misfits = 0;
  const placed = (of, places, frame) => {
    for (const place of places) {
      const box = textBox(place);
      if (!within(box, frame) || taken.meets(box, (one) => !(place.wheel && underWheel(place.wheel, one)))) continue;
      texts.push({ ...place, box, of });
      taken.add({ ...box, kind: "text", of });
      return;
    }
    misfits += 1;
  };
  const stops = ropes.flatMap((rope) => rope.stops).filter(({ kind }) => kind !== "free");
  for (const stop of [...stops.filter(({ wheel }) => wheel), ...stops.filter(({ wheel }) => !wheel)]) {
    const { top, height: tall } = levels[stop.level] ?? { top: 0, height: room };
    placed(stop, plan.words ? wordPlaces(stop) : letterPlaces(stop), { left: gutter, right: width - 3, top, bottom: top + tall });
  }
  const between = levels.slice(1).map(({ top }) => top - plan.strand / 2);
  for (const run of ropes.flatMap((rope) => rope.runs).filter(({ text }) => text !== null)) {
    placed(run, tensionPlaces(run, plan, between), { left: gutter, right: width - 3, top: 2, bottom: room - 2 });
  }
  return { texts, misfits };
}
