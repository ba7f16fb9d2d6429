// The texts of forms and sources, asked of the module that has them.
import { readFile } from "node:fs/promises";
import { gluePackaged } from "./glue.mjs";

/** The library as the module in `folder` has it, with all its texts. */
export async function wholeLibrary(folder) {
  const { text } = await gluePackaged(folder);
  const { makeGlue } = await import(`data:text/javascript,${encodeURIComponent(text)}`);
  const library = makeGlue();
  library.initSync({ module: await readFile(`${folder}/boughline_bg.wasm`) });
  return library;
}

/** What npm/told.js holds: every field, and what changes of it with the view; the rigs and turns, the words for one of one's own; every source. */
export async function textsOf(folder) {
  const library = await wholeLibrary(folder);
  const rows = library.fields();
  const views = {};
  for (const system of ["si", "us"]) {
    for (const decimal of [".", ","]) {
      views[system + decimal] = library.fields({ system, decimal }).map((row, at) =>
        Object.fromEntries(Object.entries(row).filter(([key, value]) =>
          JSON.stringify(value) !== JSON.stringify(rows[at][key]))));
    }
  }
  return {
    rows,
    views,
    catalogue: library.catalogue(),
    rigWords: library.rigWords(),
    sources: Object.fromEntries(library.sources().map(({ id, text }) => [id, text])),
  };
}
