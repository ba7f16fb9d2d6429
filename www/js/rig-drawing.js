import { element, svg } from "./element.js";
import { diamond } from "./rig-boxes.js";
import { rigLayout } from "./rig-layout.js";
import { reachable } from "./scroll-box.js";
import { path } from "./svg-parts.js";
import { LINE } from "./text-box.js";

// The rig drawn by hand in one line weight, as rig-layout.js places it. What matters is never told by colour
// alone: a part whose failure drops the climber carries a diamond and a word, a hitch that grips is filled.

const SMALLEST = 0.885; // of its size: words of 12.5 units are then 11 px
const PHONE = 323; // a drawing that is no wider fits the narrowest phone at that size

const circle = (cx, cy, r, className = "line paper") => svg("circle", { cx, cy, r, class: className });

function words({ rows, x, y, className, anchor = "start", turned = false }) {
  if (turned) return svg("text", { class: className, "text-anchor": anchor, transform: `translate(${x} ${y}) rotate(-90)` }, ...rows);
  return svg("text", { class: className, "text-anchor": anchor }, ...rows.map((row, i) => svg("tspan", { x, y: y + i * LINE }, row)));
}

/** The limb's bark above and below, not quite straight. */
function limb({ top, height }, { width, gutter }) {
  const mid = (gutter + width) / 2;
  const edge = (y, way) => path(`M${gutter} ${y}C${mid} ${y - way * 4} ${mid + 40} ${y + way * 3} ${width - 6} ${y - way * 2}`);
  return [edge(top + 8, 1), edge(top + height - 8, -1)];
}

function ground({ line }, { width, gutter }) {
  let marks = "";
  for (let x = gutter + 8; x < width - 12; x += 14) marks += `M${x} ${line}l-7 9`;
  return [path(`M${gutter} ${line}H${width - 6}`), path(marks, "line faint")];
}

function body(level, layout) {
  const x = layout.names - 6;
  return svg("g", { class: `level ${level.kind}` },
    svg("rect", { x, y: level.top, width: layout.width - x, height: level.height, class: "band" }),
    ...(level.kind === "tree" ? limb(level, layout) : []),
    ...(level.kind === "ground" ? ground(level, layout) : []));
}

const coil = (x, y) => [-8, -3, 2].map((d) => `M${x - 7} ${y + d + 4}l14 -4`).join("");

const GLYPHS = {
  tied: ({ x, y }) => [circle(x, y, 7), path(`M${x - 4} ${y - 4}l8 8m0 -8l-8 8`)],
  hitch: ({ x, y, state }) => [
    svg("rect", { x: x - 8, y: y - 10, width: 16, height: 20, rx: 4, class: state === "grips" ? "line ink" : "line paper" }),
    path(coil(x, y + 1), state === "grips" ? "line reversed" : "line")],
  hand: ({ x, y }) => [
    svg("rect", { x: x - 8, y: y - 11, width: 16, height: 20, rx: 6, class: "line paper" }),
    path(`M${x - 8} ${y - 5}h11m-11 5h11m-11 5h11`)],
  knot: ({ x, y }) => [circle(x, y, 6, "line ink")],
  free: ({ x, y }) => [path(`M${x} ${y}q0 8 7 6`)],
  turn: ({ x, y, wheel, radius }) => [circle(x, y, wheel ? radius - 5 : 5)],
};

function single(stop) {
  const { x, y, reach } = diamond(stop);
  return path(`M${x} ${y - reach}l${reach} ${reach}l${-reach} ${reach}l${-reach} ${-reach}z`, stop.wheel ? "single paper" : "single");
}

function rope({ stops, runs }) {
  return [
    ...runs.map(({ x1, y1, x2, y2 }) => path(`M${x1} ${y1}L${x2} ${y2}`, "line rope")),
    ...stops.filter(({ bends }) => bends).map(({ enter, leave, radius, opens }) =>
      path(`M${enter.x} ${enter.y}A${radius} ${radius} 0 0 ${opens < 0 ? 0 : 1} ${leave.x} ${leave.y}`, "line rope")),
  ];
}

function seat({ d, bar, figure }) {
  return [
    svg("g", { class: "harness" }, path(d), path(`M${bar.left} ${bar.y}H${bar.right}`, "line bar")),
    svg("g", { class: "sitter" }, circle(figure.head.x, figure.head.y, figure.head.radius, "line"), path(figure.body), path(figure.arm)),
  ];
}

/** The strip to scale at the left edge. */
function strip({ x, top, bottom, ground: at, ticks, leader }) {
  const marks = [-3, 3, 9].map((d) => `M${x + d} ${at}l-5 6`).join("");
  return svg("g", { class: "scale" },
    path(`M${x} ${top}V${bottom}M${x - 6} ${at}H${x + 10}${marks}`),
    path(ticks.map(({ y, textY }) => `M${x - 4} ${y}H${x + 5}L${leader} ${textY}`).join("")));
}

/** A wide drawing scrolls in a frame of its own rather than make its words too small to read. */
function framed(drawn, { width }, title) {
  if (width <= PHONE) return drawn;
  drawn.style.minWidth = `${Math.ceil(width * SMALLEST)}px`;
  drawn.style.maxWidth = `${Math.max(416, width)}px`;
  return reachable(element("div", { class: "drawing-frame" }, drawn), `${title}: scrolls sideways`);
}

/** The drawing as an element, named and described in words; `name` tells it from others on the page. */
export function rigDrawing(drawing, title, name = "rig") {
  const layout = rigLayout(drawing);
  const stops = layout.ropes.flatMap((one) => one.stops);
  const drawn = svg("svg", {
    viewBox: `0 0 ${layout.width} ${layout.height}`, role: "img",
    "aria-labelledby": `${name}-title`, "aria-describedby": `${name}-words`, class: "drawn rig-drawing",
  },
    svg("title", { id: `${name}-title` }, title),
    svg("desc", { id: `${name}-words` }, drawing.text),
    ...layout.levels.map((level) => body(level, layout)),
    layout.scale && strip(layout.scale),
    ...layout.joins.map(({ d }) => path(d)),
    ...layout.seats.flatMap(seat),
    ...layout.ropes.flatMap(rope),
    ...stops.flatMap((stop) => GLYPHS[stop.kind](stop)),
    ...stops.filter((stop) => stop.single).map(single),
    ...layout.texts.map(words));
  return framed(drawn, layout, title);
}
