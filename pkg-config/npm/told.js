// The texts of forms and sources, which the module leaves out: as text they weigh less than inside it.
const { rows, views, catalogue, rigWords, sources } = TEXTS;

const copy = (list) => JSON.parse(JSON.stringify(list));
const withText = (source) => ({ ...source, text: sources[source.id] });

/** Which of the four views is meant; whatever is not said, or not known, is as by default. */
function viewOf(view) {
  const said = (key) => {
    try {
      return view[key];
    } catch {
      return undefined;
    }
  };
  return (said("system") === "us" ? "us" : "si") + (said("decimal") === "," ? "," : ".");
}

/** The functions that need no module: their answers are texts and nothing else. */
export const lists = {
  fields: (view) => copy(rows.map((row, at) => ({ ...row, ...views[viewOf(view)][at] }))),
  catalogue: () => copy(catalogue),
  rigWords: () => copy(rigWords),
  sources: () => Object.keys(sources).map((id) => withText({ id })),
};

/** A text in which sources stand by their ids, between two marks, with theirs. */
const cited = (text) => text.replace(/\uE000([\w-]+)\uE000/gu, (marked, id) => (Object.hasOwn(sources, id) ? sources[id] : marked));

/** What a call gave, with the texts of the sources it cites. */
export function told(name, given) {
  if (name === "asText") return cited(given);
  const ids = given && given.answer && given.answer.sources;
  return ids ? { ...given, answer: { ...given.answer, sources: ids.map(withText) } } : given;
}
