import { FULL, PAUSE, QUICK, ROUGH } from "./effort.js";
import { foldFigures, placesIn, showAnswer, showErrors, showFault, showNoAnswer, showNotices, showUnseen, showWay } from "./embed-answer.js";
import { unseenText } from "./embed-given.js";
import { QUESTIONS } from "./embed-questions.js";
import { fieldNode, sheet } from "./embed-sheet.js";
import { answerSentence } from "./answer-words.js";
import { setText } from "./element.js";
import { faultsText, NO_FAULTS, sortedFaults } from "./faults.js";
import { guard } from "./guard.js";
import { pace } from "./pace.js";
import { PlanForm } from "./plan-form.js";
import { afterPress } from "./press.js";

const FAILED = "The calculation failed, which is a fault of this program and not of what you typed. What you typed is still there. Change it, or open the page again.";

/**
 * One question in somebody else's page: the boxes in, the answer out. `boxes` are ids of fields; `site` gives the address
 * of a page of ours; `tell(asking)` hears what each plan comes to once it is reckoned in full.
 */
export class Asking {
  constructor(question, engine, { boxes, site, tell }) {
    const { title, page, steps } = QUESTIONS.get(question);
    Object.assign(this, { question, engine, tell, steps, page: site(page) });
    const rows = new Map(engine.fields().map((row) => [row.id, row]));
    this.node = sheet(question, title, boxes.map((id) => fieldNode(question, rows.get(id))));
    this.at = placesIn(this.node);
    this.form = new PlanForm(this.node.querySelector("form"), engine);
    this.faults = NO_FAULTS;
    this.answer = null;
    this.typed = new Set();
    this.used = false; // nobody is spoken to who has not touched it
    this.guarded = guard(() => this.fail());
    this.pace = pace([
      { after: 400, run: () => this.guarded(() => this.settle()) },
      { after: 1000, run: () => this.guarded(() => this.speak()) },
      ...steps.slice(1).map((effort, i) => ({ after: 1000 + PAUSE * (i + 1), run: () => this.guarded(() => this.goOn(effort)) })),
    ]);
    foldFigures(this.at);
    this.listen();
  }

  /** It broke: no number stays in view. */
  fail() {
    this.pace.stop();
    this.answer = null;
    this.faults = { toEnter: [], toRight: [{ fields: [], message: FAILED }] };
    showFault(this.at, FAILED);
    this.tell(this);
  }

  get draft() {
    return this.form.draft;
  }

  /** The plan as a fragment without `#`; "" while something in it cannot be read. */
  get link() {
    return this.engine.writeLink(this.question, this.draft, this.form.view);
  }

  reckon(effort) {
    const { form } = this;
    const reply = this.engine.ask(form.draft, form.view, effort);
    this.answer = reply.ok ? reply.answer : null;
    this.faults = reply.ok ? NO_FAULTS : sortedFaults(reply.errors, (id) => form.leavesOut(id));
    if (!reply.ok) this.addBoxes(reply.errors);
    if (reply.ok) showAnswer(this.at, reply.answer, form.fields);
    else showNoAnswer(this.at, this.faults, form.fields);
    showUnseen(this.at, unseenText(form.carried, [...form.rows.values()]));
    showWay(this.at, this.page, this.engine.writeLink(this.question, form.readable, form.view));
  }

  /** A box for what an error is about, where none of its fields has one. */
  addBoxes(errors) {
    const { form } = this;
    for (const { fields } of errors) {
      if (!fields.some((id) => form.fields.has(id))) fields.filter((id) => form.rows.has(id)).forEach((id) => this.addBox(id));
    }
  }

  /** A box more, with what was said of it unseen. */
  addBox(id) {
    const { form } = this;
    const row = form.rows.get(id);
    const { [id]: held = "", ...rest } = form.carried;
    const node = fieldNode(this.question, row);
    this.at("boxes").append(node);
    form.add(node);
    form.fields.get(id).describe(row);
    if (held !== "") form.fields.get(id).write(String(held));
    form.carry(rest);
  }

  complain(waiting) {
    showErrors(this.at, this.form.complain(this.faults, waiting, this.typed), this.form.fields);
  }

  settle() {
    this.reckon(this.steps[0]);
    if (this.steps[0] === FULL || this.answer === null) this.tell(this);
  }

  /** More samples of the same; the last step is the answer. */
  goOn(effort) {
    if (this.answer === null) return;
    this.reckon(effort);
    if (effort === this.steps.at(-1)) this.tell(this);
  }

  speak() {
    this.complain(false);
    if (this.used) setText(this.at("status"), this.answer === null ? faultsText(this.faults) : answerSentence(this.answer));
  }

  /** Everything anew, for boxes that were filled and not typed in. */
  refresh() {
    this.reckon(ROUGH);
    this.complain(false);
    this.pace.touch();
  }

  edited(field) {
    this.used = true;
    this.typed.add(field.id);
    field.mirror();
    this.reckon(QUICK);
    this.complain(true);
    this.pace.touch();
  }

  /** Figures in the words of another view. What was typed keeps its meaning. */
  changeView(view) {
    this.form.tidyAll(this.view);
    this.form.view = view;
    this.view = this.form.view;
    this.refresh();
  }

  /** Takes this plan in place of what is said; `notices` are about where it came from. */
  take(draft, view, notices) {
    this.form.view = view;
    this.view = this.form.view;
    showNotices(this.at, [...notices, ...this.form.fill(draft).map((id) => this.notTaken(id, draft[id]))]);
    this.refresh();
  }

  /** Takes these fields alone, "" for what is no longer said; what is in the other boxes stays. */
  put(changes) {
    const { form } = this;
    const carried = { ...form.carried };
    const left = [];
    for (const [id, text] of Object.entries(changes)) {
      const field = form.fields.get(id);
      if (!field) delete carried[id];
      if (text === "") field?.clear(form.likelyChoices[id]);
      else if (field ? !field.write(text) : !form.reads({ [id]: text })) left.push(this.notTaken(id, text));
      else if (!field) carried[id] = text;
    }
    form.carry(carried);
    form.tidyAll();
    showNotices(this.at, left);
    this.refresh();
  }

  notTaken(id, text) {
    return `This page sets “${this.form.nounOf(id)}” to “${text}”, which cannot be taken: it is left out.`;
  }

  stop() {
    this.pace.stop();
  }

  listen() {
    const { form } = this.form;
    const on = (type, react) => form.addEventListener(type, (event) => this.guarded(() => react(event)));
    const fieldOf = (event) => this.form.fields.get(event.target.closest?.("[data-field]")?.dataset.field);
    on("input", (event) => {
      const field = fieldOf(event);
      if (field) this.edited(field);
    });
    on("focusout", (event) => {
      const field = fieldOf(event);
      if (!field) return;
      this.form.tidy(field);
      afterPress(() => this.guarded(() => this.complain(false)));
    });
    on("change", (event) => {
      if (event.target.type !== "radio") return;
      this.used = true;
      this.changeView(this.form.view);
    });
    on("submit", (event) => {
      event.preventDefault();
      this.pace.finish();
    });
  }
}
