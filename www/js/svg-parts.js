import { svg } from "./element.js";

// What every drawing of numbers is made of.

/** A path; its class says how it is drawn. */
export function path(d, className = "line", more = {}) {
  return svg("path", { d, class: className, ...more });
}

/** Words at a place: where they begin, or where their middle or end stands. */
export function words(text, x, y, className, anchor = "start") {
  return svg("text", { x, y, class: className, "text-anchor": anchor }, text);
}

/** How wide a chart is in its own units: narrower on a phone, where its words would shrink with it. */
export function chartWidth() {
  return matchMedia("(max-width: 30rem)").matches ? 300 : 420;
}
