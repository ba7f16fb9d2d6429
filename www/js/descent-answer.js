import { effortText } from "./can-i-climb.js";
import { setText } from "./element.js";
import { stepItem } from "./step-item.js";

// What only the answer to "Can I get down again?" has: the steps of the change-over.

const at = (id) => document.getElementById(id);

/** What stands below the form on a phone. */
export function glanceText({ figures, steps, none }) {
  if (steps.length === 0) return none;
  const hold = figures.find(({ id }) => id === "holdForce");
  return hold === undefined ? "No friction is reckoned" : `Your hand holds ${hold.text} to stop`;
}

export const descentAnswer = {
  show(answer) {
    setText(at("no-steps"), answer.none);
    at("no-steps").hidden = answer.none === "";
    at("steps-key").hidden = answer.none !== "";
    at("steps").replaceChildren(...answer.steps.map(stepItem));
    setText(at("effort"), effortText(answer.effort));
  },
  glance: glanceText,
  status: ({ first }) => first,
};
