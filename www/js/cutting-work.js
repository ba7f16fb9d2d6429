// Going on with a plan in steps that can be stopped. No DOM here.

/** Efforts, a step each; the engine goes on where it stopped. */
export const STEPS = [500, 1500, 4000, 8000, 12000, 16000, 20000];

const PAUSE = 60; // milliseconds between two steps, in which whatever is pressed or typed stops the rest

/** Asks `ask(effort)` step by step until nothing more can change, `stop` is called or another work begins. */
export class CuttingWork {
  constructor(show, later = (run) => setTimeout(run, PAUSE), drop = (timer) => clearTimeout(timer)) {
    this.show = show;
    this.later = later;
    this.drop = drop;
    this.waiting = null;
  }

  /** Begins anew: the first step at once. Answers with its reply. */
  begin(ask) {
    this.stop();
    return this.step(ask, 0);
  }

  step(ask, at) {
    this.waiting = null;
    const reply = ask(STEPS[at]);
    const goesOn = reply.ok && reply.answer.effort.more && at + 1 < STEPS.length;
    this.show(reply, { effort: STEPS[at], most: STEPS.at(-1), goesOn });
    if (goesOn) this.waiting = this.later(() => this.step(ask, at + 1));
    return reply;
  }

  /** Whether there was anything to stop. */
  stop() {
    const worked = this.waiting !== null;
    if (worked) this.drop(this.waiting);
    this.waiting = null;
    return worked;
  }
}
