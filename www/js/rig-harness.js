import { svg } from "./element.js";

// What the climber hangs from: one bar at the hips that joins whatever of the rig is at the harness.

export const path = (d, className = "line") => svg("path", { d, class: className });

const HOLDS = new Set(["hitch", "turn", "tied"]);
const ASIDE = 22; // from a rope to the bridge beside it, clear of the diamond of a single part
const ARM = 54; // both halves of it

/** How a part comes down to the bar: a pulley from its rim, anything else by a bridge left of the rope. */
function hanger({ x, y, bends, radius, single }, bar) {
  if (bends) return { at: x, d: `M${x} ${y + radius - 5}V${bar}` };
  return { at: x - ASIDE, d: `M${x - (single ? 16 : 8)} ${y}H${x - ASIDE}V${bar}` };
}

/** Somebody seated, hips at `x` and the bar, an arm at `grip`; `way` is the side of the rope they are on. */
function sitter(x, bar, grip, way) {
  const shoulder = { x, y: bar - 38 };
  const reach = Math.hypot(grip.x - shoulder.x, grip.y - shoulder.y);
  const bend = Math.sqrt(Math.max(0, (ARM / 2) ** 2 - (reach / 2) ** 2)) / reach;
  const elbow = { // hanging below the line from shoulder to hand
    x: (shoulder.x + grip.x) / 2 + way * (grip.y - shoulder.y) * bend,
    y: (shoulder.y + grip.y) / 2 - way * (grip.x - shoulder.x) * bend,
  };
  return svg("g", { class: "sitter" },
    svg("circle", { cx: x + way * 6, cy: bar - 54, r: 8, class: "line" }),
    path(`M${x} ${bar - 45}C${x + way * 5} ${bar - 30} ${x + way * 4} ${bar - 10} ${x} ${bar + 6}l${-way * 19} 2l${way * 2} 20`),
    path(`M${shoulder.x} ${shoulder.y}L${elbow.x} ${elbow.y}L${grip.x} ${grip.y}`));
}

/** Below every pulley; without one at the highest part that the arms can be above; somebody hauled hangs below it all. */
function seatHeight(held, hand) {
  const heights = held.map(({ y, bends, radius }) => bends ? y + radius + 12 : hand ? y : y + 20);
  const low = held.some(({ bends }) => bends) ? [] : heights.filter((y) => hand && y >= hand.y + ARM);
  return low.length > 0 ? Math.min(...low) : Math.max(...heights);
}

/** The harness of each climber, and the climber in it. */
export function seated({ levels, ropes, dense }) {
  const stops = ropes.flatMap((rope) => rope.stops);
  return levels.flatMap((level, i) => {
    if (level.kind !== "climber") return [];
    const here = stops.filter((stop) => stop.level === i);
    const held = here.filter((stop) => HOLDS.has(stop.kind));
    const hand = here.find((stop) => stop.kind === "hand");
    if (held.length === 0) return [];
    const bar = seatHeight(held, hand);
    const hangers = held.map((stop) => hanger(stop, bar));
    const way = dense ? 1 : -1; // in a crowded drawing there is room on the right only
    const hips = hand ? hand.x + way * 44 : hangers[0].at;
    const grip = hand ? { x: hand.x + way * 8, y: hand.y } : { x: hips - way * 19, y: bar + 8 }; // on the knee
    const xs = [...hangers.map(({ at }) => at), hips];
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    const roomy = !dense && right - left > 100;
    return [
      svg("g", { class: "harness" },
        path(hangers.map(({ d }) => d).join("")),
        path(`M${left} ${bar}H${right}`, "line bar"),
        roomy ? svg("text", { x: left, y: bar + 16 }, "harness") : null),
      sitter(hips, bar, grip, way),
    ];
  });
}
