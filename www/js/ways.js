import { conditionOf } from "./fitting.js";

/**
 * Choices of how to say one thing, by radios: `data-for="NAME=VALUE"` holds the boxes of one way. They are no part of a
 * plan: what was typed in another way's boxes stays and counts.
 */
export class Ways {
  constructor(form, fields) {
    this.form = form;
    this.ways = new Map();
    for (const radio of form.querySelectorAll("input[type=radio]")) {
      const inside = [...fields.values()].filter(({ conditions }) =>
        conditions.some(({ field, choices }) => field === radio.name && choices.includes(radio.value)));
      if (inside.length > 0) this.ways.set(radio, inside);
    }
  }

  has(name) {
    return this.of(name).length > 0;
  }

  of(name) {
    return [...this.ways.keys()].filter((radio) => radio.name === name);
  }

  /** Which way is chosen; undefined where a name is no choice of ways. */
  chosen(name) {
    return this.of(name).find((radio) => radio.checked)?.value;
  }

  isEntered(radio) {
    return this.ways.get(radio).some((field) => !field.isEmpty);
  }

  get names() {
    return new Set([...this.ways.keys()].map(({ name }) => name));
  }

  /** Chooses the way that was used, the last of them where it is several: they stand in the order of what counts. */
  suit() {
    for (const name of this.names) {
      const used = this.of(name).filter((radio) => this.isEntered(radio));
      if (used.length > 0) used.at(-1).checked = true;
    }
  }

  /** Chooses the way that a box belongs to. Says whether that changed anything. */
  show(target) {
    for (let group = target.closest("[data-for]"); group; group = group.parentElement.closest("[data-for]")) {
      const { field, choices } = conditionOf(group.dataset.for);
      const radio = this.of(field).find(({ value }) => choices.includes(value));
      if (radio && !radio.checked) {
        radio.checked = true;
        return true;
      }
    }
    return false;
  }

  /** Marks the ways in which something is entered, so that no box put away counts unseen. */
  tell() {
    for (const radio of this.ways.keys()) radio.parentElement.toggleAttribute("data-entered", this.isEntered(radio));
    for (const note of this.form.querySelectorAll("[data-several]")) {
      note.hidden = this.of(note.dataset.several).filter((radio) => this.isEntered(radio)).length < 2;
    }
  }
}
