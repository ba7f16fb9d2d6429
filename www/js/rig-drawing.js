import { svg } from "./element.js";
import { path, seated } from "./rig-harness.js";
import { lines, rigLayout } from "./rig-layout.js";

// The rig drawn by hand in one line weight. What matters is never told by colour alone:
// a part whose failure drops the climber carries a diamond and the word.

const LINE = 14; // from one line of writing to the next

function words(text, x, y, className, anchor = "start") {
  const rows = Array.isArray(text) ? text : [text];
  return svg("text", { class: className, "text-anchor": anchor }, ...rows.map((row, i) =>
    svg("tspan", { x, y: y + i * LINE }, row)));
}

function limb({ y }, { width, gutter }) {
  const mid = (gutter + width) / 2;
  return [
    path(`M${gutter} ${y - 18}C${mid} ${y - 22} ${mid + 40} ${y - 15} ${width - 6} ${y - 20}`),
    path(`M${gutter} ${y + 18}C${mid - 20} ${y + 15} ${mid + 40} ${y + 21} ${width - 6} ${y + 16}`),
    path(`M${mid + 18} ${y - 8}h20m14 9h26m-50 9h16`, "line faint"),
  ];
}

function ground({ y }, { width, gutter }) {
  let marks = "";
  for (let x = gutter + 8; x < width - 12; x += 14) marks += `M${x} ${y}l-7 9`;
  return [path(`M${gutter} ${y}H${width - 6}`), path(marks, "line faint")];
}

function body(level, layout) {
  const { width } = layout;
  const name = level.kind === "climber" ? ["you"] : lines(level.noun, 9);
  return svg("g", { class: `level ${level.kind}` },
    svg("rect", { x: 0, y: level.top, width, height: level.height, class: "band" }),
    ...(level.kind === "tree" ? limb(level, layout) : []),
    ...(level.kind === "ground" ? ground(level, layout) : []),
    words(name, 6, level.y + 4 - ((name.length - 1) * LINE) / 2, "name"));
}

const coil = (x, y) => [-8, -3, 2].map((d) => `M${x - 7} ${y + d + 4}l14 -4`).join("");

const GLYPHS = {
  tied: ({ x, y }) => [svg("circle", { cx: x, cy: y, r: 7, class: "line paper" }), path(`M${x - 4} ${y - 4}l8 8m0 -8l-8 8`)],
  hitch: ({ x, y, state }) => [
    svg("rect", { x: x - 8, y: y - 10, width: 16, height: 20, rx: 4, class: state === "grips" ? "line ink" : "line paper" }),
    path(coil(x, y + 1), state === "grips" ? "line reversed" : "line")],
  hand: ({ x, y }) => [
    svg("rect", { x: x - 8, y: y - 11, width: 16, height: 20, rx: 6, class: "line paper" }),
    path(`M${x - 8} ${y - 5}h11m-11 5h11m-11 5h11`)],
  knot: ({ x, y }) => [svg("circle", { cx: x, cy: y, r: 6, class: "line ink" })],
  free: ({ x, y }) => [path(`M${x} ${y}q0 8 7 6`)],
  turn: ({ x, y, bends, radius }) => bends
    ? [svg("circle", { cx: x, cy: y, r: radius - 5, class: "line paper" })]
    : [svg("circle", { cx: x, cy: y, r: 5, class: "line paper" })],
};

function diamond({ x, y, bends, radius, opens }) {
  const [cy, r] = bends ? [y + opens * (radius - 5), 6] : [y, 16];
  return svg("path", { d: `M${x} ${cy - r}l${r} ${r}l${-r} ${r}l${-r} ${-r}z`, class: bends ? "single paper" : "single" });
}

/** The words beside a stop; in a crowded drawing a letter that the table explains. */
function label(stop, { dense, levels }) {
  if (stop.kind === "free") return null;
  const { x, y, bends, kind } = stop;
  const marks = [stop.state, stop.single ? "single" : null].filter(Boolean);
  // Off the lines that meet here.
  if (dense && bends) return words(stop.key, x, y + 4, "stop", "middle");
  const aside = stop.single ? 12 : 9;
  const above = levels[stop.level]?.kind === "ground" ? 3 : 9;
  if (dense && kind === "hand") return words(stop.key, x - aside, y - above, "stop", "end"); // the arm comes from the right
  if (dense) return words(stop.key, x + aside, y - above, "stop");
  const rows = [...lines(stop.noun, bends ? 9 : kind === "hand" ? 6 : 10), ...marks];
  const tall = (rows.length - 1) * LINE;
  if (bends) return words(rows, x, y + 4 - tall / 2, "stop", "middle");
  // Above the line that joins a hitch to its pulley.
  const beside = x + (stop.single || kind === "tied" ? 20 : 14);
  if (stop.joined && kind === "hitch") return words(rows, beside, y - 8 - tall, "stop");
  if (levels[stop.level]?.kind === "ground") return words(rows, beside, y - 10 - tall, "stop");
  return words(rows, beside, y + 4 - tall / 2, "stop");
}

function ropeDrawn(rope, layout) {
  const arcs = rope.stops.filter((stop) => stop.bends).map(({ enter, leave, radius, opens }) =>
    path(`M${enter.x} ${enter.y}A${radius} ${radius} 0 0 ${opens < 0 ? 0 : 1} ${leave.x} ${leave.y}`, "line rope"));
  const runs = rope.runs.map(({ x1, y1, x2, y2 }) => path(`M${x1} ${y1}L${x2} ${y2}`, "line rope"));
  const tensions = rope.runs.filter((run) => run.text !== null).map(({ text, at }) =>
    layout.dense
      ? svg("text", { class: "tension", "text-anchor": "middle", transform: `translate(${at.x - 6} ${at.y}) rotate(-90)` }, text)
      : words(text, at.x + 6, at.y + 4, "tension"));
  return [...runs, ...arcs, ...tensions];
}

const HOLDS = new Set(["hitch", "turn", "tied"]);

/** What joins the parts of a carriage: the upper hitch holds its pulley. */
function joins(layout) {
  return layout.levels.map((level, i) => {
    if (level.kind !== "carriage") return null;
    const held = layout.ropes.flatMap((rope) => rope.stops).filter((stop) => stop.level === i && HOLDS.has(stop.kind));
    if (held.length < 2) return null;
    for (const stop of held) stop.joined = true;
    const xs = held.map((stop) => stop.x);
    return path(`M${Math.min(...xs)} ${level.y}H${Math.max(...xs)}`);
  }).filter(Boolean);
}

/** The drawing as an SVG element, named and described in words; `name` tells it from others on the page. */
export function rigDrawing(drawing, title, name = "rig") {
  const layout = rigLayout(drawing);
  const stops = layout.ropes.flatMap((rope) => rope.stops);
  return svg("svg", {
    viewBox: `0 0 ${layout.width} ${layout.height}`, role: "img",
    "aria-labelledby": `${name}-title`, "aria-describedby": `${name}-words`, class: "drawn rig-drawing",
  },
    svg("title", { id: `${name}-title` }, title),
    svg("desc", { id: `${name}-words` }, drawing.text),
    ...layout.levels.map((level) => body(level, layout)),
    ...joins(layout),
    ...seated(layout),
    ...layout.ropes.flatMap((rope) => ropeDrawn(rope, layout)),
    ...stops.flatMap((stop) => GLYPHS[stop.kind](stop)),
    ...stops.filter((stop) => stop.single).map(diamond),
    ...stops.map((stop) => label(stop, layout)).filter(Boolean),
    layout.dense && stops.some((stop) => stop.single) ? words("◇ single", 8, layout.height - 8, "key") : null);
}
