import { effortText } from "./can-i-climb.js";
import { lineChart } from "./chart.js";
import { element, setText } from "./element.js";
import { showFigures } from "./figures.js";
import { showLoadStates } from "./load-states.js";

// What only the answer to "What does each part carry?" has: the states, the slip, the limb.

const at = (id) => document.getElementById(id);

export const loadsAnswer = {
  draw(answer) {
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
  glance: ({ glance }) => glance,
  status: ({ first }) => first,
};
