// The twin's draws: a generator of 32 bits, and none of what the library draws with.

/** Its state: four words, which the paper starts from. */
let [x, y, z, w] = [123456789, 362436069, 521288629, 88675123];

/**
 * 32 random bits, by xorshift with a period of 2^128 - 1.
 * Source: G. Marsaglia, "Xorshift RNGs", J Stat Softw 8(14), 2003, the generator called xor128 (from memory).
 */
export function bits() {
  const t = x ^ (x << 11);
  [x, y, z] = [y, z, w];
  w = w ^ (w >>> 19) ^ t ^ (t >>> 8);
  return w >>> 0;
}

/** A number between nought and one, neither included. */
const uniform = () => (bits() + 0.5) / 4294967296;

/** A value of a spread, triangular. */
export function triangular([low, likely, high]) {
  const at = uniform() * (high - low);
  return at < likely - low
    ? low + Math.sqrt(at * (likely - low))
    : high - Math.sqrt((high - low - at) * (high - likely));
}

/** Standard normal. Source: G. E. P. Box and M. E. Muller 1958 (from memory). */
export function normal() {
  return Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
