import { element, setText } from "./element.js";
import { failingFigures } from "./failing-figures.js";
import { piecesOf } from "./numerals.js";

// A ledger of figures. Rows stay in the page and are filled anew, so that a row
// opened by somebody stays open, and keeps the focus, while numbers change.

function row(id) {
  return element("li", { class: "figure", "data-figure": id },
    element("details", {},
      element("summary", {},
        element("span", { class: "noun" }), " ",
        element("span", { class: "value" }), " ",
        element("span", { class: "range" }), " ",
        element("span", { class: "fails" }), " ",
        element("span", { class: "why" }, "How this comes about")),
      element("div", { class: "workings" })));
}

function fill(node, figure, sourceTexts, fails) {
  const part = (name) => node.querySelector(`.${name}`);
  setText(part("noun"), figure.noun);
  part("value").replaceChildren(...piecesOf(figure.text).map(({ text, numeral }) =>
    element("span", { class: numeral ? "numeral" : "unit" }, text)));
  setText(part("range"), figure.range ?? "");
  node.toggleAttribute("data-fails", fails !== undefined);
  part("fails").replaceChildren(...(fails === undefined ? [] : [element("span", { "aria-hidden": "true" }, "▲ "), fails]));
  part("workings").replaceChildren(
    ...figure.workings.map((line) => element("p", {}, line)),
    ...figure.sources.map((id) => element("p", { class: "source" }, sourceTexts.get(id) ?? id)));
}

/** Shows these figures in this order; a figure no longer there loses its row. */
export function showFigures(list, figures, sourceTexts) {
  const old = new Map([...list.children].map((node) => [node.dataset.figure, node]));
  const failing = failingFigures(figures);
  const rows = figures.map((figure) => {
    const node = old.get(figure.id) ?? row(figure.id);
    fill(node, figure, sourceTexts, failing.get(figure.id));
    return node;
  });
  const same = rows.length === list.children.length && rows.every((node, i) => list.children[i] === node);
  if (!same) list.replaceChildren(...rows);
}
