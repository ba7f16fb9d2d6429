import { effortText } from "./can-i-climb.js";
import { setText } from "./element.js";
import { stepItem } from "./step-item.js";

// What only the answer to "Can I get down again?" has: the steps of the change-over.

const at = (id) => document.getElementById(id);

export const descentAnswer = {
  draw(answer) {
    setText(at("no-steps"), answer.none);
    at("no-steps").hidden = answer.none === "";
    at("steps-key").hidden = answer.none !== "";
    at("steps").replaceChildren(...answer.steps.map(stepItem));
    setText(at("effort"), effortText(answer.effort));
  },
  glance: ({ glance }) => glance,
  status: ({ first }) => first,
};
