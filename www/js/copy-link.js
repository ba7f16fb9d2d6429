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

/** Wires both buttons. `fragment(whole)` writes the link, with or without body and strength, "" or null when there is none; `carriesBody()` tells whether there is any. */
export function offerLinks(fragment, carriesBody) {
  const offer = async (whole) => {
    const written = fragment(whole);
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
      whole && carriesBody() ? "It carries your weight and strength." : "Your weight and strength, and what else you said of your body, are not in it.",
    ];
    at("copied-text").textContent = parts.filter(Boolean).join(" ");
    if (!done) box.select();
  };
  // Said before anybody copies, and not after.
  at("from-file").hidden = linkHere("").whole;
  at("copy-link").addEventListener("click", () => offer(true));
  at("copy-link-without").addEventListener("click", () => offer(false));
}

/** A link made earlier no longer says what the form says. */
export function forgetCopied() {
  at("copied").hidden = true;
  at("copied-text").textContent = "";
  at("copied-link").value = "";
  at("copied-link").textContent = "";
}
