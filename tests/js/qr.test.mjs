import assert from "node:assert/strict";
import { test } from "node:test";
import jsQR from "jsqr";
import { codePath } from "../../www/js/qr.js";

/** What a reader reads of a code's path, six pixels a module. */
function read({ d, size }) {
  const scale = 6;
  const wide = size * scale;
  const pixels = new Uint8ClampedArray(4 * wide ** 2).fill(255);
  for (const [, x, y, run] of d.matchAll(/M(\d+) (\d+)h(\d+)/g)) {
    for (let row = 0; row < scale; row += 1) {
      const from = (Number(y) * scale + row) * wide + Number(x) * scale;
      for (let at = from; at < from + Number(run) * scale; at += 1) pixels.fill(0, 4 * at, 4 * at + 3);
    }
  }
  return jsQR(pixels, wide, wide)?.data;
}

test("a code says its text to somebody else's reader, short or long", () => {
  for (const fields of [1, 10, 40]) {
    const link = `https://example.org/trip-sheet.html#v=1&q=trip-sheet&f=1&u=si${"&crotchHeight=12.5m".repeat(fields)}`;
    assert.equal(read(codePath(link)), link);
  }
});

test("four modules of white stand round it", () => {
  const { d, size } = codePath("https://example.org/");
  const runs = [...d.matchAll(/M(\d+) (\d+)h(\d+)/g)].map((run) => run.slice(1).map(Number));
  assert.equal(Math.min(...runs.map(([x]) => x)), 4);
  assert.equal(Math.min(...runs.map(([, y]) => y)), 4);
  assert.equal(Math.max(...runs.map(([x, , run]) => x + run)), size - 4);
});

test("a text that no code holds has none", () => {
  assert.equal(codePath("x".repeat(4000)), null);
});
