import styles from "../css/embed.css"; // the build makes this the text of what it comes to
import { Asking } from "./embed-asking.js";
import { boxesFor, changesIn, givenBy, namesIn } from "./embed-given.js";
import { QUICK } from "./effort.js";
import { QUESTIONS } from "./embed-questions.js";
import { element } from "./element.js";
import { keepAddress } from "./places.js";
import { watchPresses } from "./press.js";

const NAME = "boughline-question";
const FAILED = "This question is not calculating, so no number is shown.";

const withoutEmpty = (draft) => Object.fromEntries(Object.entries(draft).filter(([, text]) => text !== ""));

/** Why nothing came, for whoever put the question into the page and for whoever reads it. */
function reasonFor(fault) {
  if (fault instanceof WebAssembly.CompileError) return "The page it stands in does not let it calculate: its content security policy lacks 'wasm-unsafe-eval'.";
  return "It could not be fetched, or it broke.";
}

/**
 * Defines `<boughline-question>`. `bring(question)` promises the engine's part for it, `site(page)` is the address of a
 * page of ours.
 */
export function defineQuestion({ bring, site }) {
  if (customElements.get(NAME) || !("adoptedStyleSheets" in Document.prototype)) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(styles);
  watchPresses(document);

  customElements.define(NAME, class BoughlineQuestion extends HTMLElement {
    #root = this.attachShadow({ mode: "open" });
    #asking = null;
    #attributes = null; // as they were when last followed

    constructor() {
      super();
      this.#root.adoptedStyleSheets = [sheet];
      this.#root.append(element("slot"));
      keepAddress(this.#root);
      new MutationObserver(() => this.#follow()).observe(this, { attributes: true });
    }

    /** The answer to what the boxes hold, as the library gives it; null where there is none. */
    get answer() {
      return this.#asking?.answer ?? null;
    }

    /** What the boxes hold and what the page set, by field id. */
    get draft() {
      return this.#asking?.draft ?? {};
    }

    connectedCallback() {
      if (this.#asking?.question === this.#said.name) this.#asking.refresh();
      else this.#start();
    }

    disconnectedCallback() {
      this.#asking?.stop();
    }

    get #said() {
      const read = (name) => this.getAttribute(name);
      return { name: read("name"), fields: read("fields"), plan: read("plan"), units: read("units"), decimal: read("decimal"), data: { ...this.dataset } };
    }

    /**
     * Brings the engine's part and shows the boxes; `kept` is what was said before, "" for what is no longer said, and
     * `view` the one that was chosen before.
     */
    async #start({ kept = {}, view = {} } = {}) {
      const said = this.#said;
      this.#attributes = said;
      this.#asking?.stop();
      this.#asking = null;
      this.#root.replaceChildren(element("slot"));
      if (!QUESTIONS.has(said.name)) return this.#fail(`There is no question “${said.name ?? ""}”: its name is one of ${[...QUESTIONS.keys()].join(", ")}.`);
      try {
        const engine = await bring(said.name);
        // Meanwhile it may have been taken away, or given another name.
        if (this.isConnected && said === this.#attributes) this.#show(engine, said, { kept, view });
      } catch (fault) {
        console.error(fault);
        if (said === this.#attributes) this.#fail(`${FAILED} ${reasonFor(fault)}`);
      }
    }

    #show(engine, said, { kept, view }) {
      const given = givenBy(said, engine);
      const chosen = namesIn(said.fields);
      const lacking = engine.ask(given.draft, given.view, QUICK).errors ?? [];
      const boxes = boxesFor({ chosen, given: given.draft, lacking, wanted: QUESTIONS.get(said.name).wanted }, engine.fields());
      const unknown = [...given.unknown.map((id) => `data-… ${id}`), ...chosen.filter((id) => !boxes.includes(id))];
      if (unknown.length > 0) console.warn(`<${NAME} name="${said.name}">: no field is called ${unknown.join(", ")}.`);
      this.#asking = new Asking(said.name, engine, { boxes, site, tell: (asking) => this.#tell(asking) });
      this.#root.replaceChildren(this.#asking.node);
      this.#asking.guarded(() => this.#asking.take(withoutEmpty({ ...given.draft, ...kept }), { ...given.view, ...view }, given.notices));
    }

    /** Attributes changed: what changed is taken, and what somebody typed elsewhere stays. */
    #follow() {
      const before = this.#attributes;
      const now = this.#said;
      if (before === null || JSON.stringify(before) === JSON.stringify(now)) return;
      const asking = this.#asking;
      if (asking === null) return this.#start();
      const changes = changesIn(before.data, now.data, asking.engine);
      if (now.name !== before.name || now.fields !== before.fields) {
        if (now.plan !== before.plan) return this.#start();
        const view = now.units === before.units && now.decimal === before.decimal ? asking.view : {};
        return this.#start({ kept: { ...asking.form.said, ...changes }, view });
      }
      this.#attributes = now;
      asking.guarded(() => {
        const { draft, view, notices } = givenBy(now, asking.engine);
        if (now.plan !== before.plan) asking.take(draft, view, notices);
        else if (Object.keys(changes).length > 0) asking.put(changes);
        if (now.units !== before.units || now.decimal !== before.decimal) asking.changeView(view);
      });
    }

    #tell({ question, draft, link, answer, faults }) {
      const detail = { question, draft, link };
      if (answer === null) this.#send("boughline-errors", { ...detail, errors: [...faults.toRight, ...faults.toEnter] });
      else this.#send("boughline-answer", { ...detail, answer });
    }

    #send(type, detail) {
      this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
    }

    /** Says so in place of everything; below it stands what the page has inside the element. */
    #fail(text) {
      this.#asking?.stop();
      this.#asking = null;
      const said = element("p", { role: "alert", class: "failed" }, `▲ ${text}`);
      this.#root.replaceChildren(element("div", { class: "sheet", lang: "en-GB", dir: "ltr" }, said), element("slot"));
    }
  });
}
