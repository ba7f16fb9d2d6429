import { CHOICE_GROUPS } from "./choice-groups.js";

// Which boxes the choices made have a use for. No DOM here: the build checks the mark-up with it.

/** What one name of a condition stands for: itself, or with `@` every choice of that group. */
function choicesNamed(field, name) {
  return name.startsWith("@") ? CHOICE_GROUPS.get(field)?.get(name.slice(1)) ?? null : [name];
}

/** What `FIELD=CHOICE,@GROUP` asks for; `FIELD!=CHOICE,@GROUP` asks for any choice but these. Else null. */
export function conditionOf(text) {
  const read = /^(\w+)(!?)=(@?[\w-]+(?:,@?[\w-]+)*)$/u.exec(text);
  if (!read) return null;
  const choices = read[3].split(",").map((name) => choicesNamed(read[1], name));
  return choices.includes(null) ? null : { field: read[1], but: read[2] === "!", choices: choices.flat() };
}

/** Whether a choice meets a condition; "", where nobody has chosen yet, is none of those that are named. */
export function fits({ but, choices }, chosen) {
  return choices.includes(chosen) !== but;
}
