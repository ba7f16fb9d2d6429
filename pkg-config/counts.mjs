// How many tests a step's log says passed and failed: `node counts.mjs LOG EXIT_STATUS KIND`, KIND being
// "tests" where the log must count them, "check" where the step as a whole is one.
import { readFile } from "node:fs/promises";

const [log, status, kind] = process.argv.slice(2);
const text = (await readFile(log, "utf8")).replace(/\u001b\[[\d;]*m/g, "");
const sum = (pattern) => [...text.matchAll(pattern)].reduce((total, match) => total + Number(match[1]), 0);

let passed = 0;
let failed = 0;
if (kind === "tests") {
  // cargo's closing lines, then those of node's runner
  passed = sum(/^test result: .*? (\d+) passed/gm) + sum(/^(?:#|ℹ) pass (\d+)$/gm);
  failed = sum(/^test result: .*? (\d+) failed/gm) + sum(/^(?:#|ℹ) (?:fail|cancelled) (\d+)$/gm);
  // A step that ends well without a test has tested nothing.
  if (passed + failed === 0) failed = 1;
} else if (status === "0") {
  passed = 1;
}
// A step that did not get as far as counting its failure is one.
if (status !== "0" && failed === 0) failed = 1;
console.log(`${passed} ${failed}`);
