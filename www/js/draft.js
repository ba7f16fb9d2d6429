// What the form says, as the plain object the engine reads. No DOM here.

/**
 * The draft of `[id, text]` pairs. An empty box is left out: empty is never zero.
 * So is a choice that stands where it stands when nobody chooses.
 */
export function draftOf(entries, tidy, view, likely = {}) {
  const draft = {};
  for (const [id, text] of entries) {
    if (text.trim() !== "" && text !== likely[id]) draft[id] = tidy(id, text, view);
  }
  return draft;
}

/** The draft without what is said of somebody's body and strength. */
export function withoutPrivate(draft, fields) {
  const hidden = new Set(fields.filter((field) => field.private).map((field) => field.id));
  return Object.fromEntries(Object.entries(draft).filter(([id]) => !hidden.has(id)));
}

/** Whether a draft says nothing. */
export const saysNothing = (draft) => Object.keys(draft).length === 0;

/** Whether two drafts say the same, in whatever order. */
export function sameDraft(one, other) {
  const ids = Object.keys(one);
  return ids.length === Object.keys(other).length && ids.every((id) => one[id] === other[id]);
}
