export * from "./boughline.js";

/** Resolves once the functions can be called: at once in Node, after fetching the WASM in a browser. */
export default function ready(address?: string | URL): Promise<void>;
