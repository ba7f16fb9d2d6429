import always from "../parts/cautions.html"; // the build makes this the list of its items
import { element } from "./element.js";
import { fieldTree } from "./field-tree.js";
import { hintText } from "./hint.js";

// The nodes of an embedded question. Ids are those of its shadow root alone.

const node = (tree) => {
  if (typeof tree === "string") return tree;
  const [name, attributes, ...children] = tree;
  return element(name, attributes, ...children.map(node));
};

/** A field's box. */
export const fieldNode = (question, row) => node(fieldTree(question, row, hintText(row)));

const choice = (name, value, text) => element("label", { class: "choice" }, element("input", { type: "radio", name, value }), text);

const choices = (label, ...inside) => element("div", { class: "row", role: "radiogroup", "aria-label": label }, ...inside);

const view = () => element("details", { class: "view" },
  element("summary", {}, "Units and decimal mark"),
  choices("Units of the answers", choice("system", "si", "metric"), choice("system", "us", "feet and pounds")),
  choices("Decimal mark", choice("decimal", ".", "1.5"), choice("decimal", ",", "1,5")),
  element("p", { class: "hint" }, "What you typed stays as you typed it, and any box takes any unit."));

const form = (question, boxes) => element("form", { "data-question": question, novalidate: true, autocomplete: "off" },
  element("div", { id: "boxes" }, ...boxes),
  element("p", { id: "unseen", class: "hint", hidden: true }),
  view());

const part = (id, title, ...inside) => element("div", { id, hidden: true }, element("p", { class: "heading" }, title), ...inside);

const answer = () => element("div", { class: "answer", role: "group", "aria-label": "The answer" },
  element("p", { id: "status", class: "apart", role: "status" }),
  element("p", { id: "failed", class: "failed", role: "alert" }),
  part("notices", "About what this page set", element("ul")),
  part("errors", "▲ To put right", element("ul")),
  part("waiting", "", element("ul")),
  element("div", { id: "outcome", hidden: true },
    element("p", { id: "headline", class: "headline" }),
    element("div", { id: "sentences" }),
    element("p", { id: "assumed", class: "hint" }),
    part("missing", "You can still enter", element("ul")),
    part("shopping", "To buy", element("ul")),
    element("ul", { id: "figures", class: "figures" }),
    element("button", { id: "more", type: "button", "aria-expanded": "false", "aria-controls": "figures" }),
    part("cautions", "Watch for", element("ul")),
    element("details", {}, element("summary", {}, "Sources of these figures"), element("ol", { id: "sources" }))));

/** An embedded question as a whole. */
export function sheet(question, title, boxes) {
  // A group and no landmark: one page may hold the same question twice.
  return element("div", { class: "sheet", role: "group", lang: "en-GB", dir: "ltr", "aria-labelledby": "title" },
    element("p", { id: "title", class: "title" }, title),
    element("div", { class: "sides" }, form(question, boxes), answer()),
    element("div", { class: "always" },
      element("p", { class: "heading" }, "Always"),
      element("ul", {}, ...always.map((text) => element("li", {}, text)))),
    element("p", { class: "row" }, element("a", { id: "full" }, "Open in full, with your figures")));
}
