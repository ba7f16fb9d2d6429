import { sentenceLinks } from "./places.js";

/** What is not entered, as links to the boxes for it. */
export function showMissing(missing, fields) {
  const place = document.getElementById("can-enter");
  place.hidden = missing.length === 0;
  sentenceLinks(place.querySelector("ul"), missing, fields);
}
