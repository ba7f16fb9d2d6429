// The texts of forms and sources, which the module leaves out: as text they weigh less than inside it.
const { hints, options, catalogue, sources } = TEXTS;

const withText = (source) => ({ ...source, text: sources[source.id] });

/** The functions that need no module: their lists are texts and nothing else. */
export const lists = {
  catalogue: () => JSON.parse(JSON.stringify(catalogue)),
  sources: () => Object.keys(sources).map((id) => withText({ id })),
};

/** What a call gave, with the texts that belong to it. */
export function told(name, given) {
  if (name === "fields") {
    return given.map((row) => ({
      ...row,
      hint: hints[row.id][0],
      why: hints[row.id][1],
      options: row.options && row.options.map((option, at) => ({ ...option, hint: options[row.id][at] })),
    }));
  }
  const cited = given && given.answer && given.answer.sources;
  return cited ? { ...given, answer: { ...given.answer, sources: cited.map(withText) } } : given;
}
