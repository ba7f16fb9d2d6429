// The library for Node: reads its WASM from beside this file and is ready once imported.
import { readFileSync } from "node:fs";
import { makeCalls } from "./calls.js";
import { makeGlue } from "./glue.js";

const module = new WebAssembly.Module(readFileSync(new URL("boughline_bg.wasm", import.meta.url)));
const calls = makeCalls(makeGlue, () => module);

/** Here for code that also runs in browsers, where the WASM must first be fetched. */
export default async function ready() {}

