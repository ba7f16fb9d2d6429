// What travels, after brotli, held to what was asked; and what the modules that are over it are made of.
import { readFileSync, readdirSync } from "node:fs";
import { brotliCompressSync } from "node:zlib";
import { parts } from "../../pkg-config/parts.mjs";
import { wasmInside } from "../shipped/shipped.mjs";

const kilobytes = (bytes) => brotliCompressSync(bytes).length / 1024;

/** The bodies of a module's sections, by their number. */
function sections(module) {
  let at = 8; // behind the magic number and the version
  const number = () => {
    for (let value = 0, shift = 0; ; shift += 7) {
      const byte = module[at++];
      value += (byte & 127) * 2 ** shift;
      if (byte < 128) return value;
    }
  };
  const found = new Map();
  while (at < module.length) {
    const id = module[at++];
    const length = number();
    found.set(id, module.subarray(at, at + length));
    at += length;
  }
  return found;
}

/** A page's module: KB in all, and `module` of its functions and of its texts and tables. */
function moduleIn(file) {
  const module = wasmInside(file);
  const [CODE, DATA] = [10, 11];
  const found = sections(module);
  return { kb: kilobytes(module), module: { code: kilobytes(found.get(CODE)), data: kilobytes(found.get(DATA)) } };
}

/** `{ what, most, sizes }` of each limit that was asked for: `sizes` are `{ name, kb }`, with the module where that explains it. */
export function sizes() {
  const found = (folder, pattern) => readdirSync(folder).filter((name) => pattern.test(name)).sort();
  const weighed = (names) => names.map((name) => ({ name, kb: kilobytes(readFileSync(`dist/${name}`)) }));
  const pages = found("dist", /\.html$/u).filter((name) => name !== "pocket.html");
  const modules = Object.keys(parts).map((page) => ({ name: `the module of ${page}.html`, ...moduleIn(`dist/${page}.html`) }));
  // All of these carry the same.
  const whole = moduleIn("dist/pocket.html").module;
  return [
    { what: "a question’s module", most: 100, sizes: modules },
    { what: "a page", most: 170, sizes: weighed(pages).map((one) => ({ ...one, module: one.name.slice(0, -5) in parts ? undefined : whole })) },
    { what: "the pocket edition", most: 220, sizes: weighed(["pocket.html"]).map((one) => ({ ...one, module: whole })) },
    { what: "an embedded question", most: 170, sizes: weighed(found("dist", /^embed-.*\.js$/u)) },
  ];
}
