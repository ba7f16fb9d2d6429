import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { brotliDecompressSync } from "node:zlib";
import { headerRules } from "../../pkg-config/headers.mjs";
import { siteServer } from "../../pkg-config/site.mjs";

let server;
before(async () => {
  server = await siteServer();
  await new Promise((listening) => server.listen(0, "127.0.0.1", listening));
});
after(() => server.close());

// node:http and not fetch, which would tidy the path and undo the brotli.
const asked = (path, headers = {}) => new Promise((resolve, reject) => {
  request({ port: server.address().port, host: "127.0.0.1", path, headers }, (response) => {
    const parts = [];
    response.on("data", (part) => parts.push(part)).on("end", () => resolve({ status: response.statusCode, headers: response.headers, body: Buffer.concat(parts) }));
  }).on("error", reject).end();
});

test("the server sends what only a header can say", async () => {
  const { headers } = await asked("/");
  assert.equal(headers["content-security-policy"], "frame-ancestors 'none'");
  assert.equal(headers["x-content-type-options"], "nosniff");
  assert.equal(headers["cross-origin-opener-policy"], "same-origin");
  assert.ok(headers["referrer-policy"] && headers["permissions-policy"]);
});

test("pages of other origins may load the element and its parts, and no page of ours", async () => {
  const headersOf = await headerRules("netlify.toml");
  for (const path of ["/embed.js", "/embed-rope-length.js"]) {
    const headers = headersOf(path);
    assert.equal(headers["Access-Control-Allow-Origin"], "*");
    assert.equal(headers["Cross-Origin-Resource-Policy"], "cross-origin");
    assert.equal(headers["Cache-Control"], undefined, "their names have no hash");
  }
  assert.equal(headersOf("/embedding.html")["Access-Control-Allow-Origin"], undefined);
});

test("the server sends brotli to those who take it and the same bytes plain", async () => {
  const packed = await asked("/index.html", { "Accept-Encoding": "gzip, br" });
  const plain = await asked("/index.html");
  assert.equal(packed.headers["content-encoding"], "br");
  assert.equal(plain.headers["content-encoding"], undefined);
  assert.ok(brotliDecompressSync(packed.body).equals(plain.body));
  assert.ok(plain.body.equals(readFileSync("dist/index.html")));
});

test("the server gives nothing from outside dist", async () => {
  for (const path of ["/../Cargo.toml", "/%2e%2e/Cargo.toml", "/..%2fCargo.toml", "/%ff", "/npm"]) {
    assert.equal((await asked(path)).status, 404, path);
  }
});

test("a header in two rules is refused", async () => {
  const folder = mkdtempSync(join(tmpdir(), "headers-"));
  const rules = join(folder, "netlify.toml");
  writeFileSync(rules, '[[headers]]\nfor = "/*"\n[headers.values]\nA = "1"\n[[headers]]\nfor = "/x.js"\n[headers.values]\nA = "2"\nB = "3"\n');
  const headersOf = await headerRules(rules);
  assert.deepEqual(headersOf("/y.js"), { A: "1" });
  assert.throws(() => headersOf("/x.js"), /two rules give \/x\.js the header A/);
  rmSync(folder, { recursive: true });
});
