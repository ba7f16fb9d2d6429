import assert from "node:assert/strict";
import { test } from "node:test";
import { carriesPlan, linkText, planIn, withoutParts, withPlan } from "../../www/js/link.js";

const FRAGMENT = "v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg";

test("over http the page's own address carries the fragment", () => {
  assert.deepEqual(linkText(FRAGMENT, "", "https://example.org/a.html#v=1&q=old"), {
    text: `https://example.org/a.html#${FRAGMENT}`, whole: true,
  });
});

test("from disk the published address is used where it is known", () => {
  assert.deepEqual(linkText(FRAGMENT, "https://example.org/", "file:///home/a.html"), {
    text: `https://example.org/#${FRAGMENT}`, whole: true,
  });
});

test("over http it is the page's own address even where the site is published elsewhere, and a page of the pocket edition stays it", () => {
  assert.equal(linkText(FRAGMENT, "https://example.org/", "http://127.0.0.1:8080/loads.html?x#v=1&q=old").text, `http://127.0.0.1:8080/loads.html?x#${FRAGMENT}`);
  assert.equal(linkText(FRAGMENT, "", "https://example.org/pocket.html#loads/v=1&q=old").text, `https://example.org/pocket.html#loads/${FRAGMENT}`);
  assert.equal(linkText(FRAGMENT, "https://example.org/pocket.html", "file:///a.html#loads/v=1").text, `https://example.org/pocket.html#loads/${FRAGMENT}`);
});

test("from disk without a published address the fragment stands alone", () => {
  assert.deepEqual(linkText(FRAGMENT, "", "file:///home/a.html#x"), { text: `#${FRAGMENT}`, whole: false });
});

test("the name of a place on the page is no plan", () => {
  assert.ok(carriesPlan(`#${FRAGMENT}`));
  assert.ok(carriesPlan(FRAGMENT));
  assert.ok(!carriesPlan("#answer"));
  assert.ok(!carriesPlan(""));
});

test("parts are left out by their whole name", () => {
  const fragment = "v=1&q=loads&rig=tail-3&rigs=2&hold=bare-rope";
  assert.equal(withoutParts(fragment, new Set(["rig", "hold"])), "v=1&q=loads&rigs=2");
  assert.equal(withoutParts(fragment, new Set()), fragment);
});

test("the name of a page in the pocket edition stands before the plan and is not of it", () => {
  assert.ok(carriesPlan("#rope-length/v=1&q=rope-length"));
  assert.ok(!carriesPlan("#rope-length/"));
  assert.equal(planIn("file:///a/pocket.html#rope-length/v=1&q=rope-length"), "v=1&q=rope-length");
  assert.equal(planIn("#v=1&q=x"), "v=1&q=x");
  assert.equal(planIn("https://site/index.html"), "https://site/index.html", "what has no fragment is left to the reader");
  assert.equal(withPlan("pocket.html#rope-length/v=1&old=1", "v=1&new=1"), "pocket.html#rope-length/v=1&new=1");
  assert.equal(withPlan("pocket.html#rope-length/v=1&old=1", ""), "pocket.html#rope-length/");
  assert.equal(withPlan("rope-length.html#answer", "v=1"), "rope-length.html#v=1");
  assert.equal(withPlan("rope-length.html#v=1&old=1", ""), "rope-length.html");
});
