import { element, svg } from "./element.js";
import { alike, barOf, wordsOf } from "./cutting-layout.js";
import { path } from "./svg-parts.js";
import { fitted } from "./scroll-box.js";
import { table } from "./table.js";

// The hanks of a plan as bars, one a hank or as many as are cut alike, with a table beside them.

const place = ({ from, to }) => (from === to ? `${from}` : `${from} to ${to}`);

function piece({ kind, x, width, label, standing }, height) {
  const middle = x + width / 2;
  // Lost: strokes across. Left over: a dashed edge. A cord: a whole one.
  const strokes = kind !== "lost" ? "" : Array.from({ length: Math.max(1, Math.floor(width / 4)) }, (_, i) => `M${x + i * 4} ${height}l${Math.min(6, width)} ${-height}`).join("");
  return [
    svg("rect", { x, y: 1, width, height: height - 2, class: `line piece ${kind}` }),
    strokes && path(strokes, "line hatch"),
    standing === "along" && svg("text", { x: middle, y: height / 2 + 4, "text-anchor": "middle" }, label),
    standing === "upright" && svg("text", { transform: `translate(${middle + 4} ${height / 2}) rotate(-90)`, "text-anchor": "middle", class: "upright" }, label),
  ].filter(Boolean);
}

function bar(group, width, id) {
  const { pieces, height } = barOf(group.hank, width - 2);
  return svg("svg", { viewBox: `-1 0 ${width} ${height}`, width, height, role: "img", class: "drawn cutting-bar", "aria-labelledby": id },
    svg("title", { id }, wordsOf(group.hank)),
    ...pieces.flatMap((one) => piece(one, height)));
}

/** Bars of a kind's hanks, `width` pixels wide, and the same as a table. */
export function cuttingDrawing(kind, width) {
  const groups = alike(kind.hanks);
  return [
    element("ol", { class: "bars" }, ...groups.map((group) =>
      element("li", {},
        element("p", { class: "bar-noun" }, `${group.from === group.to ? "Hank" : "Hanks"} ${place(group)}: ${group.hank.noun}${group.from === group.to ? "" : " each"}`),
        bar(group, width, `bar-${kind.id}-${group.from}`)))),
    fitted(table(`What is cut out of what: ${kind.noun}`, ["Hank", "Cut, in this order", "Left over", "Cuts and ends"],
      groups.map((group) => {
        const { hank } = group;
        return [`${place(group)}: ${hank.noun}`, hank.cuts.map(({ noun, text }) => (noun === "" ? text : `${text} ${noun}`)).join(", "), hank.left.text, hank.lost.text];
      }))),
  ];
}
