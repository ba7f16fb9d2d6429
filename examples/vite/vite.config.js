// Bundled before it is served, the package would look for its WASM in the wrong folder; the build needs none of this.
export default { optimizeDeps: { exclude: ["boughline"] } };
