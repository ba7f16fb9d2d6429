import { setText } from "./element.js";
import { conditionOf, fits } from "./fitting.js";
import { hintText } from "./hint.js";

/** One field of the form: native markup from the build, wired here. */
export class PlanField {
  constructor(node) {
    this.id = node.dataset.field;
    this.node = node;
    // "rig=tail-3,tail-5" round it: the field belongs to these choices alone.
    this.conditions = [];
    for (let group = node.closest("[data-for]"); group; group = group.parentElement.closest("[data-for]")) {
      this.conditions.push(conditionOf(group.dataset.for));
    }
    this.control = node.querySelector("input, select, textarea");
    this.label = node.querySelector("label");
    this.unit = node.querySelector("[data-unit]");
    this.hint = node.querySelector(".hint");
    this.error = node.querySelector(".error");
  }

  get text() {
    return this.control.value;
  }

  get noun() {
    return this.row?.noun ?? this.id;
  }

  get isEmpty() {
    return this.text.trim() === "";
  }

  /** Whether the choices made have a use for it; `chosen(id)` is what was chosen in another field. */
  suits(chosen) {
    return this.conditions.every((condition) => fits(condition, chosen(condition.field)));
  }

  /** Puts a text in the box. A choice that is not on offer answers false and changes nothing. */
  write(text) {
    const before = this.text;
    this.control.value = text;
    if (this.control.value !== text) {
      this.control.value = before;
      return false;
    }
    this.mirror();
    return true;
  }

  /** Back to an empty box, or to the choice that is taken when nobody chooses. */
  clear(likely) {
    this.control.value = this.control instanceof HTMLSelectElement ? (likely ?? "") : "";
    this.mirror();
  }

  /** Copies what was typed into the markup: a saved page keeps attributes only. */
  mirror() {
    this.hintChoice();
    if (this.control instanceof HTMLSelectElement) {
      for (const option of this.control.options) option.toggleAttribute("selected", option.selected);
    } else if (this.control instanceof HTMLTextAreaElement) {
      this.control.defaultValue = this.control.value;
      this.control.dispatchEvent(new Event("mirrored")); // for what shows the same text in another way
    } else {
      this.control.setAttribute("value", this.control.value);
    }
  }

  /** The unit and hint of the view. What was typed stays. */
  describe(row) {
    this.row = row;
    if (this.unit) setText(this.unit, row.unit ?? "");
    if (this.hint) setText(this.hint, hintText(row));
    this.hintChoice();
  }

  /** What the choice made means, under its name. */
  hintChoice() {
    if (this.row?.options && this.hint) setText(this.hint, hintText(this.row, this.text));
  }

  /** Shows these sentences beside the box, or none. */
  complain(sentences) {
    const wrong = sentences.length > 0;
    setText(this.error, sentences.join(" "));
    this.error.hidden = !wrong;
    if (wrong) this.control.setAttribute("aria-invalid", "true");
    else this.control.removeAttribute("aria-invalid");
  }

  get isShown() {
    return !this.node.hidden;
  }

  get complains() {
    return !this.error.hidden;
  }
}
