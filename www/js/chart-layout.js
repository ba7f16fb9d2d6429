// Where the lines, bands and ticks of a chart stand. No DOM here: numbers and words only.

const WIDTH = 420;
const HEIGHT = 300;
const LEFT = 46;
const RIGHT = 26; // room for a letter at the end of each line
const TOP = 14;
const FOOT = 40;
const APART = 13; // from one letter to the next

/** Round numbers from `least` to `most`, about `count` of them. */
export function ticks(least, most, count) {
  const rough = (most - least) / count;
  if (!(rough > 0)) return [least];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((digit) => digit * power).find((one) => one >= rough * 0.999);
  const found = [];
  for (let at = Math.ceil(least / step - 1e-9); at * step <= most + step * 1e-9; at += 1) found.push(at * step + 0); // no −0
  return found;
}

/** Places pushed apart, kept in order and below `floor`. */
export function apart(places, room, floor) {
  const order = places.map((place, i) => ({ place, i })).sort((a, b) => a.place - b.place);
  let last = -Infinity;
  for (const one of order) last = one.place = Math.max(one.place, last + room);
  let next = floor;
  for (const one of [...order].reverse()) next = (one.place = Math.min(one.place, next)) - room;
  const moved = [];
  for (const { place, i } of order) moved[i] = place;
  return moved;
}

/** The place of everything in a chart, in the units of its drawing. */
export function chartLayout({ x, y, lines, bands, marks, you }) {
  const right = WIDTH - RIGHT;
  const bottom = HEIGHT - FOOT;
  const across = (value) => LEFT + ((value - x.least) / (x.most - x.least)) * (right - LEFT);
  const up = (value) => bottom - ((value - y.least) / (y.most - y.least)) * (bottom - TOP);
  const ends = lines.map(({ points }) => up(points.at(-1)?.y ?? y.least));
  const letters = apart(ends, APART, bottom);
  return {
    width: WIDTH, height: HEIGHT, left: LEFT, right, top: TOP, bottom,
    columns: ticks(x.least, x.most, 6).map((value) => ({ value, x: across(value) })),
    rows: ticks(y.least, y.most, 5).map((value) => ({ value, y: up(value) })),
    lines: lines.map((line, i) => ({
      ...line,
      points: line.points.map((point) => ({ x: across(point.x), y: up(point.y) })),
      end: { x: right, y: ends[i] },
      letter: { x: right + 10, y: letters[i] },
    })),
    bands: bands.map((band) => ({ ...band, top: Math.max(TOP, up(band.high)), bottom: Math.min(bottom, up(band.low)) })),
    marks: marks.map((mark) => ({ ...mark, y: up(mark.y) })),
    you: you === null || you < x.least || you > x.most ? null : across(you),
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
