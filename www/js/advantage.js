import { advantageAnswer } from "./advantage-answer.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { rigEditor } from "./rig-editor.js";

/** The answer with the map of the same plan, coarse while somebody types, and a link to the climb on each rig. */
function ask(draft, view, effort) {
  const reply = engine.advantage(draft, view, effort);
  if (!reply.ok) return reply;
  const { answer: map } = engine.feasibilityMap(draft, view, ...(effort === undefined ? [120, 80] : [48, 32]));
  const links = Object.fromEntries(reply.answer.rigs.map(({ id }) =>
    [id, engine.writeLink("can-i-climb", { ...draft, rig: id }, view)]));
  return { ok: true, answer: { ...reply.answer, map, links } };
}

openPage(engine, ask, advantageAnswer);
rigEditor(document.querySelector("[data-rig-editor]"), engine);
