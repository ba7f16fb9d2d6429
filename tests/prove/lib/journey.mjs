// What somebody does on the site, told to any browser that has the interface of drivers/index.mjs.
import assert from "node:assert/strict";
import { fullLink } from "./pages.mjs";

const QUIET = 2500; // ms; between two steps of an answer the page rests for less than a tenth of that

export const box = (field) => `[data-field=${field}] :is(input, select)`;

/** Waits for an answer that can be seen, and on until nothing in it has changed for a while: then it is the full one. */
export async function answered(browser) {
  await browser.until("an answer on the screen", () => {
    const first = document.querySelector("#first");
    return first !== null && first.checkVisibility() && first.textContent.trim() !== "";
  });
  for (let before = null, now = await reading(browser); JSON.stringify(before) !== JSON.stringify(now);) {
    await new Promise((later) => { setTimeout(later, QUIET); });
    [before, now] = [now, await reading(browser)];
  }
}

/** What the page says to its plan: sentences and figures as they can be seen. */
const reading = (browser) => browser.evaluate(() => ({
  first: document.querySelector("#first").textContent,
  second: document.querySelector("#second")?.textContent ?? "",
  figures: [...document.querySelectorAll("[data-figure] summary")].map((row) => row.textContent.replace(/\s+/gu, " ").trim()),
}));

const boxes = (browser) => browser.evaluate(() => Object.fromEntries(
  [...document.querySelectorAll("form [data-field]")].map((field) => [field.dataset.field, field.querySelector("input, select, textarea").value.replace(/\s/gu, "")])));

/** Makes a box's groups open, as somebody unfolds them. */
const unfold = (browser, selector) => browser.evaluate((selector) => {
  for (let at = document.querySelector(selector); at; at = at.parentElement) if (at.localName === "details") at.open = true;
}, selector);

/** From nothing to a first answer, with its reason, by typing. */
export async function newcomer(browser, address) {
  await browser.open(address);
  await browser.click("input[name=strengthWay][value=pull]");
  for (const [field, text] of [["bodyMass", "80"], ["climbHeight", "8"], ["measuredPull", "520 N"]]) {
    await unfold(browser, box(field));
    await browser.type(box(field), text);
  }
  await browser.choose(box("rig"), "tail-3");
  await answered(browser);
  const { first, figures } = await reading(browser);
  assert.match(first, /\d/u, "the answer has its reason in numbers");
  assert.ok(figures.length > 5, `${figures.length} figures`);
  assert.deepEqual(browser.complaints, []);
  return browser.deaf;
}

/** The link that a page makes of its plan, opened afresh, says the same again. */
export async function roundTrip(browser, address, question) {
  await browser.open(address + fullLink(question));
  await answered(browser);
  const said = [await boxes(browser), await reading(browser)];
  await browser.click("#copy-link");
  await browser.until("a link to copy", () => (document.querySelector("#copied-link")?.value ?? "").includes("v="));
  const link = await browser.evaluate(() => document.querySelector("#copied-link").value);
  await browser.open(address + link.slice(link.indexOf("#")));
  await answered(browser);
  assert.deepEqual([await boxes(browser), await reading(browser)], said);
  return link.length;
}

/** A page on disk still computes: what is typed changes the figures. */
export async function computes(browser, address) {
  await browser.open(address);
  await browser.choose(box("rig"), "tail-3");
  for (const [field, text] of [["bodyMass", "80"], ["climbHeight", "8"]]) {
    await browser.evaluate((selector) => { document.querySelector(selector).value = ""; }, box(field));
    await browser.type(box(field), text);
  }
  await answered(browser);
  const before = await reading(browser);
  await browser.evaluate((selector) => { const one = document.querySelector(selector); one.value = ""; one.focus(); }, box("bodyMass"));
  await browser.type(box("bodyMass"), "97");
  await answered(browser);
  assert.notDeepEqual((await reading(browser)).figures, before.figures);
}

/** The live page as a browser writes it. */
export async function serialised(browser, address, question) {
  await browser.open(address + fullLink(question));
  await answered(browser);
  const said = [await boxes(browser), await reading(browser)];
  const length = await browser.evaluate(() => {
    globalThis.written = encodeURIComponent(`<!DOCTYPE html>\n${document.documentElement.outerHTML}`);
    return globalThis.written.length;
  });
  // In pieces: a driver may choke on the whole of it.
  let text = "";
  while (text.length < length) text += await browser.evaluate((from) => globalThis.written.slice(from, from + 50000), text.length);
  return { text: decodeURIComponent(text), said };
}

/** A saved copy with a plan in it shows the same plan and the same answer. */
export async function sameAgain(browser, address, said) {
  await browser.open(address);
  await answered(browser);
  assert.deepEqual([await boxes(browser), await reading(browser)], said);
}

/** To the answer and its workings with nothing but keys. */
export async function byKeys(browser, address) {
  await browser.open(address);
  const tabTo = async (wanted, most = 90) => {
    for (let i = 0; i < most; i += 1) {
      await browser.press("Tab");
      const at = await browser.focused();
      const ring = await browser.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
      assert.notEqual(ring, "none", `${at} shows no focus`);
      if (at.startsWith(wanted)) return;
    }
    assert.fail(`Tab never reached ${wanted}`);
  };
  const strike = async (text) => { for (const key of text) await browser.press(key); };
  await tabTo("bodyMass");
  await strike("80");
  await tabTo("climbHeight");
  await strike("8");
  await browser.choose(box("rig"), "tail-3"); // each engine opens its lists with other keys
  await answered(browser);
  const noun = await browser.evaluate(() => document.querySelector(".figure summary").textContent.trim().slice(0, 15));
  await tabTo(noun);
  await browser.press("Enter");
  await browser.until("workings under the figure", () => [...document.querySelectorAll(".figure .workings")].some((one) => one.checkVisibility()));
}

/** Without scripts the page says so and shows no number. */
export async function withoutScripts(browser, address) {
  await browser.open(address);
  const { notice, answer } = await browser.evaluate(() => ({
    notice: document.querySelector("#not-calculating").innerText,
    answer: document.querySelector("#answer").innerText,
  }));
  assert.match(notice, /scripts are switched off|scripts do not run/u);
  assert.doesNotMatch(answer, /\d/u);
}
