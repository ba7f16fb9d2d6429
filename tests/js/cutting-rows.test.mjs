import assert from "node:assert/strict";
import { test } from "node:test";
import { rowOf, textOf, withRow, withWord, withoutRow } from "../../www/js/cutting-rows.js";

const loop = { count: "2", diameter: "6 mm", length: "1.8 m", fibre: "", name: "foot loop" };

test("rows are written a line each, with what is not said left out behind what always stands", () => {
  assert.equal(textOf("cords", [loop, { ...loop, diameter: "", fibre: "nylon", name: "" }]), "2 ~ 6 mm ~ 1.8 m ~ foot loop\n2 ~  ~ 1.8 m ~ nylon\n");
  assert.equal(textOf("hanks", [{ diameter: "any", length: "5 m", fibre: "", price: "0", limit: "1" }]), "any ~ 5 m ~ 0 ~ x1\n");
  assert.equal(textOf("cords", []), "");
});

test("no word of a row parts rows", () => {
  assert.equal(textOf("cords", [{ ...loop, name: "a~b;c\nd" }]), "2 ~ 6 mm ~ 1.8 m ~ a b c d\n");
});

test("a new row begins as thick and of the fibre that the last one is", () => {
  assert.deepEqual(withRow("cords", [{ ...loop, fibre: "aramid" }])[1], { count: "1", diameter: "6 mm", length: "", fibre: "aramid", name: "" });
  assert.equal(withRow("hanks", [])[0].diameter, "any");
});

test("rows are changed and taken away without touching the others", () => {
  const rows = [loop, { ...loop, name: "prusik" }];
  assert.deepEqual(withWord(rows, 1, "name", "haul"), [loop, { ...loop, name: "haul" }]);
  assert.deepEqual(withoutRow(rows, 0), [rows[1]]);
  assert.equal(rows[1].name, "prusik");
});

test("a cord just worked out becomes a row, unless its length or diameter is not known", () => {
  const answer = { figures: [{ id: "cutLength", text: "1.04 m", range: "98 cm to 1.22 m" }] };
  assert.deepEqual(rowOf(answer, "7 mm", "prusik loop"), { count: "1", diameter: "7 mm", length: "1.22 m", name: "prusik loop" });
  const known = { figures: [{ id: "cutLength", text: "1.04 m", range: null }] };
  assert.equal(rowOf(known, "7 mm", "prusik loop").length, "1.04 m");
  assert.equal(rowOf(answer, "", "prusik loop"), null);
  assert.equal(rowOf(null, "7 mm", "prusik loop"), null);
  assert.equal(rowOf({ figures: [] }, "7 mm", "prusik loop"), null);
});
