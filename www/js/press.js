let pressing = false;
let waiting = [];

function released() {
  pressing = false;
  const ready = waiting;
  waiting = [];
  // After the click that follows a release, so that it lands where it was aimed.
  setTimeout(() => ready.forEach((run) => run()), 0);
}

/** Watches for a finger or button held down. */
export function watchPresses(root) {
  root.addEventListener("pointerdown", () => { pressing = true; }, true);
  for (const type of ["pointerup", "pointercancel"]) root.addEventListener(type, released, true);
}

/** Runs now, or once nothing is pressed any more. */
export function afterPress(run) {
  if (pressing) waiting.push(run);
  else run();
}
