// Ten thousand links that nobody means well with: `node fragments.mjs TABLE [SEED] [LINKS]`.
import { chance } from "../lib/chance.mjs";
import { besieged } from "../pages/besieged.mjs";
import { bench } from "../pages/browser.mjs";
import { hostileLinks } from "../pages/hostile.mjs";
import { pages } from "./lib/pages.mjs";
import { report, table } from "./lib/table.mjs";

const [path = "target/fragments.md", seed = Date.now() % 1e9, links = 10000] = process.argv.slice(2);
const AFRESH = 40; // one link in so many is opened as from a bookmark
const MOST = 5; // faults told of a page
const LANES = 2; // browsers at once

console.log(`seed ${seed}`);

/** A browser that has one page at a time under links; one that somebody else ended is started again. */
async function lane() {
  let site = await bench();
  /** What a page says to a link, and the page to go on with. One that the link itself ends the browser of ends twice. */
  async function asked(which, page, ...link) {
    try {
      return { page, ...(await page.after(...link)) };
    } catch (error) {
      await page.close().catch(() => {});
      if (site.connected()) return { page: await besieged(site, which), found: [error.message], answered: false };
      await site.close().catch(() => {});
      site = await bench();
      const again = await besieged(site, which);
      return { page: again, ...(await again.after(...link).catch((twice) => ({ found: [twice.message], answered: false }))) };
    }
  }
  return { asked, open: (which) => besieged(site, which), close: () => site.close() };
}

const all = (await pages()).filter(({ name }) => new RegExp(process.env.PAGES ?? "", "u").test(name));
// Half of the links on the first page, the rest on all.
const countOf = (name) => Math.ceil(name === "index.html" ? links / 2 : links / 2 / Math.max(1, all.length - 1));
const rows = [];
const faults = [];

/** Puts a page under its share of links and notes what it did. */
async function stormed({ asked, open }, which, place) {
  const { name, question } = which;
  const [began, count, hostile] = [Date.now(), countOf(name), hostileLinks(chance(Number(seed) + place))];
  let page = await open(which);
  let answers = 0, wrong = 0;
  for (let i = 0; i < count; i += 1) {
    const link = hostile();
    const { found, answered, page: next } = await asked(which, page, link, i % AFRESH === 0);
    page = next;
    answers += answered;
    if (i % 100 === 99) console.log(`${name}: ${i + 1}`);
    if (found.length > 0 && ++wrong <= MOST) faults.push(`${name}#${link.slice(0, 600)}\n${found.map((one) => `* ${one.slice(0, 600)}`).join("\n")}`);
  }
  await page.close();
  rows[place] = [name, question ?? "(none)", count, answers, wrong, `${Math.round((Date.now() - began) / 1000)} s`];
  console.log(rows[place].join("  "));
}

// The longest first, so that no lane is left alone with it.
const queue = [...all.entries()].sort(([, a], [, b]) => countOf(b.name) - countOf(a.name));
await Promise.all(Array.from({ length: LANES }, async () => {
  const mine = await lane();
  for (let next = queue.shift(); next; next = queue.shift()) await stormed(mine, next[1], next[0]);
  await mine.close();
}));
await report(path, "# Hostile links",
  `Seed ${seed}. Each put into an open page's address, one in ${AFRESH} opened afresh. At fault is a dialog, a script, an error, a request to elsewhere, planted markup, or a number that the form does not come to.`,
  table(["page", "question", "links", "answered", "at fault", "took"], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
