// Changes the library in one place at a time and sees whether a test minds: `node mutants.mjs FOLDER [SEED]`. Of all the
// changes that cargo-mutants knows for the storeys of mechanics, the seed picks 600. What has been caught stays caught: a
// run that was broken off goes on where it stopped. Everything is kept in FOLDER, and told in FOLDER.md.
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { chance } from "../tests/pages/chance.mjs";

const [folder, seed = "1"] = process.argv.slice(2);
const PICKED = 600;
const LEAST = 0.9; // of those that compile must be caught
const STOREYS = ["float", "quantity", "source", "field", "chance", "gear", "hitch", "reeving", "error", "draft", "climber", "tree", "rope", "cord", "descent"];
// What these miss, every test is tried on: they take seconds and catch most.
const QUICK = ["--lib", ...["advantage", "catalogue", "cut_length", "friction", "golden", "loads", "people", "quantities", "reeving", "tables", "worked"].map((name) => `--test=${name}`)];

// Each change is compiled anew, so it is the compiling that must be quick.
Object.assign(process.env, { CARGO_PROFILE_TEST_OPT_LEVEL: "1", CARGO_PROFILE_TEST_DEBUG: "0", CARGO_PROFILE_DEV_DEBUG: "0" });
const files = STOREYS.flatMap((storey) => ["-f", `src/${storey}.rs`, "-f", `src/${storey}/**`]);
const all = execFileSync("cargo", ["mutants", "--list", ...files], { encoding: "utf8" }).trim().split("\n");

/** So many of a list, in its order, picked by the seed. */
function picked(list, count) {
  const draw = chance(Number(seed));
  const kept = list.map((one, at) => [draw(), at]).sort(([a], [b]) => a - b).slice(0, count).map(([, at]) => at);
  return kept.sort((a, b) => a - b).map((at) => list[at]);
}

const linesOf = (name) => {
  const path = `${folder}/mutants.out/${name}.txt`;
  return existsSync(path) ? readFileSync(path, "utf8").split("\n").filter(Boolean) : [];
};

/** Those that do not compile, now and in runs before: a run forgets what the one before it has found so. */
function unviable() {
  const path = `${folder}/unviable.json`;
  const known = new Set([...(existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : []), ...linesOf("unviable")]);
  writeFileSync(path, JSON.stringify([...known]));
  return known;
}

/** Tries what has not been caught yet against some tests. */
function tried(tests) {
  unviable();
  spawnSync("cargo", ["mutants", "--config", `${folder}/picked.toml`, "--output", folder, "--iterate", "--colors", "never", "--no-shuffle", ...files, ...tests.map((test) => `--cargo-arg=${test}`)], { stdio: "inherit" });
  if (!existsSync(`${folder}/mutants.out/outcomes.json`)) throw new Error("cargo-mutants came to nothing: its words are above.");
}

mkdirSync(folder, { recursive: true });
const mutants = picked(all, PICKED);
const exactly = (name) => `^${name.replace(/[.*+?^${}()|[\]\\/]/gu, "\\$&")}$`;
writeFileSync(`${folder}/picked.toml`, `examine_re = ${JSON.stringify(mutants.map(exactly))}\n`);
tried(QUICK);
tried(["--tests"]);

const [missed, slow] = [linesOf("missed"), linesOf("timeout")];
const broken = unviable();
// cargo-mutants matches a few more than were asked for; they count like the rest.
const tries = new Set(["previously_caught", "caught", "missed", "timeout", "unviable"].flatMap(linesOf)).size;
const compiled = tries - broken.size;
const share = (compiled - missed.length) / compiled;
const told = `# Changes that a test minds

${all.length} changes are known, ${tries} of them picked by seed ${seed}. ${broken.size} did not compile. Of ${compiled} that did, ${compiled - missed.length} were caught (${(100 * share).toFixed(1)} %), ${slow.length} of these by taking for ever.

Missed:

${missed.map((name) => `* ${name}`).join("\n")}
`;
writeFileSync(`${folder}.md`, told);
console.log(told);
if (share < LEAST) process.exitCode = 1;
