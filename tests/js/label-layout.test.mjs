import assert from "node:assert/strict";
import { test } from "node:test";
import { chartLayout } from "../../www/js/chart-layout.js";
import { stacked, wrapped } from "../../www/js/label-layout.js";
import { chance } from "../lib/chance.mjs";

test("labels keep their order and their distance, between ceiling and floor", () => {
  for (const wanted of [[10, 11, 12], [258, 259, 260, 200], [50], [3, 3, 3, 3], [-40, 400]]) {
    const tops = stacked(wanted.map((top) => ({ top, height: 11 })), 0, 260);
    const sorted = [...tops].sort((a, b) => a - b);
    assert.ok(sorted.every((top, i) => i === 0 || top - sorted[i - 1] >= 13 - 1e-9), `${wanted}: ${tops}`);
    assert.ok(sorted[0] >= 0 && sorted.at(-1) + 11 <= 260 + 1e-9, `${wanted}: ${tops}`);
    for (const [i, a] of wanted.entries()) for (const [j, b] of wanted.entries()) if (a < b) assert.ok(tops[i] < tops[j]);
  }
  assert.deepEqual(stacked([{ top: 20, height: 10 }, { top: 80, height: 10 }], 0, 260), [20, 80], "whoever has room stays");
});

test("more labels than there is room for stay between ceiling and floor, evenly", () => {
  const tops = stacked(Array.from({ length: 40 }, (_, i) => ({ top: i, height: 11 })), 20, 260);
  assert.ok(Math.min(...tops) > 20 - 1e-9 && Math.max(...tops) < 260 && new Set(tops.map((top) => top.toFixed(3))).size === 40);
});

test("a long name is broken between words", () => {
  assert.deepEqual(wrapped("what the rope holds", 80, 10), ["what the rope", "holds"]);
  assert.deepEqual(wrapped("unbreakablelongword x", 20, 10), ["unbreakablelongword", "x"]);
});

function randomChart(random) {
  const within = (least, most) => least + random() * (most - least);
  const count = (most) => Math.floor(within(0, most + 1));
  const noun = (most) => "w".repeat(3 + count(6)) + " word".repeat(count(Math.floor(most / 5)));
  const many = (most, make) => Array.from({ length: count(most) }, make);
  const [x, y] = [[1, 200], [1, 20000]].map(([low, high]) => {
    const least = random() < 0.5 ? 0 : within(0, low);
    return { noun: noun(20), unit: "kN", least, most: least + within(low, high) };
  });
  // Half of them crowded: all lines end, and all marks stand, within a hair of each other.
  const middle = random();
  const crowded = random() < 0.5;
  const height = () => y.least + (crowded ? middle + (1 - middle) * 0.02 * random() : random()) * (y.most - y.least);
  return {
    noun: "", text: "", x, y,
    lines: many(14, (_, i) => ({ id: `${i}`, noun: "", points: [{ x: x.least, y: y.least }, { x: x.most, y: height() }] })),
    bands: many(2, () => ({ noun: noun(40), low: y.least, high: height() })),
    marks: many(3, () => ({ noun: noun(40), y: height() })),
    you: random() < 0.3 ? null : within(x.least, x.most),
  };
}

test("in 500 random charts no words lie on other words, and all are inside the drawing", () => {
  const random = chance(7);
  for (let trial = 0; trial < 500; trial += 1) {
    const chart = randomChart(random);
    const layout = chartLayout(chart, undefined, trial % 2 ? 300 : 420); // on a phone and elsewhere
    const all = [...layout.axes, ...layout.names.flatMap(({ labels }) => labels), ...layout.ends.map(({ letter }) => letter), layout.youWord].filter(Boolean);
    for (const [i, { text, box }] of all.entries()) {
      assert.ok(box.left >= 0 && box.right <= layout.width && box.top >= 0 && box.bottom <= layout.height, `${trial}: ${text} ${JSON.stringify(box)}`);
      for (const other of all.slice(i + 1)) {
        const apart = box.right <= other.box.left || other.box.right <= box.left || box.bottom <= other.box.top || other.box.bottom <= box.top;
        assert.ok(apart, `${trial}: ${text} ${JSON.stringify(box)} / ${other.text} ${JSON.stringify(other.box)}`);
      }
    }
  }
});

test("a letter or name that had to move has a thin line to its place", () => {
  const x = { noun: "", unit: "", least: 0, most: 100 };
  const flat = (id) => ({ id, noun: id, points: [{ x: 0, y: 0 }, { x: 100, y: 50 }] });
  const { ends, names } = chartLayout({
    x, y: x, lines: ["one", "two", "three"].map(flat), bands: [], marks: [{ noun: "label", y: 50 }, { noun: "half", y: 50.5 }], you: null,
  });
  assert.equal(new Set(ends.map(({ lead }) => lead[0].y)).size, 1, "all end in one place");
  assert.equal(new Set(ends.map(({ lead }) => lead[1].y)).size, 3);
  assert.ok(names.some(({ lead }) => lead !== null));
});
