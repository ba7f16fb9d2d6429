// The cutting plan on the page of a cord: rows in, bars, proof and a list out.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

const open = async (rest, options) => {
  const page = await site.page(options);
  await page.goto(`${site.url}cord.html#v=1&q=cut-plan&f=1&u=si&${rest}`);
  await settled(page);
  return page;
};
const part = (page, row, id) => page.locator(`[data-list-editor=cords] li >> nth=${row} >> [data-part=${id}]`);

test("a list in a link stands in rows, with a plan to buy and bars, whatever else is not said", async () => {
  const page = await open("cords=2~6mm~1.8m~foot%20loop,1~7mm~2.1m&hanks=any~5m");
  assert.equal(await page.locator("[data-list-editor=cords] li").count(), 2);
  assert.equal(await part(page, 0, "name").inputValue(), "foot loop");
  assert.equal(await page.locator("#cutting-first").textContent(), "Buy 1 hank of 5 m of 6 mm nylon cord and 1 hank of 5 m of 7 mm nylon cord.");
  assert.equal(await page.locator(".cutting-bar").count(), 2);
  assert.match(await page.locator(".cutting-bar title").first().textContent(), /foot loop 1\.8 m, foot loop 1\.8 m; left over/u);
  assert.deepEqual(page.complaints, []);
});

test("rows typed in by keys make a plan, a bare number gets its unit, and a wrong word hides the plan", async () => {
  const page = await open("");
  await page.getByRole("button", { name: "Add a cord" }).click();
  for (const [id, text] of [["diameter", "6"], ["length", "1.8"]]) await part(page, 0, id).fill(text);
  await part(page, 0, "name").focus();
  await settled(page);
  assert.equal(await part(page, 0, "length").inputValue(), "1.8 m");
  assert.equal(await page.locator("#cutting-first").textContent(), "Buy 1 hank of 5 m of 6 mm nylon cord.");
  await part(page, 0, "length").fill("long");
  await settled(page);
  assert.ok(await page.locator("#cutting").isHidden());
  assert.match(await page.locator("[data-field=cords] .error").textContent(), /“long” in row 1/u);
  await page.getByRole("button", { name: "Remove cord 1" }).click();
  await settled(page);
  assert.equal(await page.locator("[data-field=cords] textarea").inputValue(), "");
  assert.deepEqual(page.complaints, []);
});

test("a hard plan is worked on in steps, and stopped it keeps the best so far", async () => {
  const cords = Array.from({ length: 59 }, (_, at) => `1~6mm~${251 + ((at * 83) % 167)}cm`).join(",");
  const page = await open(`cords=${cords}&hanks=any~9m,any~10m,any~11m`);
  await page.evaluate(() => document.querySelectorAll("form details").forEach((group) => { group.open = true; }));
  await page.locator("[data-field=kerf] input").fill("5 mm");
  // Pressed as soon as it is there: all steps take less than a hand would need.
  await page.waitForFunction(() => {
    const stop = document.getElementById("cutting-stop");
    if (stop.offsetParent === null) return false;
    stop.click();
    return true;
  });
  const kept = await page.locator("#cutting-first").textContent();
  assert.match(kept, /^Buy \d+ hanks of/u);
  assert.match(await page.locator("#cutting-said").textContent(), /^Stopped/u);
  assert.ok(await page.locator("#cutting-work").isHidden());
  await page.waitForTimeout(500);
  assert.equal(await page.locator("#cutting-first").textContent(), kept);
});

test("a cord just worked out goes on the list", async () => {
  const page = await open("cordUse=prusik&hitchCord=7mm&ropeDiameter=11mm");
  await page.locator("#put-on-list").click();
  await settled(page);
  assert.equal(await part(page, 0, "name").inputValue(), "prusik loop");
  assert.match(await page.locator("#cutting-first").textContent(), /^Buy 1 hank of 5 m of 7 mm nylon cord\./u);
});

test("a link of a cutting plan is at home on this page, and one of another page is told apart", async () => {
  const page = await open("cords=2~6mm~1.8m&hanks=any~5m");
  assert.ok(await page.locator("#notices").isHidden());
  await page.goto("about:blank");
  await page.goto(`${site.url}cord.html#v=1&q=rope-length&f=1&u=si&cordUse=prusik`);
  await settled(page);
  assert.match(await page.locator("#notices").innerText(), /was made for the page/u);
  assert.deepEqual(page.complaints, []);
});

test("a rig's cords and its rope are on the plan without being entered, and are not offered again", async () => {
  const page = await open("cordUse=prusik&hitchCord=7mm&ropeDiameter=11mm&rig=tail-3&crotchHeight=12m&anchor=canopy");
  assert.match(await page.locator("#cutting-first").textContent(), /^Buy 1 hank of 5 m of 7 mm nylon cord\./u);
  assert.match(await page.locator("#cutting-notes").innerText(), /2 x prusik loop of/u);
  assert.match(await page.locator("#cutting-shopping").innerText(), /a rope of 45 m/u);
  assert.ok(await page.locator("#put-on-list").isHidden());
  assert.deepEqual(page.complaints, []);
});

test("nothing runs out of a page 320 wide", async () => {
  const page = await open("cords=2~6mm~1.8m~foot%20loop,1~7mm~2.1m&hanks=any~5m", { viewport: { width: 320, height: 800 } });
  const [wide, there] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(wide <= there, `${wide} of ${there}`);
});
