import { forgetCopied, offerLinks } from "./copy-link.js";
import { saysNothing } from "./draft.js";
import { STORY } from "./example.js";
import { FULL, PAUSE, QUICK, ROUGH } from "./effort.js";
import { answerText } from "./answer-text.js";
import { conceal, reveal } from "./fail-safe.js";
import { NO_FAULTS, sortedFaults } from "./faults.js";
import { guard } from "./guard.js";
import { Offers } from "./offers.js";
import { offerKeeping } from "./keep.js";
import { pace } from "./pace.js";
import { Pages } from "./pages.js";
import { overTheWeb } from "./over-the-web.js";
import { keepAddress } from "./places.js";
import { afterPress, watchPresses } from "./press.js";
import { PlanAddress } from "./plan-address.js";
import { PlanForm } from "./plan-form.js";
import { usualView } from "./usual-view.js";
import { numbersStand, sayStatus, showAnswer, showErrors, showNoAnswer, showNotices, showNumbers } from "./answer.js";

const FAILED =
  "Why: the calculation failed, which is a fault of this page and not of what you typed. What you typed is still in the form. Change it, or open the page again.";

/** Calls `next` when what is in the page now is on the screen. */
const onceSeen = (next) => requestAnimationFrame(() => setTimeout(next));

/**
 * Starts a page. `ask(draft, view, effort)` is the engine's function; `question` knows what its answer alone has:
 * `show(answer, fields)` places its words, `draw(answer)` what stands below them, `glance(answer)` and `status(answer)`
 * say it in short and in a sentence.
 */
export function openPage(engine, ask, question) {
  keepAddress(document);
  watchPresses(document);
  new QuestionPage(document, engine, ask, question).start();
}

/** One question's page: the form in, the answer out, at the pace of a person typing. */
class QuestionPage {
  constructor(root, engine, ask, question) {
    this.ask = ask;
    this.question = question;
    this.pages = new Pages(root);
    this.form = new PlanForm(root.querySelector("form[data-question]"), engine);
    this.address = new PlanAddress(this.form, engine, this.pages);
    this.faults = NO_FAULTS;
    this.typed = new Set();
    this.offers = new Offers(this.form, (draft) => this.replace(draft));
    this.guarded = guard(() => {
      this.pace.stop();
      conceal(FAILED);
    });
    this.pace = pace([
      { after: 400, run: () => this.guarded(() => this.settle()) },
      { after: 1000, run: () => this.guarded(() => this.complain({ waiting: false })) },
      ...this.furtherSteps(),
    ]);
  }

  /** What comes after the first full answer, a step each: more samples, the sentence that is said, what the question does last. */
  furtherSteps() {
    const { steps = [FULL], last } = this.question;
    const runs = steps.slice(1).map((effort) => () => this.current && this.answer(effort));
    runs.push(() => this.speak()); // what is said is what stays in view
    if (last) runs.push(() => this.current && last(this.form.draft, this.form.view));
    return runs.map((run, i) => ({ after: 1000 + PAUSE * (i + 1), run: () => this.guarded(run) }));
  }

  /** The effort of the first answer once typing has stopped. */
  get settled() {
    return this.question.steps?.[0] ?? FULL;
  }

  /** Asks the engine and shows what it says. */
  answer(effort) {
    const { draft, view } = this.form;
    const reply = this.ask(draft, view, effort);
    this.current = reply.ok ? reply.answer : null;
    this.faults = reply.ok ? NO_FAULTS : sortedFaults(reply.errors, (id) => this.form.leavesOut(id));
    if (reply.ok) this.show(reply.answer, effort);
    else showNoAnswer(this.faults, this.form.fields);
    this.form.suit(this.wrong);
    const isEmpty = saysNothing(draft);
    document.getElementById("share").hidden = isEmpty;
    // Nothing to say yet: no bar lies over a form that nobody has begun.
    document.getElementById("glance").parentElement.hidden = isEmpty;
    this.offers.show(draft);
    reveal();
  }

  /** The words, and what stands below them; for that nobody waits with a first, rough answer. */
  show(answer, effort) {
    showAnswer(answer, this.form.fields, this.question);
    const below = () => this.current === answer && showNumbers(answer, this.question);
    if (numbersStand() || effort !== ROUGH) below();
    else onceSeen(() => this.guarded(below));
  }

  /** Shows every error now, or only goes on with those in view while a box is being typed in. */
  complain({ waiting }) {
    const shown = this.form.complain(this.faults, waiting, this.typed);
    showErrors(shown, this.form.fields, shown.length > 0 && !this.form.isReadable);
    this.form.tally();
  }

  /** Something is being typed. */
  edited(field) {
    this.typed.add(field.id);
    this.offers.forget();
    this.address.release();
    field.mirror();
    forgetCopied();
    this.answer(QUICK);
    this.complain({ waiting: true });
    this.pace.touch();
  }

  /** A box was left. With a pointer down the sentence waits: it would push away what is being pressed. */
  left(field) {
    this.form.tidy(field);
    afterPress(() => this.guarded(() => this.complain({ waiting: false })));
  }

  /** Typing has stopped: the full answer, and an address that holds it. */
  settle() {
    this.answer(this.settled);
    this.keep();
  }

  /** The plan into the address and into the links to the other pages. What cannot be read is in neither. */
  keep() {
    this.address.keep();
    this.pages.carry((question) => this.address.fragmentFor(question || this.form.question));
  }

  speak() {
    this.complain({ waiting: false });
    sayStatus(this.current && this.question.status(this.current), this.faults);
  }

  /** Everything at once, for a form that was filled and not typed; roughly, so that nobody waits to see an answer. */
  refresh() {
    this.answer(ROUGH);
    this.complain({ waiting: false });
    this.pace.touch();
  }

  changeView() {
    this.address.release();
    this.form.tidyAll(this.shownView);
    this.shownView = this.form.view;
    this.form.mirrorView();
    this.form.describe();
    forgetCopied();
    this.refresh();
  }

  /** Another way of saying a thing: its boxes are shown; what was said in the others stays. */
  takeWay() {
    this.form.mirrorView();
    this.form.suit(this.wrong);
  }

  /** The fields in which something is to be put right. */
  get wrong() {
    return new Set(this.faults.toRight.flatMap((error) => error.fields));
  }

  /** Takes a plan out of the address, if there is one. */
  openLink() {
    if (!this.address.hasPlan) return;
    forgetCopied();
    showNotices(this.address.open());
    this.shownView = this.form.view;
  }

  /** Fills the form with this draft in place of all that is in it. */
  replace(draft) {
    this.typed.clear();
    this.address.release();
    showNotices([]);
    forgetCopied();
    this.form.fill(draft);
    this.refresh();
  }

  /** Reads what is in the boxes, whoever put it there. */
  reread() {
    for (const field of this.form.fields.values()) field.mirror();
    this.form.tidyAll(this.form.view, document.activeElement);
    this.form.ways.suit();
    this.form.mirrorView();
    this.form.describe();
    this.refresh();
    this.seen = this.form.asItStands;
  }

  listen() {
    const { form } = this.form;
    const fieldOf = (event) => this.form.fields.get(event.target.closest?.("[data-field]")?.dataset.field);
    const on = (target, type, react) => target.addEventListener(type, (event) => this.guarded(() => react(event)));

    on(form, "input", (event) => {
      const field = fieldOf(event);
      if (field) this.edited(field);
    });
    on(form, "focusout", (event) => {
      const field = fieldOf(event);
      if (field) this.left(field);
    });
    on(form, "change", (event) => {
      if (this.form.ways.has(event.target.name)) this.takeWay();
      else if (event.target.type === "radio") this.changeView();
    });
    on(form, "reach", (event) => this.form.ways.show(event.target) && this.takeWay());
    on(form, "submit", (event) => {
      event.preventDefault();
      this.pace.finish();
    });
    this.offers.listen(on);
    on(window, "hashchange", () => {
      if (!this.address.hasPlan) return;
      this.offers.forget();
      this.openLink();
      this.refresh();
    });
    // A browser may bring back what was in the boxes after the script has read them.
    on(window, "pageshow", () => this.form.asItStands === this.seen || this.reread());
    // Whoever prints gets the full answer.
    on(window, "beforeprint", () => this.pace.finish());
    this.pages.watch(on, () => this.keep());
    offerLinks((which) => this.guarded(() => this.address.fragment(which)), () => this.address.carriesBody, (link) => this.textWith(link));
    offerKeeping(() => this.guarded(() => this.address.fragment()), () => this.address.carriesBody);
    overTheWeb(() => this.guarded(() => this.keep()));
  }

  /** The answer in view as text that ends with this link; null while there is none. */
  textWith(link) {
    const title = document.querySelector("h1").textContent;
    return this.current ? answerText(title, this.current, link, this.form.engine.version()) : null;
  }

  start() {
    document.getElementById("example-story").textContent = STORY;
    document.getElementById("status").textContent = "";
    forgetCopied();
    showNotices([]);
    this.form.meet(() => usualView(navigator.language), this.address.hasPlan);
    this.shownView = this.form.view;
    this.listen();
    this.guarded(() => {
      this.openLink();
      this.reread();
    });
  }
}
