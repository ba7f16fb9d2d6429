import { element, setText } from "./element.js";
import { ropeDrawing } from "./rope-drawing.js";
import { crotchHeight, ropeExtras } from "./rope-layout.js";
import { fitted } from "./scroll-box.js";
import { table } from "./table.js";

// Every state of the rope: its items, and the tree with the rope in it. What somebody opened stays open while numbers change.

const MARK = "decides the length";

function block(id) {
  return element("details", { class: "state", "data-state": id },
    element("summary", {},
      element("span", { class: "noun" }), " ",
      element("span", { class: "decides" }), " ",
      element("span", { class: "value" })),
    element("div", { class: "beside" }, element("div", { class: "drawing" }), element("div", { class: "items" })));
}

function fill(node, state, tall, extras) {
  const { noun, decides, total, items } = state;
  const part = (name) => node.querySelector(`.${name}`);
  setText(part("noun"), noun);
  setText(part("value"), total.text);
  part("decides").replaceChildren(...(decides ? [element("span", { "aria-hidden": "true" }, "◆ "), MARK] : []));
  // The one that decides is opened once; whoever closes it has closed it.
  if (decides && node.dataset.decides === undefined) node.open = true;
  if (decides) node.dataset.decides = "";
  else delete node.dataset.decides;
  const drawing = ropeDrawing(state, tall, extras);
  part("drawing").replaceChildren(...(drawing ? [drawing] : []));
  const row = (figure) => [figure.noun, figure.text, figure.range ?? "–"];
  part("items").replaceChildren(fitted(table(noun, ["Item", "Length", "Range"], items.map(row), row(total))));
}

/** Shows the states of an answer in their order; one no longer there loses its place. */
export function showStates(list, answer) {
  const { states } = answer;
  const tall = crotchHeight(answer);
  const extras = ropeExtras(answer);
  const old = new Map([...list.children].map((node) => [node.dataset.state, node]));
  const nodes = states.map((state) => {
    const node = old.get(state.id) ?? block(state.id);
    fill(node, state, tall, extras);
    return node;
  });
  const same = nodes.length === list.children.length && nodes.every((node, i) => list.children[i] === node);
  if (!same) list.replaceChildren(...nodes);
}
