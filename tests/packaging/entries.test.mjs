import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import * as node from "boughline";
import * as inline from "boughline/inline";

const functions = (module) => Object.keys(module).filter((name) => name !== "default").sort();

test("every entry has the same functions", async () => {
  const browser = await import("../../dist/npm/index.js");
  assert.deepEqual(functions(inline), functions(node));
  assert.deepEqual(functions(browser), functions(node));
  assert.ok(functions(node).includes("canIClimb"));
});

test("the entries answer alike", () => {
  assert.deepEqual(inline.fields(), node.fields());
  assert.deepEqual(inline.version(), node.version());
});

test("the browser entry says what to await, fetches once and then answers", async (t) => {
  const browser = await import("../../dist/npm/index.js");
  assert.throws(() => browser.version(), /Await the default export/);
  let fetched = 0;
  t.mock.method(globalThis, "fetch", async (address) => {
    fetched += 1;
    if (fetched === 1) return new Response("", { status: 503 });
    return new Response(readFileSync(address));
  });
  await assert.rejects(browser.default(), /answered 503/);
  await Promise.all([browser.default(), browser.default()]);
  assert.equal(fetched, 2, "a failed fetch may be tried again, one that worked is kept");
  assert.deepEqual(browser.version(), node.version());
});
