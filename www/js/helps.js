import { element, svg } from "./element.js";
import { fitted } from "./scroll-box.js";
import { table } from "./table.js";

// What would help most: one change a row, the most helpful first, each with the chance it makes as a bar.

const HEADS = ["what is otherwise", "chance", "share of strength", "strokes", "time with rests", "what it takes"];

const bar = (value) =>
  svg("svg", { class: "bar", viewBox: "0 0 100 8", preserveAspectRatio: "none", "aria-hidden": "true", focusable: "false" },
    svg("path", { class: "track", d: "M0 4H100" }), svg("path", { class: "fill", d: `M0 4H${(100 * value).toFixed(1)}` }));

const row = ({ noun, value, chance, share, strokes, time, cost }) =>
  [noun, element("span", {}, `${chance} `, bar(value)), share, strokes ?? "–", time ?? "–", cost || "–"];

/** The sentence and the table. */
export function helpTable({ first, of, now, changes, effort }) {
  return [
    element("p", { class: "told" }, first),
    now && fitted(
      table(`Each change alone: ${of}, and what it costs`, HEADS, [now, ...changes].map(row))),
    now && element("p", { class: "effort" },
      `Each is ${effort.samples} reckoned climbs, the same ones every time: a chance may stand a point or two beside the answer’s.`),
  ].filter(Boolean);
}
