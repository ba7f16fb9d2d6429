// "What length of cord?" as somebody uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bench, box, numbersShown, problem, settled } from "./browser.mjs";

let site;
before(async () => { site = await bench(); });
after(() => site.close());

async function opened(rest = "", options = {}) {
  const page = await site.page(options);
  await page.goto(`${site.url}cord.html${rest && `#v=1&q=cut-length&f=1&u=si&${rest}`}`);
  return page;
}
const PRUSIK = "cordUse=prusik&ropeDiameter=11mm&hitchCord=6mm";

test("a hitch, a rope and a cord give a length, piece by piece", async () => {
  const page = await opened();
  assert.deepEqual(await numbersShown(page), [], "an empty form shows no number");
  await box(page, "cordUse").selectOption("prusik");
  await box(page, "ropeDiameter").fill("11");
  await box(page, "hitchCord").fill("6");
  await settled(page);
  assert.equal(await page.locator("#first").innerText(), "About 95 cm of cord for 20 cm of free legs in all; 1.12 m if everything takes the most it may. Cut the longer.");
  const rows = await page.locator("#cord tbody tr").evaluateAll((all) => all.map((row) => row.cells[1].textContent));
  const sum = rows.reduce((all, text) => all + Number.parseFloat(text), 0);
  assert.equal(`${sum} cm`, await page.locator("#cord tfoot td").first().innerText(), "as they are written they add up");
  assert.deepEqual(page.complaints, []);
});

test("only the boxes that the cord has a use for are shown", async () => {
  const page = await opened(PRUSIK);
  const shown = async () => page.locator("[data-field]").evaluateAll((all) => all.filter((one) => !one.hidden).map((one) => one.dataset.field));
  assert.ok((await shown()).includes("freeLeg"));
  await box(page, "cordUse").selectOption("hand-loop");
  await settled(page);
  const sling = await shown();
  assert.ok(sling.includes("slingCord") && !sling.includes("hitchCord") && !sling.includes("freeLeg") && !sling.includes("ropeDiameter"));
  assert.deepEqual(await numbersShown(page), [], "another cord, and its diameter is not said yet");
  await box(page, "cordUse").selectOption("haul-cord");
  await settled(page);
  assert.ok((await shown()).includes("rig"));
});

test("what was cut tells what it leaves, and with what it came out at how somebody ties", async () => {
  const page = await opened(`${PRUSIK}&cordCut=1m`);
  await settled(page);
  assert.match(await page.locator("#first").innerText(), /^1 m of cord leaves \d+ cm of free legs in all\.$/u);
  await page.locator("summary", { hasText: "have cut" }).click();
  await box(page, "cameOut").fill("20 cm");
  await settled(page);
  assert.match(await page.locator("#first").innerText(), /^About 1 m of cord/u);
  assert.ok(await page.locator(".figure", { hasText: "your coils and knots" }).isVisible());
  await box(page, "cameOut").fill("90 cm");
  await box(page, "cameOut").blur();
  await problem(page, "cameOut").waitFor();
  assert.match(await problem(page, "cameOut").innerText(), /between half and twice is believed/u);
  assert.deepEqual(await numbersShown(page), []);
});

test("the picture has every piece's length in it, inside its frame and clear of other words", async () => {
  const plans = [PRUSIK, "cordUse=valdotain&ropeDiameter=12mm&hitchCord=8mm", "cordUse=openable&ropeDiameter=9.5mm&hitchCord=6mm", "cordUse=haul-cord&haulCord=7mm&rig=haul-cord-5", "cordUse=bridge&slingCord=10mm", "cordUse=foot-loop&slingCord=6mm&cordEnds=sewn"];
  for (const plan of plans) {
    for (const width of [320, 1280]) {
      const page = await opened(plan, { viewport: { width, height: 900 } });
      await settled(page);
      const texts = await page.locator("#cord svg[role=img] text").allTextContents();
      for (const row of await page.locator("#cord tbody tr").all()) {
        const length = await row.locator("td").first().innerText();
        assert.ok(texts.some((text) => text.includes(length)), `${plan}: ${length} in ${texts}`);
      }
      const overlaps = await page.locator("#cord svg[role=img]").evaluate((svg) => {
        const frame = svg.getBoundingClientRect();
        const boxes = [...svg.querySelectorAll("text")].map((node) => ({ text: node.textContent, box: node.getBoundingClientRect() }));
        const found = [];
        for (const [i, { text, box }] of boxes.entries()) {
          if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1) found.push(`${text} out`);
          for (const other of boxes.slice(i + 1)) {
            const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
            const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
            if (across > 1 && down > 3) found.push(`${text} on ${other.text}`);
          }
        }
        return found;
      });
      assert.deepEqual(overlaps, [], `${plan} at ${width}`);
    }
  }
});

test("a link opens the same cord in either system", async () => {
  const page = await opened(`${PRUSIK}&u=us`.replace("u=si&", ""));
  await settled(page);
  assert.deepEqual(page.complaints, []);
  const us = await site.page();
  await us.goto(`${site.url}cord.html#v=1&q=cut-length&f=1&u=us&${PRUSIK}`);
  await settled(us);
  assert.match(await us.locator("#first").innerText(), /^About 3 ft 1 in of cord/u);
});
