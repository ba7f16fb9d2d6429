import assert from "node:assert/strict";
import { test } from "node:test";
import { failingFigures } from "../../www/js/failing-figures.js";

test("a share above the whole fails, and so does what it is a share of", () => {
  const figures = [{ id: "armPull", value: 300 }, { id: "armShare", value: 1.2 }, { id: "handHold", value: 900 }, { id: "handShare", value: 1 }, { id: "strokes", value: 60 }];
  assert.deepEqual([...failingFigures(figures).keys()], ["armShare", "armPull"]);
  assert.equal(failingFigures([{ id: "armShare", value: null }]).size, 0);
});
