// The crate beside this file, run by cargo: criterion's estimates of a plan.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const manifest = fileURLToPath(new URL("Cargo.toml", import.meta.url));
// Short, so that the module comes soon after and a busy machine slows both.
const CLOCK = ["--noplot", "--sample-size", "10", "--warm-up-time", "0.2", "--measurement-time", "0.6", "--nresamples", "1000"];

/** Runs one plan and answers with `{ ms, low, high, samples }`: the median and its interval of 95 %. */
export function natively(home, name) {
  execFileSync("cargo", ["bench", "--quiet", "--locked", "--manifest-path", manifest, "--", `^${name}/native$`, ...CLOCK], {
    env: { ...process.env, CRITERION_HOME: home }, stdio: ["ignore", "pipe", "pipe"],
  });
  const read = (file) => JSON.parse(readFileSync(`${home}/${name}/native/new/${file}`, "utf8"));
  const { point_estimate: point, confidence_interval: interval } = read("estimates.json").median;
  const [ms, low, high] = [point, interval.lower_bound, interval.upper_bound].map((nanoseconds) => nanoseconds / 1e6);
  return { ms, low, high, samples: read("benchmark.json").throughput.Elements };
}
