import { CLIMB_STEPS } from "./effort.js";
import { setText } from "./element.js";
import { showGroups } from "./figure-groups.js";
import { climbGoing } from "./going.js";
import { helpTable } from "./helps.js";
import { showMissing } from "./missing.js";
import { rigDrawing } from "./rig-drawing.js";
import { rigLayout } from "./rig-layout.js";
import { heightTables, partTable, strandTable } from "./rig-tables.js";
import { fitted } from "./scroll-box.js";
import { SHAPES } from "./shapes.js";

// What only the answer to "Can I climb this?" has: a verdict, what is missing, the rig.

const at = (id) => document.getElementById(id);

/** Where the ranges come from. */
export function effortText({ samples, more }) {
  if (samples === 0) return "";
  const done = `The ranges come from doing the sum ${samples} times with the uncertain figures varied; nobody made these climbs.`;
  return more ? `${done} Doing it more often could still move them a little.` : done;
}

/** What stands below the form on a phone: without a verdict at least what a pull takes. */
export function glanceText({ verdict, figures }) {
  const pull = verdict.id === "none" ? figures.find(({ id }) => id === "pullNeeded") : undefined;
  return pull ? `${verdict.text}: one pull takes about ${pull.text}` : verdict.text;
}

function showGoing(going) {
  at("going").hidden = going === null;
  setText(at("going-title"), going?.chart.noun ?? "");
  at("going-chart").replaceChildren(...(going === null ? [] : climbGoing(going)));
}

function showRig(answer) {
  const { dense } = rigLayout(answer.drawing);
  at("drawing").replaceChildren(rigDrawing(answer.drawing, "The rig and the pull in each strand"));
  at("tables").replaceChildren(...[strandTable(answer.drawing, dense), partTable(answer.parts), ...heightTables(answer.drawing)].map(fitted));
}

function showLegs(legs) {
  at("legs").hidden = legs === null;
  setText(at("legs-text"), legs?.text ?? "");
  setText(at("legs-how"), legs?.how ?? "");
}

/** What would help most, once it has been reckoned. */
export function showHelps(reply) {
  at("helps").hidden = !reply.ok || !reply.answer.now;
  if (reply.ok) at("helps-table").replaceChildren(...helpTable(reply.answer));
}

export const canIClimb = {
  steps: CLIMB_STEPS,
  showFigures: showGroups,
  show(answer, fields) {
    const outcome = at("outcome");
    outcome.dataset.verdict = answer.verdict.id;
    outcome.querySelector(".shape path").setAttribute("d", SHAPES[answer.verdict.id] ?? SHAPES.none);
    setText(at("verdict-text"), answer.verdict.text);
    at("glance").dataset.verdict = answer.verdict.id;
    showMissing(answer.missing, fields);
    showLegs(answer.legs);
  },
  draw(answer) {
    setText(at("effort"), effortText(answer.effort));
    at("helps").hidden = true;
    showGoing(answer.going);
    showRig(answer);
  },
  glance: glanceText,
  status: ({ verdict, first }) => `${verdict.text}. ${first}`,
};
