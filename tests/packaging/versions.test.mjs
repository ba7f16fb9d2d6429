import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

const text = (path) => readFileSync(path, "utf8");
const pinned = Object.fromEntries([...text("pkg-config/versions").matchAll(/^(\w+)=(.+)$/gm)].map(([, name, value]) => [name, value]));

test("the glue and the tool that makes it are one version", () => {
  const crate = /^wasm-bindgen = \{ version = "=([\d.]+)"/m.exec(text("Cargo.toml"))?.[1];
  const locked = /name = "wasm-bindgen"\nversion = "([\d.]+)"/.exec(text("Cargo.lock"))?.[1];
  assert.equal(crate, pinned.WASM_BINDGEN);
  assert.equal(locked, pinned.WASM_BINDGEN);
});

for (const folder of ["pkg-config", "pkg-config/prove-tools", "pkg-config/consumer-tools"]) {
  test(`every npm package is pinned to one version: ${folder}`, () => {
    for (const [name, version] of Object.entries(JSON.parse(text(`${folder}/package.json`)).devDependencies)) {
      assert.match(version, /^\d+\.\d+\.\d+$/, name);
    }
  });

  test(`the lock names no registry: ${folder}`, () => {
    assert.doesNotMatch(text(`${folder}/package-lock.json`), /"resolved"/);
  });
}

test("the package has the crate's version", () => {
  const crate = /^version = "(.+)"$/m.exec(text("Cargo.toml"))[1];
  assert.equal(JSON.parse(text("dist/npm/package.json")).version, crate);
});

test("each version in the changelog has each kind of change once, in one list", () => {
  for (const version of text("CHANGELOG.md").split("\n## ").slice(1)) {
    const kinds = [...version.matchAll(/^### (.+)$/gm)].map(([, kind]) => kind);
    const known = ["Added", "Changed", "Deprecated", "Removed", "Fixed", "Security"];
    assert.deepEqual(kinds, [...new Set(kinds)].filter((kind) => known.includes(kind)), version.split("\n")[0]);
    assert.doesNotMatch(version, /^(?!###).+\n\n- /m, "take out the blank line between two items");
  }
});
