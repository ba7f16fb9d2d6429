import { element } from "./element.js";
import { showFigures } from "./figures.js";

// Many figures, under a heading for each thing they are about.

/** The headings, and the figures of each by their ids. */
export const GROUPS = [
  ["A pull, and your strength", [
    "pullNeeded", "armPull", "armShare", "planningPull", "measuredPull", "gripPull", "normPull",
    "handHold", "handShare", "chance", "reachChance"]],
  ["Strokes and rope", ["gain", "strokes", "handTravel", "ropeHandled", "work", "strokeWork", "allStrokes"]],
  ["Time and power", [
    "workingTime", "restEach", "lastingTime", "hangingTime", "powerNeeded", "powerKeptUp", "power", "climbSpeed", "climbTime"]],
  ["Pace, and where to turn back", [
    "paceRest", "paceEvery", "longRest", "paceTime", "leftAtTop", "heightReached", "stillToTop", "heightInTime",
    "halfwayStrokes", "turnBackLeft", "turnBackStrokes", "turnBackTime", "turnBackHeight"]],
  ["The start and the top", ["ropeStretch", "emptyStrokes", "topGap", "topSeat", "seatOverEdge"]],
  ["The rig and the anchor", ["realAdvantage", "idealAdvantage", "turnEfficiency", "climberWeight", "anchorLoad"]],
];

/** The figures under their headings, each in the order given; one that no heading knows comes under the last. */
export function grouped(figures) {
  const known = new Map(GROUPS.flatMap(([heading, ids]) => ids.map((id) => [id, heading])));
  const last = GROUPS.at(-1)[0];
  return GROUPS
    .map(([heading]) => [heading, figures.filter(({ id }) => (known.get(id) ?? last) === heading)])
    .filter(([, inside]) => inside.length > 0);
}

// What somebody opened or closed stays so, also where a heading has no figures for a while.
const states = new Map();

/** A heading that folds where there is little room; the first is open. */
function group(heading) {
  const open = states.get(heading) ?? heading === GROUPS[0][0];
  const node = element("details", { class: "group fold", "data-group": heading, open },
    element("summary", {}, element("h3", {}, heading)), element("ul", { class: "figures" }));
  node.addEventListener("toggle", () => states.set(heading, node.open));
  return node;
}

/** Shows figures under their headings. A heading stays in the page while it has any, for what is open below it. */
export function showGroups(box, figures, sourceTexts) {
  const old = new Map([...box.children].map((node) => [node.dataset.group, node]));
  const groups = grouped(figures).map(([heading, inside]) => {
    const node = old.get(heading) ?? group(heading);
    showFigures(node.querySelector("ul"), inside, sourceTexts);
    return node;
  });
  const same = groups.length === box.children.length && groups.every((node, i) => box.children[i] === node);
  if (!same) box.replaceChildren(...groups);
}
