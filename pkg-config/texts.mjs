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

/** What npm/told.js adds: of each field its hint and why, of each option its hint, of each source its text, the rigs. */
export async function textsOf(folder) {
  const library = await wholeLibrary(folder);
  const fields = library.fields();
  return {
    hints: Object.fromEntries(fields.map(({ id, hint, why }) => [id, [hint, why]])),
    options: Object.fromEntries(fields.filter((row) => row.options)
      .map(({ id, options }) => [id, options.map(({ hint }) => hint)])),
    catalogue: library.catalogue(),
    sources: Object.fromEntries(library.sources().map(({ id, text }) => [id, text])),
  };
}
