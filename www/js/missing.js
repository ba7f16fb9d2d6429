import { sentenceLinks } from "./places.js";

const at = (id) => document.getElementById(id);

/** What is not entered: as links where there is a box for it, and plainly where there is none. */
export function showMissing(missing, fields) {
  const boxed = ({ fields: ids }) => ids.some((id) => fields.has(id));
  at("missing").hidden = missing.length === 0;
  for (const [place, rows] of [["can-enter", missing.filter(boxed)], ["cannot-check", missing.filter((row) => !boxed(row))]]) {
    at(place).hidden = rows.length === 0;
    sentenceLinks(at(place).querySelector("ul"), rows, fields);
  }
}
