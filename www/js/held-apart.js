// The library's module, whose text stands behind the script of a page. The page's policy sees to the script, and the
// script to the text: no number comes from a module of which a letter was lost or spoilt. It is no guard against intent.

/** A sum over the letters of a text (FNV-1a, 32 bits). */
export function sumOf(text) {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193);
  return sum >>> 0;
}

/** The text that comes to this sum; without it nothing starts, and the page says so. */
export function heldApart(sum) {
  const text = document.getElementById("library")?.textContent ?? "";
  if (sumOf(text) !== sum) throw new Error("The library in this page is not as it was written.");
  return text;
}
