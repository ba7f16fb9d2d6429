import { handLink, linkHere } from "./copy-link.js";
import { cautionsOf, sentencesOf } from "./answer-words.js";
import { cautionItem } from "./caution-item.js";
import { element, setText } from "./element.js";
import { ROUGH } from "./effort.js";
import * as engine from "./engine.js";
import { conceal, reveal } from "./fail-safe.js";
import { guard } from "./guard.js";
import { planIn, withPlan } from "./link.js";
import { questionsOf } from "./questions.js";
import { overTheWeb } from "./over-the-web.js";
import { pace } from "./pace.js";
import { Pages } from "./pages.js";
import { keepAddress } from "./places.js";
import { fitted } from "./scroll-box.js";
import { stacking, table } from "./table.js";
import { askedIn, bothIn, cautionsApart, figureRows, linkPasted, linksIn, saidOtherwise } from "./two-plans.js";

// Two links in, two answers side by side out.

const SIDES = ["first", "second"];
const FAILED = "Why: the comparison failed, which is a fault of this page and not of the links. Open the page again.";
const at = (id) => document.getElementById(id);
const box = (side) => at(`${side}-link`);

/** What a plan comes to, or what it lacks. */
function outcome(side, { reply }) {
  const name = element("h3", {}, `The ${side} plan`);
  if (!reply.ok) {
    return [name, element("p", { class: "first" }, "No answer yet."), element("ul", {}, ...reply.errors.map(({ message }) => element("li", {}, message)))];
  }
  const { assumed, missing = [] } = reply.answer;
  const { headline, sentences } = sentencesOf(reply.answer);
  return [
    name,
    element("p", { class: "first" }, element("strong", {}, headline)),
    ...sentences.map((sentence) => element("p", { class: "second" }, sentence)),
    assumed ? element("p", { class: "assumed" }, assumed) : null,
    missing.length > 0 ? element("ul", {}, ...missing.map(({ message }) => element("li", {}, message))) : null,
  ].filter(Boolean);
}

function listed(place, items) {
  at(place).hidden = items.length === 0;
  at(place).querySelector("ul").replaceChildren(...items);
}

/** Value and range of a figure, each on its line. */
function likelyAndRange(text) {
  const [value, range] = text.split(", ");
  return range === undefined ? value : element("span", {}, `${value} `, element("span", { class: "range" }, range));
}

/** A table in its box, or nothing where there is no row. */
const rowsIn = (place, caption, heads, rows) =>
  at(place).replaceChildren(...(rows.length === 0 ? [] : [fitted(stacking(table(caption, heads, rows)))]));

class Comparison {
  constructor() {
    this.pages = new Pages(document);
    this.guarded = guard(() => {
      this.pace.stop();
      conceal(FAILED);
    });
    this.pace = pace([{ after: 500, run: () => this.guarded(() => { this.show(); this.keep(); }) }]);
  }

  get view() {
    const chosen = (name) => document.querySelector(`input[name=${name}]:checked`)?.value;
    return { system: chosen("system"), decimal: chosen("decimal") };
  }

  set view({ system, decimal }) {
    for (const radio of document.querySelectorAll("input[type=radio]")) {
      radio.checked = radio.value === system || radio.value === decimal;
    }
    this.mirrorView();
  }

  /** A saved copy keeps attributes alone. */
  mirrorView() {
    for (const radio of document.querySelectorAll("input[type=radio]")) radio.toggleAttribute("checked", radio.checked);
  }

  /** What is in the boxes. */
  get texts() {
    return SIDES.map((side) => linkPasted(box(side).value));
  }

  /** Both plans in one fragment, the first with the question and the units that are chosen here. */
  get both() {
    // Of a link that holds two plans itself, the one that is compared here.
    const [first, ...others] = this.texts.filter((text) => text !== "").map((text) => linksIn(planIn(text))[0] ?? text);
    return bothIn([askedIn(first, at("question").value, this.view), ...others]);
  }

  show(effort) {
    const { view, texts } = this;
    const ready = texts.every((text) => text !== "");
    const question = at("question").value;
    const ask = questionsOf(engine)[question];
    const links = texts.map((text) => engine.readLink(planIn(text)));
    const plans = ready ? links.map((link) => ({ draft: link.draft, reply: ask(link.draft, view, effort) })) : [];
    const notices = links.flatMap((link, i) => (texts[i] === "" ? [] : link.notices.map((text) => `The ${SIDES[i]} link: ${text}`)));
    listed("notices", notices.map((text) => element("li", {}, text)));
    this.place(ready, plans);
    reveal();
  }

  place(ready, plans) {
    at("waiting").hidden = ready;
    at("comparison").hidden = !ready;
    at("share").hidden = !ready;
    const lacking = SIDES.filter((side) => box(side).value.trim() === "");
    setText(at("waiting-text"), lacking.length === 2
      ? "Put the links of two plans into the boxes. Every page copies one under “Pass it on”."
      : `The ${lacking[0]} plan is still missing. Put its link into the box.`);
    for (const [i, side] of SIDES.entries()) at(`${side}-plan`).replaceChildren(...(ready ? outcome(side, plans[i]) : []));
    const answers = plans.map(({ reply }) => (reply.ok ? reply.answer : null));
    const heads = ["", "First plan", "Second plan"];
    const figures = answers.map((answer) => answer?.figures ?? []);
    rowsIn("figures", "In numbers, likely and range", ["Figure", ...heads.slice(1), "The second is"], figureRows(ready ? figures : [[], []])
      .map(([noun, first, second, standing]) => [noun, likelyAndRange(first), likelyAndRange(second), standing]));
    const said = ready ? saidOtherwise(plans.map(({ draft }) => draft), engine.fields(this.view)) : [];
    at("said-alike").hidden = !ready || said.length > 0;
    rowsIn("said", "What is said in one plan and not, or otherwise, in the other", ["Said of", ...heads.slice(1)],
      said.map((row) => row.map((cell) => cell || "not said")));
    const cautions = (answer) => (answer ? cautionsOf(answer) : []);
    const apart = cautionsApart(ready ? answers.map(cautions) : [[], []]);
    at("cautions").hidden = Object.values(apart).every((list) => list.length === 0);
    for (const [which, list] of Object.entries(apart)) listed(`cautions-${which}`, list.map(cautionItem));
    setText(at("status"), ready ? `Compared: ${said.length} said otherwise.` : "");
  }

  /** Both plans into the address, and the first into the links to the other pages. */
  keep() {
    const { texts } = this;
    // One alone is kept too: whoever looks for the second must not lose the first.
    const held = texts[0] === "" ? "" : this.both;
    try {
      history.replaceState(null, "", withPlan(location.href, held));
    } catch {
      // From disk some browsers refuse; the link can still be copied.
    }
    const { draft } = engine.readLink(planIn(texts[0]));
    this.pages.carry((question) => (texts[0] === "" ? "" : engine.writeLink(question || at("question").value, draft, this.view)));
  }

  changed() {
    for (const side of SIDES) box(side).textContent = box(side).value; // what a saved copy keeps
    for (const option of at("question").options) option.toggleAttribute("selected", option.selected);
    at("copied").hidden = true;
    this.show(ROUGH);
    this.pace.touch();
  }

  /** The plans of the address into the boxes. */
  open() {
    const links = linksIn(location.hash);
    if (links.length === 0) return;
    for (const [i, side] of SIDES.entries()) {
      box(side).value = links[i] === undefined ? "" : linkHere(links[i]).text;
    }
    const { question, view } = engine.readLink(links[0]);
    if (question !== null) at("question").value = question;
    this.view = view;
  }

  start() {
    keepAddress(document);
    const on = (target, type, react) => target.addEventListener(type, (event) => this.guarded(() => react(event)));
    on(at("two-plans"), "input", (event) => {
      if (event.target.type === "radio") this.mirrorView();
      this.changed();
    });
    on(at("two-plans"), "submit", (event) => event.preventDefault());
    on(at("swap"), "click", () => {
      [box("first").value, box("second").value] = [box("second").value, box("first").value];
      this.changed();
    });
    on(at("copy-link"), "click", () => handLink(this.both));
    on(window, "hashchange", () => { this.open(); this.changed(); });
    on(window, "pageshow", () => this.changed());
    this.pages.watch(on, () => this.keep());
    overTheWeb(() => this.guarded(() => this.keep()));
    this.guarded(() => { this.open(); this.changed(); });
  }
}

new Comparison().start();
