import { saysNothing, withoutPrivate } from "./draft.js";
import { element } from "./element.js";
import { carriesPlan, planIn, withPlan, withoutParts } from "./link.js";
import { linksIn } from "./two-plans.js";

/** The address bar as a place where the plan is kept, and from where it is taken. */
export class PlanAddress {
  constructor(form, engine, pages) {
    this.form = form;
    this.engine = engine;
    this.pages = pages;
    this.own = true;
  }

  get hasPlan() {
    return carriesPlan(location.hash) || this.typed !== null;
  }

  /** What was in the form when this page was left, word for word; none on a page that was not left before. */
  get typed() {
    try {
      return history.state?.typed ?? null;
    } catch {
      return null;
    }
  }

  /** The plan is no longer what a link said, so the address may follow it. */
  release() {
    this.own = true;
  }

  /**
   * The link's text without `#`; "" when a box cannot be read. `which` is the "whole" of it, "short" for what was said
   * and nothing taken for granted, or what is "bodiless", without body and strength.
   */
  fragment(which = "whole") {
    const { draft, rows, question, view } = this.form;
    const fields = [...rows.values()];
    const bodiless = which === "bodiless";
    const said = bodiless ? withoutPrivate(draft, fields) : draft;
    const written = this.engine.writeLink(question, said, view);
    if (which === "whole") return written;
    // Nor does it say of a body what was only taken for granted.
    const dropped = fields.filter((field) => !(field.id in said) && (field.private || !bodiless));
    return withoutParts(written, new Set(dropped.map(({ id }) => id)));
  }

  /** Whether anything about a body was entered. */
  get carriesBody() {
    const { draft, rows } = this.form;
    return Object.keys(withoutPrivate(draft, [...rows.values()])).length < Object.keys(draft).length;
  }

  /** What the link to another page says: all that can be read, and the units; "" when there is nothing to say. */
  fragmentFor(question) {
    const { readable, view } = this.form;
    const unsaid = saysNothing(readable) && this.form.isUsualView;
    return unsaid ? "" : this.engine.writeLink(question, readable, view);
  }

  /**
   * Writes the plan into the address, unless it still shows a link that could not be taken whole. What no address can
   * hold is kept with this entry of the tab's history alone, for whoever comes back to it.
   */
  keep() {
    if (!this.own) return;
    const { isEmpty, draft, view } = this.form;
    try {
      const written = isEmpty && this.form.isUsualView ? null : this.fragment();
      const address = written === "" ? location.href : withPlan(location.href, written ?? "");
      history.replaceState(written === "" ? { typed: { draft, view } } : null, "", address);
    } catch {
      // From disk some browsers refuse; the link can still be copied.
    }
  }

  /** The way to the page that shows both plans of this link. */
  toCompare() {
    const address = withPlan(this.pages.addressOf(""), planIn(location.hash));
    return element("a", { href: address }, `${this.pages.nameOf("")}: both of this link`);
  }

  /** Fills the form as it was left. */
  comeBack() {
    this.form.view = this.typed.view;
    this.form.fill(this.typed.draft);
    this.own = true;
  }

  /** Fills the form from the address. Answers with what could not be taken as it stood. */
  open() {
    if (this.typed !== null) {
      this.comeBack();
      return [];
    }
    const link = this.engine.readLink(planIn(location.hash));
    const notices = [...link.notices];
    if (linksIn(location.hash).length > 1) notices.push(this.toCompare());
    this.form.view = link.view;
    for (const id of this.form.fill(link.draft)) {
      const field = this.form.fields.get(id);
      notices.push(field
        ? `This link asks for “${link.draft[id]}” in the box “${field.noun}”, which this page does not know; choose one.`
        : `This link says “${link.draft[id]}” for “${this.form.nounOf(id)}”, which cannot be read: it is left out.`);
    }
    this.own = notices.length === 0;
    if (![null, this.form.question, ...this.form.also].includes(link.question)) {
      const name = this.pages.nameOf(link.question);
      notices.push(name === null
        ? "This link asks another question; what it says is taken over here."
        : `This link was made for the page “${name}”; what it says is taken over here.`);
    }
    return notices;
  }
}
