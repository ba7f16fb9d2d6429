// Links that nobody means well with: 300 here, 10,000 in the long check of the same name.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { chance } from "../lib/chance.mjs";
import { besieged } from "./besieged.mjs";
import { bench } from "./browser.mjs";
import { hostileLinks } from "./hostile.mjs";

const SEED = 20261130;
const PAGES = [
  { name: "index.html", links: 180 },
  { name: "rope-length.html", links: 60 },
  { name: "cord.html", links: 60 },
  { name: "trip-sheet.html", links: 30 },
  { name: "compare.html", links: 30 },
  { name: "embedding.html", links: 30 },
];

let site;
before(async () => { site = await bench(); });
after(() => site.close());

for (const { links, ...which } of PAGES) {
  test(`no link runs anything, throws, or shows what the form does not come to: ${which.name}, seed ${SEED}`, async () => {
    const hostile = hostileLinks(chance(SEED + links));
    const page = await besieged(site, which);
    let answers = 0;
    for (let i = 0; i < links; i += 1) {
      const link = hostile();
      const { found, answered } = await page.after(link, i % 30 === 0);
      assert.deepEqual(found, [], link);
      answers += answered;
    }
    assert.ok(answers > links / 10, `${answers} of them were answered`);
    await page.close();
  });
}
