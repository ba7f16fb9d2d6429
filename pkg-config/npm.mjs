// Writes the npm package: `node npm.mjs WASM_PACK_FOLDER WHOLE_FOLDER PACKAGE_FOLDER`, where WHOLE_FOLDER holds the
// module built with its texts.
import { copyFile, readFile, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { gluePackaged } from "./glue.mjs";
import { textsOf } from "./texts.mjs";

const [built, whole, out] = process.argv.slice(2).map((path) => resolve(path));
const text = (path) => readFile(path, "utf8");
const write = (name, content) => writeFile(`${out}/${name}`, content);

const glue = await gluePackaged(built);
await write("glue.js", glue.text);

// Each entry is a file of pkg-config/npm/ that makes `calls`; here it gets its list of named exports.
const names = (await gluePackaged(whole)).names.filter((name) => !name.startsWith("__")); // an unshrunk module has one more
const exported = `export const { ${names.join(", ")} } = calls;\n`;
const wasm = await readFile(`${built}/boughline_bg.wasm`);
for (const entry of ["index.js", "node.js", "inline.js"]) {
  const source = await text(`pkg-config/npm/${entry}`);
  await write(entry, source.replace("WASM_HEX", () => wasm.toString("hex")) + exported);
}
const texts = JSON.stringify(await textsOf(whole));
await write("told.js", (await text("pkg-config/npm/told.js")).replace("TEXTS", () => texts));
for (const file of ["calls.js", "index.d.ts", "inline.d.ts"]) await copyFile(`pkg-config/npm/${file}`, `${out}/${file}`);
await write("boughline_bg.wasm", wasm);

// The types of the functions, without those of wasm-bindgen's own loader that follow them.
const types = await text(`${built}/boughline.d.ts`);
const end = types.indexOf("export type InitInput");
if (end < 0) throw new Error("wasm-bindgen's types look different: see where the loader's types begin in boughline.d.ts.");
await write("boughline.d.ts", types.slice(0, end));

// One version number for crate and package: Cargo.toml's.
const version = /^version = "(.+)"$/m.exec(await text("Cargo.toml"))[1];
await write("package.json", (await text(`pkg-config/npm/package.json`)).replace("CRATE_VERSION", version));
for (const file of ["README.md", "LICENSE"]) await copyFile(file, `${out}/${file}`);
