// A page carries one part of the library: every function that its modules call must be in it.
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { resolve } from "node:path";
import { test } from "node:test";
import { build } from "esbuild";
import * as whole from "boughline/inline";
import { entryOfPage, parts } from "../../pkg-config/parts.mjs";

const text = (path) => readFileSync(path, "utf8");

/** The functions of the library that a page's modules name, and those that other pages' modules name. */
async function calledOn(script) {
  const { metafile } = await build({
    entryPoints: [resolve("www", script)],
    external: ["boughline/*"],
    bundle: true,
    metafile: true,
    write: false,
    outdir: "unwritten",
    loader: { ".svg": "dataurl", ".png": "dataurl", ".html": "text" },
  });
  const modules = Object.keys(metafile.inputs).filter((path) => path.endsWith(".js"));
  return new Set(modules.flatMap((path) => [...text(path).matchAll(/\bengine\.(\w+)/gu)].map(([, name]) => name)).filter((name) => name !== "js"));
}

/** The script of each page that has one. */
const scripts = Object.fromEntries(readdirSync("www").filter((name) => name.endsWith(".html"))
  .map((name) => [name.slice(0, -5), /src="(js\/[^"]+)"/u.exec(text(`www/${name}`))?.[1]]).filter(([, script]) => script));

for (const [page, script] of Object.entries(scripts)) {
  test(`${page} calls only what its part has`, async () => {
    const has = Object.keys(await import(entryOfPage(page)));
    const called = [...(await calledOn(script))];
    // An embedded question calls what it brings `ask`: entryOfQuestion chose its part.
    assert.ok(called.every((name) => name in whole || name === "ask"), called.join());
    assert.deepEqual(called.filter((name) => name !== "ask" && !has.includes(name)), []);
  });
}

test("each part is a feature that the crate has by default, and each such feature a part", () => {
  const [, names] = /^default = \[(.*)\]$/mu.exec(text("Cargo.toml"));
  assert.deepEqual(names.match(/[\w-]+/gu).sort(), [...new Set(Object.values(parts))].sort());
});

test("every part's page is there, and its entry answers what the whole answers", async () => {
  for (const [page, part] of Object.entries(parts)) {
    assert.ok(scripts[page], page);
    const own = await import(`boughline/inline/${part}`);
    for (const name of Object.keys(own)) assert.equal(typeof whole[name], "function", name);
    assert.ok(Object.keys(own).length < Object.keys(whole).length, `${part} is not a part`);
    assert.deepEqual(own.version(), whole.version());
    assert.deepEqual(own.fields(), whole.fields());
  }
});
