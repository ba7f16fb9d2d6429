// The rectangles that the things in a rig's drawing occupy. No DOM here.
// Each has a `kind`, and `of` where it belongs to one stop.

const STRIP = 60;
const HAIR = 1.4; // half of a line's weight and a little

export const overlaps = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Boxes by the strips of the drawing they are in, so that few need comparing. */
export function crowd(boxes) {
  const strips = new Map();
  const each = ({ left, right }, does) => {
    for (let at = Math.floor(left / STRIP); at <= Math.floor(right / STRIP); at += 1) {
      if (!strips.has(at)) strips.set(at, []);
      if (does(strips.get(at))) return true;
    }
    return false;
  };
  const add = (box) => each(box, (strip) => { strip.push(box); });
  boxes.forEach(add);
  return { add, meets: (box, counts) => each(box, (strip) => strip.some((one) => overlaps(box, one) && counts(one))) };
}

/** What a pulley's disc is drawn over: words inside it do not meet these. */
const HIDDEN = new Set(["join", "hanger", "bar", "ground", "limb"]);

/** Whether words inside the pulley `wheel` have nothing to do with a box. */
export const underWheel = (wheel, box) => HIDDEN.has(box.kind) || (box.kind === "wheel" && box.of === wheel);

export const within = (a, frame) => a.left >= frame.left && a.right <= frame.right && a.top >= frame.top && a.bottom <= frame.bottom;

/** An upright or level line's rectangle. */
export function lineBox(x1, y1, x2, y2, kind, of = null) {
  return {
    kind, of,
    left: Math.min(x1, x2) - HAIR, right: Math.max(x1, x2) + HAIR, top: Math.min(y1, y2) - HAIR, bottom: Math.max(y1, y2) + HAIR,
  };
}

/** Where a single part's diamond stands, and how large it is. */
export function diamond({ x, y, wheel, radius, opens }) {
  return wheel ? { x, y: y + opens * (radius - 5), reach: 6 } : { x, y, reach: 16 };
}

const HALF = { tied: [8, 8], hitch: [9, 11], hand: [9, 12], knot: [7, 7], turn: [6, 6] };

/** What is drawn at one stop. */
function glyphBoxes(stop) {
  const { x, y, kind, wheel, radius, single } = stop;
  const boxes = [];
  const around = (cx, cy, w, h, what) => boxes.push({ kind: what, of: stop, left: cx - w, right: cx + w, top: cy - h, bottom: cy + h });
  if (kind === "free") return [{ kind: "glyph", of: stop, left: x - HAIR, right: x + 8, top: y - HAIR, bottom: y + 8 }];
  if (wheel) around(x, y, radius - 4, radius - 4, "wheel");
  else around(x, y, ...(HALF[kind] ?? [9, 9]), "glyph");
  if (single) {
    const mark = diamond(stop);
    around(mark.x, mark.y, mark.reach + HAIR, mark.reach + HAIR, "glyph");
  }
  return boxes;
}

/** The half circle by which a rope turns back, in short pieces. */
function arcBoxes(stop) {
  const { enter, radius, opens } = stop;
  const at = (i) => ({ x: enter.x + radius - radius * Math.cos((i * Math.PI) / 12), y: enter.y - opens * radius * Math.sin((i * Math.PI) / 12) });
  return Array.from({ length: 12 }, (_, i) => lineBox(at(i).x, at(i).y, at(i + 1).x, at(i + 1).y, "arc", stop));
}

/** Everything along the ropes: strands, bends and what sits on them. */
export function ropeBoxes(ropes) {
  return ropes.flatMap(({ stops, runs }) => [
    ...runs.map((run) => lineBox(run.x1, run.y1, run.x2, run.y2, "strand", run)),
    ...stops.filter(({ bends }) => bends).flatMap(arcBoxes),
    ...stops.flatMap(glyphBoxes),
  ]);
}

/** The outlines of the tree's limb, and the ground with its hatching. */
export function bodyBoxes(levels, { gutter, width }) {
  return levels.flatMap(({ kind, top, height, line }) => {
    if (kind === "tree") return [top + 8, top + height - 8].map((y) => ({ kind: "limb", of: null, left: gutter, right: width, top: y - 4, bottom: y + 4 }));
    if (kind === "ground") return [{ kind: "ground", of: null, left: gutter, right: width, top: line - HAIR, bottom: line + 11 }];
    return [];
  });
}
