import { hand, linkHere } from "./copy-link.js";
import { setText } from "./element.js";
import { ROUGH } from "./effort.js";
import * as engine from "./engine.js";
import { exampleDraft } from "./example.js";
import { conceal, reveal } from "./fail-safe.js";
import { guard } from "./guard.js";
import { overTheWeb } from "./over-the-web.js";
import { pace } from "./pace.js";
import { Pages } from "./pages.js";
import { Paper } from "./paper.js";
import { keepAddress } from "./places.js";
import { PlanAddress } from "./plan-address.js";
import { PlanForm } from "./plan-form.js";
import { codeDrawing } from "./qr.js";
import { showNotices } from "./answer.js";
import { usualView } from "./usual-view.js";

// The whole plan on paper. No boxes of its own but the blanks: the plan is in the address.

const TRIP = "trip-sheet";
const FAILED = "Why: the calculation failed, which is a fault of this page and not of your plan. Open the page again.";

const at = (id) => document.getElementById(id);

class TripPage {
  constructor(root) {
    this.pages = new Pages(root);
    this.form = new PlanForm(root.querySelector("form[data-question]"), engine);
    this.address = new PlanAddress(this.form, engine, this.pages);
    this.paper = new Paper(at("paper"), this.pages);
    this.guarded = guard(() => {
      this.pace.stop();
      conceal(FAILED);
    });
    this.pace = pace([{ after: 60, run: () => this.guarded(() => this.show()) }]);
  }

  /** The sheet at this effort; the full one where none is said. */
  show(effort) {
    const { draft, view, isEmpty } = this.form;
    at("empty").hidden = !isEmpty;
    for (const id of ["sheet-form", "paper", "passed-on"]) at(id).hidden = isEmpty;
    this.pages.carry((page) => this.address.fragmentFor(page || TRIP));
    if (!isEmpty) {
      const { answer } = engine.tripSheet(draft, view, effort);
      this.paper.show(answer);
      this.passOn(answer);
      if (effort === undefined) setText(at("status"), "Every part of the trip sheet is worked out.");
    }
    reveal();
  }

  /** Link, code, version and date, for whoever has only the paper. */
  passOn({ version }) {
    const link = linkHere(this.address.fragment("short"));
    const body = this.address.carriesBody ? ", weight and strength among it" : "";
    const code = link.whole ? codeDrawing(link.text) : null;
    at("code").replaceChildren(...(code === null ? [] : [code]));
    setText(at("code-text"), code !== null
      ? `The code and the link hold all that was entered${body}.`
      : link.whole
        ? `The link is too long for a code. It holds all that was entered${body}.`
        : `No code: this page was opened from a file and knows no web address. What follows is the part of a link behind the address of any copy of this page; it holds all that was entered${body}.`);
    setText(at("sheet-link"), link.text);
    setText(at("sheet-version"), version);
    setText(at("sheet-date"), `Made on ${new Date().toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" })}.`);
  }

  refresh() {
    at("copied").hidden = true;
    this.show(ROUGH);
    this.pace.touch();
  }

  /** Takes the plan out of the address. */
  open() {
    if (this.address.hasPlan) showNotices(this.address.open());
    this.refresh();
  }

  copy(format) {
    const base = linkHere("");
    const { draft, view } = this.form;
    const text = engine.asText(TRIP, draft, view, format, base.whole ? base.text.replace(/#.*$/su, "") : "");
    return hand(text, { then: [`${this.address.carriesBody ? "It carries your weight and strength; what" : "What"} you wrote into the blanks is not in it.`] });
  }

  listen() {
    const on = (target, type, react) => target.addEventListener(type, (event) => this.guarded(() => react(event)));
    on(this.form.form, "submit", (event) => event.preventDefault());
    on(this.form.form, "change", () => {
      this.form.mirrorView();
      this.form.describe();
      this.address.release();
      this.address.keep();
      this.refresh();
    });
    on(at("show-example"), "click", () => {
      this.form.fill(exampleDraft(this.form.view.system));
      this.address.release();
      this.address.keep();
      this.refresh();
      at("answer").focus();
    });
    on(at("print"), "click", () => window.print());
    // Whoever prints by the browser's own menu gets the full sheet too.
    on(window, "beforeprint", () => this.pace.finish());
    on(at("copy-text"), "click", () => this.copy("text"));
    on(at("copy-markdown"), "click", () => this.copy("markdown"));
    on(window, "hashchange", () => this.address.hasPlan && this.open());
    overTheWeb(() => this.guarded(() => this.address.keep()));
    this.pages.watch(on, () => this.pages.carry((page) => this.address.fragmentFor(page || TRIP)));
  }

  start() {
    this.form.meet(() => usualView(navigator.language), this.address.hasPlan);
    this.listen();
    this.guarded(() => this.open());
  }
}

keepAddress(document);
new TripPage(document).start();
