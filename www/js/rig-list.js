import { cautionItem } from "./caution-item.js";
import { element, setText, svg } from "./element.js";
import { rigDrawing } from "./rig-drawing.js";
import { rigLayout } from "./rig-layout.js";
import { heightTables, strandTable } from "./rig-tables.js";
import { fitted } from "./scroll-box.js";
import { SHAPES } from "./shapes.js";
import { withPlan } from "./link.js";
import { table } from "./table.js";

// The rigs in their order. What somebody opened stays open while numbers change.

/** What is said of how a rig stands: a word, and the shape beside it. */
export const STANDINGS = {
  works: { word: "comes to the height in time", shape: "within-reach" },
  "one-pull": { word: "one pull succeeds", shape: "within-reach" },
  hard: { word: "one pull succeeds, few will follow", shape: "at-limit" },
  "at-limit": { word: "at your limit", shape: "at-limit" },
  out: { word: "out of reach", shape: "out-of-reach" },
  "not-known": { word: "strength not known", shape: "none" },
};

/** How a rig stands; where only one pull could be reckoned, one that takes nearly all of somebody's strength is no climb. */
export function standingOf({ standing, figures, cautions }) {
  if (standing !== "works" || figures.some(({ id }) => id === "reachChance")) return standing;
  return cautions.some(({ id }) => id === "hard-pull") ? "hard" : "one-pull";
}

/** The text of a figure of a rig, with its range if it has one; a dash where it is not known. */
export function told({ figures }, id, ranged = false) {
  const figure = figures.find((one) => one.id === id);
  if (!figure) return "–";
  return ranged && figure.range ? `${figure.text} (${figure.range})` : figure.text;
}

const shape = (id) =>
  svg("svg", { class: "shape", viewBox: "0 0 16 16", "aria-hidden": "true", focusable: "false" }, svg("path", { d: SHAPES[id] }));

function block(id) {
  return element("li", { class: "rig", "data-rig": id },
    element("details", {},
      element("summary", {},
        element("span", { class: "letter" }), " ",
        element("span", { class: "noun" }), " ",
        element("span", { class: "value" }), " ",
        element("span", { class: "standing" })),
      element("p", { class: "mark" }),
      element("p", { class: "why-rig" }),
      element("p", { class: "gear" }),
      element("ul", { class: "rig-cautions cautions" }),
      element("p", {}, element("a", { class: "take" }, "See the climb on this rig"), element("span", { class: "untested" })),
      element("div", { class: "beside" }, element("div", { class: "drawing" }), element("div", { class: "tables" }))));
}

/** What marks a rig among the others, in words; "" where nothing does. */
export function marksOf({ least, chosen, hauled }) {
  return [least && "the least kit", chosen && "the one you chose", hauled && "takes a helper on the ground"]
    .filter(Boolean).join("; ");
}

/** Where the menu leads for a climb: in the pocket edition that is another place of the same file. */
const climbPage = () => document.querySelector("nav a[data-page=can-i-climb]").getAttribute("href");

function fill(node, rig, answer, letter) {
  const part = (name) => node.querySelector(`.${name}`);
  const { word, shape: its } = STANDINGS[standingOf(rig)];
  setText(part("letter"), letter);
  setText(part("noun"), rig.noun);
  setText(part("value"), (rig.hauled ? "helper: " : "") + told(rig, "pullNeeded"));
  part("standing").replaceChildren(shape(its), ` ${word}`);
  node.dataset.standing = standingOf(rig);
  node.classList.toggle("least", rig.least);
  const marks = marksOf(rig);
  setText(part("mark"), marks === "" ? "" : `◆ ${marks}`);
  part("mark").hidden = marks === "";
  setText(part("why-rig"), rig.first);
  setText(part("gear"), rig.gear.length === 0 ? "Takes nothing beyond rope, harness and hitch." : `Takes, beyond rope, harness and hitch: ${rig.gear.join(", ")}.`);
  const cautions = part("rig-cautions");
  cautions.hidden = rig.cautions.length === 0;
  cautions.replaceChildren(...rig.cautions.map(cautionItem));
  const { address, untested } = answer.links[rig.id];
  part("take").setAttribute("href", withPlan(climbPage(), address));
  setText(part("untested"), untested ? ", without your own test, which was made on another rig" : "");
  const facts = rig.figures.map((figure) => [figure.noun, figure.text, figure.range ?? "–"]);
  const { dense } = rigLayout(rig.drawing);
  part("drawing").replaceChildren(rigDrawing(rig.drawing, `${rig.noun}, and the pull in each strand`, `rig-${rig.id}`));
  const tables = [table(`In numbers: ${rig.noun}`, ["Figure", "Likely", "Range"], facts), strandTable(rig.drawing, dense), ...heightTables(rig.drawing)];
  part("tables").replaceChildren(...tables.map(fitted));
}

/** Shows the rigs of an answer in their order. */
export function showRigs(list, answer, letters) {
  const old = new Map([...list.children].map((node) => [node.dataset.rig, node]));
  const nodes = answer.rigs.map((rig) => {
    const node = old.get(rig.id) ?? block(rig.id);
    fill(node, rig, answer, letters.get(rig.id) ?? "");
    return node;
  });
  const same = nodes.length === list.children.length && nodes.every((node, i) => list.children[i] === node);
  if (!same) list.replaceChildren(...nodes);
}

/** One table of all rigs. */
export function sideBySide(rigs, letters) {
  const heads = ["Rig", "Verdict", "One pull", "Pull, range", "Of your arms", "Of your hands", "Advantage (range)", "Without loss", "Gain a stroke", "Strokes", "Pulling time", "Time with rests", "Rope through hands", "Extra gear"];
  return table("Every rig, in the same order", heads, rigs.map((rig) => [
    [letters.get(rig.id), rig.noun].filter(Boolean).join(" "),
    STANDINGS[standingOf(rig)].word,
    told(rig, "pullNeeded"),
    rig.figures.find(({ id }) => id === "pullNeeded")?.range ?? "–",
    rig.hauled ? "–" : told(rig, "armShare"),
    told(rig, "handShare"),
    told(rig, "realAdvantage", true),
    told(rig, "idealAdvantage"),
    told(rig, "gain"),
    told(rig, "allStrokes"),
    told(rig, "workingTime"),
    told(rig, "lastingTime"),
    told(rig, "ropeHandled"),
    rig.gear.join(", ") || "none",
  ]));
}
