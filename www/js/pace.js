// When to do what while somebody types. No DOM here; the clock can be given.

/**
 * Calls each of `steps` ({ after, run }) once, that many milliseconds after the
 * last `touch`. `finish` runs those still to come now; `stop` forgets them.
 */
export function pace(steps, clock = globalThis) {
  let waiting = new Map();
  const drop = () => {
    for (const timer of waiting.values()) clock.clearTimeout(timer);
    waiting = new Map();
  };
  return {
    stop: drop,
    touch() {
      drop();
      for (const step of steps) {
        waiting.set(step, clock.setTimeout(() => {
          waiting.delete(step);
          step.run();
        }, step.after));
      }
    },
    finish() {
      const rest = steps.filter((step) => waiting.has(step));
      drop();
      for (const step of rest) step.run();
    },
  };
}
