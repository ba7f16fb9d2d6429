import { sentenceLinks } from "./places.js";

const TRIAL = "And a trial at knee height, on the rig itself, before you go any higher: it tells more than anything else you can enter.";

/** What is not entered, as links to the boxes for it; a trial comes last, and caps nothing. */
export function showMissing(missing, fields) {
  const place = document.getElementById("can-enter");
  const strokes = fields.get("trialStrokes");
  const untried = strokes?.isEmpty && strokes.isShown ? [{ fields: ["trialStrokes"], message: TRIAL }] : [];
  place.hidden = missing.length === 0;
  sentenceLinks(place.querySelector("ul"), [...missing, ...untried], fields);
}
