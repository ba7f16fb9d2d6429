// The published pages, and the plan that is opened on them.
import { writeLink } from "boughline";
import { exampleDraft } from "../../../www/js/example.js";
import { pageBytes, pageNames } from "../../pages/browser.mjs";

/** `{ name, html, question }` of every page; no question on a page that only tells. */
export async function pages() {
  const all = await Promise.all((await pageNames()).map(async (name) => ({ name, html: await pageBytes(name) })));
  return all.map(({ name, html }) => ({ name, html, question: /<form[^>]*\bdata-question="([\w-]+)"/u.exec(html)?.[1] ?? null }));
}

/** A plan in which every page finds what it asks for. */
export const fullPlan = { ...exampleDraft("si"), gripRight: "38 kgf", gripLeft: "36 kgf", handTravel: "60 cm", setback: "3 cm", legs: "none" };

/** The fragment of a link that asks this question of the full plan. */
export const fullLink = (question) => `#${writeLink(question, fullPlan, { system: "si", decimal: "." })}`;
