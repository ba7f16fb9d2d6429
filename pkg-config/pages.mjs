// Writes every page of the site, the pocket edition, icons and worker: `node pages.mjs SITE_FOLDER OUT_FOLDER`.
import { cp, readFile, readdir, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { fields } from "boughline";
import { expanded } from "./expand.mjs";
import { escaped } from "./field-markup.mjs";
import { inlined } from "./inline.mjs";
import { pngOf } from "./icons.mjs";
import { entryOfPage } from "./parts.mjs";
import { pagesOf, pocketEdition } from "./pocket.mjs";
import { workerFor } from "./worker.mjs";

const [site, out] = process.argv.slice(2).map((path) => resolve(path));
// The page rewrites its hints when the view changes, and shows the boxes that fit: here the same modules are asked.
const shared = (module) => import(pathToFileURL(`${site}/js/${module}.js`));
const words = { ...(await shared("hint")), ...(await shared("fitting")) };

// What the build asked of the library and of cargo; a package of an older build has neither.
const packaged = (name) => readFile(new URL(`node_modules/boughline/${name}`, import.meta.url), "utf8").catch(() => null);
const licences = await packaged("licences.txt");
const built = { method: JSON.parse(await packaged("method.json")), licences };
if (licences) await writeFile(`${out}/licences.txt`, licences);

// Where the site is published, for links copied from a page on disk. Empty: such a page makes none.
const address = (process.env.SITE_ADDRESS ?? "").replace(/\/*$/, "/").replace(/^\/$/, "");
const addressed = (html, name) => html.replace('<meta name="site-address" content="">', () =>
  `<meta name="site-address" content="${escaped(address && address + name.replace(/^index\.html$/, ""))}">`);

const source = (path) => readFile(`${site}/${path}`, "utf8");
/** A page in full; `as` is the file in which it is to stand, and whose entry the menus mark. */
const whole = async (name, as = name) => addressed(await expanded(await source(name), as, site, fields(), words, built), as);

const pages = ["pocket.html"];
const bundledInto = new Set(["css", "js", "parts", "worker.js"]);
for (const entry of (await readdir(site, { withFileTypes: true })).sort((a, b) => (a.name < b.name ? -1 : 1))) {
  if (bundledInto.has(entry.name)) continue;
  if (!entry.name.endsWith(".html")) {
    await cp(`${site}/${entry.name}`, `${out}/${entry.name}`, { recursive: true });
    continue;
  }
  pages.push(entry.name);
  await written(entry.name, async () => inlined(await whole(entry.name), site, entryOfPage(entry.name.slice(0, -5))));
}
await written("pocket.html", async () => {
  const names = pagesOf(await source("parts/header.html") + await source("parts/footer.html"));
  return pocketEdition(names, (name) => whole(name, "pocket.html"), site, address);
});

for (const [icon, size] of [["icon", 192], ["icon", 512], ["maskable", 512]]) {
  await written(`icons/${icon}-${size}.png`, async () => pngOf(await source(`icons/${icon}.svg`), size));
}
await written("worker.js", async () => {
  const icons = (await readdir(`${out}/icons`)).map((name) => `icons/${name}`);
  return workerFor(await source("worker.js"), out, pages, ["pocket.html", "manifest.webmanifest", ...icons]);
});

/** Writes what `made` resolves to; what is wrong with it is said by its name, and the rest is still made. */
async function written(name, made) {
  try {
    await writeFile(`${out}/${name}`, await made());
  } catch (error) {
    console.error(`${name}: ${error.message}`);
    process.exitCode = 1;
  }
}
