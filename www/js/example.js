import { sameDraft } from "./draft.js";

// An invented scenario, so that a newcomer sees what an answer looks like. No DOM here.

/** What the mark beside the form says while these numbers are in it. */
export const STORY =
  "An invented volunteer, not you: she counts lichens in an oak wood and has to reach a platform in the canopy, by arms alone. She pulled on a luggage scale hung overhead to find her strength; a trained friend stays below.";

// One plan for all pages. The same person written by two hands: neither is a conversion of the other.
const DRAFTS = {
  si: {
    bodyMass: "68 kg", climbHeight: "12 m", rig: "tail-3",
    kitMass: "7 kg", stature: "170 cm", hold: "hand-loop",
    measuredPull: "520 N", pullTaken: "overhead", pullArms: "two", pullHeld: "hand-loop",
    upperTurn: "bearing-pulley", lowerTurn: "carabiner", backup: "second-hitch",
    crotchHeight: "14 m", anchor: "canopy",
    cordUse: "distel", ropeDiameter: "11 mm", hitchCord: "8 mm",
    wayDown: "descend", secondPerson: "rescuer",
  },
  us: {
    bodyMass: "150 lb", climbHeight: "40 ft", rig: "tail-3",
    kitMass: "15 lb", stature: "5 ft 7 in", hold: "hand-loop",
    measuredPull: "115 lbf", pullTaken: "overhead", pullArms: "two", pullHeld: "hand-loop",
    upperTurn: "bearing-pulley", lowerTurn: "carabiner", backup: "second-hitch",
    crotchHeight: "46 ft", anchor: "canopy",
    cordUse: "distel", ropeDiameter: "11 mm", hitchCord: "8 mm",
    wayDown: "descend", secondPerson: "rescuer",
  },
};

/** The example's draft as somebody used to that system would write it. */
export function exampleDraft(system) {
  return { ...(DRAFTS[system] ?? DRAFTS.si) };
}

/** Whether this draft is an example's, with or without spaces, and without the choices nobody has to make. */
export function isExample(draft, likely = {}) {
  const said = (whole) => Object.fromEntries(Object.entries(whole)
    .filter(([id, text]) => likely[id] !== text)
    .map(([id, text]) => [id, text.replace(/\s+/gu, "")]));
  return Object.values(DRAFTS).some((example) => sameDraft(said(example), said(draft)));
}
