import { setText } from "./element.js";
import { hintText } from "./hint.js";

/** One field of the form: native markup from the build, wired here. */
export class PlanField {
  constructor(node) {
    this.id = node.dataset.field;
    this.node = node;
    // "rig=tail-3": the field belongs to that choice alone.
    [this.condition, this.wanted] = node.closest("[data-for]")?.dataset.for.split("=") ?? [];
    this.control = node.querySelector("input, select");
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
