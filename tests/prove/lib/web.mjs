// What only the web has: the site without its server, an update of it, and a question in somebody else's page.
import assert from "node:assert/strict";
import { createServer } from "node:http";
import { answered, box, newcomer } from "./journey.mjs";
import { fullLink } from "./pages.mjs";

const worker = () => navigator.serviceWorker?.ready.then(() => caches.keys()).then((names) => names.length > 0) ?? false;

/** Opens the site until its worker has kept it. */
async function kept(browser, address) {
  await browser.open(address);
  await browser.until("kept for later", worker);
}

/** The page that was visited computes without a network, and the pocket edition in the place of one that was not. */
export async function withoutServer(browser, { address, end }) {
  await kept(browser, `${address}index.html`).finally(end);
  await newcomer(browser, `${address}index.html`);
  await browser.open(`${address}cord.html${fullLink("cut-length")}`);
  await answered(browser);
  assert.equal(await browser.evaluate(() => document.querySelector("main").dataset.leaf), "cord", "the pocket edition");
}

/** A newer edition waits for its button, and then is there with the plan. */
export async function updated(browser, address, publishNext) {
  const title = () => browser.text("h1");
  await kept(browser, address);
  await browser.open(address); // which the worker now has in hand
  await browser.type(box("bodyMass"), "80");
  const before = await title();
  await publishNext();
  await browser.evaluate(() => navigator.serviceWorker.ready.then((registration) => registration.update()).then(() => true));
  await browser.until("an update offered", () => document.querySelector("#newer-edition button") !== null);
  assert.equal(await title(), before, "nothing takes over by itself");
  await browser.click("#newer-edition button");
  await browser.until("the newer edition", (before) => document.readyState === "complete" && document.querySelector("h1").textContent !== before, before);
  assert.match(await browser.evaluate((selector) => document.querySelector(selector).value, box("bodyMass")), /^80/u);
  assert.equal(await browser.evaluate(() => document.querySelector("#newer-edition")), null);
}

/** A page of somebody else's under a strict policy: its question answers, and follows what is typed. */
export async function embedded(browser, site) {
  const policy = `default-src 'none'; script-src ${site} 'wasm-unsafe-eval'`;
  const page = `<!DOCTYPE html><html lang="en"><meta charset="utf-8"><title>A club</title><script src="${site}embed.js" async></script>`
    + '<h1>A club</h1><boughline-question name="rope-length" data-crotch-height="14 m" data-anchor="canopy"></boughline-question></html>';
  const host = createServer((request, response) => {
    if (request.url !== "/") return response.writeHead(204).end();
    return response.writeHead(200, { "Content-Type": "text/html", "Content-Security-Policy": policy }).end(page);
  });
  await new Promise((ready) => { host.listen(0, "127.0.0.1", ready); });
  const said = () => browser.evaluate(() => document.querySelector("boughline-question").shadowRoot.querySelector("#headline").textContent);
  try {
    await browser.open(`http://localhost:${host.address().port}/`); // another name of this machine is another origin
    await browser.until("an answer in the page", () => /\d/u.test(document.querySelector("boughline-question")?.shadowRoot?.querySelector("#headline")?.textContent ?? ""));
    const before = await said();
    await browser.evaluate(() => {
      const one = document.querySelector("boughline-question").shadowRoot.querySelector("[name=crotchHeight]");
      one.value = "";
      one.focus();
    });
    for (const key of "20") await browser.press(key);
    await browser.until("another answer", (before) => {
      const now = document.querySelector("boughline-question").shadowRoot.querySelector("#headline").textContent;
      return /\d/u.test(now) && now !== before;
    }, before);
  } finally {
    host.closeAllConnections();
    host.close();
  }
}
