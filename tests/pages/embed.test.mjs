// A question in a page of somebody else's, on an origin of its own and under a strict policy.
import assert from "node:assert/strict";
import { createServer } from "node:http";
import { after, before, test } from "node:test";
import { QUESTIONS } from "../../www/js/embed-questions.js";
import { axePath, bench, box, reading, settled } from "./browser.mjs";

const SLOW = { timeout: 30000 }; // twenty thousand climbs on a busy machine
const HOSTILE = `:root { --paper: red; --ink: red; }
* { --paper: red !important; letter-spacing: 9px; text-transform: uppercase; text-align: end; line-height: 4; color: red; font-style: italic; }
body { font-size: 20px; } p, form, div, section, ul, li, input, select, label, summary, details, button { display: none; }`;

let site;
let host;
let asked; // for each page the host serves: its body, styles and policy
before(async () => {
  site = await bench();
  host = createServer((request, response) => {
    if (request.url === "/host.css") return response.writeHead(200, { "Content-Type": "text/css" }).end(asked.css);
    if (request.url !== "/") return response.writeHead(204).end();
    response.writeHead(200, { "Content-Type": "text/html", "Content-Security-Policy": asked.policy });
    response.end(`<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>A club</title><link rel="stylesheet" href="/host.css"><script src="${site.url}embed.js" async></script></head><body><main><h1>A club</h1>${asked.body}</main></body></html>`);
  });
  await new Promise((ready) => host.listen(0, "127.0.0.1", ready));
});
after(async () => {
  await site.close();
  host.closeAllConnections();
  await new Promise((closed) => host.close(closed));
});

/** The host's page with this inside, once every question in it has come; requests are kept in `page.requests`. */
async function opened(body, { css = ":root { color-scheme: light dark; }", policy = `default-src 'none'; style-src 'self'; script-src ${site.url} 'wasm-unsafe-eval'; require-trusted-types-for 'script'`, ready = "#title", ...options } = {}) {
  asked = { body, css, policy };
  const page = await site.page(options, async (fresh) => {
    fresh.requests = [];
    fresh.on("request", (request) => fresh.requests.push(request.url()));
    // Not a script of the page's own: its policy lets none in.
    await fresh.addInitScript(() => {
      globalThis.heard = [];
      for (const type of ["boughline-answer", "boughline-errors"]) {
        addEventListener(type, ({ target, detail }) => globalThis.heard.push({ type, id: target.id, ...structuredClone(detail) }));
      }
    });
  });
  // Another name of this machine is another origin.
  await page.goto(`http://localhost:${host.address().port}/`);
  await page.waitForFunction((wanted) => [...document.querySelectorAll("boughline-question")].every(({ shadowRoot }) => shadowRoot?.querySelector(wanted)), ready, SLOW);
  return page;
}
const inside = (page, id, what) => page.locator(`#${id}`).locator(what);
const events = (page, id) => page.evaluate((wanted) => globalThis.heard.filter((event) => event.id === wanted), id);
const ROPE = (id, rest = 'data-crotch-height="14 m" data-anchor="canopy"') => `<boughline-question id="${id}" name="rope-length" ${rest}></boughline-question>`;

test("two questions, one of them twice, answer from their attributes under a strict policy, each part fetched once", async () => {
  const page = await opened(`${ROPE("one")}${ROPE("two", 'plan="#v=1&q=rope-length&f=1&u=us&crotchHeight=30ft&anchor=base"')}
    <boughline-question id="three" name="cut-length" data-cord-use="prusik" data-rope-diameter="11 mm" data-hitch-cord="8 mm"></boughline-question>`);
  await settled(page);
  assert.match(await inside(page, "one", "#headline").innerText(), /\d+ m of rope/u);
  assert.match(await inside(page, "two", "#headline").innerText(), /\d+ ft of rope/u);
  assert.match(await inside(page, "three", "#headline").innerText(), /\d/u);
  const here = new URL(page.url()).origin;
  assert.deepEqual(page.requests.filter((url) => !url.startsWith(here)).sort(),
    ["embed-cut-length.js", "embed-rope-length.js", "embed.js"].map((name) => site.url + name));
  assert.deepEqual(page.complaints, []);
});

test("typing changes this answer and no other, and is told", async () => {
  const page = await opened(ROPE("one") + ROPE("two"));
  await settled(page);
  const before = await inside(page, "one", "#headline").innerText();
  await inside(page, "one", "[name=crotchHeight]").fill("20");
  await settled(page);
  assert.notEqual(await inside(page, "one", "#headline").innerText(), before);
  assert.equal(await inside(page, "two", "#headline").innerText(), before);
  const [first, last] = await events(page, "one");
  assert.deepEqual([first.type, last.type, last.question], ["boughline-answer", "boughline-answer", "rope-length"]);
  assert.equal(last.draft.crotchHeight, "20 m");
  assert.match(last.link, /^v=1&.*crotchHeight=20m/u);
  assert.equal(last.answer.first, await inside(page, "one", "#headline").innerText());
  assert.equal((await events(page, "two")).length, 1);
  assert.equal(await inside(page, "one", "#full").getAttribute("href"), `${site.url}rope-length.html#${last.link}`);
  assert.equal(await inside(page, "one", "#status").textContent(), last.answer.first);
  assert.equal(await inside(page, "two", "#status").textContent(), "", "nobody is told of what nobody touched");
});

test("what cannot be read takes every number away and is told beside its box", async () => {
  const page = await opened(ROPE("one"));
  await settled(page);
  const height = inside(page, "one", "[name=crotchHeight]");
  await height.fill("abc");
  assert.equal(await inside(page, "one", "#outcome").isVisible(), false);
  assert.equal(await page.locator("#one").evaluate((element) => element.answer), null);
  await settled(page);
  assert.equal(await height.inputValue(), "abc");
  assert.equal(await height.getAttribute("aria-invalid"), "true");
  const told = await inside(page, "one", ".error:not([hidden])").innerText();
  assert.equal((await events(page, "one")).at(-1).errors[0].message, told);
  await inside(page, "one", "#errors a").click();
  assert.equal(await page.locator("#one").evaluate(({ shadowRoot }) => shadowRoot.activeElement.name), "crotchHeight");
  assert.equal(page.url().includes("#"), false, "the host's address is left alone");
});

test("when it breaks no number stays, what was typed does, and the next key tries again", async () => {
  const page = await opened(ROPE("one"));
  await settled(page);
  const figures = await page.locator("#one").evaluateHandle(({ shadowRoot }) => shadowRoot.querySelector("#figures"));
  await figures.evaluate((list) => { list.before(Object.assign(document.createElement("i"), { id: "was" })); list.remove(); });
  await inside(page, "one", "[name=crotchHeight]").fill("20 m");
  assert.match(await inside(page, "one", "#failed").innerText(), /calculation failed/u);
  assert.equal(await inside(page, "one", "#outcome").isVisible(), false);
  assert.equal(await inside(page, "one", "[name=crotchHeight]").inputValue(), "20 m");
  assert.equal((await events(page, "one")).at(-1).type, "boughline-errors");
  await figures.evaluate((list) => document.getElementById("one").shadowRoot.querySelector("#was").replaceWith(list));
  await inside(page, "one", "[name=crotchHeight]").fill("21 m");
  assert.equal(await inside(page, "one", "#failed").innerText(), "");
  assert.match(await inside(page, "one", "#headline").innerText(), /\d/u);
});

test("the same figures as the page has for the same plan", async () => {
  const plan = "v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=8m&rig=tail-3&measuredPull=400N&pullTaken=overhead&pullArms=two&stature=175cm";
  const page = await opened(`<boughline-question id="one" name="can-i-climb" plan="${plan}" fields="bodyMass climbHeight"></boughline-question>`);
  await page.waitForFunction(() => globalThis.heard.length > 0, null, SLOW);
  await inside(page, "one", "#more").click();
  const whole = await site.page();
  await whole.goto(`${site.url}index.html#${plan}`, SLOW);
  await whole.waitForFunction(() => document.getElementById("effort")?.textContent.includes("20000"), null, SLOW);
  const there = await reading(whole);
  const plain = (texts) => texts.map((text) => text.replace(/\s+/gu, " ")).sort();
  assert.deepEqual(plain(await inside(page, "one", ".figure summary").allInnerTexts()), plain(there.figures));
  assert.equal(await inside(page, "one", "#headline").innerText(), there.verdict);
  const unseen = await inside(page, "one", "#unseen").innerText();
  assert.match(unseen, /^Set by the page this stands in: .*400\s?N/u);
});

test("changed attributes are followed, and what somebody typed in another box stays", async () => {
  const page = await opened(ROPE("one"));
  const change = (name, value) => page.locator("#one").evaluate((element, [key, text]) => (text === null ? element.removeAttribute(key) : element.setAttribute(key, text)), [name, value]);
  await inside(page, "one", "[name=crotchHeight]").fill("20 m");
  await change("data-anchor", "base");
  await settled(page);
  assert.equal(await inside(page, "one", "[name=anchor]").inputValue(), "base");
  assert.equal(await inside(page, "one", "[name=crotchHeight]").inputValue(), "20 m");
  await change("units", "us");
  await settled(page);
  assert.match(await inside(page, "one", "#headline").innerText(), / ft /u);
  await change("data-anchor", null);
  await settled(page);
  assert.equal(await inside(page, "one", "#outcome").isVisible(), false);
  await change("units", null);
  await change("plan", "v=1&q=rope-length&f=1&u=si&crotchHeight=9m&anchor=base");
  await settled(page);
  assert.match(await inside(page, "one", "#headline").innerText(), / m of rope/u);
  await page.locator("#one").evaluate((element) => { const { parentNode } = element; element.remove(); parentNode.append(element); });
  await inside(page, "one", "[name=crotchHeight]").fill("10 m");
  await settled(page);
  assert.equal((await events(page, "one")).at(-1).draft.crotchHeight, "10 m");
  await inside(page, "one", ".view summary").click();
  await inside(page, "one", "[name=system][value=us]").check();
  await page.locator("#one").evaluate((element) => { element.dataset.bodyMass = "77 kg"; element.setAttribute("name", "rescue"); });
  await inside(page, "one", "[name=bodyMass]").waitFor();
  assert.equal(await inside(page, "one", "#title").innerText(), "What if I am stuck?");
  assert.equal(await inside(page, "one", "[name=bodyMass]").inputValue(), "77 kg");
  assert.equal(await inside(page, "one", "[name=crotchHeight]").inputValue(), "10 m", "what was typed goes along");
  assert.equal(await inside(page, "one", "[name=system][value=us]").isChecked(), true, "and so do the units that were chosen");
  assert.deepEqual(page.complaints, []);
});

test("every question answers the same plan, each in boxes of its own", async () => {
  const plan = "v=1&f=1&u=si&bodyMass=68kg&climbHeight=8m&rig=tail-3&measuredPull=520N&pullTaken=overhead&pullArms=two&stature=170cm&crotchHeight=14m&anchor=canopy&cordUse=distel&ropeDiameter=11mm&hitchCord=8mm&cords=2~6mm~1.8m";
  const page = await opened([...QUESTIONS.keys()].map((name) => `<boughline-question id="${name}" name="${name}" plan="${plan}" fields="bodyMass crotchHeight"></boughline-question>`).join(""));
  await page.waitForFunction((count) => globalThis.heard.length === count, QUESTIONS.size, SLOW);
  for (const [name, { title }] of QUESTIONS) {
    const [told] = await events(page, name);
    assert.equal(told.type, "boughline-answer", `${name}: ${JSON.stringify(told.errors)}`);
    assert.equal(await inside(page, name, "#title").innerText(), title);
    assert.ok((await inside(page, name, ".sheet").innerText()).includes(told.answer.first), name);
    assert.equal(await inside(page, name, ".figure").count(), told.answer.figures.length);
    const cautions = await inside(page, name, "#cautions").innerText();
    for (const { id, text } of told.answer.cautions) assert.equal(cautions.includes(text), id !== "arithmetic", `${name}: ${id}`);
  }
  await page.emulateMedia({ media: "print" });
  for (const name of QUESTIONS.keys()) {
    const shown = (where) => inside(page, name, where).evaluateAll((all) => all.filter((one) => one.checkVisibility()).length);
    assert.ok(await shown("#cautions li") >= 3 && await shown("#cautions li") === await inside(page, name, "#cautions li").count(), name);
    assert.equal(await shown(".always li"), 4, name);
  }
  assert.deepEqual(page.complaints, []);
});

test("a box comes for what turns out to be needed", async () => {
  const page = await opened('<boughline-question id="one" name="cut-length"></boughline-question>');
  assert.deepEqual(await inside(page, "one", ".field").evaluateAll((all) => all.map(({ dataset }) => dataset.field)), ["cordUse"]);
  await inside(page, "one", "[name=cordUse]").selectOption("prusik");
  await inside(page, "one", "[name=ropeDiameter]").fill("11");
  await inside(page, "one", "[name=hitchCord]").fill("8");
  await settled(page);
  assert.match(await inside(page, "one", "#headline").innerText(), /\d/u);
});

test("the styles of the page round it do not get in, and its own do not get out", async () => {
  const styles = (page) => page.locator("#one").evaluate(({ shadowRoot }) => ["#title", "#boxes", "[name=crotchHeight]", ".hint", ".figure", "#more"].map((one) => {
    const style = getComputedStyle(shadowRoot.querySelector(one));
    return ["display", "color", "backgroundColor", "letterSpacing", "textTransform", "textAlign", "fontStyle", "fontFamily"].map((name) => style[name]).join(" ");
  }));
  const calm = await opened(ROPE("one"), { css: "body { font-size: 20px; }" });
  await settled(calm);
  const wild = await opened(`<p id="own">Text</p>${ROPE("one")}`, { css: `${HOSTILE} boughline-question { display: block; }` });
  await settled(wild);
  assert.deepEqual(await styles(wild), await styles(calm));
  assert.equal(await wild.locator("#one").evaluate(({ shadowRoot }) => getComputedStyle(shadowRoot.querySelector("form")).fontSize), "20px");
  assert.equal(await wild.locator("#own").evaluate((own) => getComputedStyle(own).display), "none");
});

test("where the policy lets no WebAssembly in it says so, shows no number, and leaves what is inside the element", async () => {
  const body = '<boughline-question id="one" name="rope-length" data-crotch-height="14 m" data-anchor="canopy"><a href="/x">How much rope?</a></boughline-question>';
  const page = await opened(body, { policy: `default-src 'none'; style-src 'self'; script-src ${site.url}`, ready: ".failed" });
  assert.match(await inside(page, "one", ".failed").innerText(), /not calculating.*'wasm-unsafe-eval'/su);
  assert.equal(await page.locator("#one a").isVisible(), true);
  assert.equal(await page.locator("#one").evaluate((element) => element.answer), null);
});

test("nothing that axe knows is wrong with it, in both schemes", async () => {
  for (const colorScheme of ["light", "dark"]) {
    const page = await opened(`${ROPE("one")}${ROPE("three")}<boughline-question id="two" name="can-i-climb"></boughline-question>`, { colorScheme, viewport: { width: 390, height: 900 }, css: ":root { color-scheme: light dark; } body { background: Canvas; }" });
    await inside(page, "two", "[name=bodyMass]").fill("1,200");
    await settled(page);
    for (const summary of await inside(page, "one", ".figure summary, .view summary").all()) if (await summary.isVisible()) await summary.click();
    await page.evaluate(await (await import("node:fs/promises")).readFile(axePath, "utf8"));
    const { violations } = await page.evaluate(() => globalThis.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "wcag2aaa", "best-practice"] }));
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0].target} ${nodes[0].failureSummary}`), []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth) <= 390);
  }
});

test("the page about it has the element at work, and without scripts says that it has none", async () => {
  const page = await site.page();
  await page.goto(`${site.url}embedding.html`);
  await box(page, "crotchHeight").fill("20 m");
  await settled(page);
  const first = await page.locator("boughline-question #headline").innerText();
  assert.equal(await page.locator("#heard").innerText(), `boughline-answer: ${first}`);
  assert.ok((await page.locator("#snippet").innerText()).includes(`src="${site.url}embed.js"`));
  assert.deepEqual(page.complaints, []);
  const off = await site.page({ javaScriptEnabled: false });
  await off.goto(`${site.url}embedding.html`);
  assert.equal(await off.locator("boughline-question .no-answer").isVisible(), true);
  assert.equal(await off.locator("#copy-snippet").isVisible(), false);
});
