// What is said of an answer, whichever question it is: embedded, compared, or copied as text. No DOM here.

const filled = (texts) => texts.filter((text) => typeof text === "string" && text !== "");

/** The headline and the sentences below it. */
export function sentencesOf({ verdict, first, second, buy, owned, limb, none }) {
  const rest = filled([second, buy, owned, limb?.text, none]);
  return verdict ? { headline: verdict.text, sentences: [first, ...rest] } : { headline: first, sentences: rest };
}

/** Without the caution that this is arithmetic and not training: it stands on the page always, answer or not. */
export const watched = (cautions) => cautions.filter(({ id }) => id !== "arithmetic");

/** Whether the rigs wait for somebody's strength: a helper's rig has a strength of its own. */
export const isStrengthUnknown = (rigs) => rigs.some(({ standing, hauled }) => standing === "not-known" && !hauled);

/** The rig that an answer names: the least kit, or a helper's where no other works; none while strength is not known. */
export function namedRig(rigs) {
  const least = rigs.find((rig) => rig.least);
  if (least || isStrengthUnknown(rigs)) return least;
  return rigs.find(({ standing, hauled }) => standing === "works" && hauled);
}

/** Every caution, the answer's own and those of the rig it names; none twice. */
export function cautionsOf({ cautions, rigs = [] }) {
  const all = new Map([...cautions, ...namedRig(rigs)?.cautions ?? []].map((caution) => [caution.text, caution]));
  return watched([...all.values()]);
}

/** The answer in one sentence, for those who cannot see it change. */
export const answerSentence = ({ verdict, first }) => filled([verdict?.text, first]).join(". ");
