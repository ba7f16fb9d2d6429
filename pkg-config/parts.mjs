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

/** Pages that show another's question at work. */
const borrowed = { embedding: parts["rope-length"] };

/** The part that answers a question. */
const answering = new Map([...Object.values(parts).map((part) => [part, part]), ["cut-length", "cord"], ["cut-plan", "cord"]]);

const built = (part) => existsSync(fileURLToPath(new URL(`../dist/npm/inline/${part}.js`, import.meta.url)));

function entry(part) {
  if (part === undefined) return "boughline/inline";
  if (built(part)) return `boughline/inline/${part}`;
  // An older dist/ while somebody works on the pages. tests/shipped refuses it.
  console.warn(`dist/npm has no part "${part}", so the whole is taken; pkg-config/build makes the part.`);
  return "boughline/inline";
}

/** What a page's script finds as "boughline/inline": the entry with the page's part inside, or with the whole. */
export const entryOfPage = (page) => entry(new Map(Object.entries({ ...parts, ...borrowed })).get(page));

/** The same for something that asks one question alone. */
export const entryOfQuestion = (question) => entry(answering.get(question));

// `node parts.mjs` lists the parts, one a line, for the build.
if (import.meta.url === pathToFileURL(process.argv[1]).href) console.log(Object.values(parts).join("\n"));
