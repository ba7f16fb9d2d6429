import { element, svg } from "./element.js";
import { stepLayout } from "./step-layout.js";
import { path, words } from "./svg-parts.js";

// A step of the change-over: the climber's rope as it hangs, what is done, and what holds meanwhile.

/** The shape of a stop: what grips is filled, what is moved or opened is broken. */
function shape({ kind, x, y, moved }) {
  const d = {
    tied: `M${x - 9} ${y}H${x + 9}`,
    turn: `M${x + 6} ${y}a6 6 0 1 1 -12 0a6 6 0 1 1 12 0z`,
    hitch: `M${x - 7} ${y - 7}h14v14h-14z`,
    knot: `M${x} ${y - 7}l7 7l-7 7l-7 -7z`,
    hand: `M${x - 6} ${y - 6}L${x} ${y + 6}L${x + 6} ${y - 6}`,
  }[kind];
  const holds = !moved && (kind === "hitch" || kind === "knot");
  return path(d, `line${holds ? " holds" : ""}${moved ? " moved" : ""}`);
}

function drawing({ rope }) {
  const { width, height, x, beside, stops } = stepLayout(rope);
  return svg("svg", { class: "step-drawing", viewBox: `0 0 ${width} ${height}`, "aria-hidden": "true", focusable: "false" },
    path(`M${x} ${stops[0].y}V${height - 1}`),
    ...stops.map((stop) => shape({ ...stop, x })),
    ...stops.flatMap(({ rows }) => rows.map(({ text, y }) => words(text, beside, y, "stop"))));
}

/** The step as an item of a list. */
export function stepItem(step) {
  const { noun, how, held, sound } = step;
  return element("li", { "data-step": step.id },
    drawing(step),
    element("div", {},
      element("p", { class: "noun" }, noun),
      element("p", {}, how),
      element("p", { class: "held" }, ...(sound ? [] : [element("span", { class: "grave-word" }, "▲ Not sound: ")]), held)));
}
