import { watched } from "./answer-words.js";
import { cautionItem } from "./caution-item.js";
import { cuttingDrawing } from "./cutting-drawing.js";
import { listEditor } from "./cutting-editor.js";
import { CuttingWork } from "./cutting-work.js";
import { rowOf } from "./cutting-rows.js";
import { element, setText, svg } from "./element.js";
import { showFigures } from "./figures.js";
import { SHAPES } from "./shapes.js";

// The cutting plan: a second answer on a page, of its own rows. It stands whether or not the page's own answer does.

const at = (id) => document.getElementById(id);

/** What is said where a kind stands: a word, and the shape beside it. */
const STANDINGS = {
  proved: { word: "Proved", shape: "within-reach" },
  "not-proved": { word: "Not proved", shape: "at-limit" },
  none: { word: "No plan", shape: "out-of-reach" },
};

const shape = (id) => svg("svg", { class: "shape", viewBox: "0 0 16 16", "aria-hidden": "true", focusable: "false" }, svg("path", { d: SHAPES[id] }));

function kindBlock(kind, width) {
  const { word, shape: its } = STANDINGS[kind.standing];
  return element("section", { class: "cut-kind", "data-standing": kind.standing, "aria-label": kind.noun },
    element("h3", {}, kind.noun),
    element("p", { class: "standing" }, shape(its), ` ${word}`),
    element("p", {}, kind.text),
    kind.proof === "" ? null : element("p", { class: "hint" }, kind.proof),
    ...(kind.hanks.length === 0 ? [] : cuttingDrawing(kind, width)));
}

/** Starts the part. `beside(reply, draft, view)` is the page's reply with what is wrong in the rows. */
export function cuttingPlan(engine) {
  const form = document.querySelector("form[data-question]");
  const view = () => ({ system: form.elements.namedItem("system")?.value || "si", decimal: form.elements.namedItem("decimal")?.value || "." });
  const editors = Object.fromEntries([...document.querySelectorAll("[data-list-editor]")]
    .map((node) => [node.dataset.listEditor, listEditor(node, engine, view)]));
  const part = new CuttingPart(engine);
  const put = at("put-on-list");
  let row = null;
  put.addEventListener("click", () => row && editors.cords.add(row));
  return {
    beside(reply, draft, shown) {
      row = rowOf(reply.ok ? reply.answer : null, thickness(form), nameOf(form));
      const rest = part.beside(reply, draft, shown);
      // What the rig takes is on the plan already.
      put.hidden = row === null || ("rig" in draft && part.holds(nameOf(form)));
      return rest;
    },
  };
}

/** The diameter in the box that the choices made have a use for; "" where none has. */
function thickness(form) {
  const boxes = ["hitchCord", "slingCord", "haulCord"].map((id) => form.elements.namedItem(id));
  return boxes.find((box) => box && box.value !== "" && !box.closest("[data-field]").hidden)?.value ?? "";
}

/** What the cord is for, in the words of the choice. */
function nameOf(form) {
  const choice = form.elements.namedItem("cordUse");
  return choice?.selectedOptions[0]?.textContent ?? "";
}

class CuttingPart {
  constructor(engine) {
    this.engine = engine;
    this.answer = null;
    this.asked = null;
    this.work = new CuttingWork((reply, state) => this.show(reply, state));
    at("cutting-stop").addEventListener("click", () => {
      if (this.work.stop()) this.rest("Stopped. This is the best plan so far; change anything to go on.");
    });
    at("cutting-copy").addEventListener("click", () => this.copy());
    // Bars are drawn for the width there is.
    new ResizeObserver(() => this.draw()).observe(at("cutting"));
  }

  /** The page's reply; an error of the rows goes to the page's errors, and what is shown follows the rows alone. */
  beside(reply, draft, view) {
    if (!("cords" in draft || "rig" in draft)) return this.without(reply);
    const asked = JSON.stringify([draft, view]);
    // The same once more is neither begun again nor, once stopped, gone on with.
    const cut = asked === this.asked ? this.reply : this.work.begin((effort) => this.engine.cutPlan(draft, view, effort));
    [this.asked, this.reply] = [asked, cut];
    if (cut.ok) return reply;
    // A rig alone is no wish for a plan.
    if (!("cords" in draft)) return this.without(reply);
    const known = reply.ok ? [] : reply.errors;
    const more = cut.errors.filter(({ message }) => known.every((error) => error.message !== message));
    return { ok: false, errors: [...known, ...more] };
  }

  /** The page's reply where nothing is to be cut. */
  without(reply) {
    this.work.stop();
    this.hide();
    return reply;
  }

  /** Whether a cord of this name is on the plan that is shown. */
  holds(name) {
    const hanks = this.answer?.kinds.flatMap((kind) => kind.hanks) ?? [];
    return hanks.some(({ cuts }) => cuts.some(({ noun }) => noun === name));
  }

  hide() {
    this.answer = null;
    this.asked = null;
    at("cutting").hidden = true;
    at("cutting-kinds").replaceChildren();
  }

  /** No more is being reckoned. */
  rest(said) {
    at("cutting-work").hidden = true;
    setText(at("cutting-said"), said);
  }

  show(reply, { effort, most, goesOn }) {
    if (!reply.ok) {
      this.hide();
      return;
    }
    const { answer } = reply;
    this.answer = answer;
    at("cutting").hidden = false;
    setText(at("cutting-first"), answer.first);
    setText(at("cutting-second"), answer.second);
    setText(at("cutting-assumed"), answer.assumed);
    at("cutting-shopping").replaceChildren(...answer.shopping.map((text) => element("li", {}, text)));
    at("cutting-notes").replaceChildren(...answer.notes.map((text) => element("li", {}, text)));
    at("cutting-notes").hidden = answer.notes.length === 0;
    at("cutting-copy").hidden = answer.shopping.length === 0;
    at("cutting-list").hidden = true;
    showFigures(at("cutting-figures"), answer.figures, new Map(answer.sources.map(({ id, text }) => [id, text])));
    at("cutting-cautions").replaceChildren(...watched(answer.cautions).map(cautionItem));
    at("cutting-progress").max = most;
    at("cutting-progress").value = effort;
    if (goesOn) {
      at("cutting-work").hidden = false;
      setText(at("cutting-said"), "");
    } else {
      this.rest(answer.effort.more ? "As far as this page goes; another plan might still be found." : "");
    }
    this.width = 0;
    this.draw();
  }

  /** The kinds at the width there is, unless they are drawn for it. */
  draw() {
    const width = Math.min(640, Math.floor(at("cutting").clientWidth));
    if (this.answer === null || width < 40 || width === this.width) return;
    this.width = width;
    at("cutting-kinds").replaceChildren(...this.answer.kinds.map((kind) => kindBlock(kind, width)));
  }

  async copy() {
    const box = at("cutting-list");
    box.value = this.answer.shopping.join("\n");
    try {
      await navigator.clipboard.writeText(box.value);
      setText(at("cutting-said"), "The list is copied.");
    } catch {
      box.hidden = false;
      box.select();
      setText(at("cutting-said"), "Copy the list from the box.");
    }
  }
}
