import { chartLayout, chartRows, headOf } from "./chart-layout.js";
import { element, svg } from "./element.js";
import { table } from "./table.js";

// A line chart and the table that says the same. Lines are told apart by their dashes and by a letter at their end.

const DASHES = [null, "7 4", "2 4", "10 3 2 3", "4 2", "1 3", "12 4", "6 2 1 2", "3 6"];

const path = (d, className, more = {}) => svg("path", { d, class: className, ...more });
const words = (text, x, y, className, anchor = "start") => svg("text", { x, y, class: className, "text-anchor": anchor }, text);

function axes({ x, y }, layout) {
  const { left, right, top, bottom, columns, rows } = layout;
  return [
    ...rows.map((row) => path(`M${left} ${row.y}H${right}`, "line grid")),
    path(`M${left} ${top}V${bottom}H${right}`, "line"),
    ...columns.map((column) => words(String(column.value), column.x, bottom + 15, "tick", "middle")),
    ...rows.map((row) => words(String(row.value), left - 6, row.y + 4, "tick", "end")),
    words(`${x.noun}, ${x.unit}`, right, bottom + 32, "axis", "end"),
    words(`${y.noun}, ${y.unit}`, left + 4, top + 2, "axis"),
  ];
}

function bandDrawn({ noun, top, bottom }, { left, right }) {
  const height = Math.max(bottom - top, 2);
  let hatch = "";
  for (let x = left; x < right; x += 9) hatch += `M${x} ${top + height}L${Math.min(x + height, right)} ${top + height - Math.min(height, right - x)}`;
  return svg("g", { class: "has" },
    svg("rect", { x: left, y: top, width: right - left, height, class: "band" }),
    path(hatch, "line hatch"),
    path(`M${left} ${top}H${right}M${left} ${top + height}H${right}`, "line edge"),
    words(noun, left + 8, top - 5, "noun"));
}

/** The chart and its table; `letters` gives lines the letters that other parts of the page call them by. */
export function lineChart(chart, letters = new Map()) {
  const layout = chartLayout(chart);
  const { width, height, left, right, top, bottom, you } = layout;
  const letterOf = ({ id }, i) => letters.get(id) ?? String.fromCharCode(97 + i);
  const drawn = svg("svg", { viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": `${chart.noun}. ${chart.text}`, class: "drawn chart" },
    ...layout.bands.map((band) => bandDrawn(band, layout)),
    ...axes(chart, layout),
    ...layout.lines.map((line, i) => path(line.points.map(({ x, y }, at) => `${at ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join(""), "line drawn-line", { "stroke-dasharray": DASHES[i % DASHES.length] })),
    ...layout.lines.map(({ end, letter }) => path(`M${end.x} ${end.y}L${letter.x - 4} ${letter.y}`, "line grid")),
    ...layout.lines.map((line, i) => words(letterOf(line, i), line.letter.x, line.letter.y + 4, "letter", "middle")),
    ...layout.marks.flatMap(({ noun, y }) => [path(`M${left} ${y}H${right}`, "line limit"), words(noun, left + 4, y - 4, "noun")]),
    you === null ? null : path(`M${you} ${top}V${bottom}`, "line you"),
    you === null ? null : words("you", you + 4, bottom - 6, "you-word"));
  const heads = [chart.y.noun, ...(chart.lines[0]?.points ?? []).map(({ x }) => `${headOf(x, chart.x)} ${chart.x.unit}`)];
  const named = { ...chart, lines: chart.lines.map((line, i) => ({ ...line, noun: `${letterOf(line, i)} ${line.noun}` })) };
  return [
    element("p", { class: "told" }, chart.text),
    drawn,
    element("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": `${chart.noun}, as a table` },
      table(`${chart.y.noun} in ${chart.y.unit}, by ${chart.x.noun}`, heads, chartRows(named))),
  ];
}
