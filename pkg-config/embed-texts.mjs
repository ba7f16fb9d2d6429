// What an embedded question shares with the pages and imports as text: an esbuild plugin.
import { readFile } from "node:fs/promises";
import { embedStyles } from "./embed-styles.mjs";

export const embedTexts = (folder) => ({
  name: "embed-texts",
  setup(build) {
    build.onLoad({ filter: /css\/embed\.css$/ }, async () => ({ contents: await embedStyles(folder), loader: "text" }));
    build.onLoad({ filter: /parts\/cautions\.html$/ }, async ({ path }) => {
      const items = [...(await readFile(path, "utf8")).matchAll(/<li>(.*)<\/li>/g)].map(([, text]) => text);
      if (items.length === 0 || items.some((text) => /[<&]/.test(text))) throw new Error(`${path}: write each caution as <li>text</li>.`);
      return { contents: JSON.stringify(items), loader: "json" };
    });
  },
});
