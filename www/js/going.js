import { chartDrawing, chartLegend } from "./chart.js";
import { element } from "./element.js";
import { foldedTable } from "./scroll-box.js";
import { table } from "./table.js";

// How the climb goes: a chart of it, and some of its strokes as a table.

const HEADS = ["strokes", "time", "height", "then", "arms", "hands"];

/** The chart, what its letters stand for, and the table. */
export function climbGoing({ chart, rows }) {
  return [
    element("p", { class: "told" }, chart.text),
    chartDrawing(chart),
    chartLegend(chart),
    foldedTable(chart.noun, table("After so many strokes: where you are, and what is left of arms and hands", HEADS,
      rows.map(({ strokes, time, height, arms, hands, next }) => [String(strokes), time, height, next, arms, hands]))),
  ];
}
