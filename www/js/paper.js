import { element } from "./element.js";
import { rigDrawing } from "./rig-drawing.js";
import { rigLayout } from "./rig-layout.js";
import { strandTable } from "./rig-tables.js";
import { scrollBox } from "./scroll-box.js";

// A sheet as the library has it, placed in the page. What was written into its blanks outlives the next placing.

const BLANK = /_{4,}/u;
const GRAVE = /^Warning: /u;
// Where what a section needs is entered.
const ENTERED_ON = {
  verdict: "can-i-climb", rig: "can-i-climb", before: "rescue", rescue: "rescue", "coming-down": "coming-down",
  loads: "loads", rope: "rope-length", cords: "cut-length", shopping: "cut-length",
};

/** The rig while the hands pull, and its numbers, which are too small to read in a printed drawing. */
function drawn(drawing) {
  const { dense } = rigLayout(drawing);
  return [rigDrawing(drawing, "The rig, and the pull in each strand"), scrollBox("The pull in each strand", strandTable(drawing, dense))];
}

export class Paper {
  /** `pages` names the other pages, and their links carry the plan. */
  constructor(place, pages) {
    this.place = place;
    this.pages = pages;
    this.inputs = new Map();
  }

  show({ sections }) {
    // What stands right under the title runs across; printed, the rest runs in columns.
    const under = sections.filter(({ heading }) => heading === "").map((section) => this.section(section));
    const headed = sections.filter(({ heading }) => heading !== "").map((section) => this.section(section));
    this.place.replaceChildren(...under, element("div", { class: "columns" }, ...headed));
  }

  section({ id, heading, needs, wrong, blocks, drawing }) {
    return element("section", { "data-section": id },
      heading === "" ? null : element("h2", {}, heading),
      ...this.lacking(id, needs, wrong),
      ...(drawing ? drawn(drawing) : []),
      // Its own words come first; they describe it, for whoever cannot see it.
      ...(drawing ? blocks.slice(1) : blocks).map((block) => this.block(block)));
  }

  /** Why a section says nothing yet, and a way to the page that asks. */
  lacking(id, needs, wrong) {
    if (needs.length + wrong.length === 0) return [];
    const page = ENTERED_ON[id] ?? "can-i-climb";
    return [
      needs.length > 0 && element("p", { class: "needs" }, `Needs: ${needs.map(({ message }) => message).join("; ")}.`),
      ...wrong.map(({ message }) => element("p", { class: "wrong" }, message)),
      element("p", { class: "entered-on" }, "Enter it on ", element("a", { href: this.pages.addressOf(page), "data-page": page }, this.pages.nameOf(page) ?? page), "."),
    ].filter(Boolean);
  }

  block({ kind, text, items, rows }) {
    const lead = text === "" ? null : element("p", kind === "verdict" ? { class: "verdict" } : {}, text);
    if (kind === "verdict" || kind === "paragraph") return lead;
    const body = {
      list: () => element("ul", {}, ...items.map((item) => element("li", {}, ...marked(item)))),
      steps: () => element("ol", {}, ...items.map((item) => element("li", {}, item))),
      blanks: () => element("ul", { class: "blanks" }, ...items.map((item) => this.blank(item))),
      table: () => scrollBox(text === "" ? "Figures" : text, grid(rows)),
    }[kind]();
    return element("div", {}, lead, body);
  }

  /** A line with blanks: each is a box named by the words before it. */
  blank(line) {
    const parts = line.split(BLANK);
    const last = parts.pop();
    const labels = parts.map((part) => {
      const name = part.trim();
      return element("label", {}, element("span", {}, name), this.input(name));
    });
    return element("li", {}, ...labels, last.trim() === "" ? null : element("span", {}, last.trim()));
  }

  input(name) {
    if (!this.inputs.has(name)) this.inputs.set(name, element("input", { type: "text", autocomplete: "off", spellcheck: "false" }));
    return this.inputs.get(name);
  }
}

/** A caution that can kill begins with its word, which stands out with a shape. */
function marked(item) {
  const word = GRAVE.exec(item)?.[0] ?? "";
  return word === "" ? [item] : [element("strong", { class: "grave" }, `▲ ${word.trim()}`), ` ${item.slice(word.length)}`];
}

function grid([head, ...rows]) {
  return element("table", {},
    element("thead", {}, element("tr", {}, ...head.map((cell) => element("th", { scope: "col" }, cell)))),
    element("tbody", {}, ...rows.map(([first, ...rest]) =>
      element("tr", {}, element("th", { scope: "row" }, first), ...rest.map((cell) => element("td", {}, cell))))));
}
