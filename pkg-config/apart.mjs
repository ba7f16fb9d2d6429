// Sets the module's text apart from the script of a page: an esbuild plugin. The script is read and got ready while the
// text, which is most of a page, is still on its way, and the browser's parser of scripts never sees it.
import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import { sumOf } from "../www/js/held-apart.js";

const held = /(const \[letters, text\] = \["[^"]*", )"([^"]*)"\]/;
const reader = JSON.stringify(resolve(import.meta.dirname, "../www/js/held-apart.js"));

/** `{ plugin, block }`: after the build `block()` is the element to put behind the script, "" for a script that asks nothing. */
export function apart() {
  let module = null;
  const plugin = {
    name: "apart",
    setup(build) {
      build.onLoad({ filter: /npm\/inline(\/[\w-]+)?\.js$/ }, async ({ path }) => {
        const entry = await readFile(path, "utf8");
        module = held.exec(entry)?.[2];
        if (module === undefined) throw new Error(`${path} does not hold the module as pkg-config/npm/inline.js is written.`);
        return { contents: `import { heldApart } from ${reader};\n${entry.replace(held, `$1heldApart(${sumOf(module)})]`)}` };
      });
    },
  };
  return { plugin, block: () => (module === null ? "" : `<script type="text/plain" id="library">${module}</script>\n`) };
}
