// The crate beside this file, run by cargo: criterion's estimates of every plan.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const manifest = fileURLToPath(new URL("Cargo.toml", import.meta.url));
// Short, since it is run once a round.
const CLOCK = ["--noplot", "--sample-size", "10", "--warm-up-time", "0.2", "--measurement-time", "0.6", "--nresamples", "1000"];

/** Runs every plan and answers with `{ ms, low, high, samples }` of each, by name: the median and its interval of 95 %. */
export function natively(home, names) {
  execFileSync("cargo", ["bench", "--quiet", "--locked", "--manifest-path", manifest, "--", ...CLOCK], {
    env: { ...process.env, CRITERION_HOME: home }, stdio: ["ignore", "pipe", "pipe"],
  });
  const read = (name, file) => JSON.parse(readFileSync(`${home}/${name}/native/new/${file}`, "utf8"));
  return new Map(names.map((name) => {
    const { point_estimate: point, confidence_interval: interval } = read(name, "estimates.json").median;
    const [ms, low, high] = [point, interval.lower_bound, interval.upper_bound].map((nanoseconds) => nanoseconds / 1e6);
    return [name, { ms, low, high, samples: read(name, "benchmark.json").throughput.Elements }];
  }));
}
