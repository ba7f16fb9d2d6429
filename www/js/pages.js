import { withPlan } from "./link.js";

// The links to the other pages of the site. They share one plan, and the address is all that it travels in.

const LINK = "a[data-page], a[data-along]";

// Whatever can be done with a link before it is followed, opened aside, copied or dragged away.
const REACHES = ["pointerdown", "focusin", "keydown", "contextmenu", "dragstart", "click"];

/**
 * Every link that the plan goes along with: `data-page` names that page's question, and is empty for the present one, as
 * it is for a page that asks nothing and has `data-along`.
 */
export class Pages {
  constructor(root) {
    this.root = root;
  }

  get links() {
    return [...this.root.querySelectorAll(LINK)];
  }

  /** What the page of a question is called; none for one that is not of this site. */
  nameOf(question) {
    return this.links.find((link) => link.dataset.page === question)?.textContent ?? null;
  }

  /** Where the page of a question is, with the plan that was carried there last; the first page where it is of no link. */
  addressOf(question) {
    return this.links.find((link) => link.dataset.page === question)?.getAttribute("href") ?? "index.html";
  }

  /** Calls `react` with whatever reaches one of them. */
  watch(on, react) {
    for (const type of REACHES) on(this.root, type, ({ target }) => target.closest?.(LINK) && react());
  }

  /** Puts the plan into every link to another page; `fragmentFor(question)` writes it, "" where there is none. */
  carry(fragmentFor) {
    for (const link of this.links) {
      if (link.hasAttribute("aria-current")) continue;
      link.setAttribute("href", withPlan(link.getAttribute("href"), fragmentFor(link.dataset.page)));
    }
  }
}
