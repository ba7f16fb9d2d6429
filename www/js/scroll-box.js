import { element } from "./element.js";

// A table wider than its place scrolls there, and shows at which edge it goes on.

/** The edges at which a box goes on, given how far it is scrolled: "", "start", "end" or "start end". */
export function edgesOf({ scrollLeft, scrollWidth, clientWidth }) {
  const from = Math.abs(scrollLeft); // runs below nought where a page is read from the right
  return [from > 1 && "start", scrollWidth - clientWidth - from > 1 && "end"].filter(Boolean).join(" ");
}

function mark(box) {
  const edges = edgesOf(box);
  if (edges !== (box.dataset.edges ?? "")) box.dataset.edges = edges;
}

// Made with the first box: a test has no ResizeObserver.
let sizes = null;
const boxes = new WeakSet();

function watch(box) {
  if (boxes.has(box)) return;
  boxes.add(box);
  sizes ??= new ResizeObserver((changes) => changes.forEach(({ target }) => mark(target.closest(".scroll") ?? target)));
  sizes.observe(box);
  box.addEventListener("scroll", () => mark(box), { passive: true });
}

/** Puts a table, or nothing, in a scrolling box in place of what was there. */
export function fillScroll(box, content) {
  watch(box);
  for (const old of box.children) sizes.unobserve(old);
  box.replaceChildren(...(content === null ? [] : [content]));
  if (content !== null) sizes.observe(content);
}

/** A scrolling box, named for those who cannot see it and reached by keys. */
export function scrollBox(name, content = null, className = "scroll") {
  const box = element("div", { class: className, tabindex: "0", role: "region", "aria-label": name });
  fillScroll(box, content);
  return box;
}

/** Keys reach a box, and it has a name, only while there is something to scroll in it. */
export function reachable(box, name) {
  const marks = { tabindex: "0", role: "group", "aria-label": name };
  const tell = () => {
    const scrolls = box.scrollWidth > box.clientWidth + 1;
    for (const [attribute, value] of Object.entries(marks)) {
      if (scrolls) box.setAttribute(attribute, value);
      else box.removeAttribute(attribute);
    }
  };
  new ResizeObserver(tell).observe(box);
  return box;
}

/** A table that wraps into its place; where letters are too large for that, it scrolls there. */
export function fitted(content) {
  const box = element("div", { class: "scroll fitted" });
  fillScroll(box, content);
  return reachable(box, content.caption.textContent);
}

// What somebody opened stays open while numbers change, and the table with them.
const opened = new Set();

/** A drawing's table, folded away: whoever wants its numbers opens it. */
export function foldedTable(noun, content) {
  const folded = element("details", { class: "as-table", open: opened.has(noun) },
    element("summary", {}, "The same as a table"),
    scrollBox(`${noun}, as a table`, content));
  folded.addEventListener("toggle", () => opened[folded.open ? "add" : "delete"](noun));
  return folded;
}
