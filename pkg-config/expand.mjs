// Expands the elements that pages are written with. All are gone from what is published.
import { readFile } from "node:fs/promises";
import { escaped, fieldMarkup } from "./field-markup.mjs";
import * as reckoned from "./method.mjs";

/** Replaces every match by what `replacement` resolves to. */
async function replaced(text, pattern, replacement) {
  const made = await Promise.all([...text.matchAll(pattern)].map((match) => replacement(match[1])));
  return text.replace(pattern, () => made.shift());
}

/** `<page-part name="x"></page-part>` becomes parts/x.html, which may hold further parts. */
async function withParts(html, folder, depth = 0) {
  if (depth > 8) throw new Error("A page part includes itself.");
  return replaced(html, /<page-part name="([\w-]+)"><\/page-part>/g, async (name) =>
    withParts((await readFile(`${folder}/parts/${name}.html`, "utf8")).trimEnd(), folder, depth + 1));
}

/** `<plan-field name="x"></plan-field>` becomes that field of the library's table. */
async function withFields(html, fields, hintText) {
  const question = /<form\b[^>]*\bdata-question="([\w-]+)"/.exec(html)?.[1];
  return replaced(html, /<plan-field name="([\w-]+)"><\/plan-field>/g, (id) => {
    const field = fields.find((row) => row.id === id);
    if (!field) throw new Error(`The library has no field ${id}.`);
    if (!question) throw new Error("A page with fields names its question: add data-question to the form.");
    return fieldMarkup(question, field, hintText(field));
  });
}

/** Marks what waits for a choice that an empty form has not made. Boxes for one that nobody can make would never be seen. */
function withConditions(html, fields, { conditionOf, fits }) {
  return html.replace(/\bdata-for="([^"]*)"/g, (written, text) => {
    const condition = conditionOf(text);
    if (!condition) throw new Error(`Write data-for="${text}" as FIELD=CHOICE,CHOICE or FIELD!=CHOICE,CHOICE; a choice may be a @GROUP.`);
    const radios = [...html.matchAll(/<input type="radio" name="(\w+)" value="([\w-]+)"( checked)?/g)].filter(([, name]) => name === condition.field);
    const field = fields.find((row) => row.id === condition.field);
    const options = field?.options?.map(({ id }) => id) ?? radios.map(([, , value]) => value);
    const unknown = condition.choices.find((choice) => !options.includes(choice));
    if (unknown) throw new Error(`data-for="${text}": the library's ${condition.field} has no choice ${unknown}.`);
    const first = field?.likely ?? radios.find(([, , , checked]) => checked)?.[2] ?? "";
    return fits(condition, first) ? written : `${written} data-later`;
  });
}

/** A page's link to itself leads to its top, and the plan in its address stays. */
const marked = (html, name) => html.replaceAll(`<a href="${name}"`, `<a href="#job" aria-current="page"`);

/** `<method-contents>` and `<method-tables>` become how the library reckons, by its own tables. */
function withMethod(html, tables, fields) {
  if (!html.includes("<method-")) return html;
  if (!tables) throw new Error("The package has no method.json: run pkg-config/build, which asks the library for it.");
  return html
    .replace("<method-contents></method-contents>", () => reckoned.contents(tables))
    .replace("<method-tables></method-tables>", () => reckoned.method(tables, fields));
}

/** `<licence-list>` becomes what is inside, as the package's licences.txt lists it first. */
function withLicences(html, licences) {
  if (!html.includes("<licence-list>")) return html;
  if (!licences) throw new Error("The package has no licences.txt: run pkg-config/build, which writes it.");
  const [list] = licences.split("\nWhere there is a choice");
  const rows = [...list.matchAll(/^\* (.+)$/gm)].map(([, row]) => `<li>${escaped(row)}</li>`);
  return html.replace("<licence-list></licence-list>", () => `<ul class="inside">\n${rows.join("\n")}\n</ul>`);
}

/** The page `name` in full. `words` is what the page's own script shares with the build. */
export async function expanded(html, name, folder, fields, { hintText, ...fitting }, { method, licences }) {
  const parts = withLicences(withMethod(marked(await withParts(html, folder), name), method, fields), licences);
  const whole = withConditions(await withFields(parts, fields, hintText), fields, fitting);
  const left = /<(?:page-part|plan-field|method-\w+|licence-list)\b[^>]*>/.exec(whole)?.[0];
  if (left) throw new Error(`Write ${left} as <page-part name="x"></page-part> or <plan-field name="x"></plan-field>.`);
  return whole;
}
