// A rig of one's own as rows: ropes of stops. No DOM here; every function answers with new rows.

/** A stop to begin with. */
export const NEW_STOP = { does: "turn", on: "climber", with: "" };

/** A rope to begin with: tied above, held below. */
export const NEW_ROPE = [{ does: "tied", on: "tree", with: "" }, { does: "hitch", on: "climber", with: "" }];

const ropeWith = (ropes, rope, change) => ropes.map((stops, at) => (at === rope ? change(stops) : stops));

/** The rows with one word of a stop changed. */
export function withWord(ropes, rope, stop, key, word) {
  return ropeWith(ropes, rope, (stops) => stops.map((one, at) => (at === stop ? { ...one, [key]: word } : one)));
}

/** The rows with a new stop at the end of a rope, before its last where that is a hand: rope beyond a hand is loose. */
export function withStop(ropes, rope) {
  return ropeWith(ropes, rope, (stops) => stops.at(-1)?.does === "hand"
    ? [...stops.slice(0, -1), { ...NEW_STOP }, stops.at(-1)]
    : [...stops, { ...NEW_STOP }]);
}

/** The rows without a stop; a rope that had no other goes with it. */
export function withoutStop(ropes, rope, stop) {
  return ropeWith(ropes, rope, (stops) => stops.filter((_, at) => at !== stop)).filter((stops) => stops.length > 0);
}

/** The rows with a stop moved along its rope by `by`; the same rows where it stands at that end. */
export function withMoved(ropes, rope, stop, by) {
  const to = stop + by;
  return ropeWith(ropes, rope, (stops) => {
    if (to < 0 || to >= stops.length) return stops;
    const moved = [...stops];
    [moved[stop], moved[to]] = [moved[to], moved[stop]];
    return moved;
  });
}

/** The rows with one more rope. */
export function withRope(ropes) {
  return [...ropes, NEW_ROPE.map((stop) => ({ ...stop }))];
}
