// A copy of the published site, and its next edition.
import { cp, mkdtemp, readFile, readdir, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { workerFor } from "../../pkg-config/worker.mjs";

const dist = process.env.DIST ?? "dist";

/** A folder with the site as it is published. */
export async function editionFolder() {
  const folder = await mkdtemp(join(tmpdir(), "boughline-editions-"));
  await cp(dist, folder, { recursive: true, filter: (path) => !path.includes("/npm") && !path.includes("/images") });
  return folder;
}

/** Publishes another edition, of which one page has another headline. */
export async function publishNext(folder) {
  const page = join(folder, "index.html");
  await writeFile(page, (await readFile(page, "utf8")).replace("<h1>Can I climb this?", "<h1>Can I climb that?"));
  const files = await readdir(folder);
  const icons = (await readdir(join(folder, "icons"))).map((name) => `icons/${name}`);
  const worker = await workerFor(await readFile("www/worker.js", "utf8"), folder, files.filter((name) => name.endsWith(".html")), ["pocket.html", "manifest.webmanifest", ...icons]);
  await writeFile(join(folder, "worker.js"), worker);
}
