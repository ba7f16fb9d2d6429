// Times of several contenders, turn and turn about: a machine that is busy now and then slows them all.

/** The middle of some figures. */
export { middle } from "../prove/lib/table.mjs";

const LEAST = 20; // ms that a turn should take, so that the clock's own grain and a collection of garbage weigh little

/** Milliseconds of so many calls, each. Every reply must be an answer. */
function took(call, times) {
  const start = performance.now();
  for (let time = 0; time < times; time++) {
    const reply = call();
    if (!reply.ok) throw new Error(JSON.stringify(reply.errors));
  }
  return (performance.now() - start) / times;
}

/** For each call of `calls` its times in ms, one a round. */
export function inTurn(calls, rounds) {
  const runs = calls.map((call) => {
    took(call, 1); // compiles what it needs
    const once = took(call, 1);
    return { call, times: Math.max(1, Math.ceil(LEAST / once)), all: [] };
  });
  for (let round = 0; round < rounds; round++) {
    for (const run of runs) run.all.push(took(run.call, run.times));
  }
  return runs.map(({ all }) => all);
}
