// Where the pieces of a cord lie in a drawing, straight and to scale, with a label each. No DOM here: numbers and words only.

const WIDTH = 330;
const TOP = 26;
const LONG = 400; // of the whole cord
const AT = 20; // of the cord, from the left
const EDGE = 40; // of the labels
const LINE = 16; // from one label to the next
const APART = 282; // the middle of the finished thing

/** Pushes labels apart, downwards and then back up from `floor`; what does not fit at all stays in order. */
function spread(labels, floor) {
  let top = TOP - LINE / 2;
  for (const label of labels) {
    label.y = Math.max(label.at, top);
    top = label.y + LINE;
  }
  let bottom = floor;
  for (const label of [...labels].reverse()) {
    label.y = Math.min(label.y, bottom);
    bottom = label.y - LINE;
  }
}

/**
 * The cord from top to bottom: `pieces` with where each begins and ends, `labels` beside their middles, and what of the
 * finished thing is drawn.
 */
export function cordLayout({ pieces, total, figures, shape }) {
  const scale = LONG / (total.value > 0 ? total.value : 1);
  let y = TOP;
  const drawn = pieces.map(({ kind, length }) => {
    const from = y;
    y += (length.value ?? 0) * scale;
    return { kind, from, to: y };
  });
  const labels = pieces.map(({ length: { noun, text } }, i) => ({ noun, text, at: (drawn[i].from + drawn[i].to) / 2 }));
  const height = Math.max(TOP + LONG, TOP + labels.length * LINE);
  spread(labels, height);
  return { width: WIDTH, height: height + 16, at: AT, edge: EDGE, pieces: drawn, labels, finished: finished(shape, figures) };
}

/** What is drawn of the finished thing: where its rope, coils, legs and knots are, and what is written under it. */
function finished({ ends, closed, coils, strands, crossings, legs, eyes }, figures) {
  const text = (id) => figures.find((figure) => figure.id === id)?.text ?? null;
  const notes = [];
  const note = (noun, words) => words !== null && notes.push({ noun, words });
  if (coils > 0) note("coils", `${Number.isInteger(coils) ? coils : coils.toFixed(1)}`);
  note("all legs", text("freeLegs"));
  note("finished", text("finishedLength"));
  // As many as can be told apart.
  const turns = Math.min(12, Math.round(coils * strands));
  return {
    x: APART, hitch: coils > 0, turns, crossed: Math.min(6, Math.round(crossings)), legs: legs > 1 ? 2 : 1, closed,
    button: ends === "button", eyes: closed ? 0 : eyes, notes,
  };
}

/** The drawing in words: every piece with its length, and what they come to. */
export function cordWords({ pieces, total }) {
  return `${pieces.map(({ length: { noun, text } }) => `${noun} ${text}`).join(", ")}; ${total.noun} ${total.text}.`;
}
