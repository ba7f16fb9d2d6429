// What was asked of the times and sizes, what was measured, and where the time goes in what does not hold.
import { LIMIT, PLANS } from "./cutting.mjs";
import { middle } from "./times.mjs";

const MOST_OVER_NATIVE = 1.8;
const MAP = 100; // ms
const EDIT = 100; // ms
const FIRST = 1500; // ms
const PROVED = 95; // of a hundred

const NAMES = {
  latency: "the network’s latency", bytes: "bytes on their way", engine: "the library", page: "the page’s script", script: "script, the library’s among it",
  layout: "style and layout", rest: "the rest (events, frames, painting)",
};

/** Where the time goes, the longest first. */
function whither(parts) {
  const total = Object.values(parts).reduce((sum, part) => sum + part, 0);
  const said = Object.entries(parts).sort(([, one], [, other]) => other - one)
    .map(([id, ms]) => `${NAMES[id]} ${Math.round(ms)} ms (${Math.round((100 * ms) / total)} %)`);
  return `Of ${Math.round(total)} ms: ${said.join(", ")}.`;
}

const ms = (time) => `${time.toFixed(time < 10 ? 1 : 0)} ms`;

function ofTheClimb([climb]) {
  const overTwin = climb.each.map(({ wasm, twin }) => wasm / twin);
  return [
    {
      asked: `20,000 climbs of 60 strokes take the module at most ${MOST_OVER_NATIVE} times a native build`,
      measured: `${middle(climb.ratios).toFixed(2)} times (${Math.min(...climb.ratios).toFixed(2)} to ${Math.max(...climb.ratios).toFixed(2)})`,
      holds: middle(climb.ratios) <= MOST_OVER_NATIVE,
      why: "Nearly all of it is the sampled climbs themselves, in the module’s own code: what crosses to JavaScript is the same for 500 samples. The module is built at a level for its size; DEVELOPERS.md says what the others weigh and take.",
    },
    {
      asked: "the module is faster than the same climb in plain JavaScript",
      measured: `${middle(overTwin).toFixed(2)} of its time`,
      holds: middle(overTwin) < 1,
      why: "The twin has formulas where the library solves a rig.",
    },
  ];
}

function ofTheMap(plans) {
  const { wasm } = plans.find(({ name }) => name === "map of 200 by 200");
  return {
    asked: `a map of 200 by 200 takes the module under ${MAP} ms`, measured: ms(wasm), holds: wasm < MAP,
    why: "Growth, below, says what a cell takes.",
  };
}

function ofCutting(rows) {
  const { inTime } = rows.find(({ kind, count }) => kind === "realistic" && count === 40);
  return {
    asked: `of ${PLANS} plans for 40 cords ${PROVED} are proved within ${LIMIT} ms`, measured: `${inTime}`, holds: inTime >= PROVED,
    why: "The plans that are not proved run until the counted effort ends.",
  };
}

function ofTyping(pages) {
  const { edit } = pages.find(({ question }) => question === "can-i-climb");
  return {
    asked: `while somebody types, the climb is answered within ${EDIT} ms on a phone`, measured: `${ms(edit.middle)}, worst ${ms(edit.worst)}`,
    holds: edit.middle <= EDIT, why: whither(edit.parts),
  };
}

const ofFirst = (pages) => pages.map(({ name, first }) => ({
  asked: `the first answer of ${name} is there within ${FIRST} ms on a phone`, measured: ms(first.middle), holds: first.middle <= FIRST,
  why: `${whither(first.parts)} The network alone leaves ${ms(FIRST - first.parts.latency - first.parts.bytes)} for all work.`,
}));

const WHOLE = "What asks every question carries the whole library, which alone is over it.";
const WHY_SO_BIG = {
  "a question’s module": "The model of rigs and one climb with all its ranges is in each; DEVELOPERS.md says what a smaller level would cost.",
  "a page": WHOLE,
  "the pocket edition": WHOLE,
};

function ofSizes(limits) {
  return limits.map(({ what, most, sizes }) => {
    const over = sizes.filter(({ kb }) => kb > most);
    const [heaviest] = [...sizes].sort((one, other) => other.kb - one.kb);
    const made = ({ name, kb, module }) => {
      if (!module) return `${name}: ${kb.toFixed(0)} KB.`;
      return `${name}: ${kb.toFixed(0)} KB, of its module the functions ${module.code.toFixed(0)}, texts and tables ${module.data.toFixed(0)}.`;
    };
    return {
      asked: `${what} has at most ${most} KB after brotli`, measured: `${heaviest.name}: ${heaviest.kb.toFixed(1)} KB`, holds: over.length === 0,
      why: `${WHY_SO_BIG[what] ?? ""} ${over.map(made).join(" ")}`.trim(),
    };
  });
}

/** `{ asked, measured, holds, why }` of everything that was asked. */
export const asked = ({ plans, cutting, pages, sizes }) =>
  [...ofTheClimb(plans), ofTheMap(plans), ofCutting(cutting), ofTyping(pages), ...ofFirst(pages), ...ofSizes(sizes)];
