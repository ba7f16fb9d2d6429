import { chartLayout, chartRows, headOf } from "./chart-layout.js";
import { element, svg } from "./element.js";
import { foldedTable } from "./scroll-box.js";
import { chartWidth, path, words } from "./svg-parts.js";
import { table } from "./table.js";

// A line chart and the table that says the same. Lines are told apart by their dashes and by a letter at their end.

const DASHES = [null, "7 4", "2 4", "10 3 2 3", "4 2", "1 3", "12 4", "6 2 1 2", "3 6"];

const told = ({ className, text, x, y, anchor }) => words(text, x, y, className, anchor);
const leads = (lead) => (lead === null ? null : path(lead.map(({ x, y }, at) => `${at ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join(""), "line lead"));

function frame({ left, right, top, bottom, rows }) {
  return [
    ...rows.map((row) => path(`M${left} ${row.y}H${right}`, "line grid")),
    path(`M${left} ${top}V${bottom}H${right}`, "line"),
  ];
}

function bandDrawn({ top, bottom }, { left, right }) {
  const height = Math.max(bottom - top, 2);
  let hatch = "";
  for (let x = left; x < right; x += 9) hatch += `M${x} ${top + height}L${Math.min(x + height, right)} ${top + height - Math.min(height, right - x)}`;
  return svg("g", { class: "has" },
    svg("rect", { x: left, y: top, width: right - left, height, class: "band" }),
    path(hatch, "line hatch"),
    path(`M${left} ${top}H${right}M${left} ${top + height}H${right}`, "line edge"));
}

/** The letter of each line, in the order of the lines: one that other parts of the page call it by, or the next. */
function calledIn(chart, letters) {
  return chart.lines.map(({ id }, i) => letters.get(id) ?? String.fromCharCode(97 + i));
}

/** The chart alone. */
export function chartDrawing(chart, letters = new Map()) {
  const layout = chartLayout(chart, calledIn(chart, letters), chartWidth());
  const { width, height, left, right, top, bottom, you } = layout;
  // Words come last, each with a rim of paper, so that no line runs through them.
  return svg("svg", { viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": `${chart.noun}. ${chart.text}`, class: "drawn chart" },
    ...layout.bands.map((band) => bandDrawn(band, layout)),
    ...frame(layout),
    ...layout.lines.map((line, i) => path(line.points.map(({ x, y }, at) => `${at ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join(""), "line drawn-line", { "stroke-dasharray": DASHES[i % DASHES.length] })),
    ...layout.marks.map(({ y }) => path(`M${left} ${y}H${right}`, "line limit")),
    you === null ? null : path(`M${you} ${top}V${bottom}`, "line you"),
    ...[...layout.ends, ...layout.names].map(({ lead }) => leads(lead)),
    ...layout.axes.map(told),
    ...layout.names.map(({ kind, labels }) => svg("g", { class: kind }, ...labels.map(told))),
    ...layout.ends.map(({ letter }) => told(letter)),
    you === null ? null : told(layout.youWord));
}

/** What each letter stands for, for a chart whose lines are named nowhere else. */
export function chartLegend(chart) {
  const called = calledIn(chart, new Map());
  return element("ul", { class: "legend" },
    ...chart.lines.map(({ noun }, i) => element("li", {}, element("span", { class: "letter" }, called[i]), ` ${noun}`)));
}

/** The chart and its table; `letters` gives lines the letters that other parts of the page call them by. */
export function lineChart(chart, letters = new Map()) {
  const called = calledIn(chart, letters);
  const heads = [chart.y.noun, ...(chart.lines[0]?.points ?? []).map(({ x }) => `${headOf(x, chart.x)} ${chart.x.unit}`)];
  const named = { ...chart, lines: chart.lines.map((line, i) => ({ ...line, noun: `${called[i]} ${line.noun}` })) };
  return [
    element("p", { class: "told" }, chart.text),
    chartDrawing(chart, letters),
    foldedTable(chart.noun,
      table(`${chart.y.noun} in ${chart.y.unit}, by ${chart.x.noun}`, heads, chartRows(named))),
  ];
}
