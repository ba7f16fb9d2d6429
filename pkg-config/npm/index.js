// The library for browsers: fetches its WASM from beside this file when asked to get ready.
import { makeCalls } from "./calls.js";
import { makeGlue } from "./glue.js";

let module = null;
let fetching = null;
const calls = makeCalls(makeGlue, () => {
  if (!module) throw new Error("Await the default export of boughline before calling it.");
  return module;
});

/** Resolves once the functions can be called. However often it is called, the WASM is fetched once. */
export default function ready(address = new URL("boughline_bg.wasm", import.meta.url)) {
  fetching ??= fetched(address).catch((error) => {
    fetching = null; // a failed fetch may be tried again
    throw error;
  });
  return fetching;
}

async function fetched(address) {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} answered ${response.status}.`);
  module = await WebAssembly.compile(await response.arrayBuffer());
}

