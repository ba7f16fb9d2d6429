import { draftOf, saysNothing } from "./draft.js";
import { sentencesFor } from "./faults.js";
import { PlanField } from "./plan-field.js";
import { setText } from "./element.js";
import { Ways } from "./ways.js";

/** What a saved copy of the page carried; nothing where somebody's hand has spoilt it. */
function carriedIn({ dataset }) {
  try {
    return JSON.parse(dataset.carried ?? "{}");
  } catch {
    return {};
  }
}

/** The form as a whole: its fields in order, the view, and what they say together. */
export class PlanForm {
  constructor(form, engine) {
    this.form = form;
    this.engine = engine;
    this.question = form.dataset.question;
    // Other questions that this page answers too.
    this.also = form.dataset.also?.split(" ") ?? [];
    this.carried = carriedIn(form);
    this.fields = new Map();
    for (const node of form.querySelectorAll("[data-field]")) this.add(node);
    this.ways = new Ways(form, this.fields);
    this.describe();
  }

  /** Takes the box in `node` into the form. */
  add(node) {
    const field = new PlanField(node);
    this.fields.set(field.id, field);
  }

  get view() {
    // Only these two: a FormData of the whole form for every box would be most of what an edit takes.
    const chosen = (name, usual) => this.form.elements.namedItem(name)?.value || usual;
    return { system: chosen("system", "si"), decimal: chosen("decimal", ".") };
  }

  set view({ system, decimal }) {
    for (const [name, wanted] of Object.entries({ system, decimal })) {
      for (const radio of this.form.querySelectorAll(`input[name=${name}]`)) {
        if (wanted !== undefined) radio.checked = radio.value === wanted;
      }
    }
    this.mirrorView();
    this.describe();
  }

  /** Whether somebody has begun before the script did: what is in a box is meant in the units beside it. */
  get isBegun() {
    const typed = [...this.fields.values()].some(({ control, isEmpty }) => !(control instanceof HTMLSelectElement) && !isEmpty);
    return typed || [...this.form.querySelectorAll("input[name=system], input[name=decimal]")].some((one) => one.checked !== one.defaultChecked);
  }

  /**
   * Begins with the reader's usual view, unless a link says another, somebody has begun in the one that stands there, or
   * this is a saved copy, which stays as it was saved.
   * It is looked up only where it counts: usual-view.js says why.
   */
  meet(usual, isSaid) {
    let looked = null;
    this.usual = () => (looked ??= usual());
    if (this.form.dataset.met === undefined && !isSaid && !this.isBegun) this.view = this.usual();
    this.form.dataset.met = "";
  }

  get isUsualView() {
    const { system, decimal } = this.usual();
    return this.view.system === system && this.view.decimal === decimal;
  }

  mirrorView() {
    for (const radio of this.form.querySelectorAll("input[type=radio]")) {
      radio.toggleAttribute("checked", radio.checked);
    }
  }

  /** Units and hints in the words of the view, unless they are already. */
  describe() {
    const { system, decimal } = this.view;
    const words = `${system} ${decimal}`;
    if (words === this.described) return;
    this.described = words;
    this.rows = new Map(this.engine.fields(this.view).map((row) => [row.id, row]));
    for (const field of this.fields.values()) {
      const row = this.rows.get(field.id);
      if (row) field.describe(row);
    }
  }

  /** What is in the boxes and what is chosen, letter by letter: to tell whether anything changed it. */
  get asItStands() {
    return JSON.stringify([this.view, ...[...this.fields.values()].map((field) => field.text)]);
  }

  /** The whole plan: the boxes, and what is carried for other pages. */
  get draft() {
    const boxed = [...this.fields.values()].map((field) => [field.id, field.text]);
    return draftOf([...boxed, ...Object.entries(this.carried)], this.engine.tidy, this.view, this.likelyChoices);
  }

  /** Everything said, word for word. */
  get said() {
    const boxed = [...this.fields.values()].filter((field) => !field.isEmpty).map((field) => [field.id, field.text]);
    return { ...this.carried, ...Object.fromEntries(boxed) };
  }

  /** Keeps what this page has no box for. A saved page keeps attributes only, so it stands in one. */
  carry(draft) {
    this.carried = draft;
    if (Object.keys(draft).length === 0) delete this.form.dataset.carried;
    else this.form.dataset.carried = JSON.stringify(draft);
  }

  /** Whether a link could hold this draft. */
  reads(draft) {
    return this.engine.writeLink(this.question, draft, this.view) !== "";
  }

  get isReadable() {
    return this.reads(this.draft);
  }

  /** The plan without what cannot be read, which no link holds. */
  get readable() {
    return this.readableOf(this.draft);
  }

  /** The draft without what cannot be read. */
  readableOf(draft) {
    if (this.reads(draft)) return draft;
    return Object.fromEntries(Object.entries(draft).filter(([id, text]) => this.reads({ [id]: text })));
  }

  /** What people call a field, of this page or another. */
  nounOf(id) {
    return this.rows.get(id)?.noun ?? id;
  }

  /** Whether nothing is said of a field, in a box or unseen. */
  leavesOut(id) {
    return this.fields.get(id)?.isEmpty ?? !(id in this.carried);
  }

  get isEmpty() {
    return saysNothing(this.draft);
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

  /** The same for every box but the one in which somebody is typing. */
  tidyAll(view = this.view, typing = null) {
    for (const field of this.fields.values()) if (field.control !== typing) this.tidy(field, view);
  }

  /** Fills the whole form and carries what it has no box for; the ids of what it cannot take are returned. */
  fill(draft) {
    const likely = this.likelyChoices;
    const left = [];
    for (const [id, field] of this.fields) {
      const taken = id in draft && field.write(String(draft[id]));
      if (!taken) field.clear(likely[id]);
      if (!taken && id in draft) left.push(id);
    }
    const unboxed = Object.fromEntries(Object.entries(draft).filter(([id]) => !this.fields.has(id)));
    const carried = this.readableOf(unboxed);
    left.push(...Object.keys(unboxed).filter((id) => !(id in carried)));
    this.carry(carried);
    this.tidyAll();
    this.ways.suit();
    return left;
  }

  /**
   * Shows every error beside its box, or while one is being typed in (`waiting`) only goes on with those in view; the
   * errors shown are returned. What is not entered is said of no box but those that were `typed` in.
   */
  complain({ toEnter, toRight }, waiting, typed) {
    const complains = (id) => this.fields.get(id)?.complains;
    const shown = waiting ? toRight.filter((error) => error.fields.some(complains)) : toRight;
    for (const [id, field] of this.fields) {
      const emptied = waiting || !typed.has(id) ? [] : toEnter;
      field.complain(sentencesFor(id, [...shown, ...emptied]));
    }
    return shown;
  }

  /** Puts away the boxes that the choices made have no use for: never one in `wrong`, and what is in them stays. */
  suit(wrong) {
    const chosen = (id) => this.fields.get(id)?.text ?? this.ways.chosen(id) ?? this.carried[id] ?? "";
    for (const field of this.fields.values()) field.node.hidden = !wrong.has(field.id) && !field.suits(chosen);
    this.ways.tell();
    // No heading over nothing.
    for (const group of this.form.querySelectorAll("fieldset, form > details")) {
      const inside = [...group.querySelectorAll("[data-field]")];
      group.hidden = inside.length > 0 && inside.every((node) => node.hidden);
    }
  }

  /** Says on each folded group how much is inside, so that folding hides nothing. */
  tally() {
    const likely = this.likelyChoices;
    for (const mark of this.form.querySelectorAll("[data-tally]")) {
      const group = mark.closest("details");
      const inside = [...this.fields.values()].filter((field) => group.contains(field.control) && field.isShown);
      const entered = inside.filter((field) => !field.isEmpty && field.text !== likely[field.id]).length;
      const wrong = inside.filter((field) => field.complains).length;
      const words = [entered > 0 ? `${entered} entered` : "", wrong > 0 ? `${wrong} to put right` : ""];
      setText(mark, words.filter(Boolean).join(", "));
      mark.classList.toggle("wrong", wrong > 0);
    }
  }
}
