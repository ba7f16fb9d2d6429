import { effortText } from "./can-i-climb.js";
import { lineChart } from "./chart.js";
import { element, setText } from "./element.js";
import { showFigures } from "./figures.js";
import { showLoadStates } from "./load-states.js";

// What only the answer to "What does each part carry?" has: the states, the slip, the limb.

const at = (id) => document.getElementById(id);

/** What stands below the form on a phone. */
export function glanceText({ states }) {
  const parts = states.flatMap((state) => state.parts);
  if (parts.some(({ standing }) => standing === "short")) return "A part may be loaded past what it bears";
  const ratios = parts.flatMap(({ ratio }) => ratio?.low ?? []);
  if (ratios.length === 0) return "What the parts bear is not known";
  return "Least in hand, on paper: " + (Math.floor(Math.min(...ratios) * 10) / 10) + " times the peak";
}

export const loadsAnswer = {
  show(answer) {
    showLoadStates(at("states"), answer.states);
    setText(at("effort"), effortText(answer.effort));
    at("slip").hidden = answer.slip === null;
    setText(at("slip-title"), answer.slip?.noun ?? "");
    at("slip-chart").replaceChildren(...(answer.slip === null ? [] : lineChart(answer.slip)));
    setText(at("limb-text"), answer.limb.text);
    at("limb-text").dataset.limb = answer.limb.id;
    at("limb-checks").replaceChildren(...answer.limb.checks.map((text) => element("li", {}, text)));
    showFigures(at("limb-figures"), answer.limb.figures, new Map(answer.sources.map(({ id, text }) => [id, text])));
  },
  glance: glanceText,
  status: ({ first }) => first,
};
