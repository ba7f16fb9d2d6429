// What the page round an embedded question says by attributes. No DOM here.

const oneOf = (said, known, usual) => (known.includes(said) ? said : usual);

/**
 * The plan in the attributes: `plan` is a link or its fragment, `data` holds fields by id and wins over it, `units` and
 * `decimal` win over its view. `unknown` are the keys of `data` that are no field.
 */
export function givenBy({ plan, units, decimal, data }, engine) {
  const fields = new Set(engine.fields().map(({ id }) => id));
  const link = plan ? engine.readLink(plan) : { draft: {}, view: { system: "si", decimal: "." }, notices: [] };
  const said = Object.entries(data).filter(([id, text]) => fields.has(id) && text.trim() !== "");
  return {
    draft: { ...link.draft, ...Object.fromEntries(said) },
    view: {
      system: oneOf(units, ["si", "us"], link.view.system),
      decimal: oneOf(decimal, [".", ","], link.view.decimal),
    },
    notices: link.notices,
    unknown: Object.keys(data).filter((id) => !fields.has(id)),
  };
}

/** The fields that `data` says otherwise than before; "" where it no longer says anything. */
export function changesIn(before, data, engine) {
  const ids = engine.fields().map(({ id }) => id).filter((id) => (before[id] ?? "") !== (data[id] ?? ""));
  return Object.fromEntries(ids.map((id) => [id, data[id] ?? ""]));
}

/** The names in an attribute like `fields="bodyMass rig"`; none where it is not there or empty. */
export const namesIn = (text) => (text ?? "").split(/[\s,]+/u).filter(Boolean);

/**
 * Which boxes there are: those the page chose, in its order; else what a first answer needs, what is worth having beside
 * it, and whatever the page gave a value for. `lacking` are the errors without a word more said.
 */
export function boxesFor({ chosen, given, lacking, wanted }, rows) {
  const all = rows.map(({ id }) => id);
  if (chosen.length > 0) return [...new Set(chosen)].filter((id) => all.includes(id));
  const needed = new Set([...lacking.flatMap(({ fields }) => fields), ...wanted, ...Object.keys(given)]);
  return all.filter((id) => needed.has(id));
}

/** What is reckoned with and stands in no box, in words: nothing else may decide an answer. */
export function unseenText(carried, rows) {
  const said = rows.filter(({ id }) => id in carried).map(({ id, noun, options }) =>
    `${noun}, ${options?.find((option) => option.id === carried[id])?.noun ?? carried[id]}`);
  return said.length === 0 ? "" : `Set by the page this stands in: ${said.join("; ")}.`;
}
