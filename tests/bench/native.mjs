// The crate beside this file, run by cargo: its answers, and criterion's estimates of a plan.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const manifest = fileURLToPath(new URL("Cargo.toml", import.meta.url));
// Short, so that the module comes soon after and a busy machine slows both.
const CLOCK = ["--noplot", "--sample-size", "10", "--warm-up-time", "0.2", "--measurement-time", "0.6", "--nresamples", "1000"];

const run = (home, args) => execFileSync("cargo", ["bench", "--quiet", "--locked", "--manifest-path", manifest, "--", ...args], {
  env: { ...process.env, CRITERION_HOME: home }, stdio: ["ignore", "pipe", "pipe"], encoding: "utf8", maxBuffer: 2 ** 26,
});

/** The answer to each line of plans.tsv. */
export const nativeAnswers = (home) => run(home, ["--answers"]).trimEnd().split("\n").map((line) => JSON.parse(line));

/** Runs one plan and answers with `{ ms, low, high }`: the median and its interval of 95 %. */
export function natively(home, name) {
  run(home, [`^${name}/native$`, ...CLOCK]);
  const { median } = JSON.parse(readFileSync(`${home}/${name}/native/new/estimates.json`, "utf8"));
  const { point_estimate: point, confidence_interval: interval } = median;
  const [ms, low, high] = [point, interval.lower_bound, interval.upper_bound].map((nanoseconds) => nanoseconds / 1e6);
  return { ms, low, high };
}
