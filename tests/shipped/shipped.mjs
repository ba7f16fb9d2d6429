// The library as it is published: the WASM cut out of a page of dist/, started through the package's glue.
import { readFileSync } from "node:fs";
import { makeGlue } from "../../dist/npm/glue.js";

/** The module inside a page: the hexadecimal of `\0asm`, version 1, and all that follows. */
export function wasmInside(page) {
  const found = page.match(/0061736d01000000[0-9a-f]+/g) ?? [];
  if (found.length !== 1) throw new Error(`A page holds one module; this one holds ${found.length}.`);
  return Buffer.from(found[0], "hex");
}

/** The functions of the module inside `dist/index.html`. */
export function shipped() {
  const glue = makeGlue();
  glue.initSync({ module: new WebAssembly.Module(wasmInside(readFileSync("dist/index.html", "utf8"))) });
  return glue;
}
