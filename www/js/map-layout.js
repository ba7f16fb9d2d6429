// Where the regions of the feasibility map stand. No DOM here: numbers and words only.

const HEIGHT = 320;
const LEFT = 46;
const TOP = 20;
const RIGHT = 10;
const FOOT = 40;

/** The runs of one letter in each row: `{ letter, row, from, to }`, `to` not in it. */
export function runsOf(rows) {
  return rows.flatMap((row, at) => {
    const runs = [];
    for (let from = 0; from < row.length;) {
      let to = from + 1;
      while (to < row.length && row[to] === row[from]) to += 1;
      runs.push({ letter: row[from], row: at, from, to });
      from = to;
    }
    return runs;
  });
}

/** Where a region's letter stands: in the row that has half of it below. */
function middle(runs) {
  const half = runs.reduce((sum, { cells }) => sum + cells, 0) / 2;
  let below = 0;
  return runs.find(({ cells }) => (below += cells) >= half).at;
}

/** The regions of a map, one for each letter that is there: an outline, and where its letter stands. */
export function mapLayout({ rows, x, y, you }, width = 420) {
  const right = width - RIGHT;
  const bottom = HEIGHT - FOOT;
  const [columns, lines] = [rows[0].length, rows.length];
  const [wide, high] = [(right - LEFT) / columns, (bottom - TOP) / lines];
  const regions = new Map();
  for (const run of runsOf(rows)) {
    const region = regions.get(run.letter) ?? { letter: run.letter, d: "", cells: 0, runs: [] };
    const top = bottom - (run.row + 1) * high;
    const [from, to] = [LEFT + run.from * wide, LEFT + run.to * wide];
    region.d += `M${from.toFixed(1)} ${top.toFixed(1)}H${to.toFixed(1)}v${high.toFixed(2)}H${from.toFixed(1)}z`;
    region.cells += run.to - run.from;
    region.runs.push({ cells: run.to - run.from, at: { x: (from + to) / 2, y: top + high / 2 } });
    regions.set(run.letter, region);
  }
  const steps = (count) => (count > 1 ? count - 1 : 1);
  // Axes go from the middle of the first cell to that of the last.
  const across = (value) => LEFT + wide / 2 + ((value - x.least) / (x.most - x.least)) * wide * steps(columns);
  const up = (value) => bottom - high / 2 - ((value - y.least) / (y.most - y.least)) * high * steps(lines);
  return {
    width, height: HEIGHT, left: LEFT, right, top: TOP, bottom, across, up,
    regions: [...regions.values()].map(({ runs, ...region }) => ({ ...region, at: middle(runs) })).sort((a, b) => (a.letter < b.letter ? -1 : 1)),
    you: you && { x: across(you.x), y: up(you.y), text: you.text },
  };
}

/** A coarse table of the map, the strongest pull first: `{ heads, rows }` of numbers and letters. */
export function coarse({ rows, x, y }, columns = 6, lines = 8) {
  const spread = (count, of) => Array.from({ length: count }, (_, i) => Math.round((i * (of - 1)) / (count - 1)));
  const value = ({ least, most }, at, of) => Math.round(least + ((most - least) * at) / (of - 1));
  const places = spread(columns, rows[0].length);
  return {
    heads: places.map((at) => value(x, at, rows[0].length)),
    rows: spread(lines, rows.length).reverse().map((at) => ({ pull: value(y, at, rows.length), cells: places.map((place) => rows[at][place]) })),
  };
}
