// A module as text, a letter a byte.

/** Letters that take one byte in UTF-8: printing ASCII but for what strings, templates and HTML give a meaning. */
const SHORT = [...Array(95).keys()].map((at) => String.fromCharCode(32 + at)).filter((letter) => !/[\\"'`$<&]/.test(letter));
/** Letters that take two, run from left to right, and are the same in every normal form of Unicode. */
const LONG = [...Array(0x380).keys()].map((at) => String.fromCharCode(0x180 + at))
  .filter((letter) => /[\p{Script=Latin}\p{Script=Cyrillic}]/u.test(letter) && /\p{L}/u.test(letter) && letter.normalize("NFKD") === letter);

/** The letter of each byte, in the order of the bytes: the commonest bytes have the short letters. */
function lettersFor(bytes) {
  const counts = new Uint32Array(256);
  for (const byte of bytes) counts[byte] += 1;
  const common = new Set([...counts.keys()].sort((one, other) => counts[other] - counts[one]).slice(0, SHORT.length));
  const letters = new Map();
  // Text stays as it is.
  for (const byte of common) if (SHORT.includes(String.fromCharCode(byte))) letters.set(byte, String.fromCharCode(byte));
  const short = SHORT.filter((letter) => !letters.has(letter.charCodeAt(0))).values();
  const long = LONG.values();
  for (const byte of counts.keys()) {
    if (!letters.has(byte)) letters.set(byte, (common.has(byte) ? short : long).next().value);
  }
  return [...counts.keys()].map((byte) => letters.get(byte)).join("");
}

/** The letters of all bytes, and the text of these. */
export function lettered(bytes) {
  const letters = lettersFor(bytes);
  return { letters, text: Array.from(bytes, (byte) => letters[byte]).join("") };
}
