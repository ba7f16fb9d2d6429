// The crate as it is published: what it pulls in, and what is in it.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { test } from "node:test";

const cargo = (...args) => execFileSync("cargo", args, { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] }).trim().split("\n");
/** What an ordinary user of the crate compiles, each once. */
const tree = (...more) => new Set(cargo("tree", "--locked", "-e", "normal", "--prefix", "none", ...more).map((line) => line.replace(" (*)", "")));

test("without WASM it has at most five dependencies of its own, and fifteen crates in all", () => {
  assert.ok(tree("--depth", "1").size - 1 <= 5);
  assert.ok(tree().size - 1 <= 15);
});

test("it holds its sources, tests and papers, and nothing else", () => {
  const files = cargo("package", "--locked", "--list", "--allow-dirty");
  const belongs = /^(?:src|tests|examples)\/.+\.(?:rs|tsv|csv|jsonl|txt|md|d\.ts|hex)$|^(?:Cargo\.(?:toml|toml\.orig|lock)|README\.md|CHANGELOG\.md|LICENSE|\.cargo_vcs_info\.json)$/u;
  assert.deepEqual(files.filter((file) => !belongs.test(file)), []);
  for (const file of ["src/lib.rs", "src/wasm.d.ts", "README.md", "LICENSE", "tests/data/ids.txt"]) assert.ok(files.includes(file), file);
  // Crates of their own, which nobody who has the library needs.
  assert.deepEqual(files.filter((file) => /^tests\/(?:bench|fuzz)\//u.test(file)), []);
});

test("the least Rust it says it needs is the one that all of this runs on", () => {
  const said = /^rust-version = "(.+)"$/mu.exec(readFileSync("Cargo.toml", "utf8"))[1];
  const used = /^channel = "(.+)"$/mu.exec(readFileSync("rust-toolchain.toml", "utf8"))[1];
  assert.ok(used === said || used.startsWith(`${said}.`), `${said} is said, ${used} is used`);
});
