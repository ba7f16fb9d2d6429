import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";

test("paths and words of the charts and of the rope are made in one place", async () => {
  for (const name of ["chart", "feasibility-map", "rope-drawing"]) {
    const text = await readFile(new URL(`../../www/js/${name}.js`, import.meta.url), "utf8");
    assert.match(text, /from "\.\/svg-parts\.js"/u, name);
    assert.doesNotMatch(text, /svg\("path"/u, name);
  }
});
