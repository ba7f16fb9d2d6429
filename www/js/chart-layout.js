import { label, namedHeights, SIZES, stacked } from "./label-layout.js";

// Where the lines, bands and ticks of a chart stand. No DOM here: numbers and words only.

const HEIGHT = 300;
const LEFT = 46;
const RIGHT = 26; // room for a letter at the end of each line
const TOP = 20;
const FOOT = 40;

/** Round numbers from `least` to `most`, about `count` of them. */
export function ticks(least, most, count) {
  const rough = (most - least) / count;
  if (!(rough > 0)) return [least];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((digit) => digit * power).find((one) => one >= rough * 0.999);
  const found = [];
  for (let at = Math.ceil(least / step - 1e-9); at * step <= most + step * 1e-9; at += 1) found.push(Number((at * step).toPrecision(12)) + 0); // no −0, no 0.30000000000000004
  return found;
}

/** The letters at the ends of the lines, in the order of the lines, and a thin line from each end to its letter. */
function letterEnds(ends, letters, { right, bottom }) {
  const height = SIZES.letter * 0.97;
  const tops = stacked(ends.map((y) => ({ top: y - height / 2, height })), TOP, bottom);
  return ends.map((y, i) => {
    const letter = label("letter", letters[i], right + 14, tops[i] + SIZES.letter * 0.75, "middle");
    return { letter, lead: [{ x: right, y }, { x: letter.box.left - 2, y: tops[i] + height / 2 }] };
  });
}

/** The word at the line that says where somebody stands, on the side that has room. */
function youWord(you, right, bottom) {
  const word = label("you-word", "you", you + 4, bottom - 6);
  return word.box.right <= right ? word : label("you-word", "you", you - 4, bottom - 6, "end");
}

/** The place of everything in a chart, in the units of its drawing; `letters` gives each line its letter. */
export function chartLayout({ x, y, lines, bands, marks, you }, letters = lines.map((_, i) => String.fromCharCode(97 + i)), width = 420) {
  const right = width - RIGHT;
  const bottom = HEIGHT - FOOT;
  const across = (value) => LEFT + ((value - x.least) / (x.most - x.least)) * (right - LEFT);
  const up = (value) => bottom - ((value - y.least) / (y.most - y.least)) * (bottom - TOP);
  const placed = {
    bands: bands.map((band) => ({ ...band, top: Math.max(TOP, up(band.high)), bottom: Math.min(bottom, up(band.low)) })),
    marks: marks.map((mark) => ({ ...mark, y: up(mark.y) })),
    you: you === null || you < x.least || you > x.most ? null : across(you),
  };
  const columns = ticks(x.least, x.most, 6).map((value) => ({ value, x: across(value) }));
  const rows = ticks(y.least, y.most, 5).map((value) => ({ value, y: up(value) }));
  const heights = [
    ...placed.bands.map(({ noun, top }) => ({ noun, y: top, kind: "has" })),
    ...placed.marks.map(({ noun, y: at }) => ({ noun, y: at, kind: "limit-word" })),
  ];
  return {
    width, height: HEIGHT, left: LEFT, right, top: TOP, bottom, ...placed, columns, rows,
    axes: [
      ...columns.map((column) => label("tick", String(column.value), column.x, bottom + 17, "middle")),
      ...rows.map((row) => label("tick", String(row.value), LEFT - 6, row.y + 4, "end")),
      label("axis", `${x.noun}, ${x.unit}`, right, bottom + 34, "end"),
      label("axis", `${y.noun}, ${y.unit}`, LEFT + 4, TOP - 8),
    ],
    // The foot is kept free for the word at the line of the person's own place.
    names: namedHeights(heights, { left: LEFT, right, ceiling: TOP + 2, floor: bottom - (placed.you === null ? 4 : 24) }),
    youWord: placed.you === null ? null : youWord(placed.you, right, bottom),
    ends: letterEnds(lines.map(({ points }) => up(points.at(-1)?.y ?? y.least)), letters, { right, bottom }),
    lines: lines.map((line) => ({ ...line, points: line.points.map((point) => ({ x: across(point.x), y: up(point.y) })) })),
  };
}

/** A place along an axis as a table's head: whole, unless the axis is short. */
export function headOf(x, { least, most }) {
  return most - least < 30 ? String(Number(x.toFixed(1))) : String(Math.round(x));
}

/** The rows of the table that says the same: a line each, what it is at every point. */
export function chartRows({ lines }) {
  return lines.map(({ noun, points }) => [noun, ...points.map((point) => String(Math.round(point.y)))]);
}
