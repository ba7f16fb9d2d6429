import { svg } from "./element.js";
import { cordLayout, cordWords } from "./cord-layout.js";
import { path, words } from "./svg-parts.js";

// A cord laid out straight, to scale, and what comes of it beside it: one line weight.

const STEP = 7; // of a wave

/** To and fro about the cord from one place to another, in whole waves as near to `STEP` as they go. */
function wave(x, from, to, wide) {
  const count = Math.max(1, Math.round((to - from) / STEP));
  const long = (to - from) / count;
  let d = `M${x} ${from}`;
  for (let i = 0; i < count; i += 1) d += `q${i % 2 === 0 ? wide : -wide} ${long / 2} 0 ${long}`;
  return d;
}

const DRAWN = {
  knot: (x, from, to) => [svg("rect", { x: x - 6, y: from, width: 12, height: Math.max(to - from, 2), rx: 3, class: "line paper" }), path(wave(x, from, to, 9))],
  eye: (x, from, to) => [svg("ellipse", { cx: x, cy: (from + to) / 2, rx: 5, ry: Math.max((to - from) / 2, 1.5), class: "line paper" })],
  coils: (x, from, to) => [path(wave(x, from, to, 20), "line rope")],
  crossings: (x, from, to) => [path(wave(x, from, to, 20)), path(wave(x, from, to, -20))],
};
const straight = (x, from, to) => [path(`M${x} ${from}V${to}`, "line rope")];

function piece({ kind, from, to }, x) {
  return [...(DRAWN[kind] ?? straight)(x, from, to), path(`M${x - 9} ${to}h18`, "line faint")];
}

function label({ noun, text, at, y }, { at: x, edge }) {
  const drawn = svg("text", { x: edge, y: y + 4 }, `${noun} `, svg("tspan", { class: "length" }, text));
  return Math.abs(y - at) > 2 ? [path(`M${x + 10} ${at}L${edge - 4} ${y}`, "line faint"), drawn] : [drawn];
}

const blob = (x, y, r = 5) => svg("circle", { cx: x, cy: y, r, class: "line ink" });
const ring = (x, y) => svg("ellipse", { cx: x, cy: y, rx: 7, ry: 10, class: "line paper" });

/** Round the rope: coils, crossings under them, and the legs down to their connector. */
function onRope({ x, turns, crossed, legs, closed, button, eyes }) {
  const top = 50;
  const under = top + turns * STEP;
  const foot = under + crossed * 9;
  const end = foot + 70;
  let coils = "";
  for (let i = 0; i < turns; i += 1) coils += `M${x - 9} ${top + i * STEP + 5}l18-5`;
  let braid = "";
  for (let i = 0; i < crossed; i += 1) braid += `M${x - 9} ${under + i * 9 + 1}l18 7m0-7l-18 7`;
  const leg = (side) => path(`M${x + side * 9} ${foot}Q${x + side * 12} ${foot + 40} ${x + 34} ${end - 9}`, "line rope");
  return {
    bottom: end + 34,
    nodes: [
      path(`M${x - 6} 26V${end + 20}M${x + 6} 26V${end + 20}`, "line faint"),
      path(coils, "line rope"), path(braid, "line rope"),
      leg(1), legs > 1 ? leg(-1) : null,
      ring(x + 34, end),
      closed || eyes > 0 ? blob(x + 25, end - 30, button ? 6 : 4) : null,
    ],
  };
}

/** A loop, or a cord from one end to the other. */
function offRope({ x, closed, eyes }) {
  const [top, end] = [46, 226];
  if (closed) {
    return { bottom: end + 28, nodes: [svg("ellipse", { cx: x, cy: (top + end) / 2, rx: 22, ry: (end - top) / 2, class: "line rope" }), blob(x + 22, (top + end) / 2, 6)] };
  }
  const eyed = (y) => [ring(x, y)];
  return {
    bottom: end + 28,
    nodes: [path(`M${x} ${top}V${end}`, "line rope"), ...eyed(top), ...(eyes > 1 ? eyed(end) : [blob(x, end), path(`M${x} ${end}v14`, "line rope")])],
  };
}

/** The drawing as an SVG element, named and described in words. */
export function cordDrawing(answer) {
  const layout = cordLayout(answer);
  const { width, height, at, pieces, labels, finished } = layout;
  const { bottom, nodes } = (finished.hitch ? onRope : offRope)(finished);
  const notes = finished.notes.flatMap(({ noun, words: text }, i) => [
    words(noun, finished.x, bottom + i * 36, "name", "middle"), words(text, finished.x, bottom + 15 + i * 36, "length", "middle"),
  ]);
  return svg("svg", { viewBox: `0 0 ${width} ${height}`, role: "img", "aria-labelledby": "cord-title", "aria-describedby": "cord-words", class: "drawn cord-drawing" },
    svg("title", { id: "cord-title" }, "The cord laid out straight, to scale, and what comes of it, not to scale"),
    svg("desc", { id: "cord-words" }, cordWords(answer)),
    words("straight, to scale", 8, 12, "name"), words("finished", finished.x, 12, "name", "middle"),
    ...pieces.flatMap((one) => piece(one, at)),
    ...labels.flatMap((one) => label(one, layout)),
    ...nodes, ...notes);
}
