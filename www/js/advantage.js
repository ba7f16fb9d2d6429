import { advantageAnswer } from "./advantage-answer.js";
import * as engine from "./engine.js";
import { openPage } from "./question-page.js";
import { rigEditor } from "./rig-editor.js";

/** The answer with the map of the same plan, coarse while somebody types, and a link to the climb on each rig. */
function ask(draft, view, effort) {
  const reply = engine.advantage(draft, view, effort);
  if (!reply.ok) return reply;
  const { answer: map } = engine.feasibilityMap(draft, view, ...(effort === undefined ? [120, 80] : [48, 32]));
  const { testMass, testPull, ...without } = draft;
  const tested = testMass !== undefined || testPull !== undefined;
  const links = Object.fromEntries(reply.answer.rigs.map(({ id }) => {
    // One's own test belongs to the rig it was made on.
    const untested = tested && id !== draft.rig;
    return [id, { address: engine.writeLink("can-i-climb", { ...(untested ? without : draft), rig: id }, view), untested }];
  }));
  return { ok: true, answer: { ...reply.answer, map, links } };
}

openPage(engine, ask, advantageAnswer);
rigEditor(document.querySelector("[data-rig-editor]"), engine);
