import { carriesPlan, planIn } from "./link.js";

// The pocket edition: all pages in one file. One stands in <main>, each other in a <template>, so that every id is
// there once. The address says which is open; to open another the file is read anew.

/** The page that answers this question, sooner one that is its own than one that answers it too. */
function answering(pages, question) {
  const holding = (form) => pages.find((page) => (page.content ?? page).querySelector(form));
  return holding(`form[data-question="${question}"]`) ?? holding(`form[data-also~="${question}"]`);
}

/**
 * The page that the address asks for: by its name before the plan, by the file that this one stands in for where there
 * is no network, or by the question of the plan.
 */
function askedFor(pages) {
  const called = (name) => pages.find((page) => page.dataset.leaf === name);
  const name = /^#([\w-]+)\//u.exec(location.hash)?.[1];
  if (name !== undefined) return called(name);
  const file = /^https?:/u.test(location.protocol) ? /([\w-]*)(?:\.html)?$/u.exec(location.pathname)[1] : "";
  const question = carriesPlan(location.hash) ? /&(?:amp;)*q=([\w-]+)/u.exec(location.hash)?.[1] : undefined;
  return called(file) ?? answering(pages, question);
}

/** The plan that the file was given, once: a copy saved later has its own, in its boxes. */
function planGiven() {
  const slot = document.querySelector("meta[name=plan]");
  const plan = slot.content;
  slot.content = "";
  return carriesPlan(plan) ? plan : "";
}

/** Puts a fragment into the address without a further entry in the history. */
function readdress(fragment) {
  try {
    history.replaceState(history.state, "", fragment);
  } catch {
    location.replace(fragment); // from disk some browsers refuse the other
  }
}

/** Exchanges what stands in <main> for a page that waits in a template, with its names. */
function exchange(main, template) {
  const nodes = [...main.childNodes];
  main.replaceChildren(...template.content.childNodes);
  template.content.replaceChildren(...nodes);
  for (const name of ["leaf", "title"]) {
    [main.dataset[name], template.dataset[name]] = [template.dataset[name], main.dataset[name]];
  }
}

/** The menus say where one is; every other entry is this file with another page's name. Styles are the page's own. */
function mark({ dataset: { leaf, title } }) {
  document.title = title;
  for (const sheet of document.querySelectorAll("style[data-leaf]")) sheet.media = sheet.dataset.leaf === leaf ? "all" : "not all";
  for (const link of document.querySelectorAll("a[data-leaf]")) {
    const here = link.dataset.leaf === leaf;
    if (here) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
    link.setAttribute("href", here ? "#job" : `#${link.dataset.leaf}/`);
  }
  // A page that is not in this file, and of which no web address is known, is nowhere on this disk.
  for (const link of document.querySelectorAll('nav a[href$=".html"]:not([href^="http"])')) {
    link.parentElement.hidden = !/^https?:/u.test(location.protocol);
  }
}

/** Opens the page that is asked for; `modules` has what starts each. */
export function openPocket(modules) {
  const given = planGiven();
  if (given !== "" && location.hash.length < 2) readdress(`#${given}`);
  const main = document.querySelector("main");
  const pages = [main, ...document.querySelectorAll("template[data-leaf]")];
  const page = askedFor(pages) ?? main;
  if (page !== main) exchange(main, page);
  mark(main);
  readdress(`#${main.dataset.leaf}/${carriesPlan(location.hash) ? planIn(location.hash) : ""}`);
  addEventListener("hashchange", (event) => {
    if ([undefined, main].includes(askedFor(pages))) return;
    event.stopImmediatePropagation(); // the page that is open would take the plan for its own
    scrollTo(0, 0);
    // In another page's place, where there was no network, the network may be back and bring that page.
    if (/^https?:/u.test(location.protocol) && !location.pathname.endsWith("/pocket.html")) location.replace(`pocket.html${location.hash}`);
    else location.reload();
  });
  modules[main.dataset.leaf]();
}
