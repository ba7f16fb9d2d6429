import { element } from "./element.js";

/** A caution as an item of a list; one that can kill says so with a word and a shape. */
export function cautionItem({ grave, text }) {
  if (!grave) return element("li", {}, text);
  return element("li", { class: "grave" },
    element("span", { class: "grave-word" }, element("span", { "aria-hidden": "true" }, "▲"), " Warning:"), " ", text);
}
