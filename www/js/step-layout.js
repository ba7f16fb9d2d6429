import { wrapped } from "./label-layout.js";

// Where the stops of a step stand in its drawing. No DOM here.

const WIDTH = 150;
const X = 16; // of the rope
const BESIDE = X + 16; // where the names begin
const SIZE = 12; // of their font
const LINE = 14; // from one line of a name to the next
const ROW = 30; // from one stop to the next, at the least
const GAP = 6; // between two names
const MARK = 9; // a stop's own shape, up and down

/** Stops from the anchor down, one under the other; names beside them, in as many lines as they take. */
export function stepLayout(rope) {
  let y = 0;
  let below = 0;
  const stops = rope.map(({ kind, noun, moved }, i) => {
    const names = wrapped(moved ? `${noun}, moved` : noun, WIDTH - BESIDE, SIZE);
    const half = Math.max(MARK, (names.length * LINE) / 2);
    y = i === 0 ? half : y + Math.max(ROW, below + half + GAP);
    below = half;
    const first = y - (names.length * LINE) / 2;
    return { kind, moved, y, rows: names.map((text, row) => ({ text, y: first + LINE * (row + 0.8) })) };
  });
  return { width: WIDTH, height: y + below + GAP, x: X, beside: BESIDE, stops };
}
