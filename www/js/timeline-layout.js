import { ticks } from "./chart-layout.js";
import { SIZES, wrapped } from "./label-layout.js";

// Where the bars of a timeline stand. No DOM here.

const TOP = 24;
const BAR = 20;
const LINE = 15; // from one line of a name to the next
const BELOW = 10; // below a bar

/** The place of everything, in the units of the drawing; times in seconds, ticks in minutes. */
export function timelineLayout(ways, clock, width) {
  const right = width - 10;
  const most = Math.max(clock.value * 1.25, ...ways.map(({ stages }) => stages.at(-1).to));
  const across = (seconds) => (seconds / most) * right;
  let y = TOP;
  const rows = ways.map(({ noun, stages }) => {
    const names = wrapped(noun, right, SIZES.noun).map((text, i) => ({ text, y: y + LINE * (i + 0.8) }));
    const top = y + names.length * LINE + 3;
    y = top + BAR + BELOW;
    return { names, y: top, height: BAR, parts: stages.map(({ from, to }, at) => ({ from: across(from), to: across(to), number: at + 1 })) };
  });
  return {
    width, right, rows, foot: y, height: y + 24, limit: across(clock.value),
    ticks: ticks(0, most / 60, 5).map((minutes) => ({ x: across(minutes * 60), text: `${minutes} min`, anchor: minutes === 0 ? "start" : "middle" })),
  };
}
