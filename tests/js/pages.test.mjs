import assert from "node:assert/strict";
import { test } from "node:test";
import { Pages } from "../../www/js/pages.js";

/** A link of the navigation, as far as `Pages` looks at one. */
function link(page, href, current = false) {
  const attributes = { href, ...(current && { "aria-current": "page" }) };
  return {
    dataset: { page }, textContent: `The page ${page}`,
    getAttribute: (name) => attributes[name],
    hasAttribute: (name) => name in attributes,
    setAttribute: (name, value) => { attributes[name] = value; },
  };
}
const root = (...links) => ({ querySelectorAll: () => links });

test("every link to another page carries the plan as its own question's", () => {
  const [here, there] = [link("a", "#job", true), link("b", "b.html")];
  const pages = new Pages(root(here, there));
  pages.carry((question) => `v=1&q=${question}`);
  assert.equal(there.getAttribute("href"), "b.html#v=1&q=b");
  assert.equal(here.getAttribute("href"), "#job", "a page's link to itself leaves its plan alone");
});

test("a newer plan takes the place of the older, and no plan leaves the plain link", () => {
  const there = link("b", "b.html#v=1&q=b&old=1");
  const pages = new Pages(root(there));
  pages.carry(() => "v=1&q=b&new=1");
  assert.equal(there.getAttribute("href"), "b.html#v=1&q=b&new=1");
  pages.carry(() => "");
  assert.equal(there.getAttribute("href"), "b.html");
});

test("a page is known by the name of its link", () => {
  const pages = new Pages(root(link("b", "b.html")));
  assert.equal(pages.nameOf("b"), "The page b");
  assert.equal(pages.nameOf("c"), null);
});

test("only what reaches one of the links is reacted to", () => {
  const reached = [];
  const listeners = [];
  new Pages(root()).watch((_, type, react) => listeners.push({ type, react }), () => reached.push("reached"));
  const { react } = listeners.find(({ type }) => type === "focusin");
  react({ target: { closest: () => null } });
  react({ target: {} });
  assert.deepEqual(reached, []);
  react({ target: { closest: (selector) => selector.startsWith("a[data-page]") } });
  assert.deepEqual(reached, ["reached"]);
});

test("a page without links carries nothing and breaks nothing", () => {
  const pages = new Pages(root());
  pages.carry(() => assert.fail("nothing to write"));
  assert.equal(pages.nameOf("b"), null);
});
