import { element, setText } from "./element.js";
import { sentenceLinks } from "./places.js";
import { rigDrawing } from "./rig-drawing.js";
import { rigLayout } from "./rig-layout.js";
import { partTable, strandTable } from "./rig-tables.js";

// What only the answer to "Can I climb this?" has: a verdict, what is missing, the rig.

const at = (id) => document.getElementById(id);

// A shape for each verdict, so that colour never speaks alone.
const SHAPES = {
  "within-reach": "M8 1.5a6.5 6.5 0 1 0 .01 0Z M4.8 8.2l2.3 2.4 4.2-5",
  "at-limit": "M8 1.5a6.5 6.5 0 1 0 .01 0Z M4.5 8h7",
  "out-of-reach": "M8 2 15 14H1Z M8 6.5v3.5 M8 11.8v.4",
  none: "M8 1.5a6.5 6.5 0 1 0 .01 0Z",
};

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

export const canIClimb = {
  show(answer, fields) {
    const outcome = at("outcome");
    outcome.dataset.verdict = answer.verdict.id;
    outcome.querySelector(".shape path").setAttribute("d", SHAPES[answer.verdict.id] ?? SHAPES.none);
    setText(at("verdict-text"), answer.verdict.text);
    at("glance").dataset.verdict = answer.verdict.id;
    setText(at("effort"), effortText(answer.effort));
    showMissing(answer.missing, fields);
    showRig(answer);
  },
  glance: glanceText,
  status: ({ verdict, first }) => `${verdict.text}. ${first}`,
};
