// The words under a field's label. No DOM here: the build may use it too.

/**
 * What to enter, and what is taken when the box stays empty; for a choice what `chosen` means.
 * Without `chosen` it is the choice that stands by itself.
 */
export function hintText(field, chosen = field.likely) {
  const parts = [field.hint];
  if (field.options !== null) parts.push(field.options.find((option) => option.id === chosen)?.hint ?? "");
  else if (field.likely !== null) parts.push(`Left empty: ${field.likely}.`);
  return parts.filter((part) => part !== "").join(" ");
}
