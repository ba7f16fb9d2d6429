import { saysNothing } from "./draft.js";
import { exampleDraft, isExample } from "./example.js";

const at = (id) => document.getElementById(id);

/** The buttons above the form that fill or empty it, and the way back to what somebody had typed. */
export class Offers {
  constructor(form, replace) {
    this.form = form;
    this.replace = replace;
    this.forget();
  }

  /** Offers only what would change something in a form that says this, and marks an example as one. */
  show(draft) {
    at("example-mark").hidden = !isExample(draft, this.form.likelyChoices);
    at("start-again").hidden = saysNothing(draft);
    at("put-back").hidden = this.kept === null;
  }

  forget() {
    this.kept = null;
  }

  /** Takes this draft in place of what is there, which is kept if somebody typed it. */
  swap(draft) {
    const typed = this.form.draft;
    if (!saysNothing(typed) && !isExample(typed, this.form.likelyChoices)) this.kept = typed;
    this.replace(draft);
  }

  putBack() {
    const draft = this.kept;
    this.forget();
    if (draft !== null) this.replace(draft);
  }

  listen(on) {
    const offer = (id, act) => on(at(id), "click", () => {
      act();
      // A button that has put itself away must not take the focus with it.
      if (at(id).hidden) at(this.kept === null ? "show-example" : "put-back").focus();
    });
    offer("show-example", () => this.swap(exampleDraft(this.form.view.system)));
    offer("start-again", () => this.swap({}));
    offer("put-back", () => this.putBack());
  }
}
