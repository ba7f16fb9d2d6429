// Where the words of a chart stand, so that none lies on another. No DOM here: numbers and words only.

/** The sizes of words in a chart, by their class, as its style sheet has them. */
export const SIZES = { tick: 11.5, axis: 12, noun: 12.5, letter: 14, "you-word": 14 };
const GAP = 2; // between two labels

/** The width of a text at a size of font, rather too much than too little. */
export function textWidth(text, size) {
  return [...text].length * size * 0.6;
}

/** One row of words: its place, as SVG takes it, and the box it fills. */
export function label(className, text, x, y, anchor = "start") {
  const size = SIZES[className];
  const width = textWidth(text, size);
  const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
  return { className, text, x, y, anchor, box: { left, right: left + width, top: y - size * 0.75, bottom: y + size * 0.22 } };
}

/** The rows of a text, none wider than `width` where its words allow it. */
export function wrapped(text, width, size) {
  const rows = [];
  for (const word of text.split(" ")) {
    const longer = rows.length === 0 ? word : `${rows.at(-1)} ${word}`;
    if (rows.length > 0 && textWidth(longer, size) <= width) rows[rows.length - 1] = longer;
    else rows.push(word);
  }
  return rows;
}

/**
 * The tops of labels (`{ top, height }`) pushed apart: each as near to the top it wants as its neighbours allow, in the
 * order wanted, from `ceiling` to `floor`. Where they do not all fit they share the room there is.
 */
export function stacked(labels, ceiling, floor) {
  const order = labels.map(({ top, height }, i) => ({ top, height: height + GAP, i })).sort((a, b) => a.top - b.top);
  const whole = order.reduce((sum, { height }) => sum + height, -GAP);
  const squeeze = Math.min(1, (floor - ceiling) / whole);
  let above = ceiling;
  for (const one of order) {
    one.height *= squeeze;
    one.top = Math.max(one.top, above);
    above = one.top + one.height;
  }
  let below = floor + GAP * squeeze;
  for (const one of [...order].reverse()) below = one.top = Math.min(one.top, below - one.height);
  const tops = [];
  for (const { top, i } of order) tops[i] = top;
  return tops;
}

/** Names of heights, each over its own: rows of words, and a thin line to the height of one that had to move away. */
export function namedHeights(names, { left, right, ceiling, floor }) {
  const size = SIZES.noun;
  const row = size + GAP;
  const x = left + 8;
  const blocks = names.map(({ noun, y, kind }) => {
    const rows = wrapped(noun, right - x - 24, size); // 24 for the thin line
    return { rows, y, kind, height: rows.length * row, top: y - rows.length * row - GAP };
  });
  const tops = stacked(blocks, ceiling, floor);
  return blocks.map(({ rows, y, kind, height, top }, i) => {
    const labels = rows.map((text, at) => label("noun", text, x, tops[i] + at * row + size * 0.78));
    const end = Math.max(...labels.map(({ box }) => box.right));
    const moved = Math.abs(tops[i] - top) > 3;
    return { kind, labels, lead: moved ? [{ x: end + 4, y: tops[i] + height / 2 }, { x: end + 16, y }] : null };
  });
}
