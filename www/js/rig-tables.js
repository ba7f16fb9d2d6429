import { element } from "./element.js";
import { keysOf } from "./rig-layout.js";
import { table } from "./table.js";

/** A stop's noun, with the letter it has in a crowded drawing. */
function named(stop, key, dense) {
  return dense ? `${key} ${stop.noun}` : stop.noun;
}

/** What each strand of each rope carries; a loose tail carries nothing and has no row. */
export function strandTable(drawing, dense) {
  const keys = keysOf(drawing.ropes);
  const several = drawing.ropes.length > 1;
  const rows = drawing.ropes.flatMap((rope, at) => rope.strands.map((strand, i) => rope.stops[i + 1]?.kind === "free" ? null : [
    `${named(rope.stops[i], keys[at][i], dense)} – ${named(rope.stops[i + 1], keys[at][i + 1], dense)}`,
    ...(several ? [rope.noun] : []),
    strand.tension.text,
  ]).filter(Boolean));
  return table("Each strand of rope", ["From – to", ...(several ? ["Rope"] : []), "Pull in it"], rows);
}

/** Every part, and which ones have nothing behind them. */
export function partTable(parts) {
  const mark = () => element("span", { class: "single-word" }, element("span", { class: "diamond", "aria-hidden": "true" }, "◆"), " single: nothing backs it up");
  return table("Each part", ["Part", "Single?", "What that means"],
    parts.map((part) => [part.noun, part.single ? mark() : "no", part.text]));
}

/** The rows of the table of heights, from the top down; none where heights are not known. */
export function heightRows({ levels }) {
  return levels.filter(({ height, at }) => Number.isFinite(height) && at).map(({ noun, at }) => [noun, at]);
}

/** The same heights as the strip at the drawing's edge: a table, or nothing where none are known. */
export function heightTables(drawing) {
  const rows = heightRows(drawing);
  return rows.length === 0 ? [] : [table("How high each is above the ground: the strip beside the drawing is to scale, the rig is not", ["What", "Height"], rows)];
}
