import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { fields } from "boughline";
import { HtmlValidate } from "html-validate";
import { fieldMarkup } from "../../pkg-config/field-markup.mjs";
import { CHOICE_GROUPS } from "../../www/js/choice-groups.js";

const pages = readdirSync("dist").filter((name) => name.endsWith(".html"));
const page = (name) => readFileSync(`dist/${name}`, "utf8");
/** A page without its script and what that asks. */
const markupOf = (html) => html.replace(/<script(?: type="text\/plain" id="library")?>[\s\S]*?<\/script>/g, "");
const digest = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
const policyOf = (html) => /http-equiv="content-security-policy" content="([^"]*)"/.exec(html)[1];

test("there is a page for the first question", () => assert.ok(pages.includes("index.html")));

for (const name of pages) {
  test(`${name} allows exactly the script and the styles inside it`, () => {
    const html = page(name);
    const scripts = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, text]) => digest(text));
    const styles = [...html.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, text]) => digest(text));
    const allowed = policyOf(html).match(/'sha256-[^']+'/g) ?? [];
    assert.deepEqual(allowed, [...scripts, ...styles]);
  });

  test(`${name} has its policy before anything the policy rules`, () => {
    const html = page(name);
    const first = html.search(/<(?:style|script|link|img)\b/);
    assert.ok(html.indexOf("content-security-policy") < first);
    assert.ok(html.indexOf('<meta charset="utf-8">') < 1024);
  });

  test(`${name} needs no other file and has nothing left to expand`, () => {
    const markup = markupOf(page(name));
    assert.doesNotMatch(markup, /<(?:plan-field|page-part)\b/);
    assert.doesNotMatch(markup, /<script[^>]*\bsrc=/);
    assert.doesNotMatch(markup, /<link[^>]*rel="stylesheet"/);
  });

  test(`${name} is valid HTML`, async () => {
    const checker = new HtmlValidate({
      extends: ["html-validate:standard"],
      rules: {
        // The rest of the site's house style is not this checker's.
        "long-title": "off",
        "no-inline-style": "error",
        // Serialisation style, not validity.
        "no-trailing-whitespace": "off",
        "doctype-style": "off",
        "void-style": "off",
      },
    });
    const report = await checker.validateString(markupOf(page(name)));
    const found = report.results.flatMap((result) => result.messages).map((said) => `${said.line}: ${said.message} (${said.ruleId})`);
    assert.deepEqual(found, []);
  });
}

test("every page has a limit to its size, and a link in the header or the footer", () => {
  const budget = readFileSync("pkg-config/budget.tsv", "utf8");
  const menus = ["header", "footer"].map((part) => readFileSync(`www/parts/${part}.html`, "utf8")).join("");
  assert.deepEqual(pages.filter((name) => !budget.includes(`\tdist/${name}\t`)), [], "write a row in pkg-config/budget.tsv");
  assert.deepEqual(pages.filter((name) => !menus.includes(`href="${name}"`)), [], "write a link in www/parts/header.html or footer.html");
});

test("every field has a box on some page", () => {
  const boxes = new Set(pages.flatMap((name) => [...page(name).matchAll(/data-field="(\w+)"/g)].map(([, id]) => id)));
  assert.deepEqual(fields().map(({ id }) => id).filter((id) => !boxes.has(id)), [], "write a <plan-field> for it in a page");
});

test("every rig and every use of a cord is in a group, or is known to be alone", () => {
  const alone = { rig: ["hand-over-hand", "moving-rope", "own"], cordUse: ["garda", "haul-cord"] };
  for (const [id, others] of Object.entries(alone)) {
    const known = [...CHOICE_GROUPS.get(id).values()].flat().concat(others).sort();
    const options = fields().find((field) => field.id === id).options.map((option) => option.id).sort();
    assert.deepEqual(known, options, `${id}: put each choice in a group of www/js/choice-groups.js, or here`);
  }
});

test("every field a page has is the library's, in full", () => {
  const rows = new Map(fields().map((field) => [field.id, field]));
  for (const name of pages) {
    for (const [whole, id] of page(name).matchAll(/<div class="field" data-field="(\w+)">[\s\S]*?<\/div>/g)) {
      const field = rows.get(id);
      assert.ok(whole.includes(fieldMarkup("q", field, "").match(/<label[^>]*>(.*)<\/label>/)[1]), `${name} labels ${id}`);
      for (const { id: option } of field.options ?? []) assert.ok(whole.includes(`<option value="${option}"`), `${id} offers ${option}`);
    }
  }
});

test("markup in a field's words is text", () => {
  const field = { id: "x", noun: 'a <b> & "c"', kind: "text", unit: null, likely: null, options: null };
  const html = fieldMarkup("q", field, "<script>");
  assert.match(html, /a &lt;b&gt; &amp; &quot;c&quot;/);
  assert.match(html, />&lt;script&gt;</);
});

test("an empty first option stands only where nothing is taken for granted", () => {
  const options = [{ id: "one", noun: "one" }, { id: "two", noun: "two" }];
  const field = { id: "x", noun: "x", kind: "choice", unit: null, options };
  assert.match(fieldMarkup("q", { ...field, likely: null }, ""), /<select[^>]*>\n<option value=""><\/option>/);
  assert.doesNotMatch(fieldMarkup("q", { ...field, likely: "two" }, ""), /<option value="">/);
  assert.match(fieldMarkup("q", { ...field, likely: "two" }, ""), /<option value="two" selected>/);
});
