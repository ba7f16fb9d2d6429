// Where the numerals of a text are, so that its units can be set smaller. No DOM here.

/** The pieces of a text in order; joined again they are the text. */
export function piecesOf(text) {
  return text
    .split(/(\d(?:[\d.,\u00a0\u202f]*\d)?)/u)
    .map((piece, i) => ({ text: piece, numeral: i % 2 === 1 }))
    .filter((piece) => piece.text !== "");
}
