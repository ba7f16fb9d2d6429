import { passOn } from "./along.js";
import { copied } from "./copy-link.js";
import { defineQuestion } from "./embed-element.js";
import { setText } from "./element.js";
import * as engine from "./engine.js";
import { reveal } from "./fail-safe.js";
import { keepAddress } from "./places.js";

// The page about embedding: the element at work, and the snippet with this site's address in it.

const PLACEHOLDER = "https://boughline.example/";
const at = (id) => document.getElementById(id);

/** Where this site is; "" for a copy on disk that does not know. */
function siteHere() {
  const published = document.querySelector("meta[name=site-address]").content.trim();
  if (published !== "") return published.replace(/\/?$/u, "/");
  return /^https?:/u.test(location.href) ? new URL(".", location.href).href : "";
}

function nameSite(site) {
  if (site === "") return;
  at("address-unknown").hidden = true;
  for (const code of document.querySelectorAll("pre code")) {
    setText(code, code.textContent.replaceAll(PLACEHOLDER, site).replaceAll(PLACEHOLDER.slice(0, -1), new URL(site).origin));
  }
}

async function copySnippet() {
  const done = await copied(at("snippet").textContent);
  if (!done) getSelection().selectAllChildren(at("snippet"));
  setText(at("copied-snippet"), done ? "Copied." : "Marked above: copy it from there.");
}

keepAddress(document);
nameSite(siteHere());
at("copy-snippet").addEventListener("click", copySnippet);
document.addEventListener("boughline-answer", ({ type, detail }) => setText(at("heard"), `${type}: ${detail.answer.first}`));
document.addEventListener("boughline-errors", ({ type, detail }) => setText(at("heard"), `${type}: ${detail.errors.map(({ message }) => message).join(" ")}`));
defineQuestion({
  bring: async () => ({ ...engine, ask: engine.ropeLength }),
  site: (page) => new URL(page, document.baseURI).href.replace(/#.*$/su, ""),
});
passOn();
reveal();
