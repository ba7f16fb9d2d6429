// Writes every page of the site: `node pages.mjs SITE_FOLDER OUT_FOLDER`.
import { cp, readFile, readdir, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { fields } from "boughline";
import { expanded } from "./expand.mjs";
import { escaped } from "./field-markup.mjs";
import { inlined } from "./inline.mjs";

const [site, out] = process.argv.slice(2).map((path) => resolve(path));
// The page rewrites its hints when the view changes, and shows the boxes that fit: here the same modules are asked.
const shared = (module) => import(pathToFileURL(`${site}/js/${module}.js`));
const words = { ...(await shared("hint")), ...(await shared("fitting")) };

// Where the site is published, for links copied from a page on disk. Empty: such a page makes none.
const address = process.env.SITE_ADDRESS ?? "";
const addressed = (html) => html.replace('<meta name="site-address" content="">', () => `<meta name="site-address" content="${escaped(address)}">`);

const bundledInto = new Set(["css", "js", "parts"]);
for (const entry of (await readdir(site, { withFileTypes: true })).sort((a, b) => (a.name < b.name ? -1 : 1))) {
  if (bundledInto.has(entry.name)) continue;
  if (!entry.name.endsWith(".html")) {
    await cp(`${site}/${entry.name}`, `${out}/${entry.name}`, { recursive: true });
    continue;
  }
  try {
    const html = await readFile(`${site}/${entry.name}`, "utf8");
    const page = await inlined(addressed(await expanded(html, entry.name, site, fields(), words)), site);
    await writeFile(`${out}/${entry.name}`, page);
  } catch (error) {
    console.error(`${entry.name}: ${error.message}`);
    process.exitCode = 1;
  }
}
