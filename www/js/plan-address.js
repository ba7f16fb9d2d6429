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

  /** The link's text without `#`, with or without body and strength; "" when a box cannot be read. */
  fragment(whole = true) {
    const { draft, rows, question, view } = this.form;
    return this.engine.writeLink(question, whole ? draft : withoutPrivate(draft, [...rows.values()]), view);
  }

  /** Writes the plan into the address, unless it still shows a link that could not be taken whole. */
  keep() {
    if (!this.own) return;
    const bare = location.href.replace(/#.*$/su, "");
    try {
      const written = this.form.isEmpty ? null : this.fragment();
      if (written !== "") history.replaceState(null, "", written === null ? bare : `${bare}#${written}`);
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
    const boxed = left.filter((id) => this.form.fields.has(id));
    for (const id of boxed) {
      notices.push(`This link asks for “${link.draft[id]}” in the box “${this.form.fields.get(id).noun}”, which this page does not know; choose one.`);
    }
    const homeless = left.filter((id) => !boxed.includes(id));
    if (homeless.length > 0) notices.push(`This page has no place for: ${homeless.join(", ")}.`);
    this.own = notices.length === 0;
    return notices;
  }
}
