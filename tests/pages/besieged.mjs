// A page under hostile links: what it does, and whether what it shows is reckoned from what its form says.
import * as boughline from "boughline";
import { sentencesOf } from "../../www/js/answer-words.js";
import { CLIMB_STEPS, FULL, QUICK, ROUGH } from "../../www/js/effort.js";
import { draftOf } from "../../www/js/draft.js";
import { planIn } from "../../www/js/link.js";
import { inTime } from "./in-time.mjs";
import { askOf, strayInComparison, strayOnSheet } from "./stray.mjs";

// Samples of the answer that a page shows at once, and of those it goes on to when left alone.
const EFFORTS = [ROUGH, QUICK, ...CLIMB_STEPS, FULL];

/** Puts the fragment into the open page's address and answers with what the page then says. Runs in the page. */
async function besiege(fragment) {
  const element = document.querySelector("boughline-question");
  if (fragment !== null) {
    await new Promise((heard) => {
      addEventListener("hashchange", heard, { once: true });
      setTimeout(() => { removeEventListener("hashchange", heard); heard(); }, 300); // the same fragment twice is no change
      location.hash = fragment;
    });
    // An element takes its plan from its page.
    element?.setAttribute("plan", fragment);
    await null; // which it hears once this script rests
  }
  // A first answer has its numbers once its words are on the screen.
  await new Promise((shown) => { requestAnimationFrame(() => setTimeout(shown)); });
  const place = element?.shadowRoot ?? document;
  const all = (selector) => [...place.querySelectorAll(selector)];
  const everywhere = (selector) => [...document.querySelectorAll(selector), ...(element ? all(selector) : [])];
  const text = (selector) => place.querySelector(selector)?.textContent ?? "";
  const seen = (selector) => all(selector).filter((part) => part.checkVisibility()).map((part) => part.innerText).join("\n");
  const form = place.querySelector("form[data-question], #two-plans");
  const chosen = (name) => form?.elements.namedItem(name)?.value;
  const hidden = place.querySelector("#outcome")?.hidden !== false;
  return {
    question: form?.dataset.question ?? null,
    boxes: all("form [data-field]").map((field) => [field.dataset.field, field.querySelector("input, select, textarea").value]),
    carried: JSON.parse(form?.dataset.carried ?? "{}"),
    view: { system: chosen("system") ?? "si", decimal: chosen("decimal") ?? "." },
    shown: hidden ? null : {
      first: text(element ? "#headline" : "#first"), second: text(element ? "#sentences" : "#second"),
      figures: all("#figures [data-figure]").map((row) => [row.dataset.figure, row.querySelector(".value").textContent, row.querySelector(".range").textContent]).sort(),
    },
    numbers: seen("#outcome, #numbers").match(/\d/gu)?.length ?? 0,
    // What the page passes on just now, where somebody asked it to.
    link: document.querySelector("#copied:not([hidden]) #copied-link:not([hidden])")?.value ?? "",
    sheet: place.querySelector("#paper") && {
      sections: all("#paper [data-section]").filter((part) => part.checkVisibility()).map((part) => [part.dataset.section, part.innerText]),
      link: text("#sheet-link"),
    },
    comparison: place.querySelector("#two-plans") && {
      links: all("#two-plans textarea").map(({ value }) => value),
      question: place.querySelector("#question").value,
      sides: ["first", "second"].map((side, i) => seen(`#${side}-plan, #comparison tbody tr > :nth-child(${i + 2})`)),
      cautions: seen("#cautions"),
    },
    // What no text may become: whatever loads, runs, or leads away.
    planted: everywhere("#pwned, iframe, object, embed, base, video, audio, script[src], img:not([src^='data:'])").map((one) => one.outerHTML.slice(0, 200))
      .concat(everywhere("a[href]").filter(({ origin, protocol }) => origin !== location.origin || !/^(https?|file):$/u.test(protocol)).map(({ href }) => href))
      .concat(everywhere("body *, .sheet *").filter((one) => [...one.attributes].some(({ name }) => name.startsWith("on"))).map((one) => one.outerHTML.slice(0, 200)))
      .concat([...document.scripts].filter(({ id }) => id !== "library").length <= 1 ? [] : [`${document.scripts.length} scripts`], globalThis.pwned === undefined && Object.prototype.pwned === undefined ? [] : ["a script ran"]),
  };
}

/** What the library says to what a form says, in the page's words; `null` where that is no answer. */
function reckoned(question, draft, view, effort, embedded) {
  const reply = askOf(question)(draft, view, effort);
  if (!reply.ok) return null;
  const { headline, sentences } = sentencesOf(reply.answer);
  const { first, second } = embedded ? { first: headline, second: sentences.join("") } : reply.answer;
  return { first, second, figures: reply.answer.figures.map(({ id, text, range }) => [id, text, range ?? ""]).sort() };
}

// What a page asks beside its form's question: it says nothing while either has a box to mend.
const OTHER = { "cut-length": "cut-plan" };

/** Whether a question refuses something that was said. */
function isRefused(question, draft, view) {
  const { errors = [] } = question ? askOf(question)(draft, view, ROUGH) : {};
  return errors.some(({ fields }) => fields.some((id) => id in draft));
}

/** What a page shows that its form does not come to at any of its efforts, as `faults`, whether it is an answer, and whether its own link came to it. */
function misshown(seen, embedded) {
  const { question, view, comparison, sheet } = seen;
  const atBest = (faultsAt) => {
    const faults = faultsAt(EFFORTS[0]);
    return faults.length === 0 || EFFORTS.some((effort) => faultsAt(effort).length === 0) ? [] : faults;
  };
  if (comparison) {
    return { faults: atBest((effort) => strayInComparison(comparison, view, effort)), answered: comparison.sides.some((text) => /\d/u.test(text)) };
  }
  if (question === null) return { faults: [], answered: false };
  const likely = Object.fromEntries(boughline.fields(view).filter((row) => row.options && row.likely !== null).map((row) => [row.id, row.likely]));
  const said = draftOf([...seen.boxes, ...Object.entries(seen.carried)], boughline.tidy, view, likely);
  const passedOn = seen.link === "" ? null : boughline.readLink(planIn(seen.link)).draft;
  const written = (draft) => boughline.writeLink(question, draft, view);
  if (passedOn && written(passedOn) !== written(said)) return { faults: [`passes on ${seen.link}`], answered: false };
  const draft = passedOn ?? said;
  if (sheet) {
    const answered = sheet.sections.length > 0;
    return { faults: atBest((effort) => strayOnSheet(sheet, draft, view, effort)), answered, linked: answered };
  }
  if (seen.shown === null && seen.numbers === 0 && isRefused(OTHER[question], draft, view)) return { faults: [], answered: false };
  const right = reckoned(question, draft, view, EFFORTS[0], embedded);
  const answer = (effort) => (effort === EFFORTS[0] ? right : reckoned(question, draft, view, effort, embedded));
  return {
    faults: [
      ...atBest((effort) => (JSON.stringify(seen.shown) === JSON.stringify(answer(effort)) ? [] : [`shows ${JSON.stringify(seen.shown)} where the form comes to ${JSON.stringify(right)}`])),
      ...(right === null && seen.numbers > 0 ? ["shows numbers without an answer"] : []),
    ],
    answered: right !== null,
    linked: passedOn !== null,
  };
}

/** What a function says in a page, asked `again` where another question opens the page anew, as in the pocket edition. */
async function asked(page, run, first, again = first) {
  for (let tries = 0; ; tries += 1) {
    try {
      return await inTime(page.evaluate(run, tries === 0 ? first : again));
    } catch (error) {
      if (tries === 5 || !/context was destroyed/u.test(error.message)) throw error;
      await page.waitForTimeout(300);
      await page.waitForLoadState();
    }
  }
}

/** A published page, open, with everything noted that it must not do. */
export async function besieged(site, { name }) {
  const faults = [];
  const page = await site.page();
  page.on("dialog", (dialog) => { faults.push(`a dialog: ${dialog.message()}`); dialog.dismiss(); });
  page.on("popup", () => faults.push("a window was opened"));
  page.on("request", (request) => request.url().startsWith(site.url) || faults.push(`asked for ${request.url()}`));
  await page.goto(site.url + name);
  let before = "";
  /** What is wrong with the page as it stands, once this fragment is put into its address; null puts none. */
  async function judged(put) {
    const seen = await asked(page, besiege, put, null);
    const found = [...faults.splice(0), ...page.complaints.splice(0), ...seen.planted];
    if (new URL(page.url()).pathname !== `/${name}`) found.push(`left for ${page.url()}`);
    const { faults: wrong, answered, linked = false } = misshown(seen, name === "embedding.html");
    return { found: [...found, ...wrong], answered, linked };
  }
  return {
    page,
    asked: (run, arg) => asked(page, run, arg),
    /** What is wrong with the page as it is. */
    stands: () => judged(null),
    /** What is wrong with the page after this link; `fresh` opens it as from a bookmark. */
    async after(link, fresh) {
      // A comparison takes two: the link before is the first.
      const fragment = name === "compare.html" && before !== "" ? `${before}&${link}` : link;
      before = link;
      if (fresh) {
        // The page may still be on its way to where the link before has sent it.
        await page.goto("about:blank").catch((error) => {
          if (!/interrupted by another navigation/u.test(error.message)) throw error;
          return page.waitForLoadState().then(() => page.goto("about:blank"));
        });
        await page.goto(`${site.url}${name}#${fragment}`, { timeout: 60000 });
      }
      return judged(fresh ? null : fragment);
    },
    close: () => page.context().close(),
  };
}
