// The library with its WASM inside: ready once imported, in any bundler, from any address.
import { makeCalls } from "./calls.js";

const bytes = Uint8Array.from(atob("WASM_BASE64"), (letter) => letter.charCodeAt(0));
const module = new WebAssembly.Module(bytes);
const calls = makeCalls(() => module);
