import { draftOf } from "./draft.js";
import { PlanField } from "./plan-field.js";
import { setText } from "./element.js";

/** The form as a whole: its fields in order, the view, and what they say together. */
export class PlanForm {
  constructor(form, engine) {
    this.form = form;
    this.engine = engine;
    this.question = form.dataset.question;
    this.fields = new Map();
    for (const node of form.querySelectorAll("[data-field]")) {
      const field = new PlanField(node);
      this.fields.set(field.id, field);
    }
    this.describe();
  }

  get view() {
    const data = new FormData(this.form);
    return { system: data.get("system") ?? "si", decimal: data.get("decimal") ?? "." };
  }

  set view({ system, decimal }) {
    for (const radio of this.form.querySelectorAll("input[type=radio]")) {
      const wanted = radio.name === "system" ? system : decimal;
      if (wanted !== undefined) radio.checked = radio.value === wanted;
    }
    this.mirrorView();
    this.describe();
  }

  mirrorView() {
    for (const radio of this.form.querySelectorAll("input[type=radio]")) {
      radio.toggleAttribute("checked", radio.checked);
    }
  }

  /** Units and hints in the words of the view. */
  describe() {
    this.rows = new Map(this.engine.fields(this.view).map((row) => [row.id, row]));
    for (const field of this.fields.values()) {
      const row = this.rows.get(field.id);
      if (row) field.describe(row);
    }
  }

  get draft() {
    const entries = [...this.fields.values()].map((field) => [field.id, field.text]);
    return draftOf(entries, this.engine.tidy, this.view, this.likelyChoices);
  }

  get isEmpty() {
    return Object.keys(this.draft).length === 0;
  }

  /** What each choice is when nobody chooses. */
  get likelyChoices() {
    const likely = {};
    for (const row of this.rows.values()) if (row.options && row.likely !== null) likely[row.id] = row.likely;
    return likely;
  }

  /** Gives a bare number its unit, so that a change of view cannot change what it means. */
  tidy(field, view = this.view) {
    if (field.isEmpty || field.control instanceof HTMLSelectElement) return;
    const text = this.engine.tidy(field.id, field.text, view);
    if (text !== field.text) field.write(text);
  }

  tidyAll(view = this.view) {
    for (const field of this.fields.values()) this.tidy(field, view);
  }

  /** Fills the whole form; what has no place in it is returned. */
  fill(draft) {
    const likely = this.likelyChoices;
    const left = [];
    for (const field of this.fields.values()) field.clear(likely[field.id]);
    for (const [id, value] of Object.entries(draft)) {
      const field = this.fields.get(id);
      if (!field?.write(String(value))) left.push(id);
    }
    this.tidyAll();
    return left;
  }

  /** Puts away the boxes that the choices made have no use for: never one in `wrong`, and what is in them stays. */
  suit(wrong) {
    for (const field of this.fields.values()) {
      const chosen = this.fields.get(field.condition)?.text ?? "";
      field.node.hidden = chosen !== "" && chosen !== field.wanted && !wrong.has(field.id);
    }
  }

  /** Says on each folded group how much is inside, so that folding hides nothing. */
  tally() {
    const likely = this.likelyChoices;
    for (const group of this.form.querySelectorAll("details")) {
      const inside = [...this.fields.values()].filter((field) => group.contains(field.control) && field.isShown);
      const entered = inside.filter((field) => !field.isEmpty && field.text !== likely[field.id]).length;
      const wrong = inside.filter((field) => field.complains).length;
      const words = [entered > 0 ? `${entered} entered` : "", wrong > 0 ? `${wrong} to put right` : ""];
      const mark = group.querySelector("[data-tally]");
      setText(mark, words.filter(Boolean).join(", "));
      mark.classList.toggle("wrong", wrong > 0);
    }
  }
}
