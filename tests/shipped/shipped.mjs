// The library as it is published: the WASM cut out of a page of dist/, started through the glue of the page's part.
import { readFileSync } from "node:fs";
import { parts } from "../../pkg-config/parts.mjs";

/** The module inside a page or an entry: the letter of each byte, and a long text of these, which in a page stands apart. */
export function wasmInside(file) {
  const found = [...readFileSync(file, "utf8").matchAll(/"([^"\\]{256})",\s*(?:"|[\s\S]*<script type="text\/plain" id="library">)([^"\\<]{100000,})["<]/g)];
  if (found.length !== 1) throw new Error(`A page holds one module; ${file} holds ${found.length}.`);
  const [, letters, text] = found[0];
  return Buffer.from(Array.from(text, (letter) => letters.indexOf(letter)));
}

/** The functions of a module, through the glue in `file` of dist/npm/. */
async function started(wasm, file) {
  const glue = (await import(`../../dist/npm/${file}`)).makeGlue();
  glue.initSync({ module: new WebAssembly.Module(wasm) });
  return glue;
}

/** The functions of the module inside a page that carries a part. */
export const inside = (page) => started(wasmInside(`dist/${page}.html`), `inline/${parts[page]}.glue.js`);

/** The functions of the whole module. */
export const whole = () => started(readFileSync("dist/npm/boughline_bg.wasm"), "glue.js");
