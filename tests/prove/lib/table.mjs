// What a long check found, as a table that is written and shown.
import { mkdir, writeFile } from "node:fs/promises";
import { dirname } from "node:path";

const line = (cells) => `| ${cells.map((cell) => String(cell).replaceAll("|", "\\|")).join(" | ")} |`;

/** A table in Markdown; `rows` are lists of cells. */
export const table = (heads, rows) => [line(heads), line(heads.map(() => "---")), ...rows.map(line)].join("\n");

/** Writes what was found to `path` and to the screen. */
export async function report(path, ...parts) {
  const text = `${parts.join("\n\n")}\n`;
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, text);
  console.log(text);
}

/** The middle of some figures. */
export const middle = (figures) => [...figures].sort((a, b) => a - b)[figures.length >> 1];
