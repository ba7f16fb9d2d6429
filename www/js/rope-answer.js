import { showStates } from "./rope-states.js";

// What only the answer to "How much rope?" has: the states of the rope.

/** The state that needs the most rope; none where there is no state. */
export function decidingState({ states }) {
  return states.find(({ decides }) => decides) ?? states[0] ?? null;
}

/** What stands below the form on a phone. */
export function glanceText(answer) {
  const state = decidingState(answer);
  return state === null ? answer.first : `${state.total.text} of rope: ${state.noun}`;
}

export const ropeLength = {
  show: (answer) => showStates(document.getElementById("states"), answer),
  glance: glanceText,
  status: ({ first }) => first,
};
