// Which figures fail their limit. No DOM here.

// A share of what somebody has, and the figure it is a share of.
const SHARES = { armShare: "armPull", handShare: "handHold" };

/** What is said of each figure that fails, by its id: a share above the whole, and what it is a share of. */
export function failingFigures(figures) {
  const over = figures.filter(({ id, value }) => id in SHARES && value > 1);
  return new Map(over.flatMap(({ id }) => [[id, "over the limit"], [SHARES[id], "less than one pull takes"]]));
}
