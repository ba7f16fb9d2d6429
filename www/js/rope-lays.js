// How rope is drawn that is longer than the place it lies in: in piles on the ground, and to and fro beside a strand.
// No DOM here.

const FOLD = 5; // between two lays
const MOST_LAYS = 24; // what is more than that is not drawn

/** A pile of rope on the ground, to and fro beside `x`, in lays of `reach`; one to the left has a negative one. */
export class Pile {
  lain = 0;

  constructor(x, y, reach) {
    Object.assign(this, { x, y, reach });
  }

  /** How high it is. */
  get height() {
    return Math.floor(this.lain / Math.abs(this.reach)) * FOLD;
  }

  /** Lays so much more on what is there, as far as there is room; the points it goes through. */
  lay(length) {
    const start = this.lain;
    this.lain = Math.min(start + length, MOST_LAYS * Math.abs(this.reach));
    return piled(this, start, this.lain);
  }
}

/** From `start` to `end` of the length of a pile. */
function piled({ x, y, reach }, start, end) {
  const [one, way] = [Math.abs(reach), Math.sign(reach)];
  const row = (length) => Math.floor(length / one);
  const place = (length, on) => {
    const along = length - on * one;
    return { x: x + way * (on % 2 === 0 ? along : one - along), y: y - on * FOLD };
  };
  const points = [place(start, row(start))];
  for (let on = row(start); on < row(end); on += 1) points.push(place((on + 1) * one, on), place((on + 1) * one, on + 1));
  return [...points, place(end, row(end))];
}

/** Rope of `length` to and fro beside a strand, from `from` on: upwards or (`way.y` 1) downwards, and aside by `way.x`. */
export function folded(from, length, room, way, most) {
  const turns = Math.min(Math.ceil(length / 2 / room), most);
  const leg = Math.min(length / 2 / turns, room) * way.y;
  const points = [];
  for (let { x } = from, i = 0; i < turns; i += 1, x += 2 * FOLD * way.x) {
    const [near, far] = [x + FOLD * way.x, x + 2 * FOLD * way.x];
    points.push({ x: near, y: from.y }, { x: near, y: from.y + leg }, { x: far, y: from.y + leg }, { x: far, y: from.y });
  }
  return points;
}
