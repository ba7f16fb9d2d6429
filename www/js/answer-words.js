// What is said of an answer, whichever question it is: embedded, compared, or copied as text. No DOM here.

const filled = (texts) => texts.filter((text) => typeof text === "string" && text !== "");

/** The headline and the sentences below it. */
export function sentencesOf({ verdict, first, second, buy, owned, limb, none }) {
  const rest = filled([second, buy, owned, limb?.text, none]);
  return verdict ? { headline: verdict.text, sentences: [first, ...rest] } : { headline: first, sentences: rest };
}

/** Without the caution that this is arithmetic and not training: it stands on the page always, answer or not. */
export const watched = (cautions) => cautions.filter(({ id }) => id !== "arithmetic");

/** Every caution, the answer's own and those of the rig it names; none twice. */
export function cautionsOf({ cautions, rigs = [] }) {
  const named = rigs.find(({ least }) => least) ?? rigs.find(({ standing, hauled }) => standing === "works" && hauled);
  const all = new Map([...cautions, ...named?.cautions ?? []].map((caution) => [caution.text, caution]));
  return watched([...all.values()]);
}

/** The answer in one sentence, for those who cannot see it change. */
export const answerSentence = ({ verdict, first }) => filled([verdict?.text, first]).join(". ");
