import { UNDER, barHeight, seatPlace } from "./rig-seat.js";
import { LINE, lines } from "./text-box.js";

// The bands of the bodies, from the top down, each tall enough for what sits on it. No DOM here.

const EDGE = 12;
const LEAST = { tree: 26, carriage: 42, climber: 42, ground: 15 }; // half of a band that holds little
const LETTER = 24; // from a stop to the far edge of a letter beside it

/** A body's name as it stands in the margin. */
export function nameRows(level) {
  if (level.kind === "climber") return ["you"];
  return lines(level.noun, 9).flatMap((word) => word.length <= 12 ? [word] : word.match(/.{1,11}/gu).map((part, i, all) => i + 1 < all.length ? `${part}-` : part));
}

/** What is written beside a stop in words. */
export function stopRows(stop, most) {
  return [...lines(stop.noun, most), ...[stop.state, stop.single ? "single" : null].filter(Boolean)];
}

/** How far above and below its own height a stop reaches, with its words. */
function reach(stop, level, plan) {
  const tall = stop.kind === "free" ? 0 : plan.words ? stopRows(stop, 10).length * LINE : 0;
  const beside = level.kind === "carriage" || level.kind === "ground" ? [tall + 12, 18] : [tall / 2 + 6, tall / 2 + 6];
  const bend = stop.bends ? stop.radius + 4 : 0;
  return [
    Math.max(LETTER, beside[0], stop.opens > 0 ? bend : 0),
    Math.max(LETTER, beside[1], stop.opens < 0 ? bend : 0),
  ];
}

/** A band's extent above and below the height of its first row. */
function extent(level, here, ropes, plan) {
  const edge = level.kind === "tree" ? 13 : 4;
  const tall = (nameRows(level).length * LINE) / 2 + 4;
  let [above, below] = [Math.max(LEAST[level.kind], tall), Math.max(LEAST[level.kind], tall)];
  for (const stop of here) {
    const [up, down] = reach(stop, level, plan);
    above = Math.max(above, up - stop.y + edge);
    below = Math.max(below, down + stop.y + edge);
  }
  const seat = level.kind === "climber" ? seatPlace(here, ropes, plan) : null;
  if (seat !== null) {
    const bar = barHeight(seat);
    above = Math.max(above, 68 - bar);
    below = Math.max(below, bar + 34 + (seat.under ? UNDER : 0));
  }
  return { above, below };
}

/** The bodies with `top`, `height`, the `y` of their first row, and the ground's `line`. Stops get their heights. */
export function bands(levels, ropes, plan) {
  let top = EDGE;
  const stops = ropes.flatMap((rope) => rope.stops);
  return levels.map((level, i) => {
    const here = stops.filter((stop) => stop.level === i);
    for (const stop of here) stop.y = stop.rank * plan.rank;
    const lowest = Math.max(0, ...here.map((stop) => stop.y));
    const { above, below } = extent(level, here, ropes, plan);
    const placed = { ...level, top, height: above + below, y: top + above, line: top + above + lowest };
    for (const stop of here) stop.y += placed.y;
    top += placed.height + plan.strand;
    return placed;
  });
}
