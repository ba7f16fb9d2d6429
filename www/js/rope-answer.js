import { setText } from "./element.js";
import { showStates } from "./rope-states.js";

// What only the answer to "How much rope?" has: the states of the rope.

/** What to buy, and how high the rope goes that somebody has: each a sentence, or nothing. */
function showSentences({ buy, owned }) {
  for (const [id, text] of [["buy", buy], ["owned", owned]]) {
    const node = document.getElementById(id);
    setText(node, text);
    node.hidden = text === "";
  }
}

export const ropeLength = {
  show: showSentences,
  draw: (answer) => showStates(document.getElementById("states"), answer),
  glance: ({ first }) => first,
  status: ({ first, owned }) => [first, owned].filter((text) => text !== "").join(" "),
};
