import { ticks } from "./chart-layout.js";
import { element, svg } from "./element.js";
import { coarse, mapLayout } from "./map-layout.js";
import { foldedTable } from "./scroll-box.js";
import { chartWidth, path, words } from "./svg-parts.js";
import { table } from "./table.js";

// The map of weight and pull: each region tinted, patterned and lettered, the person's place in it, a table of it.

// Marks that tell regions apart without colour, in a square of ten.
const MARKS = ["", "M0 10L10 0", "M2 5h2", "M5 0V10", "M0 0L10 10", "M0 5H10", "M0 0L10 10M0 10L10 0", "M5 0V10M0 5H10", "M2 2h1M7 7h1"];

function pattern(letter, i) {
  return svg("pattern", { id: `region-${letter}`, width: 10, height: 10, patternUnits: "userSpaceOnUse" },
    path(MARKS[i % MARKS.length], "line marks"));
}

function regionDrawn({ letter, d, at, cells }, rigs) {
  const i = rigs.findIndex((rig) => rig.letter === letter);
  const label = cells > 6 ? words(i < 0 ? "none" : letter, at.x, at.y + 5, "letter", "middle") : null;
  if (i < 0) return [null, label];
  return [svg("g", {}, path(d, "region", { "shape-rendering": "crispEdges", "fill-opacity": (0.08 + 0.07 * i).toFixed(2) }), path(d, "patterned", { fill: `url(#region-${letter})` })), label];
}

/** The map, its legend and its table; `verdict` is the sentence of the list, which counts ranges too. */
export function feasibilityMap(map, verdict) {
  const layout = mapLayout(map, chartWidth());
  const { width, height, left, right, top, bottom, across, up, you } = layout;
  const noun = (letter) => map.rigs.find((rig) => rig.letter === letter)?.noun ?? "none of these";
  const drawnRegions = layout.regions.map((region) => regionDrawn(region, map.rigs));
  const drawn = svg("svg", { viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": `${map.noun}. ${you ? you.text : ""}`, class: "drawn chart map" },
    svg("defs", {}, ...map.rigs.map(({ letter }, i) => pattern(letter, i))),
    ...drawnRegions.map(([region]) => region).filter(Boolean),
    path(`M${left} ${top}V${bottom}H${right}`, "line"),
    ...ticks(map.x.least, map.x.most, 6).map((value) => words(String(value), across(value), bottom + 15, "tick", "middle")),
    ...ticks(map.y.least, map.y.most, 6).map((value) => words(String(value), left - 6, up(value) + 4, "tick", "end")),
    words(`${map.x.noun}, ${map.x.unit}`, right, bottom + 32, "axis", "end"),
    words(`${map.y.noun}, ${map.y.unit}`, left + 4, top - 7, "axis"),
    ...drawnRegions.map(([, label]) => label).filter(Boolean),
    you && path(`M${you.x - 9} ${you.y}h18M${you.x} ${you.y - 9}v18`, "line you halo"),
    you && path(`M${you.x - 9} ${you.y}h18M${you.x} ${you.y - 9}v18`, "line you"),
    you && words("you", Math.min(you.x + 8, right - 24), Math.max(you.y - 8, top + 10), "you-word"));
  const { heads, rows } = coarse(map);
  const cell = (letter) => (letter === "." ? "none" : element("span", {}, letter, element("span", { class: "unseen" }, `, ${noun(letter)}`)));
  return [
    element("p", { class: "told" }, map.text),
    you && element("p", { class: "told" }, you.text),
    you && element("p", { class: "told" }, `With the ranges: ${verdict}`),
    drawn,
    element("ul", { class: "legend" }, ...map.rigs.map((rig) => element("li", {}, element("span", { class: "letter" }, rig.letter), ` ${rig.noun}`))),
    foldedTable(map.noun,
      table(`${map.noun}: ${map.y.noun} in ${map.y.unit} down, ${map.x.noun} in ${map.x.unit} across`,
        [map.y.noun, ...heads.map(String)], rows.map(({ pull, cells }) => [String(pull), ...cells.map(cell)]))),
  ].filter(Boolean);
}
