// The declared types against what the library answers: real answers as literals, so that TypeScript
// refuses a key that is missing and a key that is not declared.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { test } from "node:test";
import * as boughline from "boughline";

const climber = { bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3" };
const measured = { ...climber, measuredPull: "400 N", pullTaken: "overhead", pullArms: "two", testMass: "80 kg", testPull: "390 N", backup: "tail-knot" };
const rope = { crotchHeight: "12 m", anchor: "canopy" };
const cord = { cordUse: "distel", ropeDiameter: "11 mm", hitchCord: "8 mm", bodyMass: "80 kg" };
const calls = {
  canIClimb: [[climber], [measured], [{ ...climber, rig: "hand-over-hand" }, { system: "us" }], [{ ...climber, legs: "full", stairs: "yes" }], [{ bodyMass: "" }]],
  advantage: [[{ bodyMass: "80 kg", climbHeight: "11 m" }], [{ ...measured, stature: "1.75 m" }, { system: "us" }, 50], [{ bodyMass: "" }]],
  whatHelps: [[climber], [{ ...measured, stature: "1.75 m" }, { system: "us" }, 100], [{ bodyMass: "" }]],
  feasibilityMap: [[climber], [{ ...measured, stature: "1.75 m" }, { system: "us" }, 5, 4], [{ bodyMass: "" }]],
  loads: [[{ ...climber, anchor: "canopy" }], [{ ...climber, anchor: "base", crotchHeight: "14 m", hitchCord: "8 mm", limbDiameter: "20 cm", species: "white-oak" }, { system: "us" }, 50], [{ bodyMass: "" }]],
  ropeLength: [[rope], [{ ...rope, anchor: "base", rig: "tail-3", hitchHeight: 1.5 }, { system: "us" }], [{ anchor: "" }]],
  cutPlan: [[{ cords: "2~6mm~1.8m,1~7mm~2.1m" }], [{ cords: "30 ~ 6 mm ~ 1.83 m ~ loop", hanks: "any ~ 10 m ~ 20" }, { system: "us" }, 50], [{ cords: "1~6mm~60m" }], [{ cords: "" }]],
  readRows: [["cords", "2~6mm~1.8m~foot%20loop"], ["hanks", "any"]],
  cutLength: [[cord], [{ ...cord, cordUse: "haul-cord", haulCord: "7 mm", rig: "haul-cord-3" }, { system: "us" }], [{ cordUse: "" }]],
  comingDown: [[climber], [{ ...climber, rig: "ground-3", gripRight: "390 N" }, { system: "us" }, 50], [{ ...climber, gripRight: "390 N", hitchCord: "8 mm", ropeDiameter: "11 mm", cordUse: "prusik" }], [{ bodyMass: "" }]],
  rescue: [[{ ...climber, anchor: "canopy" }], [{ ...climber, anchor: "base-lowerable", secondPerson: "rescuer", crotchHeight: "14 m", legs: "none" }, { system: "us" }], [{ bodyMass: "" }]],
  tripSheet: [[{}], [{ ...measured, crotchHeight: "12 m", anchor: "canopy", secondPerson: "rescuer", wayDown: "descend" }, { system: "us" }, 50], [{ bodyMass: "" }]],
  asText: [["rope-length", rope, null, "text"], ["trip-sheet", climber, { system: "us" }, "markdown", "https://example.org/", 50], ["how-far", climber, undefined, "text"]],
  fields: [[], [{ system: "us" }]],
  catalogue: [[]],
  readRig: [["tied tree, hitch upper, hitch climber, turn climber, turn upper carabiner, hand climber"], ["tied trea", { system: "us" }]],
  writeRig: [[[[{ does: "tied", on: "tree", with: "" }]]]],
  rigWords: [[]],
  sources: [[]],
  readLink: [["#v=1&q=can-i-climb&bodyMass=80kg"], ["nonsense"]],
  writeLink: [["can-i-climb", climber]],
  tidy: [["bodyMass", "80"]],
  version: [[]],
};

/** TypeScript's complaints about one file that imports the package. */
function complaints(name, source) {
  const folder = resolve("target/types");
  mkdirSync(folder, { recursive: true });
  const file = `${folder}/${name}.ts`;
  writeFileSync(file, source);
  const flags = ["--strict", "--noEmit", "--skipLibCheck", "false", "--module", "nodenext", "--target", "es2022"];
  const run = spawnSync("tsc", [...flags, file], { encoding: "utf8" });
  rmSync(file);
  return run.stdout;
}
const assigned = (call, answer) => `import type { ${call} } from "boughline";\nexport const it: ReturnType<typeof ${call}> = ${JSON.stringify(answer)};\n`;

test("every function of the package is tried here", () => {
  const functions = Object.keys(boughline).filter((name) => name !== "default").sort();
  assert.deepEqual(functions, Object.keys(calls).sort());
});

test("no function takes or answers just anything", () => {
  const types = readFileSync("dist/npm/boughline.d.ts", "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
  assert.doesNotMatch(types, /\b(?:any|unknown)\b/);
});

test("every answer has exactly the declared keys", () => {
  const lines = Object.entries(calls).flatMap(([call, drafts]) => drafts.map((args, index) => {
    const answer = JSON.stringify(boughline[call](...args));
    return `export const ${call}${index}: ReturnType<typeof b.${call}> = ${answer};\nb.${call}(...(${JSON.stringify(args)} as const));`;
  }));
  assert.equal(complaints("answers", `import * as b from "boughline";\n${lines.join("\n")}\n`), "");
});

test("a key that is missing or not declared fails", () => {
  const [field] = boughline.fields();
  const { noun, ...without } = field;
  assert.match(complaints("missing", assigned("fields", [without])), /Property 'noun' is missing/);
  assert.match(complaints("excess", assigned("fields", [{ ...field, excess: 1 }])), /excess"?' does not exist/);
});

test("a draft of a wrong kind fails", () => {
  for (const value of ["null", "true", "{}"]) {
    const source = `import { canIClimb } from "boughline";\ncanIClimb({ bodyMass: ${value} });\n`;
    assert.match(complaints("draft", source), /error TS2/, value);
  }
});

test("the inline entry has the same types", () => {
  const source = `import * as b from "boughline";\nimport * as i from "boughline/inline";\nexport const same: typeof i.canIClimb = b.canIClimb;\nb.default();\n`;
  assert.equal(complaints("inline", source), "");
});

/** The doc comment of each function, by its name. */
const docs = Object.fromEntries([...readFileSync("dist/npm/boughline.d.ts", "utf8").matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)\(/g)].map(([, doc, name]) => [name, doc]));
const fieldsOf = (words) => [...words.matchAll(/`(\w+)`/g)].map(([, field]) => field);

test("every function is documented with an example that runs", () => {
  assert.deepEqual(Object.keys(docs).sort(), Object.keys(calls).sort());
  for (const [name, doc] of Object.entries(docs)) {
    const example = /@example (.+)/.exec(doc)?.[1];
    assert.ok(example, name);
    const given = new Function("b", `return b.${example}`)(boughline);
    assert.ok(given !== undefined && given.ok !== false, `${name}: ${JSON.stringify(given)}`);
  }
});

test("every question says its units, its sources, and truly what it needs", () => {
  for (const name of ["canIClimb", "whatHelps", "loads", "advantage", "feasibilityMap", "comingDown", "rescue", "ropeLength", "cutLength", "cutPlan"]) {
    assert.match(docs[name], /Units: .*\n[\s\S]*Errors: needed (?:is|are) .*\n[\s\S]*Source: /, name);
    const said = fieldsOf(/Errors: needed (?:is|are) (.*)/.exec(docs[name])[1]);
    const needed = new Set([{}, { rig: "tail-3" }].flatMap((draft) => (boughline[name](draft).errors ?? []).flatMap(({ fields }) => fields)));
    for (const field of needed) assert.ok(said.includes(field), `${name} needs ${field}`);
  }
});
