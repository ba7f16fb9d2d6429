// Where everything in a rig's drawing goes. No DOM here: numbers and words only.
// A rope is followed from its first stop. It runs straight down a column until it
// turns back at a pulley; there it crosses to the next column and runs the other way.

const GUTTER = 84; // for the names of the bodies
const PITCH = 78; // between two columns
const DENSE_PITCH = 46; // when there are many, and words no longer fit between them
const MOST_ROOMY_COLUMNS = 3;
const RANK = 88; // between two stops that sit on one body
const BAND = { tree: 52, carriage: 100, climber: 104, ground: 30 };
const STRAND = 78; // a strand's length between two bodies
const TAIL = 40;
const EDGE = 12;

/** Splits words into lines of about `most` letters. */
export function lines(text, most) {
  const out = [];
  for (const word of text.split(" ").filter(Boolean)) {
    const last = out.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= most) out[out.length - 1] = `${last} ${word}`;
    else out.push(word);
  }
  return out;
}

/** The letter by which a crowded drawing and its table name a stop. */
export function keyOf(index) {
  return String.fromCharCode(65 + (index % 26)) + (index >= 26 ? Math.floor(index / 26) : "");
}

/** Each stop's column, rank on its body, and the way the rope leaves it. */
function threaded(rope, firstColumn) {
  let column = firstColumn;
  let heading = 0;
  const side = (from, to) => {
    if (!to || from.level === null) return 0;
    return to.level === null ? 1 : Math.sign(to.level - from.level);
  };
  const ahead = (i) => {
    for (let j = i; j + 1 < rope.stops.length; j += 1) {
      const way = side(rope.stops[j], rope.stops[j + 1]);
      if (way !== 0) return way;
    }
    return 1;
  };
  let rank = 0;
  return rope.stops.map((stop, i) => {
    const before = rope.stops[i - 1];
    const from = before ? side(stop, before) : 0;
    if (i === 0) heading = ahead(0);
    rank = before && before.level === stop.level ? rank + heading : 0;
    const to = ahead(i);
    const bends = stop.kind === "turn" && (from === 0 || from === to);
    const placed = { ...stop, column, rank, bends, opens: to };
    if (bends) {
      column += 1;
      heading = to;
      placed.crosses = true;
    }
    return placed;
  });
}

/** Hands that have their body's column to themselves come down to its lowest part: the arms are above the seat. */
function lowerHands(stops) {
  for (const rope of stops) {
    rope.forEach((stop, i) => {
      const alone = [rope[i - 1], rope[i + 1]].every((next) => next?.level !== stop.level);
      if (stop.kind === "hand" && alone) {
        stop.rank = Math.max(...stops.flat().filter((other) => other.level === stop.level).map((other) => other.rank));
      }
    });
  }
}

/** The bands of the bodies, from the top down, tall enough for what sits on each. */
function bands(levels, stops, pitch) {
  let top = EDGE;
  return levels.map((level, i) => {
    const here = stops.filter((stop) => stop.level === i);
    const ranks = here.map((stop) => stop.rank);
    const bends = here.some((stop) => stop.bends);
    const band = bends ? Math.max(BAND[level.kind], pitch + 10) : BAND[level.kind];
    const legs = bends && level.kind === "climber" ? pitch / 2 : 0; // who sits below a turn needs room for them
    const above = Math.max(0, -Math.min(0, ...ranks)) * RANK;
    const below = Math.max(0, ...ranks) * RANK;
    const height = band + above + below + legs;
    const placed = { ...level, top, height, y: top + above + band / 2 };
    top += height + STRAND;
    return placed;
  });
}

/** Places for a drawing: `width`, `height`, `levels`, and for each rope its stops, runs and labels. */
export function rigLayout(drawing) {
  let column = 0;
  const ropes = drawing.ropes.map((rope) => {
    const stops = threaded(rope, column);
    column = Math.max(column, ...stops.map((stop) => stop.column + (stop.crosses ? 1 : 0))) + 1;
    return { noun: rope.noun, stops, strands: rope.strands };
  });
  lowerHands(ropes.map((rope) => rope.stops));
  // Where a rope is tied beside the first, or to the climber, words would lie on one another or on them.
  const tiedToClimber = drawing.ropes.some(({ stops: [first] }) => drawing.levels[first.level]?.kind === "climber");
  const dense = column > MOST_ROOMY_COLUMNS || ropes.length > 1 || tiedToClimber;
  const pitch = dense ? DENSE_PITCH : PITCH;
  const x = (c) => GUTTER + 18 + c * pitch;
  const levels = bands(drawing.levels, ropes.flatMap((rope) => rope.stops), pitch);
  const floor = levels.length === 0 ? EDGE : levels.at(-1).top + levels.at(-1).height;
  const width = Math.max(320, x(column - 1) + (dense ? 84 : 66));

  let key = 0;
  for (const rope of ropes) {
    for (const stop of rope.stops) {
      const band = levels[stop.level];
      stop.key = keyOf(key);
      key += 1;
      stop.radius = stop.bends ? pitch / 2 : 0;
      stop.x = x(stop.column) + stop.radius;
      stop.y = band ? band.y + stop.rank * RANK : floor + TAIL;
      stop.enter = { x: x(stop.column), y: stop.y };
      stop.leave = { x: x(stop.column + (stop.crosses ? 1 : 0)), y: stop.y };
    }
    rope.runs = rope.strands.map((strand, i) => run(rope.stops[i], rope.stops[i + 1], strand)).filter(Boolean);
  }
  return { width, height: floor + TAIL + EDGE, dense, pitch, gutter: GUTTER, levels, ropes };
}

/** One strand as a line with a place for its tension; a loose tail and a strand of no length have no label. */
function run(from, to, strand) {
  if (!from || !to) return null;
  const start = from.leave;
  const end = to.enter;
  const isPoint = start.x === end.x && start.y === end.y;
  return {
    x1: start.x, y1: start.y, x2: end.x, y2: end.y,
    text: isPoint || to.kind === "free" ? null : strand.tension.text,
    at: { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 },
  };
}
