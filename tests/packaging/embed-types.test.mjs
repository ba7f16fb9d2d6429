// The types of the embedded question, as a page written in TypeScript meets them.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { test } from "node:test";
import { QUESTIONS } from "../../www/js/embed-questions.js";

function complaints(name, source) {
  const folder = resolve("target/types");
  mkdirSync(folder, { recursive: true });
  const file = `${folder}/${name}.ts`;
  writeFileSync(file, `import type { Answers } from "../../dist/embed.d.ts";\n${source}`);
  const run = spawnSync("tsc", ["--strict", "--noEmit", "--skipLibCheck", "false", "--allowImportingTsExtensions", "--module", "nodenext", "--target", "es2022", "--lib", "es2022,dom", file], { encoding: "utf8" });
  rmSync(file);
  return run.stdout;
}

test("every question and no other has the type of its answer", () => {
  const names = [...QUESTIONS.keys()].map((name) => JSON.stringify(name)).join(" | ");
  assert.equal(complaints("embed-names", `export const here: keyof Answers extends ${names} ? true : false = true;\nexport const all: ${names} extends keyof Answers ? true : false = true;\n`), "");
});

test("an event tells by its question which answer it brings", () => {
  const listening = (body) => `export type Q = keyof Answers;\nconst element = document.querySelector("boughline-question")!;\nelement.addEventListener("boughline-answer", ({ detail }) => { ${body} });\n`;
  assert.equal(complaints("embed-event", listening('if (detail.question === "rope-length") console.log(detail.answer.buy, element.draft.rig);')), "");
  assert.match(complaints("embed-other", listening('if (detail.question === "rescue") console.log(detail.answer.buy);')), /'buy' does not exist/);
});
