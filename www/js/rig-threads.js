// Each rope followed from its first stop. It runs straight along a column until it turns back;
// there it crosses to the next column and runs the other way. No DOM here, and no places yet.

/** The way from one body to another: 1 down, -1 up; a loose end hangs below everything. */
function way(from, to) {
  if (from === to) return 0;
  if (to === null) return 1;
  return from === null ? -1 : Math.sign(to - from);
}

/** Stops that follow each other on one body, as the places where they begin. */
function groups(stops) {
  return stops.map((_, i) => i).filter((i) => i === 0 || stops[i].level !== stops[i - 1].level);
}

/** Where in a group the rope turns back: at its first turn, or at its last stop where it has none. */
function turningPlace(stops, first, end) {
  const turn = stops.findIndex((stop, i) => i >= first && i < end && stop.kind === "turn");
  return turn === -1 ? end - 1 : turn;
}

/** One rope's stops with column, heading and rank on their body (1 is below 0), and where they bend. */
function thread(stops, firstColumn) {
  const starts = groups(stops);
  const ways = starts.slice(1).map((start) => way(stops[start - 1].level, stops[start].level));
  let column = firstColumn;
  let heading = ways[0] ?? 1;
  const placed = [];
  starts.forEach((first, g) => {
    const end = starts[g + 1] ?? stops.length;
    const out = ways[g] ?? heading;
    const back = g > 0 && out !== heading ? turningPlace(stops, first, end) : -1;
    let rank = 0;
    for (let i = first; i < end; i += 1) {
      if (i > first) rank += heading;
      const bends = i === back;
      placed.push({
        ...stops[i], column, heading, rank, bends, wheel: bends && stops[i].kind === "turn", opens: bends ? out : heading,
        key: "", x: 0, y: 0, radius: 0, enter: null, leave: null, // until the layout places it
      });
      if (!bends) continue;
      column += 1;
      heading = out;
    }
  });
  return { stops: placed, first: firstColumn, last: column };
}

/** Hands that have their body's column to themselves come down to its lowest part: the arms are above the seat. */
function lowerHands(threads) {
  const all = threads.flatMap(({ stops }) => stops);
  for (const { stops } of threads) {
    stops.forEach((stop, i) => {
      const alone = [stops[i - 1], stops[i + 1]].every((next) => next?.level !== stop.level);
      if (stop.kind === "hand" && alone) {
        stop.rank = Math.max(...all.filter((other) => other.level === stop.level).map((other) => other.rank));
      }
    });
  }
}

/** The ropes side by side, each with its `stops`, `strands`, and its `first` and `last` column. */
export function threads(ropes) {
  let column = 0;
  const all = ropes.map((rope) => {
    const one = thread(rope.stops, column);
    column = one.last + 1;
    return { noun: rope.noun, strands: rope.strands, ...one };
  });
  lowerHands(all);
  return all;
}
