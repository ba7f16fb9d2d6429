import { linkText } from "./link.js";

const at = (id) => document.getElementById(id);

/** Whether the text was copied; where a browser refuses, a box shows it. */
export async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** The link from here: whole over http and where the site's address is known, else the part behind `#`. */
export function linkHere(fragment) {
  const siteAddress = document.querySelector("meta[name=site-address]")?.content ?? "";
  return linkText(fragment, siteAddress, location.href);
}

// What each button makes of the plan: see PlanAddress.fragment.
const BUTTONS = { "copy-link": "whole", "copy-link-short": "short", "copy-link-without": "bodiless" };

const LATER = "A later edition that takes other things for granted says that its figures are others.";

/** Hands a link to whatever the device shares with; whoever closes that again has lost nothing. */
async function share(url) {
  try {
    await navigator.share({ title: document.title, url });
  } catch {
    // Closed again, or refused: the other buttons are still there.
  }
}

/** Shows a text in the box and copies it; says what is `first`, whether it worked, and what `then` tells. */
export async function hand(text, { first = "", then = [] }) {
  at("copied").hidden = false;
  for (const id of ["copied-label", "copied-link"]) at(id).hidden = text === "";
  const box = at("copied-link");
  box.value = text;
  box.textContent = text;
  at("copied-text").textContent = "";
  const done = text !== "" && await copied(text);
  const told = text === "" ? "" : done ? "Copied." : "Copy it from the box.";
  at("copied-text").textContent = [first, told, ...then].filter(Boolean).join(" ");
  if (text !== "" && !done) box.select();
}

/** The same with the link to a fragment. */
export function handLink(fragment, then = []) {
  const link = linkHere(fragment);
  return hand(link.text, { first: link.whole ? "" : "Part of a link: paste it after the address of any copy of this page.", then });
}

/**
 * Wires the buttons. `fragment(which)` writes the link, "" where a box cannot be read and null where it failed;
 * `carriesBody()` tells whether anything was said of body or strength; `textWith(link)` is the answer as text, null
 * while there is none.
 */
export function offerLinks(fragment, carriesBody, textWith) {
  const carried = (bodiless) => (!bodiless && carriesBody()
    ? "It carries your weight and strength."
    : "Your weight and strength, and what else you said of your body, are not in it.");
  const offer = (which) => {
    const written = fragment(which);
    if (written === "") hand("", { first: "First mend the boxes marked above." });
    else if (written !== null) handLink(written, [carried(which === "bodiless"), which === "short" ? LATER : ""]);
  };
  const offerText = () => {
    const written = fragment("short");
    const text = written ? textWith(linkHere(written).text) : null;
    if (text === null) hand("", { first: "There is no answer to copy just now." });
    else hand(text, { then: [carried(false)] });
  };
  // Said before anybody copies, and not after.
  at("from-file").hidden = linkHere("").whole;
  for (const [id, which] of Object.entries(BUTTONS)) at(id).addEventListener("click", () => offer(which));

  at("copy-answer").addEventListener("click", offerText);
  at("share-link").hidden = !("share" in navigator) || !linkHere("").whole;
  at("share-link").addEventListener("click", () => {
    const written = fragment("whole");
    if (written) share(linkHere(written).text);
    else offer("whole");
  });
}

/** A link made earlier no longer says what the form says. */
export function forgetCopied() {
  at("copied").hidden = true;
  at("copied-text").textContent = "";
  at("copied-link").value = "";
  at("copied-link").textContent = "";
  at("kept").textContent = ""; // so is a file that was handed over
}
