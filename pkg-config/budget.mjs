// Holds what travels to a phone to the limits of budget.tsv (KB of 1024 bytes, after brotli).
import { readFile } from "node:fs/promises";
import { brotliCompressSync, constants } from "node:zlib";

const rows = (await readFile("pkg-config/budget.tsv", "utf8")).trim().split("\n").slice(1);
let over = 0;
for (const row of rows) {
  const [name, path, limit] = row.split("\t");
  const body = await readFile(path);
  const size = brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: body.length } }).length / 1024;
  const within = size <= Number(limit);
  if (!within) over += 1;
  console.log(`${within ? "ok  " : "OVER"} ${name}: ${size.toFixed(1)} KB of ${limit} KB`);
}
console.log(`# pass ${rows.length - over}\n# fail ${over}`);
process.exitCode = over ? 1 : 0;
