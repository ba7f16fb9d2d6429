import { element, setText } from "./element.js";
import { scrollBox } from "./scroll-box.js";
import { table } from "./table.js";
import { timeline } from "./timeline.js";

// What only the answer to "What if I am stuck?" has: the ways to the ground, and what to see to before.

const at = (id) => document.getElementById(id);
const items = (texts) => texts.map((text) => element("li", {}, text));
const ranged = ({ text, range }) => element("span", {}, text, range === null ? null : element("small", { class: "range" }, range));

/** What stands below the form on a phone. */
export function glanceText({ figures, ways }) {
  const best = ways.find((way) => way.best);
  const time = figures.find(({ id }) => id === "rescueTime");
  return best === undefined ? "Nobody can get you down on this plan" : `Quickest without your help: about ${time.text}`;
}

function wayBlock({ noun, possible, best, text, stages }) {
  return element("div", { class: "way" },
    element("h3", {}, noun, best ? " ◆ the quickest without your help" : ""),
    element("p", {}, possible ? text : element("span", {}, element("strong", {}, "No way here. "), text)),
    possible ? element("ol", {}, ...stages.map(({ how, time }) => element("li", {}, `${how}: ${time}.`))) : null);
}

const haulTable = (hauls) => scrollBox("What hauling takes", table("What hauling you up takes",
  ["rig", "pull", "helpers", "rope to pull"],
  hauls.map(({ noun, pull, people, rope }) => [noun, ranged(pull), ranged(people), rope])));

export const rescueAnswer = {
  draw(answer) {
    const clock = answer.figures.find(({ id }) => id === "rescueClock");
    at("timeline").replaceChildren(...timeline(answer.ways, clock));
    at("ways").replaceChildren(...answer.ways.map(wayBlock));
    at("before").replaceChildren(...items(answer.before.map(({ text }) => text)));
    at("unload").replaceChildren(...items(answer.unload));
    setText(at("hauling"), answer.hauling);
    at("hauls").replaceChildren(haulTable(answer.hauls));
    at("plan").replaceChildren(...items(answer.plan));
  },
  glance: glanceText,
  status: ({ first }) => first,
};
