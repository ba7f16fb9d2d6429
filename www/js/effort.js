// How much is reckoned when. No DOM here.

export const ROUGH = 100; // samples for a form that was filled all at once: the first answer is what somebody waits for
export const QUICK = 500; // while somebody types
export const FULL = undefined; // once they have stopped: as many as the engine ever takes
export const PAUSE = 60; // milliseconds between two steps, in which whatever is typed stops the rest

/** Samples of a climb, a step each; the engine goes on where it stopped. */
export const CLIMB_STEPS = [4000, 8000, 12000, 16000, 20000];
