// The service worker for what is published in `folder`: it knows the edition, a hash of all pages, and those files
// that it keeps before they are visited, by their own.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";

export async function workerFor(source, folder, pages, atOnce) {
  const hashed = async (names) => Promise.all(names.map(async (name) =>
    [name, `sha256-${createHash("sha256").update(await readFile(`${folder}/${name}`)).digest("base64")}`]));
  const hashes = await hashed([...atOnce].sort());
  const paged = await hashed([...pages].sort());
  const edition = createHash("sha256").update(JSON.stringify([...paged, ...hashes, source])).digest("hex");
  return source
    .replace("EDITION_HASH", edition.slice(0, 16))
    .replace("FILE_HASHES", () => JSON.stringify(Object.fromEntries(hashes), null, 2))
    .replace("PAGE_HASHES", () => JSON.stringify(Object.fromEntries(paged), null, 2));
}
