import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";

function counted(log, status, kind) {
  const folder = mkdtempSync(join(tmpdir(), "counts-"));
  writeFileSync(join(folder, "log"), log);
  const said = execFileSync("node", ["pkg-config/counts.mjs", join(folder, "log"), status, kind], { encoding: "utf8" }).trim();
  rmSync(folder, { recursive: true });
  return said;
}

const cargo = "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured\ntest result: FAILED. 3 passed; 2 failed; 0 ignored\n";

test("cargo's closing lines are added up", () => assert.equal(counted(cargo, "101", "tests"), "15 2"));
test("node's closing lines count, in either form", () => {
  assert.equal(counted("ℹ pass 4\nℹ fail 1\nℹ cancelled 1\n", "1", "tests"), "4 2");
  assert.equal(counted("# pass 4\n# fail 0\n# cancelled 0\n", "0", "tests"), "4 0");
});
test("a step that ran no test has failed", () => assert.equal(counted("", "0", "tests"), "0 1"));
test("a step that died before it counted a failure has failed", () => {
  assert.equal(counted("test result: ok. 12 passed; 0 failed; 0 ignored\n", "101", "tests"), "12 1");
});
test("a check counts one", () => {
  assert.equal(counted("", "0", "check"), "1 0");
  assert.equal(counted("anything", "1", "check"), "0 1");
});
