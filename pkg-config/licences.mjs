// The licences of everything that is inside the pages and the package, as one text. Asked of cargo and npm.
import { execFile } from "node:child_process";
import { readFile, readdir } from "node:fs/promises";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

const run = async (program, args) => (await promisify(execFile)(program, args, { maxBuffer: 1 << 28 })).stdout;
const text = (path) => readFile(path, "utf8");
const here = (path) => new URL(path, import.meta.url);
const byName = (one, other) => (`${one.name} ${one.version}` < `${other.name} ${other.version}` ? -1 : 1);

const wasm = ["--locked", "--offline", "--features", "wasm"];
const target = "wasm32-unknown-unknown";

/** The crates whose code is compiled into the module, without those that only write code while it is compiled. */
async function crates() {
  const tree = await run("cargo", ["tree", ...wasm, "--target", target, "--edges", "normal,no-proc-macro", "--prefix", "none", "--format", "{p}"]);
  const names = new Set([...tree.matchAll(/^(\S+) v(\S+)/gm)].map(([, name, version]) => `${name} ${version}`));
  const { packages } = JSON.parse(await run("cargo", ["metadata", ...wasm, "--format-version", "1", "--filter-platform", target]));
  return packages.filter(({ name, version }) => name !== "boughline" && names.has(`${name} ${version}`));
}

const ofMit = /MIT/;

/** The texts that come with something: of several to choose from, the MIT licence. */
async function textsIn(folder, licence) {
  const files = (await readdir(folder)).filter((file) => /^(licen[cs]e|copying|notice)/i.test(file)).sort();
  const chosen = ofMit.test(licence) && !licence.includes(" AND ") && files.filter((file) => ofMit.test(file));
  return Promise.all((chosen?.length ? chosen : files).map((file) => text(`${folder}/${file}`)));
}

const tidy = (licence) => licence.replace("/", " OR ");

async function ofCrate({ name, version, license, authors, manifest_path: manifest }, mit) {
  let texts = await textsIn(dirname(manifest), license);
  // One that names the MIT licence and forgot its text.
  if (!texts.length && ofMit.test(license)) texts = [mit.replace(/Copyright .*/, `Copyright (c) ${authors.map((author) => author.replace(/ <.*>/, "")).join(", ")}`)];
  return { name, version, licence: tidy(license), texts };
}

/** The standard library, in every module that Rust compiles. */
async function ofRust(mit) {
  const [, version] = /^rustc (\S+)/.exec(await run("rustc", ["--version"]));
  const copyright = mit.replace(/Copyright .*/, "Copyright (c) The Rust Project Contributors");
  // Its tables of letters are of Unicode's own data.
  const unicode = await text(`${(await run("rustc", ["--print", "sysroot"])).trim()}/share/doc/rust/licenses/Unicode-3.0.txt`);
  return { name: "Rust standard library", version, licence: "(MIT OR Apache-2.0) AND Unicode-3.0", texts: [copyright, unicode] };
}

/** What the pages take from npm: packages of package.json that are no tools. */
async function ofNpm() {
  const { dependencies = {} } = JSON.parse(await text(here("package.json")));
  return Promise.all(Object.keys(dependencies).sort().map(async (name) => {
    const folder = here(`node_modules/${name}/`);
    const { version, license } = JSON.parse(await text(new URL("package.json", folder)));
    return { name, version, licence: license, texts: await textsIn(fileURLToPath(folder), license) };
  }));
}

/** The rows of what the surveys' own table says of their licences. */
async function data() {
  const table = await text(here("../tests/data/people/README.md"));
  return [...table.matchAll(/^\| `(.+?)` \| (.+?) \| (.+?) \| (.+?) \|$/gm)].map(([, file, what, from, licence]) => `* ${file}: ${what}. From: ${from}. Licence: ${licence}.`);
}

/** Everything inside: name, version, licence and its texts. */
export async function inside() {
  const own = await text(here("../LICENSE"));
  const mit = own.slice(own.indexOf("MIT License"), own.indexOf("\n---", own.indexOf("MIT License"))).trimEnd();
  return [...await Promise.all((await crates()).map((one) => ofCrate(one, mit))), await ofRust(mit), ...await ofNpm()].sort(byName);
}

const rule = `\n${"-".repeat(78)}\n`;

/** All of it as one text: a list, then each text once with those it is of. */
export async function licences() {
  const all = await inside();
  const of = new Map();
  for (const { name, version, texts } of all) {
    for (const one of texts) {
      const key = one.replaceAll("\r", "").trim();
      of.set(key, [...of.get(key) ?? [], `${name} ${version}`]);
    }
  }
  return [
    "Boughline is licensed under the MIT licence or the Apache License, Version 2.0, at your option.\n",
    "Inside its pages and its package is also the code of:\n",
    ...all.map(({ name, version, licence }) => `* ${name} ${version}: ${licence}`),
    "\nWhere there is a choice, the MIT licence is taken. The texts follow.",
    "\nFigures about people are computed from these data, which are not inside:\n",
    ...await data(),
    "\nFigures of publications are cited one by one on the method page.",
    ...[...of].map(([words, names]) => `${rule}${names.join(", ")}${rule}\n${words}`),
  ].join("\n") + "\n";
}
