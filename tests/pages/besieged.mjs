// A page under hostile links: what it does, and whether what it shows is reckoned from what its form says.
import * as boughline from "boughline";
import { draftOf } from "../../www/js/draft.js";

// Samples of the answer that a page shows at once, and of those it goes on to when left alone.
const EFFORTS = [500, 4000, 8000, 12000, 16000, undefined];

/** The library's function for a question, by the name it has in the package. */
const askOf = (question) => boughline[question.replace(/-(\w)/gu, (_, letter) => letter.toUpperCase())];

/** Puts the fragment into the open page's address and answers with what the page then says. Runs in the page. */
async function besiege(fragment) {
  if (fragment !== null) {
    await new Promise((heard) => {
      const late = setTimeout(heard, 300); // the same fragment twice is no change
      addEventListener("hashchange", () => { clearTimeout(late); heard(); }, { once: true });
      location.hash = fragment;
    });
  }
  const text = (selector) => document.querySelector(selector)?.textContent ?? "";
  const form = document.querySelector("form[data-question]");
  const chosen = (name) => form?.elements.namedItem(name)?.value;
  const hidden = document.querySelector("#outcome")?.hidden !== false;
  return {
    question: form?.dataset.question ?? null,
    boxes: [...document.querySelectorAll("form [data-field]")].map((field) => [field.dataset.field, field.querySelector("input, select, textarea").value]),
    carried: JSON.parse(form?.dataset.carried ?? "{}"),
    view: { system: chosen("system") ?? "si", decimal: chosen("decimal") ?? "." },
    shown: hidden ? null : {
      first: text("#first"), second: text("#second"),
      figures: [...document.querySelectorAll("#figures [data-figure]")].map((row) => [row.dataset.figure, row.querySelector(".value").textContent, row.querySelector(".range").textContent]).sort(),
    },
    numbers: [...document.querySelectorAll("#outcome, #numbers")].filter((part) => part.checkVisibility()).map((part) => part.textContent).join(" ").match(/\d/gu)?.length ?? 0,
    // What no text may become: whatever loads, runs, or leads away.
    planted: [...document.querySelectorAll("#pwned, iframe, object, embed, base, video, audio, script[src], img:not([src^='data:'])")].map((one) => one.outerHTML.slice(0, 200))
      .concat([...document.querySelectorAll("a[href]")].filter(({ origin, protocol }) => origin !== location.origin || !/^(https?|file):$/u.test(protocol)).map(({ href }) => href))
      .concat([...document.querySelectorAll("body *")].filter((one) => [...one.attributes].some(({ name }) => name.startsWith("on"))).map((one) => one.outerHTML.slice(0, 200)))
      .concat(document.scripts.length <= 1 ? [] : [`${document.scripts.length} scripts`], globalThis.pwned === undefined && Object.prototype.pwned === undefined ? [] : ["a script ran"]),
  };
}

/** What the library says to what a form says; `null` where that is no answer. */
function reckoned(question, draft, view, effort) {
  const reply = askOf(question)(draft, view, effort);
  if (!reply.ok) return null;
  const { first, second, figures } = reply.answer;
  return { first, second, figures: figures.map(({ id, text, range }) => [id, text, range ?? ""]).sort() };
}

/** A published page, open, with everything noted that it must not do. */
export async function besieged(site, { name }) {
  const faults = [];
  const page = await site.page();
  page.on("dialog", (dialog) => { faults.push(`a dialog: ${dialog.message()}`); dialog.dismiss(); });
  page.on("popup", () => faults.push("a window was opened"));
  page.on("request", (request) => request.url().startsWith(site.url) || faults.push(`asked for ${request.url()}`));
  await page.goto(site.url + name);
  return {
    /** What is wrong with the page after this link; `fresh` opens it as from a bookmark. */
    async after(fragment, fresh) {
      if (fresh) {
        await page.goto("about:blank");
        await page.goto(`${site.url}${name}#${fragment}`, { timeout: 60000 });
      }
      let seen = null;
      for (let put = fresh ? null : fragment, tries = 0; seen === null; put = null, tries += 1) {
        seen = await page.evaluate(besiege, put).catch((error) => {
          // In the pocket edition another question opens the page anew.
          if (tries === 5 || !/context was destroyed/u.test(error.message)) throw error;
          return null;
        });
        if (seen !== null) break;
        await page.waitForTimeout(300);
        await page.waitForLoadState();
      }
      const { question } = seen;
      const found = [...faults.splice(0), ...page.complaints.splice(0), ...seen.planted];
      if (new URL(page.url()).pathname !== `/${name}`) found.push(`left for ${page.url()}`);
      if (question === null || askOf(question) === undefined) return { found, answered: false };
      const likely = Object.fromEntries(boughline.fields(seen.view).filter((row) => row.options && row.likely !== null).map((row) => [row.id, row.likely]));
      const draft = draftOf([...seen.boxes, ...Object.entries(seen.carried)], boughline.tidy, seen.view, likely);
      const right = reckoned(question, draft, seen.view, EFFORTS[0]);
      const shows = (answer) => JSON.stringify(seen.shown) === JSON.stringify(answer);
      if (!shows(right) && !EFFORTS.some((effort) => shows(reckoned(question, draft, seen.view, effort)))) found.push(`shows ${JSON.stringify(seen.shown)} where the form comes to ${JSON.stringify(right)}`);
      if (right === null && seen.numbers > 0) found.push("shows numbers without an answer");
      return { found, answered: right !== null };
    },
    close: () => page.context().close(),
  };
}
