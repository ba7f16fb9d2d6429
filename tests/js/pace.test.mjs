import assert from "node:assert/strict";
import { test } from "node:test";
import { pace } from "../../www/js/pace.js";

/** A clock that is moved by hand. */
function handClock() {
  let now = 0;
  let timers = [];
  return {
    setTimeout(run, after) {
      const timer = { run, at: now + after };
      timers.push(timer);
      return timer;
    },
    clearTimeout(timer) {
      timers = timers.filter((one) => one !== timer);
    },
    pass(time) {
      now += time;
      const due = timers.filter((timer) => timer.at <= now).sort((a, b) => a.at - b.at);
      timers = timers.filter((timer) => timer.at > now);
      for (const timer of due) timer.run();
    },
  };
}

function paced() {
  const done = [];
  const clock = handClock();
  const steps = [{ after: 400, run: () => done.push("full") }, { after: 1000, run: () => done.push("said") }];
  return { done, clock, pace: pace(steps, clock) };
}

test("each step runs once, its time after the last touch", () => {
  const { done, clock, pace } = paced();
  pace.touch();
  clock.pass(399);
  pace.touch();
  clock.pass(399);
  assert.deepEqual(done, []);
  clock.pass(1);
  assert.deepEqual(done, ["full"]);
  clock.pass(5000);
  assert.deepEqual(done, ["full", "said"]);
});

test("finishing runs what is still to come and no more", () => {
  const { done, clock, pace } = paced();
  pace.touch();
  clock.pass(500);
  pace.finish();
  assert.deepEqual(done, ["full", "said"]);
  clock.pass(5000);
  assert.deepEqual(done, ["full", "said"]);
});

test("stopping forgets what was to come", () => {
  const { done, clock, pace } = paced();
  pace.touch();
  pace.stop();
  clock.pass(5000);
  assert.deepEqual(done, []);
});
