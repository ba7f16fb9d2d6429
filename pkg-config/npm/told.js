// The texts of forms and sources, which the module leaves out: as text they weigh less than inside it.
const { hints, options, sources } = TEXTS;

const withText = (source) => ({ ...source, text: sources[source.id] });

const adding = {
  fields: (rows) => rows.map((row) => ({
    ...row,
    hint: hints[row.id][0],
    why: hints[row.id][1],
    options: row.options && row.options.map((option, at) => ({ ...option, hint: options[row.id][at] })),
  })),
  catalogue: ({ rigs, turns }) => ({
    rigs: rigs.map((rig, at) => ({ ...rig, hint: options.rig[at] })),
    turns: turns.map((turn, at) => ({ ...turn, hint: options.topTurn[at] })),
  }),
  sources: (all) => all.map(withText),
};

/** What a call gave, with the texts that belong to it. */
export function told(name, given) {
  if (adding[name]) return adding[name](given);
  const cited = given && given.answer && given.answer.sources;
  return cited ? { ...given, answer: { ...given.answer, sources: cited.map(withText) } } : given;
}
