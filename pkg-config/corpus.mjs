// The texts that fuzzing keeps, in tests/data/corpus/: a file of JSON texts for each target, a line each, and `broke.jsonl`
// with `[target, text]` for those that once broke something. `node corpus.mjs unpack TARGET FOLDER` makes a file of each;
// `pack` takes files back in place of the target's own.
import { mkdir, readFile, readdir, writeFile } from "node:fs/promises";

const [way, target, folder] = process.argv.slice(2);
const corpus = new URL("../tests/data/corpus/", import.meta.url);
const own = new URL(`${target}.jsonl`, corpus);

const rowsOf = async (file) => (await readFile(file, "utf8")).split("\n").filter(Boolean).map((line) => JSON.parse(line));

async function unpack() {
  const broke = (await rowsOf(new URL("broke.jsonl", corpus))).filter(([of]) => of === target).map(([, text]) => text);
  await mkdir(folder, { recursive: true });
  await Promise.all([...await rowsOf(own), ...broke].map((text, at) => writeFile(`${folder}/kept-${at}`, text)));
}

/** What the library is given of a file: all until the first byte that is no UTF-8. */
const textOf = (bytes) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes).split("\ufffd", 1)[0];

async function pack() {
  const files = await Promise.all((await readdir(folder)).map((name) => readFile(`${folder}/${name}`)));
  const lines = [...new Set(files.map((bytes) => JSON.stringify(textOf(bytes))))];
  lines.sort((one, other) => one.length - other.length || (one < other ? -1 : 1));
  await writeFile(own, lines.map((line) => `${line}\n`).join(""));
}

await { unpack, pack }[way]();
