// How the site stands up to a narrow screen, large letters, colours and stillness that somebody asks for, and paper.
import assert from "node:assert/strict";
import { constants, inflateSync } from "node:zlib";
import { answered } from "./journey.mjs";
import { fullLink } from "./pages.mjs";

/** Rests until nothing has been said for a while. */
async function rested(browser) {
  const length = () => browser.evaluate(() => document.body.innerText.length);
  for (let before = null, now = await length(); before !== now;) {
    await new Promise((later) => { setTimeout(later, 2000); });
    [before, now] = [now, await length()];
  }
}

/** Each page with what it has to say, after `change()` to it: none goes beyond its edge. */
async function eachWithin(browser, site, pages, change = async () => {}) {
  const beyond = [];
  for (const { name, question } of pages) {
    await browser.open(site + name + (question === null ? "" : fullLink(question)));
    await rested(browser);
    await change();
    const [content, width] = await browser.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    if (content > width) beyond.push(`${name}: ${content} in ${width} px`);
  }
  assert.deepEqual(beyond, []);
}

/** Nothing goes beyond the edge of a screen 320 px wide. */
export async function narrow(browser, site, pages) {
  await browser.resize(320, 700);
  await eachWithin(browser, site, pages);
}

/** Letters twice as large, on a screen and on a phone: the same. */
export async function largeLetters(browser, site, pages) {
  for (const [width, height] of [[1280, 900], [390, 800]]) {
    await browser.resize(width, height);
    await eachWithin(browser, site, pages, async () => {
      await browser.evaluate(() => { document.documentElement.style.fontSize = "200%"; });
      assert.ok(await browser.evaluate(() => parseFloat(getComputedStyle(document.body).fontSize) >= 32));
      await rested(browser); // drawings are laid out anew
    });
  }
}

/** In colours of somebody's own the answer stands out from what is behind it, and so do a box and what has the focus. */
export async function forcedColours(browser, address) {
  await browser.open(address + fullLink("can-i-climb"));
  await answered(browser);
  const seen = await browser.evaluate(() => {
    const style = (selector) => getComputedStyle(document.querySelector(selector));
    document.querySelector("#copy-link").focus();
    return {
      forced: matchMedia("(forced-colors: active)").matches,
      behind: style("body").backgroundColor, answer: style("#first").color, edge: style("input[name=bodyMass]").borderBottomColor,
      focus: style("#copy-link").outlineStyle, ring: style("#copy-link").outlineColor,
    };
  });
  assert.ok(seen.forced, "colours are forced");
  for (const what of ["answer", "edge", "ring"]) assert.notEqual(seen[what], seen.behind, what);
  assert.notEqual(seen.focus, "none");
}

/** Where somebody asks for stillness nothing moves while an answer comes. */
export async function calm(browser, address) {
  await browser.open(address + fullLink("can-i-climb"));
  assert.ok(await browser.evaluate(() => matchMedia("(prefers-reduced-motion: reduce)").matches), "stillness is asked for");
  await answered(browser);
  assert.deepEqual(await browser.evaluate(() => document.getAnimations().filter(({ playState }) => playState === "running").length), 0);
  assert.equal(await browser.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior), "auto");
}

/** The whole trip sheet, on screen. */
async function sheet(browser, address) {
  await browser.open(address);
  await browser.until("a whole sheet", () => document.querySelector("#status").textContent.startsWith("Every part"));
  return browser.evaluate(() => document.querySelector("#paper").innerText);
}

/** A printed document's objects as text, those too that are packed. */
function unpacked(bytes) {
  const text = bytes.toString("latin1");
  const packed = [...text.matchAll(/stream\r?\n/gu)].map(({ index, 0: { length } }) => {
    try {
      return inflateSync(bytes.subarray(index + length), { finishFlush: constants.Z_SYNC_FLUSH }).toString("latin1");
    } catch {
      return ""; // packed otherwise: letters, images
    }
  });
  return [text, ...packed].join("\n");
}

/** The trip sheet on paper: `keep(bytes)` has it, and its number of pages is the answer. */
export async function printed(browser, address, keep) {
  await sheet(browser, address + fullLink("trip-sheet"));
  const bytes = Buffer.from(await browser.pdf());
  await keep(bytes);
  assert.match(bytes.toString("latin1", 0, 8), /^%PDF-/u);
  const pages = unpacked(bytes).match(/\/Type\s*\/Page\b(?!s)/gu)?.length ?? 0;
  assert.ok(pages >= 1 && pages <= 3, `${pages} pages`);
  return `${pages} pages`;
}

/** The link below the sheet brings the same sheet again. */
export async function sheetAgain(browser, address) {
  const before = await sheet(browser, address + fullLink("trip-sheet"));
  const link = await browser.text("#sheet-link");
  assert.equal(await sheet(browser, address + link.slice(link.indexOf("#"))), before);
}

/** A comparison's link brings the same two plans again. */
export async function comparisonAgain(browser, address) {
  const compared = async (at) => {
    await browser.open(at);
    await browser.until("a comparison", () => /\d/u.test(document.querySelector("#figures")?.innerText ?? ""));
    await new Promise((later) => { setTimeout(later, 2500); });
    return browser.evaluate(() => document.querySelector("#comparison").innerText);
  };
  const plan = fullLink("can-i-climb");
  const before = await compared(`${address}${plan}&${plan.slice(1).replace("tail-3", "tail-5")}`);
  await browser.click("#copy-link");
  await browser.until("a link to copy", () => document.querySelector("#copied-link").value.includes("v="));
  const link = await browser.evaluate(() => document.querySelector("#copied-link").value);
  assert.equal(await compared(address + link.slice(link.indexOf("#"))), before);
}
