import assert from "node:assert/strict";
import { test } from "node:test";
import { cordLayout, cordWords } from "../../www/js/cord-layout.js";

const figure = (id, noun, value) => ({ id, noun, value, text: `${Math.round(value * 100)} cm`, range: null });
const piece = (kind, place, noun, value) => ({ kind, place, length: figure(`${place}-${kind}`, noun, value) });
const PIECES = [
  piece("tail", "first", "tail", 0.1), piece("knot", "first", "knot", 0.1), piece("leg", "first", "leg", 0.1),
  piece("coils", "middle", "coils round the rope", 0.32), piece("crossings", "middle", "crossings over the rope", 0.03),
  piece("leg", "second", "other leg", 0.1), piece("knot", "second", "knot of the other end", 0.1), piece("tail", "second", "tail of the other end", 0.1),
];
const answer = (pieces = PIECES, shape = {}) => ({
  pieces,
  total: figure("cutLength", "cord to cut", pieces.reduce((sum, { length }) => sum + length.value, 0)),
  figures: [figure("finishedLength", "finished length", 0.27), figure("freeLegs", "free legs in all", 0.2)],
  shape: { ends: "double-fisherman", closed: true, coils: 3, strands: 2, crossings: 1, legs: 2, eyes: 0, ...shape },
});

test("pieces lie end to end, each as long as it is to scale", () => {
  const { pieces } = cordLayout(answer());
  const scale = (pieces.at(-1).to - pieces[0].from) / 0.95;
  for (const [i, { from, to, kind }] of pieces.entries()) {
    assert.equal(kind, PIECES[i].kind);
    assert.ok(Math.abs(to - from - PIECES[i].length.value * scale) < 1e-9);
    if (i > 0) assert.equal(from, pieces[i - 1].to);
  }
});

test("every piece has its label, clear of the next and inside the picture", () => {
  const short = piece("span", "middle", "between its ends", 50);
  for (const pieces of [PIECES, [...PIECES.slice(0, 2), short, ...PIECES.slice(6)], [short]]) {
    const { labels, height } = cordLayout(answer(pieces));
    assert.deepEqual(labels.map(({ text }) => text), pieces.map(({ length }) => length.text));
    for (const [i, { y }] of labels.entries()) {
      assert.ok(y > 8 && y < height);
      if (i > 0) assert.ok(y - labels[i - 1].y >= 15.99, `${y} after ${labels[i - 1].y}`);
    }
  }
});

test("what comes of it has its coils, and says what they come to", () => {
  const { finished } = cordLayout(answer());
  assert.deepEqual([finished.hitch, finished.turns, finished.crossed, finished.closed], [true, 6, 1, true]);
  assert.deepEqual(finished.notes.map(({ words }) => words), ["3", "20 cm", "27 cm"]);
  const sling = cordLayout(answer(PIECES.filter(({ kind }) => kind !== "coils"), { coils: 0, crossings: 0, closed: false, eyes: 2 })).finished;
  assert.deepEqual([sling.hitch, sling.eyes, sling.notes[0].noun], [false, 2, "all legs"]);
});

test("the words of the drawing name every length", () => {
  const words = cordWords(answer());
  for (const { length } of PIECES) assert.ok(words.includes(`${length.noun} ${length.text}`), words);
  assert.ok(words.endsWith("cord to cut 95 cm."), words);
});
