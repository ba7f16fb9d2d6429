// Where the pieces of a hank are drawn. No DOM here.

const LETTER = 7.2; // pixels a letter of a label takes, at most
const HEIGHT = 46; // of a bar: as long as a length that stands upright in it
const UPRIGHT = 13; // pixels of width from which an upright label can be read

/** How a label stands in a piece of a width: along it, upright, or not at all. */
function standing(text, width) {
  if (text.length * LETTER + 6 <= width) return "along";
  return width >= UPRIGHT && text.length * LETTER <= HEIGHT ? "upright" : "none";
}

/** Name and length where there is room, else the length, upright if need be; else nothing. */
function labelled({ noun, text }, width) {
  const whole = noun === "" ? text : `${noun} ${text}`;
  if (standing(whole, width) === "along") return { label: whole, standing: "along" };
  // Upright there is no room for a blank.
  const way = standing(text, width);
  return { label: way === "none" ? "" : text, standing: way };
}

/** The pieces of a hank along a bar of `width`: its cords, what is left and what is lost, all to scale. */
export function barOf(hank, width) {
  const scale = width / hank.value;
  let x = 0;
  const piece = (line, kind) => {
    const wide = line.value * scale;
    const made = { kind, x, width: wide, ...labelled(line, wide) };
    x += wide;
    return made;
  };
  return {
    height: HEIGHT,
    pieces: [
      ...hank.cuts.map((cut) => piece(cut, "cut")),
      ...(hank.left.value > 0 ? [piece(hank.left, "left")] : []),
      ...(hank.lost.value > 0 ? [{ ...piece(hank.lost, "lost"), label: "", standing: "none" }] : []),
    ],
  };
}

/** A hank in words: "foot loop 1.8 m, 2.1 m; left over 1.2 m". */
export function wordsOf({ cuts, left, lost }) {
  const named = ({ noun, text }) => (noun === "" ? text : `${noun} ${text}`);
  return `${cuts.map(named).join(", ")}; ${left.noun} ${left.text}; ${lost.noun} ${lost.text}`;
}

/** The hanks that are cut alike, together: `{ from, to, hank }`, counted from 1. */
export function alike(hanks) {
  const groups = [];
  hanks.forEach((hank, at) => {
    const last = groups.at(-1);
    if (last && last.hank.noun === hank.noun && wordsOf(last.hank) === wordsOf(hank)) last.to = at + 1;
    else groups.push({ from: at + 1, to: at + 1, hank });
  });
  return groups;
}
