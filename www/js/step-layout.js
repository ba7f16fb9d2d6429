import { lines } from "./text-box.js";

// Where the stops of a step stand in its drawing. No DOM here.

const WIDTH = 150;
const X = 16;
const TOP = 12;
const ROW = 34;

/** Stops from the anchor down, one under the other; names in short rows beside them. */
export function stepLayout(rope) {
  const stops = rope.map(({ kind, noun, moved }, i) => ({
    kind, moved, y: TOP + i * ROW, rows: lines(moved ? `${noun}, moved` : noun, 18),
  }));
  return { width: WIDTH, height: TOP + (rope.length - 1) * ROW + 24, x: X, stops };
}
