// Numbers that a page shows and the library does not say: on pages that show several answers side by side.
import * as boughline from "boughline";
import { cautionsOf } from "../../www/js/answer-words.js";
import { planIn } from "../../www/js/link.js";
import { linkPasted } from "../../www/js/two-plans.js";

const numerals = (text) => text.match(/\d+(?:[.,]\d+)*/gu) ?? [];

/** Every text inside a value, however deep. */
function textsIn(value) {
  if (typeof value === "string") return [value];
  return value === null || typeof value !== "object" ? [] : Object.values(value).flatMap(textsIn);
}

/** What is shown in a part and stands in nothing that is said of it. */
function strayIn(shown, said) {
  const known = new Set(textsIn(said).flatMap(numerals));
  return numerals(shown).filter((numeral) => !known.has(numeral));
}

/** What is amiss in each part of a page, `{ name: [shown, said] }`. */
const strayInParts = (parts) => Object.entries(parts).flatMap(([name, [shown, said]]) => {
  const stray = strayIn(shown, said);
  return stray.length === 0 ? [] : [`in ${name} shows ${stray.join(" ")}, which the library does not say`];
});

/** The library's function for a question, by the name it has in the package. */
export const askOf = (question) => boughline[question.replace(/-(\w)/gu, (_, letter) => letter.toUpperCase())];

/** A sheet, each section by itself, and the link below it, which says the same plan. */
export function strayOnSheet({ sections, link }, draft, view, effort) {
  const { answer } = boughline.tripSheet(draft, view, effort);
  const said = (id) => answer.sections.find((section) => section.id === id);
  const written = (plan) => boughline.writeLink("trip-sheet", plan, view);
  const { draft: passedOn } = boughline.readLink(planIn(link));
  return [
    ...strayInParts(Object.fromEntries(sections.map(([id, text]) => [id, [text, said(id)]]))),
    ...(sections.length > 0 && written(passedOn) !== written(draft) ? [`passes on ${link}`] : []),
  ];
}

/** Two plans: each side has its own numbers, and a caution those of either. */
export function strayInComparison({ links, question, sides, cautions }, view, effort) {
  const texts = links.map(linkPasted);
  const ready = texts.every((text) => text !== "");
  const options = boughline.fields(view).flatMap((field) => field.options ?? []);
  const plans = ready ? texts.map((text) => boughline.readLink(planIn(text)).draft) : [];
  const replies = plans.map((draft) => askOf(question)(draft, view, effort));
  const chosen = (draft) => options.filter(({ id }) => Object.values(draft).includes(id)).map(({ noun }) => noun);
  const all = replies.map((reply) => (reply.ok ? cautionsOf(reply.answer) : []));
  return strayInParts({
    "the first plan": [sides[0], ready ? [replies[0], plans[0], chosen(plans[0])] : []],
    "the second plan": [sides[1], ready ? [replies[1], plans[1], chosen(plans[1])] : []],
    "the cautions": [cautions, all],
  });
}
