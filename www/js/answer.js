import { cautionsOf } from "./answer-words.js";
import { cautionItem } from "./caution-item.js";
import { element, setText } from "./element.js";
import { faultsText } from "./faults.js";
import { showFigures } from "./figures.js";
import { sentenceLinks } from "./places.js";

// What the answers to all questions have: sentences, figures, cautions, sources, and what stands in their place
// while there is none.

const at = (id) => document.getElementById(id);

/** Places the words of an answer in the page; `question` shows what it alone has, and says it in short. */
export function showAnswer(answer, fields, question) {
  setText(at("first"), answer.first);
  setText(at("second"), answer.second);
  setText(at("assumed"), answer.assumed ?? "");
  at("assumed").hidden = at("assumed").textContent === "";
  question.show?.(answer, fields);
  setText(at("glance"), question.glance(answer));
  at("outcome").hidden = false;
  at("waiting").hidden = true;
}

/** Whether the numbers of an answer are in the page already. */
export const numbersStand = () => !at("numbers").hidden;

/** Places what stands below the words: figures, drawings, what to watch for, sources. */
export function showNumbers(answer, question) {
  (question.showFigures ?? showFigures)(at("figures"), answer.figures, new Map(answer.sources.map(({ id, text }) => [id, text])));
  const cautions = cautionsOf(answer);
  at("answer-cautions").hidden = cautions.length === 0;
  at("answer-cautions").querySelector("ul").replaceChildren(...cautions.map(cautionItem));
  at("sources").replaceChildren(...answer.sources.map(({ text }) => element("li", {}, text)));
  question.draw?.(answer);
  at("numbers").hidden = false;
}

/** No answer: every number goes at once; what is still to enter or to put right takes its place. */
export function showNoAnswer({ toEnter, toRight }, fields) {
  at("outcome").hidden = true;
  at("numbers").hidden = true;
  at("waiting").hidden = false;
  setText(at("waiting-title"), toRight.length > 0 ? "No answer just now" : "No answer yet");
  setText(at("waiting-text"), toRight.length > 0
    ? "Something in the form cannot be read or does not fit, so no number is shown."
    : "These are needed; everything else can wait.");
  const list = at("to-enter");
  list.hidden = toEnter.length === 0;
  sentenceLinks(list, toEnter, fields);
  delete at("glance").dataset.verdict;
  setText(at("glance"), at("waiting-title").textContent);
}

/** The summary of what to put right, in the same words as beside the fields; `stays` where some of it is in no link. */
export function showErrors(toRight, fields, stays) {
  const box = at("errors");
  box.hidden = toRight.length === 0;
  sentenceLinks(box.querySelector("ul"), toRight, fields);
  at("stays").hidden = !stays;
}

/** What a link held that this page could not take as it stood. */
export function showNotices(notices) {
  at("notices").hidden = notices.length === 0;
  at("notices").querySelector("ul").replaceChildren(...notices.map((text) => element("li", {}, text)));
}

/** One sentence for those who cannot see the answer change; `said` is what an answer comes to. */
export function sayStatus(said, faults) {
  setText(at("status"), said ?? faultsText(faults));
}
