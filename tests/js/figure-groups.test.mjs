import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { GROUPS, grouped } from "../../www/js/figure-groups.js";

const ids = GROUPS.flatMap(([, of]) => of);

test("every figure stands under one heading, and is one that the engine has", async () => {
  const published = (await readFile("tests/data/ids.txt", "utf8")).split("\n")
    .filter((line) => line.startsWith("figure ")).map((line) => line.slice("figure ".length));
  assert.equal(new Set(ids).size, ids.length);
  assert.deepEqual(ids.filter((id) => !published.includes(id)), []);
});

test("figures keep their order under a heading, a heading without any is left out, and none gets lost", () => {
  const figures = ["pullNeeded", "handHold", "gain", "chance", "anchorLoad", "of another day"].map((id) => ({ id }));
  assert.deepEqual(grouped(figures).map(([heading, inside]) => [heading, inside.map(({ id }) => id)]), [
    ["A pull, and your strength", ["pullNeeded", "handHold", "chance"]],
    ["Strokes and rope", ["gain"]],
    ["The rig and the anchor", ["anchorLoad", "of another day"]],
  ]);
});
