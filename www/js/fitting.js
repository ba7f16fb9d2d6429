// Which boxes the choices made have a use for. No DOM here: the build checks the mark-up with it.

/** What `FIELD=CHOICE,CHOICE` asks for; `FIELD!=CHOICE,CHOICE` asks for any choice but these. Else null. */
export function conditionOf(text) {
  const read = /^(\w+)(!?)=([\w-]+(?:,[\w-]+)*)$/u.exec(text);
  return read && { field: read[1], but: read[2] === "!", choices: read[3].split(",") };
}

/** Whether a choice meets a condition; "", where nobody has chosen yet, is none of those that are named. */
export function fits({ but, choices }, chosen) {
  return choices.includes(chosen) !== but;
}
