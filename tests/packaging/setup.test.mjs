import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";

const run = (command, args, env = process.env) => spawnSync(command, args, { env, encoding: "utf8" });

test("a second set-up has nothing to do and nothing to say", () => {
  const { status, stdout, stderr } = run("pkg-config/setup", []);
  assert.deepEqual({ status, stdout, stderr }, { status: 0, stdout: "", stderr: "" });
});

test("the tools are found without any variable but PATH, and with an empty home", () => {
  const { PATH } = process.env;
  const home = mkdtempSync(join(tmpdir(), "home-"));
  const asked = ["-c", "source pkg-config/environment && cargo --version && wasm-pack --version && wasm-opt --version"];
  for (const env of [{ PATH }, { PATH, HOME: "", CARGO_HOME: "" }, { PATH, HOME: home, CARGO_HOME: join(home, "cargo") }]) {
    const { status, stdout, stderr } = run("bash", asked, env);
    assert.equal(status, 0, stderr);
    assert.match(stdout, /^cargo .*\nwasm-pack .*\nwasm-opt /);
  }
  rmSync(home, { recursive: true });
});

test("a machine without Rust is told what to install", (t) => {
  const env = { PATH: "/usr/bin:/bin" };
  if (run("/bin/bash", ["-c", "command -v cargo"], env).status === 0) return t.skip("this system has a Rust of its own");
  const { status, stderr } = run("/bin/bash", ["pkg-config/setup"], env);
  assert.equal(status, 1);
  assert.match(stderr, /^Install Rust with rustup/);
});

test("a port that is taken is named in one sentence", async () => {
  const other = createServer();
  await new Promise((listening) => other.listen(0, "127.0.0.1", listening));
  const { port } = other.address();
  const { status, stderr } = run("node", ["pkg-config/serve.mjs"], { ...process.env, PORT: String(port) });
  other.close();
  assert.equal(status, 1);
  assert.equal(stderr, `Port ${port} is taken: stop what uses it, or choose another with PORT=8081.\n`);
});

test("a step that does not exist is answered with those that do", () => {
  const { status, stderr } = run("pkg-config/test", ["--only", "nothing"]);
  assert.equal(status, 1);
  assert.match(stderr, /^The steps are: format clippy-native .* budget\.\n$/);
});
