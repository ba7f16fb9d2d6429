import { element, svg } from "./element.js";
import { foldedTable } from "./scroll-box.js";
import { chartWidth, path, words } from "./svg-parts.js";
import { table } from "./table.js";
import { timelineLayout } from "./timeline-layout.js";

// The ways to the ground as bars of time, with the minutes that count.

function bar({ y, height, parts }) {
  return parts.map(({ from, to, number }, i) => [
    svg("rect", { class: i % 2 ? "part shaded" : "part", x: from, y, width: Math.max(to - from, 0.5), height }),
    to - from > 14 ? words(String(number), (from + to) / 2, y + height / 2 + 4.5, "letter", "middle") : null,
  ]).flat().filter((node) => node !== null);
}

/** The drawing and its table; nothing where there is no way. */
export function timeline(ways, clock) {
  // Whoever hangs still does not come down by themselves.
  const possible = ways.filter(({ possible, id }) => possible && id !== "oneself");
  if (possible.length === 0) return [];
  const layout = timelineLayout(possible, clock, chartWidth());
  const { width, height, right, rows, limit, ticks, foot } = layout;
  const drawing = svg("svg", { class: "drawn chart timeline", viewBox: `0 0 ${width} ${height}`, "aria-hidden": "true", focusable: "false" },
    ...ticks.map(({ x, text, anchor }) => [path(`M${x} ${foot}v5`), words(text, x, foot + 18, "tick", anchor)]).flat(),
    path(`M0 ${foot}H${right}`),
    ...rows.map(bar).flat(),
    // Past the bars only: a name that it crossed would be hard to read.
    path(`M${limit} 4V20${rows.map(({ y, height: bar }) => `M${limit} ${y - 3}V${y + bar + 4}`).join("")}`, "line limit"),
    ...rows.map(({ names }) => names.map(({ text, y }) => words(text, 0, y, "noun"))).flat(),
    words(`${clock.text} count`, limit + 4, 14, "limit-word"));
  return [
    element("p", { class: "told" }, `Minutes from when you hang still, as likely as not; the line is at ${clock.text}. The stages are numbered as below.`),
    drawing,
    foldedTable("Every way to the ground", table("Every way, stage by stage", ["way", "stage", "how long"],
      possible.flatMap(({ noun, stages }) => stages.map(({ how, time }, i) => [noun, `${i + 1}. ${how}`, time])))),
  ];
}
