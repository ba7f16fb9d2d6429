import { element, setText } from "./element.js";
import { rigDrawing } from "./rig-drawing.js";
import { rigLayout } from "./rig-layout.js";
import { heightTables, strandTable } from "./rig-tables.js";
import { fillScroll, fitted, scrollBox } from "./scroll-box.js";

// Every state of the rig: its drawing, and what each part carries in it. What somebody opened stays open while numbers change.

const HEADS = ["Part", "How it stands", "Peak", "Bears as rigged", "Times the peak", "Load", "Asked of it"];

function block(id) {
  return element("details", { class: "state", "data-state": id, ...(id === "resting" ? { open: "" } : {}) },
    element("summary", {}, element("span", { class: "noun" }), " ", element("span", { class: "standing" })),
    element("p", { class: "what" }),
    element("p", { class: "singles" }),
    element("div", { class: "beside" }, element("div", { class: "drawing" }), element("div", { class: "tables" })),
    scrollBox(null, null, "scroll parts"));
}

// A number and its unit stay on one line; between a figure and its range a line may break.
const whole = (text) => element("span", { class: "whole" }, text);

function ranged(figure) {
  if (figure === null) return ["not known"];
  return figure.range === null ? [whole(figure.text)] : [whole(figure.text), " ", whole(`(${figure.range})`)];
}

function partRow({ noun, single, load, peak, strength, ratio, against, text, standing }) {
  const bears = strength === null ? ["not known"] : [whole(strength.text)];
  const name = element("th", { scope: "row" }, noun, single ? element("span", { class: "single-word" }, element("span", { "aria-hidden": "true" }, " ◆"), " single") : null);
  const cells = [ranged(peak), bears, ranged(ratio), ranged(load), [against === "" ? "nothing" : against]];
  const word = standing === "short" ? element("span", { class: "grave-word" }, element("span", { "aria-hidden": "true" }, "▲ "), text) : text;
  return element("tr", { "data-standing": standing }, name, element("td", {}, word), ...cells.map((cell) => element("td", {}, ...cell)));
}

function partsTable({ noun, parts }) {
  return element("table", {},
    element("caption", {}, `${noun}: what each part carries`),
    element("thead", {}, element("tr", {}, ...HEADS.map((head) => element("th", { scope: "col" }, head)))),
    element("tbody", {}, ...parts.map(partRow)));
}

const shortParts = (parts) => parts.filter(({ standing }) => standing === "short").length;

function standingOf({ possible, parts }) {
  if (!possible) return "not reckoned";
  const short = shortParts(parts);
  return short > 0 ? `▲ ${short} may be loaded past what they bear` : `${parts.filter(({ single }) => single).length} single parts`;
}

function fill(node, state) {
  const part = (name) => node.querySelector(`.${name}`);
  setText(part("noun"), state.noun);
  setText(part("standing"), standingOf(state));
  node.dataset.standing = state.possible && shortParts(state.parts) > 0 ? "short" : "";
  setText(part("what"), state.text);
  setText(part("singles"), state.singles);
  part("drawing").replaceChildren(...(state.drawing === null ? [] : [rigDrawing(state.drawing, `The rig: ${state.noun.toLowerCase()}`, `rig-${state.id}`)]));
  part("beside").hidden = state.drawing === null;
  const tables = state.drawing === null ? [] : [strandTable(state.drawing, rigLayout(state.drawing).dense), ...heightTables(state.drawing)];
  part("tables").replaceChildren(...tables.map(fitted));
  part("parts").setAttribute("aria-label", `${state.noun}, part by part`);
  part("parts").hidden = !state.possible;
  fillScroll(part("parts"), state.possible ? partsTable(state) : null);
}

/** Shows the states of an answer in their order. */
export function showLoadStates(list, states) {
  const old = new Map([...list.children].map((node) => [node.dataset.state, node]));
  const nodes = states.map((state) => {
    const node = old.get(state.id) ?? block(state.id);
    fill(node, state);
    return node;
  });
  const same = nodes.length === list.children.length && nodes.every((node, i) => list.children[i] === node);
  if (!same) list.replaceChildren(...nodes);
}
