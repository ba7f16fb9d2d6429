// Sorting what the engine found wrong. No DOM here.

export const NO_FAULTS = { toEnter: [], toRight: [] };

/**
 * Splits errors into what has not been entered (every field named is empty)
 * and what was entered and cannot be used.
 */
export function sortedFaults(errors, isEmpty) {
  const toEnter = [];
  const toRight = [];
  for (const error of errors) {
    const empty = error.fields.length > 0 && error.fields.every(isEmpty);
    (empty ? toEnter : toRight).push(error);
  }
  return { toEnter, toRight };
}

/** The sentences that belong beside one field. */
export function sentencesFor(id, errors) {
  return errors.filter((error) => error.fields.includes(id)).map((error) => error.message);
}

/** That there is no answer, and why, in a sentence. */
export function faultsText({ toEnter, toRight }) {
  if (toRight.length === 1) return `No answer: ${toRight[0].message}`;
  return toRight.length > 0 ? `No answer: ${toRight.length} things to put right.` : `No answer yet: ${toEnter.length} to enter.`;
}
