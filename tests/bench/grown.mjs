// Growth from times: how much larger, how much longer, and in which proportion.

const LEEWAY = 1.25; // judged: of two middles of one run, what noise alone makes of them (1.1 to 1.5)

/** What to call a time that grew so many times while the size grew so many times. */
export function proportion(larger, longer) {
  if (longer > larger * LEEWAY) return "more than in proportion";
  if (longer * LEEWAY < larger) return "less than in proportion";
  return "in proportion";
}

/** Points `{ size, ms }` from the smallest up, each with what it is to the one before; the first has nothing before it. */
export function grown(points) {
  return points.map(({ size, ms }, at) => {
    if (at === 0) return { size, ms, larger: null, longer: null, word: "" };
    const before = points[at - 1];
    const [larger, longer] = [size / before.size, ms / before.ms];
    return { size, ms, larger, longer, word: proportion(larger, longer) };
  });
}
