import { lineBox } from "./rig-boxes.js";

// What the climber hangs from, one bar at the hips that joins whatever of the rig is at the harness;
// the climber in it; and what joins the parts of any other body. No DOM here: lines as path data.

const HOLDS = new Set(["hitch", "turn", "tied"]);
const ARM = 54; // both halves of it
const REACH = 112; // from the hands down to the bar, at most
export const ASIDE = 44; // from the rope in the hands to the hips
export const UNDER = 70; // from the bar to the hips of somebody who hangs below it
const BODY = 26; // half of a seated body's width

/** Beside the stop that the climber is drawn at: which, on which side, and the room kept there. */
export function seatPlace(here, ropes, { pitch, seat }) {
  const held = here.filter((stop) => HOLDS.has(stop.kind));
  if (held.length === 0) return null;
  const hand = here.find((stop) => stop.kind === "hand") ?? null;
  const stop = hand ?? held[0];
  const { first, last } = ropes.find((rope) => rope.stops.includes(stop));
  const apart = stop.column === first && first !== last ? -1 : 1;
  const under = seat === "under" && hand === null;
  const way = seat === "left" ? -1 : seat === "right" ? 1 : apart;
  return { hand, held, stop, way, under, gap: seat === "apart" ? { before: stop.column + (way > 0 ? 1 : 0), room: Math.max(0, ASIDE + BODY + 10 - pitch / 2) } : null };
}

/** The bar's height: below every part where the arms still reach, else between two rows of parts. */
export function barHeight({ held, hand }) {
  const low = Math.max(...held.map(({ y, wheel, bends, radius }) => wheel || bends ? y + radius + 12 : y + 18));
  if (hand === null) return low;
  return low >= hand.y + 44 && low <= hand.y + REACH ? low : hand.y + 54;
}

/** How a part is joined to a level line: a pulley from its rim, anything else by a bridge beside the rope. */
function hanger({ x, y, wheel, radius, single, heading }, level, bridge) {
  if (wheel) {
    const from = y + (level > y ? radius - 5 : 5 - radius);
    return { x, d: `M${x} ${from}V${level}`, boxes: [lineBox(x, from, x, level, "hanger")] };
  }
  const side = heading > 0 ? -1 : 1; // the next column is joined to this one on the other side
  const aside = x + side * bridge;
  const from = x + side * (single ? 16 : 8);
  return { x: aside, d: `M${from} ${y}H${aside}V${level}`, boxes: [lineBox(from, y, aside, y, "hanger"), lineBox(aside, y, aside, level, "hanger")] };
}

/** Somebody seated, hips at `x` and the bar, an arm at `grip`; `way` is the side of the rope they are on. */
function sitter(x, bar, grip, way) {
  const shoulder = { x, y: bar - 38 };
  const [dx, dy] = [grip.x - shoulder.x, grip.y - shoulder.y];
  const reach = Math.hypot(dx, dy);
  const bend = Math.sqrt(Math.max(0, (ARM / 2) ** 2 - (reach / 2) ** 2)) / reach;
  const elbow = { x: shoulder.x + dx / 2 + way * dy * bend, y: shoulder.y + dy / 2 - way * dx * bend }; // hangs below the line
  const limb = (xs, ys) => ({ kind: "sitter", of: null, left: Math.min(...xs) - 1, right: Math.max(...xs) + 1, top: Math.min(...ys) - 1, bottom: Math.max(...ys) + 1 });
  return {
    head: { x: x + way * 6, y: bar - 54, radius: 8 },
    body: `M${x} ${bar - 45}C${x + way * 5} ${bar - 30} ${x + way * 4} ${bar - 10} ${x} ${bar + 6}l${-way * 19} 2l${way * 2} 20`,
    arm: `M${shoulder.x} ${shoulder.y}L${elbow.x} ${elbow.y}L${grip.x} ${grip.y}`,
    boxes: [
      limb([x + way * 6 - 8, x + way * 6 + 8], [bar - 62, bar - 46]),
      limb([x - way * 19, x + way * 5], [bar - 45, bar + 28]),
      limb([shoulder.x, elbow.x, grip.x], [shoulder.y, elbow.y, grip.y]),
    ],
  };
}

/** The harness and who sits in it, now that every stop has its place. */
export function seated(place, { bridge, pitch }) {
  const { held, hand, stop, way, under } = place;
  const bar = barHeight(place);
  const hangers = held.map((one) => hanger(one, bar, bridge));
  // Who has the rope in their hands sits beside it at the bar; who is only held may also hang below, between two columns.
  const hips = { x: under ? stop.x + (stop.wheel ? 0 : pitch / 2) : stop.x + way * ASIDE, y: under ? bar + UNDER : bar };
  const tie = under ? hips.x - way * 9 : hips.x;
  const xs = [...hangers.map(({ x }) => x), tie];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const grip = hand ? { x: hand.x + way * 8, y: hand.y } : { x: hips.x - way * 18, y: hips.y + 8 }; // on the knee
  const figure = sitter(hips.x, hips.y, grip, way);
  const down = under ? [lineBox(tie, bar, tie, hips.y + 6, "hanger")] : [];
  return {
    hand,
    d: hangers.map(({ d }) => d).join("") + (under ? `M${tie} ${bar}V${hips.y + 6}` : ""), bar: { left, right, y: bar }, figure,
    hangers: hangers.flatMap(({ boxes }) => boxes),
    boxes: [...hangers.flatMap(({ boxes }) => boxes), ...down, lineBox(left, bar - 1, right, bar + 1, "bar"), ...figure.boxes],
  };
}

/** What joins the parts of a carriage to each other, and parts above the ground to it. */
export function joins(levels, stops, bridge) {
  return levels.flatMap((level, i) => {
    const held = stops.filter((stop) => stop.level === i && HOLDS.has(stop.kind));
    const y = level.kind === "ground" ? level.line : level.y;
    const off = held.filter((stop) => stop.y !== y).map((stop) => hanger(stop, y, bridge));
    if (level.kind === "ground") return off.map(({ d, boxes }) => ({ d, boxes }));
    if (level.kind !== "carriage" || held.length < 2) return [];
    const xs = [...held.filter((stop) => stop.y === y), ...off].map(({ x }) => x);
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    return [{ d: `${off.map(({ d }) => d).join("")}M${left} ${y}H${right}`, boxes: [...off.flatMap(({ boxes }) => boxes), lineBox(left, y, right, y, "join")] }];
  });
}
