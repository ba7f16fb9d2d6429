import { cautionItem } from "./caution-item.js";
import { element, setText } from "./element.js";
import { cautionsOf, sentencesOf } from "./answer-words.js";
import { showFigures } from "./figures.js";
import { sentenceLinks } from "./places.js";

// Places an answer, or what stands in its stead, in the sheet of an embedded question.

const FEW = 4; // figures in view before somebody asks for all

const items = (texts) => texts.map((text) => element("li", {}, text));

/** The places in the sheet, each by its id. */
export const placesIn = (root) => (id) => root.querySelector(`#${id}`);

/** Fills the list in the part `id`, which is not there while it is empty. */
function list(at, id, nodes) {
  at(id).hidden = nodes.length === 0;
  at(id).querySelector("ul").replaceChildren(...nodes);
}

/** The same of sentences, each a link to the box it speaks of. */
function links(at, id, errors, fields) {
  at(id).hidden = errors.length === 0;
  sentenceLinks(at(id).querySelector("ul"), errors, fields);
}

export const showNotices = (at, notices) => list(at, "notices", items(notices));

/** What is to be put right, in the same words as beside the boxes. */
export const showErrors = (at, toRight, fields) => links(at, "errors", toRight, fields);

/** What is reckoned with and has no box, in words. */
export function showUnseen(at, text) {
  setText(at("unseen"), text);
  at("unseen").hidden = text === "";
}

/** The way to the page with the whole answer, and the plan along with it. */
export function showWay(at, page, plan) {
  at("full").setAttribute("href", plan === "" ? page : `${page}#${plan}`);
}

/** A button for the figures beyond the first few. */
export function foldFigures(at) {
  at("more").addEventListener("click", () => {
    const all = at("figures").classList.toggle("all");
    at("more").setAttribute("aria-expanded", String(all));
    countFigures(at);
  });
}

function countFigures(at) {
  const beyond = at("figures").children.length - FEW;
  at("more").hidden = beyond <= 0;
  setText(at("more"), at("figures").classList.contains("all") ? "Fewer figures" : beyond === 1 ? "1 more figure" : `${beyond} more figures`);
}

export function showAnswer(at, answer, fields) {
  setText(at("failed"), "");
  const { headline, sentences } = sentencesOf(answer);
  at("outcome").dataset.verdict = answer.verdict?.id ?? "";
  setText(at("headline"), headline);
  at("sentences").replaceChildren(...sentences.map((text) => element("p", {}, text)));
  setText(at("assumed"), answer.assumed ?? "");
  at("assumed").hidden = at("assumed").textContent === "";
  links(at, "missing", answer.missing ?? [], fields);
  list(at, "shopping", items(answer.shopping ?? []));
  showFigures(at("figures"), answer.figures, new Map(answer.sources.map(({ id, text }) => [id, text])));
  countFigures(at);
  list(at, "cautions", cautionsOf(answer).map(cautionItem));
  at("sources").replaceChildren(...items(answer.sources.map(({ text }) => text)));
  at("outcome").hidden = false;
  at("waiting").hidden = true;
}

/** It broke: no number stays, whatever state the rest is in. */
export function showFault(at, text) {
  for (const id of ["outcome", "waiting"]) at(id).hidden = true;
  setText(at("failed"), `▲ ${text}`);
}

/** No answer: every number goes at once; what is to enter takes its place. */
export function showNoAnswer(at, { toEnter, toRight }, fields) {
  setText(at("failed"), "");
  at("outcome").hidden = true;
  links(at, "waiting", toEnter, fields);
  at("waiting").hidden = false;
  setText(at("waiting").querySelector(".heading"), toRight.length > 0 ? "No answer just now: no number is shown" : "No answer yet. These are needed:");
}
