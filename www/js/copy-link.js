import { linkText } from "./link.js";

const at = (id) => document.getElementById(id);

async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Wires both buttons. `fragment(whole)` writes the link, with or without body and strength, or null. */
export function offerLinks(fragment) {
  const offer = async (whole) => {
    const written = fragment(whole);
    if (written === null) return;
    const siteAddress = document.querySelector("meta[name=site-address]")?.content ?? "";
    const link = linkText(written, siteAddress, location.href);
    const box = at("copied-link");
    at("copied").hidden = false;
    box.value = link.text;
    box.textContent = link.text;
    const done = await copied(link.text);
    const parts = [
      done ? "Copied." : "Copy it from the box.",
      whole ? "It carries your weight and strength." : "Your weight and strength are not in it.",
      link.whole ? "" : "This copy does not know the site’s address: put this text after the address of any copy of this page.",
    ];
    at("copied-text").textContent = parts.filter(Boolean).join(" ");
    if (!done) box.select();
  };
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
