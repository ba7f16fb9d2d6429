// Expands the two elements that pages are written with. Both are gone from what is published.
import { readFile } from "node:fs/promises";
import { fieldMarkup } from "./field-markup.mjs";

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
  const question = /data-question="([\w-]+)"/.exec(html)?.[1];
  return replaced(html, /<plan-field name="([\w-]+)"><\/plan-field>/g, (id) => {
    const field = fields.find((row) => row.id === id);
    if (!field) throw new Error(`The library has no field ${id}.`);
    if (!question) throw new Error("A page with fields names its question: add data-question to the form.");
    return fieldMarkup(question, field, hintText(field));
  });
}

export async function expanded(html, folder, fields, hintText) {
  const whole = await withFields(await withParts(html, folder), fields, hintText);
  const left = /<(?:page-part|plan-field)\b[^>]*>/.exec(whole)?.[0];
  if (left) throw new Error(`Write ${left} as <page-part name="x"></page-part> or <plan-field name="x"></plan-field>.`);
  return whole;
}
