import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { test } from "node:test";

/** Every file under a folder with the hash of its bytes. */
function hashes(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(files.map((entry) => join(entry.parentPath ?? entry.path, entry.name)).sort()
    .map((file) => [file.slice(folder.length), createHash("sha256").update(readFileSync(file)).digest("hex")]));
}

/** The sources in another folder, with the tools linked: only what a build writes is its own. */
function copyOfTheSources() {
  const copy = mkdtempSync(join(tmpdir(), "another folder "));
  const sources = ["Cargo.toml", "Cargo.lock", "rust-toolchain.toml", "README.md", "LICENSE", "src", "www", "pkg-config", "tests/data/people/README.md"];
  const packages = resolve("pkg-config/node_modules");
  for (const name of sources) {
    cpSync(name, join(copy, name), { recursive: true, filter: (path) => resolve(path) !== packages });
  }
  mkdirSync(join(copy, "pkg-config/node_modules"));
  for (const name of readdirSync(packages)) {
    if (name !== "boughline") symlinkSync(join(packages, name), join(copy, "pkg-config/node_modules", name));
  }
  symlinkSync("pkg-config/node_modules", join(copy, "node_modules"));
  symlinkSync(resolve(".tools"), join(copy, ".tools"));
  return copy;
}

test("the same sources in another folder give the same bytes", () => {
  const copy = copyOfTheSources();
  try {
    const env = { ...process.env, CARGO_TARGET_DIR: join(copy, "target") };
    execFileSync(join(copy, "pkg-config/build"), { env, stdio: "pipe" });
    assert.ok(existsSync("dist/index.html"));
    assert.deepEqual(hashes(join(copy, "dist")), hashes(resolve("dist")));
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
});
