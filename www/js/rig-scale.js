import { textBox, textWidth } from "./text-box.js";

// A strip to scale, from the ground to the highest body: what the drawing beside it cannot show. No DOM here.

const LINE_X = 9;
const TEXT_X = 22;
const APART = 17; // from one height's words to the next

const measured = (levels) => levels.filter(({ height, at }) => Number.isFinite(height) && typeof at === "string" && at !== "");

/** How wide the strip is; nought where no heights are known. */
export function scaleWidth(levels) {
  return Math.max(0, ...measured(levels).map(({ at }) => TEXT_X + textWidth(at, "at") + 6));
}

/** Heights of words, each as near its tick as `APART` and the ends allow. */
function spread(ys, bottom) {
  const out = [];
  for (const y of ys) out.push(Math.max(y, (out.at(-1) ?? -Infinity) + APART));
  for (let i = out.length - 1, most = bottom; i >= 0; i -= 1, most -= APART) out[i] = Math.min(out[i], most);
  return out;
}

/** The strip between `top` and `bottom`: its line, its ticks with a leader to their words; null without heights. */
export function scaleStrip(levels, top, bottom) {
  const known = measured(levels).filter(({ height, at }, i, all) => all.findIndex((one) => one.height === height && one.at === at) === i)
    .sort((a, b) => b.height - a.height);
  if (known.length === 0) return null;
  const least = Math.min(0, ...known.map(({ height }) => height));
  const tall = Math.max(0, ...known.map(({ height }) => height)) - least || 1;
  const y = (height) => bottom - ((height - least) / tall) * (bottom - top);
  const heights = spread(known.map(({ height }) => y(height)), bottom);
  const ticks = known.map(({ height, at }, i) => {
    const text = { rows: [at], x: TEXT_X, y: heights[i] + 4, className: "at" };
    return { y: y(height), textY: heights[i], text: { ...text, box: textBox(text), of: null } };
  });
  return { x: LINE_X, top, bottom, ground: y(0), ticks, leader: TEXT_X - 4 };
}
