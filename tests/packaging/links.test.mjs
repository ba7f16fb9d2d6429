// Where the links of the published pages lead.
import assert from "node:assert/strict";
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";

const pages = readdirSync("dist").filter((name) => name.endsWith(".html"));
const markup = (name) => readFileSync(`dist/${name}`, "utf8").replace(/<(script|style)>[\s\S]*?<\/\1>/g, "").replace(/<!--[\s\S]*?-->/g, "");
const tags = (html) => html.match(/<[a-z](?:"[^"]*"|[^<>"])*>/g).join("\n"); // not what a page quotes
const values = (html, attribute) => [...tags(html).matchAll(new RegExp(`\\s${attribute}="([^"]*)"`, "g"))].map(([, value]) => value.replaceAll("&amp;", "&"));
const places = new Map(pages.map((name) => [name, new Set(values(markup(name), "id"))]));

for (const name of pages) {
  test(`every link of ${name} leads to a page or a place that is there, and none out of the site`, () => {
    for (const address of ["href", "src"].flatMap((attribute) => values(markup(name), attribute))) {
      if (/^data:image\//.test(address)) continue;
      assert.doesNotMatch(address, /^(?:[a-z]+:|\/)/i, address);
      const [path, place] = address.split("#");
      const file = path === "" ? name : path === "./" ? "index.html" : path;
      assert.ok(existsSync(`dist/${file}`), address);
      // A plan in an address is no place; a page of the pocket edition is one with a bar behind it.
      if (/^[\w-]+\/$/.test(place ?? "")) assert.ok(markup(file).includes(`data-leaf="${place.slice(0, -1)}"`), address);
      else if (place && !place.startsWith("v=")) assert.ok(places.get(file)?.has(place), `${address} is no place on ${file}`);
    }
  });

  test(`${name} names each place once, and what it refers to is there`, () => {
    const html = markup(name);
    // The pocket edition has its other pages in templates, of which one at a time is on the page.
    for (const part of html.split(/<template\b/)) assert.equal(values(part, "id").length, new Set(values(part, "id")).size);
    const wanted = ["for", "aria-describedby", "aria-labelledby", "aria-controls"].flatMap((attribute) => values(html, attribute)).flatMap((ids) => ids.split(/\s+/));
    assert.deepEqual(wanted.filter((id) => !places.get(name).has(id)), []);
  });

  if (name === "pocket.html") continue; // it opens as the first page does
  test(`${name} says in a sentence of its own what it is for`, () => {
    const about = /<meta name="description" content="([^"]+)">/.exec(markup(name))?.[1] ?? "";
    assert.ok(about.length >= 50 && about.length <= 200, `${about.length} letters`);
    assert.deepEqual(pages.filter((other) => other !== "pocket.html" && markup(other).includes(about)), [name]);
    assert.match(markup(name), /<title>[^<]{5,70}<\/title>/);
  });
}
