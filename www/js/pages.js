// The links to the other pages of the site. They share one plan, and the address is all that it travels in.

/** The navigation of a page: `data-page` on each link names that page's question. */
export class Pages {
  constructor(nav) {
    this.nav = nav;
    this.links = nav === null ? [] : [...nav.querySelectorAll("a[data-page]")];
  }

  /** What the page of a question is called; none for one that is not of this site. */
  nameOf(question) {
    return this.links.find((link) => link.dataset.page === question)?.textContent ?? null;
  }

  /** Puts the plan into every link to another page; `fragmentFor(question)` writes it, "" where there is none. */
  carry(fragmentFor) {
    for (const link of this.links) {
      if (link.hasAttribute("aria-current")) continue;
      const fragment = fragmentFor(link.dataset.page);
      const bare = link.getAttribute("href").replace(/#.*$/su, "");
      link.setAttribute("href", fragment === "" ? bare : `${bare}#${fragment}`);
    }
  }
}
