// The texts that fuzzing keeps, as JSON, a line each, in tests/data/corpus/: `node corpus.mjs unpack TARGET FOLDER` makes
// a file of each, `pack` takes the files back.
import { mkdir, readFile, readdir, writeFile } from "node:fs/promises";

const [way, target, folder] = process.argv.slice(2);
const kept = new URL(`../tests/data/corpus/${target}.jsonl`, import.meta.url);

async function unpack() {
  await mkdir(folder, { recursive: true });
  const lines = (await readFile(kept, "utf8")).split("\n").filter(Boolean);
  await Promise.all(lines.map((line, at) => writeFile(`${folder}/kept-${at}`, JSON.parse(line))));
}

/** What is no UTF-8 never comes to the library, which takes text. */
function textOf(bytes) {
  try {
    return [new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes)];
  } catch {
    return [];
  }
}

async function pack() {
  const files = await Promise.all((await readdir(folder)).map((name) => readFile(`${folder}/${name}`)));
  const lines = [...new Set(files.flatMap(textOf).map((text) => JSON.stringify(text)))];
  lines.sort((one, other) => one.length - other.length || (one < other ? -1 : 1));
  await writeFile(kept, lines.map((line) => `${line}\n`).join(""));
}

await { unpack, pack }[way]();
