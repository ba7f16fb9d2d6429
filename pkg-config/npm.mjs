// Writes the npm package: `node npm.mjs MODULES_FOLDER PACKAGE_FOLDER`. In MODULES_FOLDER are `whole`, `texts` (the whole
// with the texts of forms and sources) and a folder for each part.
import { copyFile, mkdir, readFile, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { gluePackaged } from "./glue.mjs";
import { lettered } from "./letters.mjs";
import { licences } from "./licences.mjs";
import { parts } from "./parts.mjs";
import { textsOf, wholeLibrary } from "./texts.mjs";

const [modules, out] = process.argv.slice(2).map((path) => resolve(path));
const [built, whole] = [`${modules}/whole`, `${modules}/texts`];
const text = (path) => readFile(path, "utf8");
const write = (name, content) => writeFile(`${out}/${name}`, content);

const glue = await gluePackaged(built);
await write("glue.js", glue.text);

// Each entry is a file of pkg-config/npm/ that makes `calls`; here it gets its list of named exports.
const texts = await textsOf(whole);
const lists = ["catalogue", "fields", "rigWords", "sources"]; // told.js has these
const exported = (names) => `export const { ${[...names, ...lists].sort().join(", ")} } = calls;\n`;
/** An entry with the module of `folder` inside, where it has a place for one. */
async function holding(source, folder) {
  const inside = lettered(await readFile(`${folder}/boughline_bg.wasm`));
  return source.replace("MODULE_LETTERS", () => inside.letters).replace("MODULE_TEXT", () => inside.text);
}
for (const entry of ["index.js", "node.js", "inline.js"]) {
  await write(entry, (await holding(await text(`pkg-config/npm/${entry}`), built)) + exported(glue.names));
}
// A part's entry is the inline one with that part's module and glue.
await mkdir(`${out}/inline`, { recursive: true });
for (const part of Object.values(parts)) {
  const own = await gluePackaged(`${modules}/${part}`);
  const entry = (await text("pkg-config/npm/inline.js")).replace("./calls.js", "../calls.js").replace("./glue.js", `./${part}.glue.js`);
  await write(`inline/${part}.glue.js`, own.text);
  await write(`inline/${part}.js`, (await holding(entry, `${modules}/${part}`)) + exported(own.names));
  await write(`inline/${part}.d.ts`, `export type * from "../boughline.js";\nexport { ${[...own.names, ...lists].sort().join(", ")} } from "../boughline.js";\n`);
}
await write("told.js", (await text("pkg-config/npm/told.js")).replace("TEXTS", () => JSON.stringify(texts)));
// How it is reckoned, for the method page and for whoever wants the figures.
await write("method.json", `${JSON.stringify((await wholeLibrary(whole)).method(), null, 1)}\n`);
await write("licences.txt", await licences());
for (const file of ["README.md", "calls.js", "index.d.ts", "inline.d.ts"]) await copyFile(`pkg-config/npm/${file}`, `${out}/${file}`);
await copyFile(`${built}/boughline_bg.wasm`, `${out}/boughline_bg.wasm`);

// The types of the functions, without those of wasm-bindgen's own loader that follow them.
const types = await text(`${built}/boughline.d.ts`);
const end = types.indexOf("export type InitInput");
if (end < 0) throw new Error("wasm-bindgen's types look different: see where the loader's types begin in boughline.d.ts.");
await write("boughline.d.ts", types.slice(0, end));

// One version number for crate and package: Cargo.toml's.
const version = /^version = "(.+)"$/m.exec(await text("Cargo.toml"))[1];
await write("package.json", (await text(`pkg-config/npm/package.json`)).replace("CRATE_VERSION", version));
await copyFile("LICENSE", `${out}/LICENSE`);
