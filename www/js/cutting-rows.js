// A list of cords or hanks as rows of words. No DOM here; every function answers with new rows.

/** What a row of each list says, in the order it is written: the first `always` even where they are empty. */
export const LISTS = {
  cords: {
    one: "cord",
    always: 3,
    columns: [
      { id: "count", noun: "How many" },
      { id: "diameter", noun: "Diameter" },
      { id: "length", noun: "Cut length" },
      { id: "fibre", noun: "Fibre" },
      { id: "name", noun: "What for" },
    ],
    fresh: { count: "1", diameter: "", length: "", fibre: "", name: "" },
  },
  hanks: {
    one: "hank",
    always: 2,
    columns: [
      { id: "diameter", noun: "Diameter, or any" },
      { id: "length", noun: "Length" },
      { id: "fibre", noun: "Fibre" },
      { id: "price", noun: "Price, 0 if yours" },
      { id: "limit", noun: "How many there are" },
    ],
    fresh: { diameter: "any", length: "", fibre: "", price: "", limit: "" },
  },
};

/** A word of a row, without what parts rows and their parts. */
const word = (text) => text.replace(/[~;\n]/gu, " ").trim();

/** The text of rows, a line each. */
export function textOf(list, rows) {
  const { columns, always } = LISTS[list];
  const line = (row) => columns
    .map(({ id }, at) => ({ text: (id === "limit" && word(row[id]) !== "" ? "x" : "") + word(row[id]), keep: at < always || word(row[id]) !== "" }))
    .filter(({ keep }) => keep)
    .map(({ text }) => text)
    .join(" ~ ");
  // A last line break: a text of several lines, however short.
  return rows.map((row) => `${line(row)}\n`).join("");
}

/** The rows with one word changed. */
export function withWord(rows, row, id, text) {
  return rows.map((one, at) => (at === row ? { ...one, [id]: text } : one));
}

/** The rows with one more, as the last is where there is one. */
export function withRow(list, rows) {
  const last = rows.at(-1);
  const { fresh } = LISTS[list];
  return [...rows, last ? { ...fresh, diameter: last.diameter, fibre: last.fibre } : { ...fresh }];
}

/** The rows without one. */
export function withoutRow(rows, row) {
  return rows.filter((_, at) => at !== row);
}

/**
 * The row of a cord whose length was just worked out, at the longer end of its range: what is too long is trimmed, and what
 * is too short is lost. Null where there is none, or it is not known how thick it is.
 */
export function rowOf(answer, diameter, name) {
  const figure = answer?.figures.find(({ id }) => id === "cutLength");
  if (!figure || diameter === "") return null;
  const length = figure.range === null ? figure.text : figure.range.split(" to ").at(-1);
  return { count: "1", diameter, length, name };
}
