import { element, setText } from "./element.js";
import { showFigures } from "./figures.js";
import { sentenceLinks } from "./places.js";
import { rigDrawing } from "./rig-drawing.js";
import { rigLayout } from "./rig-layout.js";
import { partTable, strandTable } from "./rig-tables.js";

const at = (id) => document.getElementById(id);

// A shape for each verdict, so that colour never speaks alone.
const SHAPES = {
  "within-reach": "M8 1.5a6.5 6.5 0 1 0 .01 0Z M4.8 8.2l2.3 2.4 4.2-5",
  "at-limit": "M8 1.5a6.5 6.5 0 1 0 .01 0Z M4.5 8h7",
  "out-of-reach": "M8 2 15 14H1Z M8 6.5v3.5 M8 11.8v.4",
  none: "M8 1.5a6.5 6.5 0 1 0 .01 0Z",
};

function cautionItem({ grave, text }) {
  if (!grave) return element("li", {}, text);
  return element("li", { class: "grave" },
    element("span", { class: "grave-word" }, element("span", { "aria-hidden": "true" }, "▲"), " Warning:"), " ", text);
}

/** Where the ranges come from. */
export function effortText({ samples, more }) {
  if (samples === 0) return "";
  const done = `The ranges come from doing the sum ${samples} times with the uncertain figures varied; nobody made these climbs.`;
  return more ? `${done} Doing it more often could still move them a little.` : done;
}

/** What stands below the form on a phone: without a verdict at least what a pull takes. */
export function glanceText({ verdict, figures }) {
  const pull = verdict.id === "none" ? figures.find(({ id }) => id === "pullNeeded") : undefined;
  return pull ? `${verdict.text}: one pull takes ${pull.text}` : verdict.text;
}

/** What is not entered: as links where there is a box for it, and plainly where there is none. */
function showMissing(missing, fields) {
  const boxed = ({ fields: ids }) => ids.some((id) => fields.has(id));
  at("missing").hidden = missing.length === 0;
  for (const [place, rows] of [["can-enter", missing.filter(boxed)], ["cannot-check", missing.filter((row) => !boxed(row))]]) {
    at(place).hidden = rows.length === 0;
    sentenceLinks(at(place).querySelector("ul"), rows, fields);
  }
}

function showRig(answer) {
  const { dense } = rigLayout(answer.drawing);
  at("drawing").replaceChildren(rigDrawing(answer.drawing, "The rig and the pull in each strand"));
  at("tables").replaceChildren(strandTable(answer.drawing, dense), partTable(answer.parts));
}

/** Places an answer in the page. */
export function showAnswer(answer, fields) {
  const verdict = at("verdict");
  verdict.dataset.verdict = answer.verdict.id;
  verdict.querySelector(".shape path").setAttribute("d", SHAPES[answer.verdict.id] ?? SHAPES.none);
  setText(at("verdict-text"), answer.verdict.text);
  setText(at("first"), answer.first);
  setText(at("second"), answer.second);
  setText(at("assumed"), answer.assumed ?? "");
  at("assumed").hidden = at("assumed").textContent === "";
  showMissing(answer.missing, fields);

  showFigures(at("figures"), answer.figures, new Map(answer.sources.map(({ id, text }) => [id, text])));
  setText(at("effort"), effortText(answer.effort));
  showRig(answer);
  // That this is arithmetic and not training stands on the page always, answer or not.
  const watched = answer.cautions.filter(({ id }) => id !== "arithmetic");
  at("answer-cautions").hidden = watched.length === 0;
  at("answer-cautions").querySelector("ul").replaceChildren(...watched.map(cautionItem));
  at("sources").replaceChildren(...answer.sources.map(({ text }) => element("li", {}, text)));

  setText(at("glance"), glanceText(answer));
  at("glance").dataset.verdict = answer.verdict.id;
  verdict.hidden = false;
  at("numbers").hidden = false;
  at("waiting").hidden = true;
}

/** No answer: every number goes at once; what is still to enter or to put right takes its place. */
export function showNoAnswer({ toEnter, toRight }, fields) {
  at("verdict").hidden = true;
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

/** The summary of what to put right, in the same words as beside the fields. */
export function showErrors(toRight, fields) {
  const box = at("errors");
  box.hidden = toRight.length === 0;
  sentenceLinks(box.querySelector("ul"), toRight, fields);
}

/** What a link held that this page could not take as it stood. */
export function showNotices(notices) {
  at("notices").hidden = notices.length === 0;
  at("notices").querySelector("ul").replaceChildren(...notices.map((text) => element("li", {}, text)));
}

/** One sentence for those who cannot see the answer change. */
export function sayStatus(answer, { toEnter, toRight }) {
  const text = answer
    ? `${answer.verdict.text}. ${answer.first}`
    : toRight.length > 0
      ? `No answer: ${toRight.length === 1 ? toRight[0].message : `${toRight.length} things to put right.`}`
      : `No answer yet: ${toEnter.length} to enter.`;
  setText(at("status"), text);
}
