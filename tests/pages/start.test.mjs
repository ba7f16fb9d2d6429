// How a page starts: what is done in it before its script has all it needs, and how the first answer comes.
import assert from "node:assert/strict";
import { createServer } from "node:http";
import { after, before, test } from "node:test";
import { bench, box, pageBytes } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

/** The first page in a browser that speaks `locale`, its library still on the way until `arrive()`. */
async function arriving(locale) {
  const html = await pageBytes();
  const at = html.indexOf('<script type="text/plain"');
  assert.ok(at > 0);
  let arrive;
  const server = createServer((request, response) => {
    response.writeHead(200, { "Content-Type": "text/html; charset=utf-8" });
    if (request.url !== "/") return response.end();
    response.write(html.slice(0, at));
    arrive = () => response.end(html.slice(at));
  });
  await new Promise((ready) => { server.listen(0, "127.0.0.1", ready); });
  const page = await site.page({ locale });
  await page.goto(`http://127.0.0.1:${server.address().port}/`, { waitUntil: "commit" });
  await box(page, "bodyMass").waitFor();
  return {
    page,
    async arrive() {
      arrive();
      await page.waitForLoadState("load");
    },
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

const system = (page) => page.locator("input[name=system]:checked").inputValue();

test("what is typed before the script starts is meant in the units that stand beside it", async () => {
  for (const { locale, chosen, mass } of [{ locale: "en-US", chosen: "si", mass: "77 kg" }, { locale: "en-GB", chosen: "us", mass: "77 lb" }]) {
    const { page, arrive, close } = await arriving(locale);
    if (chosen === "us") await page.locator("input[name=system][value=us]").check();
    await box(page, "bodyMass").fill("77");
    await box(page, "climbHeight").focus();
    await arrive();
    assert.equal(await box(page, "bodyMass").inputValue(), mass);
    assert.equal(await system(page), chosen);
    close();
  }
});

test("a form that nobody has begun is met in the reader's own units", async () => {
  const { page, arrive, close } = await arriving("en-US");
  assert.equal(await system(page), "si");
  await arrive();
  assert.equal(await system(page), "us");
  close();
});

test("the script writes nothing into the box in which somebody is typing", async () => {
  const { page, arrive, close } = await arriving("en-GB");
  await box(page, "bodyMass").pressSequentially("17");
  await arrive();
  await box(page, "bodyMass").pressSequentially("0");
  assert.equal(await box(page, "bodyMass").inputValue(), "170");
  await box(page, "climbHeight").focus();
  assert.equal(await box(page, "bodyMass").inputValue(), "170 kg");
  close();
});

const PLAN = "#v=1&q=can-i-climb&u=si&bodyMass=68kg&climbHeight=12m&rig=tail-3&measuredPull=520N&stature=170cm";

/** Keeps every frame that is asked for until `release()`. */
function holdFrames() {
  const held = [];
  globalThis.requestAnimationFrame = (frame) => held.push(frame);
  globalThis.release = () => { for (const frame of held.splice(0)) frame(0); };
}

test("numbers come although no frame is drawn, and whatever comes after them stays", async () => {
  const page = await site.page();
  await page.addInitScript(holdFrames);
  await page.goto(site.url + PLAN);
  await page.locator("#numbers").waitFor();
  await page.locator("#helps:not([hidden])").waitFor();
  await page.evaluate(() => globalThis.release());
  await page.waitForTimeout(50);
  assert.ok(await page.locator("#helps:not([hidden])").isVisible());
  assert.ok((await page.locator("#figures [data-figure]").count()) > 10);
});

test("the words of a first answer come before its numbers, and no older number stands beside them", async () => {
  const page = await site.page();
  await page.addInitScript(holdFrames);
  await page.goto(site.url);
  // In one task: what the form says, and what stands there at once.
  const seen = await page.evaluate((plan) => new Promise((told) => {
    addEventListener("hashchange", () => setTimeout(() => told({
      outcome: document.getElementById("outcome").hidden, numbers: document.getElementById("numbers").hidden,
    })));
    location.hash = plan;
  }), PLAN);
  assert.deepEqual(seen, { outcome: false, numbers: true });
  await page.locator("#numbers").waitFor();
});
