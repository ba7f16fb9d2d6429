import { setText } from "./element.js";
import { showStates } from "./rope-states.js";

// What only the answer to "How much rope?" has: the states of the rope.

/** The state that needs the most rope; none where there is no state. */
export function decidingState({ states }) {
  return states.find(({ decides }) => decides) ?? states[0] ?? null;
}

/** What stands below the form on a phone; without a height the answer itself, which is how high a rope goes. */
export function glanceText(answer) {
  const state = decidingState(answer);
  return state === null || answer.buy === "" ? answer.first : `${state.total.text} of rope: ${state.noun}`;
}

/** What to buy, and how high the rope goes that somebody has: each a sentence, or nothing. */
function showSentences({ buy, owned }) {
  for (const [id, text] of [["buy", buy], ["owned", owned]]) {
    const node = document.getElementById(id);
    setText(node, text);
    node.hidden = text === "";
  }
}

export const ropeLength = {
  show: (answer) => {
    showSentences(answer);
    showStates(document.getElementById("states"), answer);
  },
  glance: glanceText,
  status: ({ first, owned }) => [first, owned].filter((text) => text !== "").join(" "),
};
