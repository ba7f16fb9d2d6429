import { carriesPlan, planIn } from "./link.js";

// Two plans side by side: what they say otherwise and what they come to otherwise. No DOM here.

/** The links in one text: a second begins where a second `v=` does. Some have been through HTML. */
export function linksIn(text) {
  return carriesPlan(text) ? planIn(text).split(/&(?:amp;)*(?=v=)/u) : [];
}

/** The link in what somebody pasted: the word that carries a plan, without what a sentence put round it. */
export function linkPasted(text) {
  const word = text.split(/\s+/u).find((one) => /(?:^|[#/&])v=/u.test(one)) ?? text;
  return word.trim().replace(/^[<("'“]+|[>)"'”.,;:!?]+$/gu, "");
}

/** A plan's fragment with another question and other units than it was copied with; what is no plan stays as it is. */
export function askedIn(link, question, { system, decimal }) {
  const parts = planIn(link.trim()).split(/&(?:amp;)*/u);
  const [form, ...others] = parts;
  if (!form.startsWith("v=")) return link;
  const figures = others.filter((part) => part.startsWith("f="));
  const rest = others.filter((part) => !/^[qfud]=/u.test(part));
  const mark = decimal === "," ? ["d=comma"] : [];
  return [form, `q=${question}`, ...figures, `u=${system}`, ...mark, ...rest].join("&");
}

/** One fragment that holds both. */
export const bothIn = (links) => links.map((link) => planIn(link.trim())).join("&");

/** What the plans say otherwise, `[noun, first, second]` in the order people are asked; "" for what one does not say. */
export function saidOtherwise(drafts, fields) {
  const said = ({ id, options, unit }, draft) => {
    const text = draft[id] ?? "";
    if (options) return options.find((option) => option.id === text)?.noun ?? text;
    // A link has no blanks: 6ft3in.
    return unit ? text.replace(/(\d)(?=[^\d.,\s])|([^\d.,\s-])(?=\d)/gu, "$1$2 ") : text;
  };
  // A short link leaves out what is taken for granted anyway.
  const meant = ({ id, likely }) => drafts.map((draft) => draft[id] ?? likely ?? "");
  return fields
    .filter((field) => new Set(meant(field)).size > 1)
    .map((field) => [field.noun, ...drafts.map((draft) => said(field, draft))]);
}

/** How the second figure stands to the first, in a word; "" where one of them is not there or has no end. */
function standing(first, second) {
  if (first === undefined || second === undefined || first.value === null || second.value === null) return "";
  if (first.text === second.text) return "the same";
  return second.value > first.value ? "▲ more" : "▼ less";
}

const inWords = (figure) => (figure === undefined ? "—" : [figure.text, figure.range].filter(Boolean).join(", "));

/** Every figure of either answer: noun, what it comes to in each, and how the second stands to the first. */
export function figureRows([first, second]) {
  const ids = [...new Set([...first, ...second].map(({ id }) => id))];
  return ids.map((id) => {
    const pair = [first, second].map((figures) => figures.find((figure) => figure.id === id));
    return [pair.find(Boolean).noun, ...pair.map(inWords), standing(...pair)];
  });
}

/** The cautions of both, of the first alone and of the second alone; the same caution says the same words. */
export function cautionsApart([first, second]) {
  const inside = (list) => ({ text }) => list.some((one) => one.text === text);
  const not = (test) => (one) => !test(one);
  return { both: first.filter(inside(second)), first: first.filter(not(inside(second))), second: second.filter(not(inside(first))) };
}
