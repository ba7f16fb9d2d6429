// Whatever is inside the pages and the package has its licence with it.
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { inside, licences } from "../../pkg-config/licences.mjs";

const written = readFileSync("dist/npm/licences.txt", "utf8");

test("what is written is what is inside today, in the package and beside the pages", async () => {
  assert.equal(written, await licences());
  assert.equal(readFileSync("dist/licences.txt", "utf8"), written);
  const { files } = JSON.parse(readFileSync("dist/npm/package.json", "utf8"));
  assert.ok(files.includes("licences.txt") && readdirSync("dist/npm").includes("LICENSE"));
});

test("no crate and no package is inside without the whole text of its licence", async () => {
  const all = await inside();
  for (const { name, licence, texts } of all) {
    assert.match(licence, /\bMIT\b/, `${name}: its licence has not been thought about`);
    assert.ok(texts.some((text) => /permission\s+notice\s+shall\s+be\s+included/i.test(text)), `${name} has its licence`);
    assert.ok(!licence.includes("Unicode") || texts.some((text) => /UNICODE LICENSE V3/i.test(text)), `${name} has Unicode's`);
  }
});

test("every dependency of the module is there", async () => {
  const names = (await inside()).map(({ name }) => name);
  const manifest = readFileSync("Cargo.toml", "utf8");
  const of = (head) => manifest.split(`\n${head}\n`)[1].split("\n[")[0];
  const direct = [of("[dependencies]"), of('[target.\'cfg(target_arch = "wasm32")\'.dependencies]')].flatMap((part) => [...part.matchAll(/^([\w-]+) = /gm)].map(([, name]) => name));
  assert.ok(direct.length >= 7, direct.join());
  for (const name of direct) assert.ok(names.includes(name), name);
  assert.ok(names.includes("Rust standard library"));
});

test("the page about it all lists them, and the data have theirs", async () => {
  const page = readFileSync("dist/about.html", "utf8");
  for (const { name, version } of await inside()) assert.ok(page.includes(`<li>${name} ${version}: `), name);
  for (const file of readdirSync("tests/data/people").filter((name) => name.endsWith(".csv"))) assert.match(written, new RegExp(`\\* ${file}: .*Licence: .`), file);
});
