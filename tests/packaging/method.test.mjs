// The method page is the library's own tables, whole, and every link inside it leads somewhere.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { test } from "node:test";
import { fields, sources } from "boughline";
import tables from "boughline/method.json" with { type: "json" };
import { escaped } from "../../pkg-config/field-markup.mjs";
import { contents, method } from "../../pkg-config/method.mjs";
import { wholeLibrary } from "../../pkg-config/texts.mjs";

const page = readFileSync("dist/method.html", "utf8");
const whole = await wholeLibrary(resolve(process.env.CARGO_TARGET_DIR ?? "target", "modules/texts"));

test("the tables in the package are what the library says", () => assert.deepEqual(tables, whole.method()));

test("the page in dist is those tables", () => {
  assert.ok(page.includes(contents(tables)));
  assert.ok(page.includes(method(tables, fields())));
});

test("every formula, figure, example, table, box and source stands on it", () => {
  for (const { formulas, tables: of, notes } of tables.chapters) {
    for (const { id, symbols, terms, example } of formulas) {
      const at = page.indexOf(`id="formula-${id}"`);
      const row = page.slice(at, page.indexOf("</section>", at));
      assert.ok(at > 0, id);
      for (const line of symbols) assert.ok(row.includes(escaped(line)), `${id}: ${line}`);
      for (const { figure } of terms) for (const number of figure ?? []) assert.ok(row.includes(number), `${id}: ${number}`);
      if (example) assert.ok(row.includes(`= ${example.gives.value}`), id);
    }
    for (const { id, rows } of of) {
      const at = page.indexOf(`id="table-${id}"`);
      assert.equal(page.slice(at, page.indexOf("</table>", at)).match(/<tr>/g).length, rows.length + 1, id);
    }
    for (const { says } of notes) assert.ok(page.includes(escaped(says)), says);
  }
  for (const { id, why } of fields()) assert.ok(page.includes(`id="field-${id}"`) && page.includes(escaped(why)), id);
  for (const { id } of sources()) assert.ok(page.includes(`id="source-${id}"`), id);
});

test("every link on it leads to something on it, and no id is there twice", () => {
  const ids = [...page.matchAll(/\bid="([^"]+)"/g)].map(([, id]) => id);
  assert.deepEqual(ids.filter((id, at) => ids.indexOf(id) !== at), []);
  for (const [, href] of page.matchAll(/href="#([^"]*)"/g)) assert.ok(ids.includes(href), href);
});

test("nothing on it needs its script, which only hands a plan on", () => {
  const [, script] = /<script>([\s\S]*?)<\/script>/u.exec(page);
  assert.doesNotMatch(script, /WebAssembly|createElement|innerHTML|textContent=/u);
});
