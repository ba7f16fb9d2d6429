// A server of the published folder for this machine: its files, netlify.toml's headers, brotli.
import { createServer } from "node:http";
import { readFile, stat } from "node:fs/promises";
import { extname, resolve, sep } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";
import { headerRules } from "./headers.mjs";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".png": "image/png",
  ".ico": "image/x-icon",
};
const incompressible = new Set([".png", ".ico"]);

/** A server, not yet listening, of `folder` under the headers of `rules`. */
export async function siteServer({ folder = "dist", rules = "netlify.toml" } = {}) {
  const base = resolve(folder);
  const headersOf = await headerRules(rules);
  const packed = new Map(); // file and its time -> brotli bytes: best brotli takes a while

  async function found(path) {
    const file = resolve(base, `.${path.endsWith("/") ? `${path}index.html` : path}`);
    if (!file.startsWith(base + sep)) return null;
    const { mtimeMs } = await stat(file);
    return { body: await readFile(file), kind: extname(file), key: `${file} ${mtimeMs}` };
  }

  function brotli({ body, key }) {
    if (!packed.has(key)) {
      packed.set(key, brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }));
    }
    return packed.get(key);
  }

  return createServer(async (request, response) => {
    if (request.method !== "GET" && request.method !== "HEAD") return response.writeHead(405).end();
    let path, file;
    try {
      path = decodeURIComponent(new URL(request.url, "http://site").pathname);
      file = await found(path);
    } catch {
      file = null; // no such file, or an address that is none
    }
    if (!file) return response.writeHead(404, { ...headersOf(path ?? "/"), "Content-Type": types[".txt"] }).end("There is no such page here.\n");
    const takes = /\bbr\b/.test(request.headers["accept-encoding"] ?? "") && !incompressible.has(file.kind);
    const body = takes ? brotli(file) : file.body;
    response.writeHead(200, {
      ...headersOf(path),
      "Content-Type": types[file.kind] ?? "application/octet-stream",
      "Content-Length": body.length,
      Vary: "Accept-Encoding",
      ...(takes && { "Content-Encoding": "br" }),
    });
    response.end(request.method === "HEAD" ? undefined : body);
  });
}
