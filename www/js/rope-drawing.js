import { svg } from "./element.js";
import { ropeLayout, ropeWords } from "./rope-layout.js";
import { path } from "./svg-parts.js";

// The tree and the rope in it, to scale, in one line weight.

function tree({ middle, crotch, ground, width }) {
  let grass = "";
  for (let x = 12; x < width - 8; x += 14) grass += `M${x} ${ground}l-7 9`;
  const side = (way) => `M${middle + way * 17} ${ground}Q${middle + way * 12} ${ground - 24} ${middle + way * 12} ${crotch + 18}Q${middle + way * 16} ${crotch - 8} ${middle + way * 56} ${crotch - 60}`;
  return [
    path(side(-1) + side(1), "line faint"),
    path(`M${middle - 34} ${crotch - 68}L${middle} ${crotch - 14}L${middle + 34} ${crotch - 68}`, "line faint"),
    path(`M6 ${ground}H${width - 6}`),
    path(grass, "line faint"),
  ];
}

function run({ points }, { aside, rise }) {
  return points.map(({ x, y, arc }, i) => i === 0 ? `M${x} ${y}` : arc ? `A${aside} ${rise} 0 0 ${arc === "right" ? 1 : 0} ${x} ${y}` : `L${x} ${y}`).join("");
}

/** A noun and its length, with a thin line to their place where they do not stand at it. */
function label({ rows, text, side, at, edge, top, height }, { line }) {
  const way = side === "left" ? -1 : 1;
  const far = at && (Math.abs(top + height / 2 - at.y) > 2 || Math.abs(edge - at.x) > 30);
  return [
    far ? path(`M${at.x + way * 5} ${at.y}L${edge - way * 3} ${top + height / 2}`, "line faint") : null,
    svg("text", { "text-anchor": side === "right" ? "start" : "end" },
      ...rows.map((row, i) => svg("tspan", { x: edge, y: top + line * (i + 0.8) }, row)),
      svg("tspan", { x: edge, y: top + line * (rows.length + 0.85), class: side === "under" ? null : "length" }, text)),
  ].filter(Boolean);
}

const DASHED = new Map([["retrievalCord", "line dashed"], ["missing", "line faint dashed"]]);

/** The drawing as an SVG element, named and described in words; null where the items give no shape. */
export function ropeDrawing(state, tall, extras) {
  const layout = ropeLayout(state, tall, extras);
  if (layout === null) return null;
  const { width, height, runs, knots, hitch, stopper, labels } = layout;
  const rope = (classOf) => runs.map((one) => path(run(one, layout), classOf(one)));
  return svg("svg", {
    viewBox: `0 0 ${width} ${height}`, role: "img",
    "aria-labelledby": `rope-title-${state.id}`, "aria-describedby": `rope-words-${state.id}`, class: "drawn rope-drawing",
  },
    svg("title", { id: `rope-title-${state.id}` }, `The rope in the tree, to scale: ${state.noun}`),
    svg("desc", { id: `rope-words-${state.id}` }, ropeWords(state, extras)),
    ...tree(layout),
    ...rope(() => "line halo"),
    ...rope(({ id }) => DASHED.get(id) ?? "line rope"),
    ...knots.map(({ x, y }) => svg("circle", { cx: x, cy: y, r: 5, class: "line ink" })),
    hitch && svg("rect", { x: hitch.x - 6, y: hitch.y - 8, width: 12, height: 16, rx: 3, class: "line paper" }),
    stopper && svg("circle", { cx: stopper.x, cy: stopper.y, r: 3.5, class: "line paper" }),
    ...labels.flatMap((one) => label(one, layout)));
}
