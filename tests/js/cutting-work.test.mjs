import assert from "node:assert/strict";
import { test } from "node:test";
import { CuttingWork, STEPS } from "../../www/js/cutting-work.js";

/** Work by hand: `turn()` runs what waits. */
function byHand() {
  const shown = [];
  let waiting = null;
  const work = new CuttingWork((reply, state) => shown.push([reply.answer?.effort.samples, state.effort, state.goesOn]), (run) => (waiting = run), () => (waiting = null));
  return { work, shown, turn: () => { const run = waiting; waiting = null; run?.(); }, waits: () => waiting !== null };
}
const upTo = (enough) => (effort) => ({ ok: true, answer: { effort: { samples: effort, more: effort < enough } } });

test("it goes on step by step until nothing more can change", () => {
  const { work, shown, turn, waits } = byHand();
  work.begin(upTo(STEPS[2]));
  assert.ok(waits());
  turn();
  turn();
  assert.ok(!waits());
  assert.deepEqual(shown, [[STEPS[0], STEPS[0], true], [STEPS[1], STEPS[1], true], [STEPS[2], STEPS[2], false]]);
});

test("stopped, it shows no more, and says whether there was anything to stop", () => {
  const { work, shown, turn } = byHand();
  work.begin(upTo(Infinity));
  assert.equal(work.stop(), true);
  assert.equal(work.stop(), false);
  turn();
  assert.equal(shown.length, 1);
});

test("it ends with the last step, whatever could still change", () => {
  const { work, shown, turn, waits } = byHand();
  work.begin(upTo(Infinity));
  for (let i = 0; i < 20; i += 1) turn();
  assert.equal(shown.length, STEPS.length);
  assert.ok(!waits());
  assert.equal(shown.at(-1)[2], false);
});

test("what begins anew drops what waited, and an error is shown and not gone on with", () => {
  const { work, shown, waits } = byHand();
  work.begin(upTo(Infinity));
  work.begin(() => ({ ok: false, errors: [] }));
  assert.ok(!waits());
  assert.deepEqual(shown.at(-1), [undefined, STEPS[0], false]);
});
