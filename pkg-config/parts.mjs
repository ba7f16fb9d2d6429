// Which part of the library a page carries. A part is a cargo feature of the same name, and a module of its own.
import { existsSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";

/** The part a page is for, by the page's file name without its ending. A page that is not here carries the whole. */
export const parts = {
  index: "can-i-climb",
  advantage: "advantage",
  loads: "loads",
  "rope-length": "rope-length",
  cord: "cord",
  "coming-down": "coming-down",
  rescue: "rescue",
};

const built = (part) => existsSync(fileURLToPath(new URL(`../dist/npm/inline/${part}.js`, import.meta.url)));

/** What a page imports for "boughline/inline": the package's entry with the page's part inside, or with the whole. */
export function inlineEntry(page) {
  if (!Object.hasOwn(parts, page)) return "boughline/inline";
  if (built(parts[page])) return `boughline/inline/${parts[page]}`;
  // An older dist/ while somebody works on the pages. tests/shipped refuses such a page.
  console.warn(`${page}: dist/npm has no part "${parts[page]}", so it carries the whole; pkg-config/build makes the part.`);
  return "boughline/inline";
}

// `node parts.mjs` lists the parts, one a line, for the build.
if (import.meta.url === pathToFileURL(process.argv[1]).href) console.log(Object.values(parts).join("\n"));
