// What a page has over the web: it is kept for where there is no network, and an update waits to be asked for.
import assert from "node:assert/strict";
import { rm } from "node:fs/promises";
import { after, before, test } from "node:test";
import { bench, box, fillNeeded, reading, settled } from "./browser.mjs";
import { editionFolder, publishNext } from "./editions.mjs";

const PLAN = "v=1&q=rope-length&f=1&u=si&crotchHeight=14m&anchor=canopy";
const WORKERS = { serviceWorkers: "allow" };
let folder;
before(async () => { folder = await editionFolder(); });
after(() => rm(folder, { recursive: true }));

/** A page whose worker has all it keeps at once. */
async function kept(site, name) {
  const page = await site.page(WORKERS);
  await page.goto(site.url + name);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active);
  return page;
}

test("an update is offered, waits for its button, and then is there with the plan", async () => {
  const site = await bench({ published: folder });
  try {
    const page = await kept(site, "index.html");
    await page.reload();
    await fillNeeded(page);
    await settled(page);
    assert.equal(await page.locator("#newer-edition").count(), 0);
    await publishNext(folder);
    await page.reload();
    await page.locator("#newer-edition button").waitFor();
    assert.match(await page.locator("#newer-edition").innerText(), /A newer edition is here/u);
    assert.equal(await page.locator("h1").innerText(), "Can I climb this?", "nothing takes over by itself");
    await Promise.all([page.waitForEvent("load"), page.click("#newer-edition button")]);
    await settled(page);
    assert.equal(await page.locator("h1").innerText(), "Can I climb that?");
    assert.equal(await box(page, "bodyMass").inputValue(), "80kg");
    assert.equal(await page.locator("#newer-edition").count(), 0);
    assert.deepEqual(page.complaints, []);
  } finally {
    await site.close();
  }
});

test("without a network a visited page is there, and the pocket edition in the place of any other", async () => {
  const site = await bench({ published: folder });
  try {
    const page = await kept(site, "index.html");
    await page.goto(`${site.url}rope-length.html#${PLAN}`);
    await settled(page);
    const online = await page.locator("#first").innerText();
    const held = await page.evaluate(async () => {
      const names = await caches.keys();
      return (await Promise.all(names.map(async (name) => (await caches.open(name)).keys()))).flat().map(({ url }) => url);
    });
    assert.ok(held.some((url) => url.endsWith("/rope-length.html")));
    assert.deepEqual(held.filter((url) => /[#?]/u.test(url)), [], "no plan is kept");
    await site.cutOff();

    await page.goto(`${site.url}index.html`);
    await fillNeeded(page);
    await settled(page);
    assert.match((await reading(page)).first, /\d/u, "the first page was visited before there was a worker");
    await page.goto(`${site.url}rope-length.html#${PLAN}`);
    await settled(page);
    assert.equal(await page.locator("#first").innerText(), online);
    assert.equal(await page.locator("main[data-leaf]").count(), 0, "the page itself");
    await page.goto(`${site.url}cord.html#v=1&q=cut-length&f=1&u=si&cordUse=distel&ropeDiameter=11mm&hitchCord=8mm`);
    await settled(page);
    assert.equal(await page.locator("main").getAttribute("data-leaf"), "cord", "the pocket edition");
    assert.match(await page.locator("#first").innerText(), /^About \d/u);
  } finally {
    await site.close();
  }
});

test("where workers or storage are refused the page works, and nothing is complained of", async () => {
  const site = await bench({ published: folder });
  try {
    const page = await site.page(WORKERS, (page) => page.addInitScript(() => {
      navigator.serviceWorker.register = () => Promise.reject(new DOMException("refused", "SecurityError"));
      for (const name of ["localStorage", "sessionStorage", "caches", "indexedDB"]) {
        Object.defineProperty(globalThis, name, { get() { throw new DOMException("refused", "SecurityError"); } });
      }
    }));
    await page.goto(site.url);
    await fillNeeded(page);
    await settled(page);
    assert.match((await reading(page)).first, /\d/u);
    assert.deepEqual(page.complaints, []);
  } finally {
    await site.close();
  }
});

test("the manifest is whole and its icons are there", async () => {
  const site = await bench({ published: folder });
  try {
    const page = await site.page();
    await page.goto(site.url);
    const address = await page.locator("link[rel=manifest]").evaluate((link) => link.href);
    const manifest = await (await fetch(address)).json();
    for (const icon of manifest.icons) {
      const response = await fetch(new URL(icon.src, address));
      assert.equal(response.headers.get("content-type"), icon.type);
      const size = await page.evaluate(async (src) => {
        const image = Object.assign(new Image(), { src });
        await image.decode();
        return `${image.naturalWidth}x${image.naturalHeight}`;
      }, new URL(icon.src, address).href);
      if (icon.sizes !== "any") assert.equal(size, icon.sizes);
    }
    assert.ok((await fetch(new URL(manifest.start_url, address))).ok);
    const session = await page.context().newCDPSession(page);
    const { errors } = await session.send("Page.getAppManifest");
    assert.deepEqual(errors, []);
  } finally {
    await site.close();
  }
});
