// An engine of a few lines for the tests of what shows a rope's length: the shapes of `RopeLength`, lengths in metres.

const text = (metres) => `${metres.toFixed(1)} m`;
export const figure = (id, noun, value) =>
  ({ id, noun, value, low: value, high: value, text: text(value), range: null, workings: [], sources: [] });

const NOUNS = {
  up: "up to the crotch", overCrotch: "over the crotch", down: "down from the crotch", redirectRope: "for redirects",
  footOffset: "out to where you stand", inRig: "back and forth in the rig", anchorKnot: "in the knot",
  tail: "tail that pulls it down", reserve: "to let you down with", ropeTail: "stopper and tail below it", ropeSpare: "to spare",
};

/** A state of these lengths; pieces of no length are left out. */
function state(id, noun, lengths) {
  const items = Object.entries(lengths).filter(([, value]) => value > 0).map(([piece, value]) => figure(piece, NOUNS[piece], value));
  return { id, noun, decides: false, items, total: figure("total", "in all", items.reduce((sum, { value }) => sum + value, 0)) };
}

/** A rope tied at the foot, or drawn up to the crotch with a tail or a cord that brings it down again. */
export function ropeLength({
  crotchHeight, anchor, hitchHeight = 1.5, inRig = 0, ropeTail = 0.4, ropeSpare = 1, redirectRope = 0, footOffset = 0, endsAbove = 0,
}) {
  if (crotchHeight === undefined) return { ok: false, errors: [{ fields: ["crotchHeight"], message: "Enter the height of the crotch." }] };
  const canopy = anchor.startsWith("canopy");
  const pieces = (up, hitch, rig, reserve = 0) => ({
    up: canopy ? up : crotchHeight, overCrotch: 0.3, down: crotchHeight - hitch, redirectRope, footOffset, inRig: rig, anchorKnot: 1,
    tail: anchor === "canopy" ? crotchHeight : 0, reserve, ropeTail, ropeSpare,
  });
  const states = [
    state("set", "setting the rope", pieces(crotchHeight, 0, 0)),
    state("start", "starting the climb", pieces(0, hitchHeight, inRig)),
    state("top", "topping out", pieces(0, crotchHeight - 0.45, inRig)),
    state("down", "going down", pieces(0, 0, 0)),
  ];
  if (anchor === "base-lowerable") states.push(state("lowered", "being let down", pieces(0, 0, inRig, crotchHeight)));
  const most = states.reduce((one, other) => (other.total.value > one.total.value ? other : one));
  most.decides = true;
  const figures = [figure("ropeNeeded", "rope needed", most.total.value)];
  if (canopy && anchor !== "canopy") figures.push(figure("retrievalCord", "retrieval cord", crotchHeight + 0.3));
  if (endsAbove > 0) figures.push(figure("ropeEndsAbove", "your rope’s end above the ground", endsAbove));
  return { ok: true, answer: {
    first: `About ${most.total.text} of rope.`, second: "", buy: "Buy it.", owned: "", assumed: "", figures, states, cautions: [], sources: [],
  } };
}
