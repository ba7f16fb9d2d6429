import { element } from "./element.js";

// What only a page has that came over the web: it can be installed, is kept for where there is no network, and says
// when a newer edition is there. From disk, and where a browser keeps nothing, all else works as well.

const OFFER = "newer-edition";

/** Starts it; `beforeReload` puts the plan into the address, from which the newer page takes it. */
export function overTheWeb(beforeReload) {
  // A saved copy brings along what stood in the page.
  for (const one of document.querySelectorAll(`link[rel=manifest], link[rel=apple-touch-icon], #${OFFER}`)) one.remove();
  if (!/^https?:$/u.test(location.protocol)) return;
  document.head.append(
    element("link", { rel: "manifest", href: "manifest.webmanifest" }),
    element("link", { rel: "apple-touch-icon", href: "icons/maskable-512.png" }));
  // The answer first: what a worker fetches is as much as a page.
  const start = () => keepEditions(beforeReload).catch(() => {});
  if (document.readyState === "complete") start();
  else addEventListener("load", start);
}

/** Registers the worker. Where workers or storage are blocked this rejects. */
async function keepEditions(beforeReload) {
  const workers = navigator.serviceWorker;
  const registration = await workers.register("worker.js", { updateViaCache: "none" });
  let pressed = false;
  const offer = () => offerUpdate(() => {
    pressed = true;
    beforeReload();
    if (registration.waiting) registration.waiting.postMessage("update");
    else location.reload();
  });
  // Without a controller nothing of an older edition is shown.
  const installed = (worker) => worker?.state === "installed" && workers.controller && offer();
  const watch = (worker) => worker?.addEventListener("statechange", () => installed(worker));
  installed(registration.waiting);
  watch(registration.installing);
  registration.addEventListener("updatefound", () => watch(registration.installing));
  // In the tab where nobody pressed it, an update from another is told and not carried out.
  workers.addEventListener("controllerchange", () => (pressed ? location.reload() : offer()));
}

function offerUpdate(update) {
  if (document.getElementById(OFFER)) return;
  const button = element("button", { type: "button" }, "Update");
  button.addEventListener("click", update);
  const words = element("p", { role: "status" });
  document.querySelector("main").before(element("div", { id: OFFER, class: "live newer" }, words, button));
  words.textContent = "A newer edition is here. What this page shows may be of the one before.";
}
