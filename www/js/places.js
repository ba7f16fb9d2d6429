import { element } from "./element.js";

/** Goes to a part of the page without touching the address, which holds the plan. */
export function goTo(target) {
  for (let group = target.closest("details"); group; group = group.parentElement.closest("details")) {
    group.open = true;
  }
  // A form shows a box that it had put away for another way of saying the same.
  target.dispatchEvent(new Event("reach", { bubbles: true }));
  target.focus({ preventScroll: true });
  target.scrollIntoView({ block: target.matches("input, select, textarea") ? "center" : "start" });
}

/** Makes every link to a place in `root`, a document or a shadow root, leave the address alone. */
export function keepAddress(root) {
  root.addEventListener("click", (event) => {
    const link = event.target.closest?.('a[href^="#"]');
    const target = link && root.getElementById(link.getAttribute("href").slice(1));
    if (!target) return;
    event.preventDefault();
    goTo(target);
  });
}

/** A list of sentences, each a link to the first field it speaks of. One that says the same again keeps its focus. */
export function sentenceLinks(list, errors, fields) {
  const items = errors.map(({ fields: ids, message }) => {
    const field = ids.map((id) => fields.get(id)).find(Boolean);
    return element("li", {}, field ? element("a", { href: `#${field.control.id}` }, message) : message);
  });
  const same = items.length === list.children.length && items.every((item, i) => item.isEqualNode(list.children[i]));
  if (!same) list.replaceChildren(...items);
}
