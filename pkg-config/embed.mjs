// Writes what a page of somebody else's loads: `node embed.mjs SITE_FOLDER OUT_FOLDER`. The element in embed.js, and for
// each question embed-QUESTION.js with the engine's part inside.
import { resolve } from "node:path";
import { build } from "esbuild";
import { QUESTIONS } from "../www/js/embed-questions.js";
import { embedTexts } from "./embed-texts.mjs";
import { entryOfQuestion } from "./parts.mjs";

const [site, out] = process.argv.slice(2).map((path) => resolve(path));

const shared = { bundle: true, minify: true, charset: "utf8", target: "es2020", legalComments: "none", logLevel: "warning" };

await build({
  ...shared,
  entryPoints: [`${site}/js/embed.js`],
  outfile: `${out}/embed.js`,
  format: "iife",
  define: { SITE_ADDRESS: JSON.stringify(process.env.SITE_ADDRESS ?? "") },
  plugins: [embedTexts(site)],
});
for (const [question, { ask }] of QUESTIONS) {
  await build({
    ...shared,
    stdin: { contents: `export { ${ask} as ask, fields, readLink, tidy, writeLink } from "${entryOfQuestion(question)}";`, resolveDir: import.meta.dirname },
    outfile: `${out}/embed-${question}.js`,
    format: "esm",
  });
}
