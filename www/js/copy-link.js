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

/** Hands a link to whatever the device shares with; whoever closes that again has lost nothing. */
async function share(url) {
  try {
    await navigator.share({ title: document.title, url });
  } catch {
    // Closed again, or refused: the other buttons are still there.
  }
}

/**
 * Wires the buttons. `fragment(which)` writes the link, "" where a box cannot be read and null where it failed;
 * `carriesBody()` tells whether anything was said of body or strength.
 */
export function offerLinks(fragment, carriesBody) {
  const offer = async (which) => {
    const written = fragment(which);
    if (written === null) return;
    at("copied").hidden = false;
    for (const id of ["copied-label", "copied-link"]) at(id).hidden = written === "";
    if (written === "") {
      at("copied-text").textContent = "First mend the boxes marked above.";
      return;
    }
    at("copied-text").textContent = "";
    const link = linkHere(written);
    const box = at("copied-link");
    box.value = link.text;
    box.textContent = link.text;
    const done = await copied(link.text);
    const parts = [
      link.whole ? "" : "Part of a link: paste it after the address of any copy of this page.",
      done ? "Copied." : "Copy it from the box.",
      which !== "bodiless" && carriesBody() ? "It carries your weight and strength." : "Your weight and strength, and what else you said of your body, are not in it.",
      which === "short" ? "A later edition that takes other things for granted says that its figures are others." : "",
    ];
    at("copied-text").textContent = parts.filter(Boolean).join(" ");
    if (!done) box.select();
  };
  // Said before anybody copies, and not after.
  at("from-file").hidden = linkHere("").whole;
  for (const [id, which] of Object.entries(BUTTONS)) at(id).addEventListener("click", () => offer(which));

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
}
