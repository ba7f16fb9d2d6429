// Every dependency is named once in DEVELOPERS.md with what it is for and what would replace it, and nothing else is; and
// what is fetched is what a lock file says.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { test } from "node:test";
import { parse } from "smol-toml";

const read = (path) => readFileSync(path, "utf8");
const files = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], { encoding: "utf8" }).trim().split("\n");
/** Scripts of the shell, whose lines that go on are made one, without comments. */
const scripts = files.filter((path) => /^(?:pkg-config|\.ci)\/[\w-]+$/u.test(path) && path !== "pkg-config/versions")
  .map((path) => [path, read(path).replace(/\\\n\s*/gu, " ").replace(/^\s*#.*$|\s# .*$/gmu, "")]);

const rows = read("DEVELOPERS.md").split("## Dependencies")[1].split("\n## ")[0].split("\n").filter((line) => line.startsWith("| `"))
  .map((line) => line.split("|").slice(1, -1).map((cell) => cell.trim()));

/** Each dependency that is asked for anywhere, with where. */
function asked() {
  const found = new Map();
  const add = (name, where) => { if (name !== "boughline") found.set(name, where); };
  for (const path of files.filter((one) => basename(one) === "Cargo.toml")) {
    const manifest = parse(read(path));
    for (const part of [manifest, ...Object.values(manifest.target ?? {})]) {
      for (const kind of ["dependencies", "dev-dependencies", "build-dependencies"]) {
        for (const name of Object.keys(part[kind] ?? {})) add(name, path);
      }
    }
  }
  for (const path of files.filter((one) => basename(one) === "package.json")) {
    const manifest = JSON.parse(read(path));
    for (const kind of ["dependencies", "devDependencies", "optionalDependencies", "peerDependencies"]) {
      for (const name of Object.keys(manifest[kind] ?? {})) add(name, path);
    }
  }
  for (const [path, script] of scripts) {
    for (const [, crate] of script.matchAll(/\binstall_tool ([a-z][\w-]*)/gu)) add(crate, path);
    for (const [, names] of script.matchAll(/\bdebian_packages "[^"]*"((?: +[a-z][\w.-]*)+)/gu)) for (const name of names.trim().split(/ +/u)) add(name, path);
  }
  return found;
}

test("DEVELOPERS.md names every dependency, and none that is not there", () => {
  const named = rows.flatMap(([names]) => [...names.matchAll(/`([^`]+)`/gu)].map(([, name]) => name));
  const there = asked();
  assert.ok(there.size > 25, [...there.keys()].join());
  assert.deepEqual([...there].filter(([name]) => !named.includes(name)), [], "asked for and not named");
  assert.deepEqual(named.filter((name) => !there.has(name)), [], "named and asked for nowhere");
  assert.deepEqual(named.filter((name, at) => named.indexOf(name) !== at), [], "named twice");
});

test("each is said to be for something, and what would replace it", () => {
  for (const cells of rows) {
    assert.equal(cells.length, 4, cells[0]);
    assert.ok(cells.every((cell) => cell.length > 3), cells.join(" | "));
  }
});

test("every tool that is pinned is installed by a script, and every script's tool is pinned", () => {
  const pinned = [...read("pkg-config/versions").matchAll(/^(\w+)=/gmu)].map(([, name]) => name).filter((name) => name !== "NODE_LEAST");
  const used = scripts.flatMap(([, script]) => [...script.matchAll(/\binstall_tool [\w-]+ [\w-]+ "\$(\w+)"/gu)].map(([, name]) => name));
  assert.deepEqual([...pinned].sort(), [...new Set(used)].sort());
});

/** Commands of cargo that would write a lock file anew; its other tools call these themselves. */
const LOCKS = "build|check|test|run|clippy|doc|package|publish|install|fetch|bench|tree|metadata|deny|rustc";
const CARGO = new RegExp(`\\bcargo (?:\\+\\S+ )?(?!\\S+ --version)(?:${LOCKS})\\b[^;&|)]*`, "gu");

test("no script lets cargo or npm take another version than its lock says", () => {
  let seen = 0;
  for (const [path, script] of scripts) {
    // What a sentence says in quotes is no command.
    const commands = script.replace(/\b(?:say|fail) "(?:[^"\\]|\\.)*"/gu, "");
    for (const [command] of commands.matchAll(CARGO)) {
      assert.match(command, /--locked\b/u, `${path}: ${command}`);
      seen += 1;
    }
    assert.doesNotMatch(commands, /\bnpm (?:install|i|update|exec)\b|\bnpx\b/u, path);
    for (const [command] of commands.matchAll(/\bwasm-pack\b[^;&|]*\bbuild\b[^;&|]*/gu)) assert.match(command, /--mode no-install.* -- .*--locked/u, `${path}: ${command}`);
  }
  for (const path of files.filter((one) => /^pkg-config\/[\w-]+\.mjs$/u.test(one))) {
    for (const [, args] of read(path).matchAll(new RegExp(`"cargo", \\[("(?:${LOCKS})"[^\\]]*)\\]`, "gu"))) {
      assert.match(args, /"--locked"|\.\.\.wasm/u, `${path}: ${args}`);
      seen += 1;
    }
  }
  assert.ok(seen >= 12, `${seen} commands`);
  const found = [..."cargo test --quiet; cargo build --locked".matchAll(CARGO)].map(([command]) => command.includes("--locked"));
  assert.deepEqual(found, [false, true]);
});

test("every folder with a manifest that is installed has its lock", () => {
  for (const path of files.filter((one) => basename(one) === "Cargo.toml")) assert.ok(files.includes(path.replace(/Cargo\.toml$/u, "Cargo.lock")), path);
  for (const [, folder] of scripts.flatMap(([, script]) => [...script.matchAll(/\bnpm_packages ([\w/-]+)/gu)])) {
    assert.ok(files.includes(`${folder}/package-lock.json`), folder);
  }
});
