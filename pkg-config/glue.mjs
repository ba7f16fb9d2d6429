// wasm-bindgen's module keeps its one instance in module variables and refuses a second start.
// Wrapped in a function, every call of it gives a fresh instance.
import { build } from "esbuild";

/** The text of a module that exports `makeGlue()`, and the names of the library's functions in it. */
export async function gluePackaged(folder) {
  const bundled = await build({
    // `export *` leaves the default export behind, and with it the loader that fetches.
    stdin: { contents: 'export * from "./boughline.js";', resolveDir: folder, sourcefile: "entry.js" },
    absWorkingDir: folder, // comments in the output name files relative to this
    bundle: true,
    format: "iife",
    globalName: "glue",
    metafile: true,
    target: "es2020",
    logLevel: "warning",
    logOverride: { "empty-import-meta": "silent" },
    outfile: "glue.js",
    write: false,
  });
  const text = `export function makeGlue() {\n${bundled.outputFiles[0].text}return glue;\n}\n`;
  const { makeGlue } = await import(`data:text/javascript,${encodeURIComponent(text)}`);
  const names = Object.keys(makeGlue()).filter((name) => name !== "initSync").sort();
  return { text, names };
}
