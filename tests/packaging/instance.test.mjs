// What calls.js promises when an instance breaks, tried on real instances with one export made to trap.
import assert from "node:assert/strict";
import { test } from "node:test";

const Real = WebAssembly.Instance;

/** A fresh copy of the Node entry whose first `broken` instances trap in `version()`; `made()` counts instances. */
async function libraryWith(broken) {
  let made = 0;
  WebAssembly.Instance = function (module, imports) {
    made += 1;
    const { exports } = new Real(module, imports);
    const trap = () => { throw new WebAssembly.RuntimeError("unreachable"); };
    return { exports: made <= broken ? { ...exports, version: trap } : exports };
  };
  const library = await import(`../../dist/npm/node.js?broken=${broken}`);
  return { library, made: () => made };
}

test("a trap is answered by a fresh instance", async () => {
  const { library, made } = await libraryWith(1);
  assert.ok(library.version());
  assert.equal(made(), 2);
  library.version();
  assert.equal(made(), 2, "the fresh one is kept");
});

test("a call that traps twice throws, and the next call has a fresh instance", async () => {
  const { library, made } = await libraryWith(2);
  assert.throws(() => library.version(), WebAssembly.RuntimeError);
  assert.ok(library.version());
  assert.equal(made(), 3);
});
