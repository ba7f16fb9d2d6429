// Changes the library in one place at a time and sees whether a test minds: `node mutants.mjs FOLDER [SEED]`. Of all the
// changes that cargo-mutants knows for the storeys of mechanics, the seed picks 600. A run that was broken off goes on where
// it stopped, as long as library and tests are the same. What was found is told in FOLDER.md.
import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { chance } from "../tests/lib/chance.mjs";

const [place, seed = "1"] = process.argv.slice(2);
const PICKED = 600;
const LEAST = 0.9; // of those that compile must be caught
const STOREYS = ["float", "quantity", "source", "field", "chance", "gear", "hitch", "reeving", "error", "draft", "climber", "tree", "rope", "cord", "descent"];
// What these miss, every test is tried on: they take seconds and catch most.
const QUICK = ["--lib", ...["advantage", "catalogue", "cut_length", "friction", "golden", "loads", "people", "quantities", "reeving", "tables", "worked"].map((name) => `--test=${name}`)];
// It reads the sources, so it minds any change to a line it knows.
const READS = "every_planted_figure_still_stands_once_and_its_test_is_there";

// Each change is compiled anew, so it is the compiling that must be quick.
Object.assign(process.env, { CARGO_PROFILE_TEST_OPT_LEVEL: "1", CARGO_PROFILE_TEST_DEBUG: "0", CARGO_PROFILE_DEV_DEBUG: "0" });
const files = STOREYS.flatMap((storey) => ["-f", `src/${storey}.rs`, "-f", `src/${storey}/**`]);
const asked = (command, ...words) => execFileSync(command, words, { encoding: "utf8", maxBuffer: 1e8 }).split("\n").filter(Boolean);
const all = asked("cargo", "mutants", "--list", ...files);

/** A short name for what is tried and what it is tried with. */
function edition() {
  const hash = createHash("sha256");
  for (const file of asked("git", "ls-files", "Cargo.lock", "src", "tests")) if (existsSync(file)) hash.update(file).update(readFileSync(file));
  return hash.digest("hex").slice(0, 8);
}

/** So many of a list, in its order, picked by the seed. */
function picked(list, count) {
  const draw = chance(Number(seed));
  const kept = list.map((one, at) => [draw(), at]).sort(([a], [b]) => a - b).slice(0, count).map(([, at]) => at);
  return kept.sort((a, b) => a - b).map((at) => list[at]);
}

const mutants = picked(all, PICKED);
const folder = `${place}/${seed}-${edition()}`;

/** Those of the picked that cargo-mutants has listed so; it tries a few more than it was asked to. */
function those(name) {
  const path = `${folder}/mutants.out/${name}.txt`;
  const listed = new Set(existsSync(path) ? readFileSync(path, "utf8").split("\n") : []);
  return mutants.filter((mutant) => listed.has(mutant));
}

/** Those that do not compile, now and in runs before: a run forgets what the one before it has found so. */
function unviable() {
  const path = `${folder}/unviable.json`;
  const known = new Set([...(existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : []), ...those("unviable")]);
  writeFileSync(path, JSON.stringify([...known]));
  return known;
}

/** Tries what has not been caught yet against some tests. */
function tried(tests) {
  unviable();
  const { status } = spawnSync("cargo", ["mutants", "--config", `${folder}/picked.toml`, "--output", folder, "--iterate", "--colors", "never", "--no-shuffle", ...files,
    ...tests.map((test) => `--cargo-arg=${test}`), "--", "--", "--skip", READS], { stdio: "inherit" });
  // All caught, some missed, some that took too long; anything else is no finding.
  if (![0, 2, 3].includes(status)) throw new Error("cargo-mutants came to nothing: its words are above.");
}

mkdirSync(folder, { recursive: true });
const exactly = (name) => `^${name.replace(/[.*+?^${}()|[\]\\/]/gu, "\\$&")}$`;
writeFileSync(`${folder}/picked.toml`, `examine_re = ${JSON.stringify(mutants.map(exactly))}\n`);
tried(QUICK);
if (those("missed").length + those("timeout").length > 0) tried(["--tests"]);

const [missed, slow, broken] = [those("missed"), those("timeout"), unviable()];
const found = new Set([...missed, ...slow, ...broken, ...those("caught"), ...those("previously_caught")]);
if (found.size < mutants.length) throw new Error(`${mutants.length - found.size} changes were not tried: run this again.`);
const compiled = mutants.length - broken.size;
const share = (compiled - missed.length) / compiled;
const list = (names) => names.map((name) => `* ${name}`).join("\n") || "* none";
const told = `# Changes that a test minds

${all.length} changes are known, ${mutants.length} of them picked by seed ${seed}. ${broken.size} did not compile. Of ${compiled} that did, ${compiled - missed.length} were caught (${(100 * share).toFixed(1)} %), ${slow.length} of these by taking for ever.

Missed:

${list(missed)}

For ever:

${list(slow)}
`;
writeFileSync(`${place}.md`, told);
console.log(told);
if (!(share >= LEAST)) process.exitCode = 1;
