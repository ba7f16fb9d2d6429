import { isStrengthUnknown, namedRig } from "./answer-words.js";
import { effortText } from "./can-i-climb.js";
import { lineChart } from "./chart.js";
import { setText } from "./element.js";
import { feasibilityMap } from "./feasibility-map.js";
import { showMissing } from "./missing.js";
import { showRigs, sideBySide, standingOf } from "./rig-list.js";
import { fillScroll } from "./scroll-box.js";

// What only the answer to "Which advantage?" has: the rigs, the chart, the map.

const at = (id) => document.getElementById(id);

/** The letter of each rig, the same in list, chart and map. */
export function lettersOf({ rigs }) {
  return new Map(rigs.map(({ id, letter }) => [id, letter]));
}

/** The answer in short: the headline, and what stands below the form on a phone. */
export function glanceText({ rigs }) {
  const named = namedRig(rigs);
  if (named?.least) return `On paper, least kit for ${standingOf(named) === "works" ? "the height" : "one pull"}: ${named.noun}`;
  if (named) return `On paper, only with a helper: ${named.noun}`;
  return isStrengthUnknown(rigs) ? "Your strength is not known yet" : "No rig here succeeds on paper yet";
}

export const advantageAnswer = {
  show(answer, fields) {
    setText(at("headline"), glanceText(answer));
    showMissing(answer.missing, fields);
  },
  draw(answer) {
    const letters = lettersOf(answer.map);
    showRigs(at("rigs"), answer, letters);
    setText(at("effort"), effortText(answer.effort));
    fillScroll(at("side-by-side"), sideBySide(answer.rigs, letters));
    setText(at("chart-title"), answer.chart.noun);
    at("chart").replaceChildren(...lineChart(answer.chart, letters));
    setText(at("map-title"), answer.map.noun);
    at("map").replaceChildren(...feasibilityMap(answer.map, answer.first));
  },
  glance: glanceText,
  status: ({ first }) => first,
};
