import { withoutPrivate } from "./draft.js";
import { carriesPlan } from "./link.js";

/** The address bar as a place where the plan is kept, and from where it is taken. */
export class PlanAddress {
  constructor(form, engine) {
    this.form = form;
    this.engine = engine;
    this.own = true;
  }

  get hasPlan() {
    return carriesPlan(location.hash);
  }

  /** The plan is no longer what a link said, so the address may follow it. */
  release() {
    this.own = true;
  }

  /** The link's text without `#`, with or without body and strength. */
  fragment(whole = true) {
    const { draft, rows, question, view } = this.form;
    return this.engine.writeLink(question, whole ? draft : withoutPrivate(draft, [...rows.values()]), view);
  }

  /** Writes the plan into the address, unless it still shows a link that could not be taken whole. */
  keep() {
    if (!this.own) return;
    const bare = location.href.replace(/#.*$/su, "");
    try {
      const empty = Object.keys(this.form.draft).length === 0;
      history.replaceState(null, "", empty ? bare : `${bare}#${this.fragment()}`);
    } catch {
      // From disk some browsers refuse; the link can still be copied.
    }
  }

  /** Fills the form from the address. Answers with what could not be taken as it stood. */
  open() {
    const link = this.engine.readLink(location.hash);
    const notices = [...link.notices];
    if (link.question !== null && link.question !== this.form.question) {
      notices.push("This link asks another question; what this page can use of it is filled in.");
    }
    this.form.view = link.view;
    const left = this.form.fill(link.draft);
    if (left.length > 0) notices.push(`This page has no place for: ${left.join(", ")}.`);
    this.own = notices.length === 0;
    return notices;
  }
}
