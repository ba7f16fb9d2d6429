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

/** What a call gave, with the texts of the sources it cites; in a text they stand by their ids, between two marks. */
export function told(given) {
  if (typeof given === "string") return given.replace(/\uE000([\w-]+)\uE000/gu, (marked, id) => sources[id] ?? marked);
  const cited = given && given.answer && given.answer.sources;
  return cited ? { ...given, answer: { ...given.answer, sources: cited.map(withText) } } : given;
}
