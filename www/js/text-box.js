// How much room words take in a drawing, judged without a font: wide enough for the widest of the usual ones.

export const LINE = 14; // from one line of writing to the next
const SIZE = { name: 14, stop: 12.5, tension: 15, at: 12.5, key: 12.5, bar: 12.5 };
const ASCENT = 0.96;
const DESCENT = 0.26;

function letterWidth(letter) {
  if (" .,:;'|ijl".includes(letter)) return 0.35;
  if ("frt-()I".includes(letter)) return 0.44;
  if ("mwMW%".includes(letter)) return 1;
  if (letter >= "A" && letter <= "Z") return 0.79;
  return letter > "\u2fff" || (letter > "\u2015" && letter < "\u27ff") ? 1 : 0.65;
}

/** A line's width in the drawing's units. */
export function textWidth(text, className) {
  let width = 0;
  for (const letter of text) width += letterWidth(letter);
  return width * SIZE[className] * (className === "tension" ? 1.1 : 1);
}

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

/** The rectangle of words that stand at `x` and the first line's `y`; `turned` ones read upwards. */
export function textBox({ rows, x, y, className, anchor = "start", turned = false }) {
  const size = SIZE[className];
  const width = Math.max(...rows.map((row) => textWidth(row, className)));
  const before = anchor === "start" ? 0 : anchor === "end" ? width : width / 2;
  if (turned) return { left: x - size * ASCENT, right: x + size * DESCENT, top: y - width + before, bottom: y + before };
  return { left: x - before, right: x - before + width, top: y - size * ASCENT, bottom: y + (rows.length - 1) * LINE + size * DESCENT };
}
