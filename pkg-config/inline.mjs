// Puts a page's styles and script inside it, under a policy that allows exactly these.
import { createHash } from "node:crypto";
import { build } from "esbuild";
import { apart } from "./apart.mjs";
import { embedTexts } from "./embed-texts.mjs";

const script = /<script type="module" src="(js\/[\w-]+\.js)"><\/script>\n?/;
const style = /<link rel="stylesheet" href="(css\/[\w-]+\.css)"([^>]*)>\n?/g;

/** A module or a style sheet with all it imports, as one text; `made` is a module's own text where it stands in no file. */
async function bundled(folder, path, plugins, { library, made } = {}) {
  const entry = made === undefined
    ? { entryPoints: [`${folder}/${path}`] }
    : { stdin: { contents: made, resolveDir: `${folder}/js`, sourcefile: path } };
  const result = await build({
    ...entry,
    alias: library && { "boughline/inline": library },
    bundle: true,
    minify: true,
    charset: "utf8",
    format: "iife",
    target: "es2020",
    loader: { ".svg": "dataurl", ".png": "dataurl" },
    legalComments: "none",
    plugins,
    logLevel: "warning",
    logOverride: { "import-is-undefined": "error" }, // a function that the page's part has not
    outdir: "unwritten",
    write: false,
  });
  const text = result.outputFiles[0].text.trim();
  // The browser's parser must see the whole of it as one element's text, or the hash is of something else.
  if (/<\/(script|style)|<!--/i.test(text)) throw new Error(`${path} holds text that would end or comment out its element.`);
  return text;
}

const digest = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

/** What a meta policy can say; netlify.toml's headers say the rest. */
function policy(code, sheets) {
  return [
    "default-src 'none'",
    code ? `script-src ${digest(code)} 'wasm-unsafe-eval'` : "script-src 'none'",
    `style-src ${sheets.map(digest).join(" ") || "'none'"}`,
    "img-src 'self' data:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/** The path of the module that a page is written with. */
export const moduleOf = (html) => script.exec(html)?.[1];
/** The paths of its style sheets: one, but for the pocket edition. */
export const stylesOf = (html) => [...html.matchAll(style)].map(([, path]) => path);

/**
 * The page as one file: policy and styles in the head; at the end of the body one classic script, which waits for the
 * whole page as a module would, and what it asks. `library` stands for "boughline/inline"; `made` is the text of its
 * module where that stands in no file.
 */
export async function inlined(html, folder, library, made) {
  const module = moduleOf(html);
  const { plugin, block } = apart();
  const started = module && (await bundled(folder, module, [plugin, embedTexts(folder)], { library, made }));
  // In brackets a function is read once, at once, and not again when it is called.
  const code = started && `addEventListener("DOMContentLoaded",(()=>{${started}}))`;
  const sheets = await Promise.all(stylesOf(html).map((path) => bundled(folder, path, [])));
  const unused = [...sheets];
  const page = html
    .replace(script, "")
    .replace(style, (link, path, attributes) => `<style${attributes}>${unused.shift()}</style>\n`)
    .replace("</body>", () => (code ? `<script>${code}</script>\n${block()}</body>` : "</body>"))
    .replace('<meta charset="utf-8">', (charset) => `${charset}\n<meta http-equiv="content-security-policy" content="${policy(code, sheets)}">`);
  if (!page.includes("content-security-policy")) throw new Error('A page begins its head with <meta charset="utf-8">.');
  const left = /<(?:script|link)\b[^>]*(?:src|rel="stylesheet")[^>]*>/.exec(page.replace(code ?? "", ""))?.[0];
  if (left) throw new Error(`${left} was not put inside: a page has one js/NAME.js module and css/NAME.css.`);
  return page;
}
