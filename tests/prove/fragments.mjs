// Ten thousand links that nobody means well with: `node fragments.mjs TABLE [SEED] [LINKS]`.
import { besieged } from "../pages/besieged.mjs";
import { bench } from "../pages/browser.mjs";
import { chance, hostileLinks } from "../pages/hostile.mjs";
import { pages } from "./lib/pages.mjs";
import { report, table } from "./lib/table.mjs";

const [path = "target/fragments.md", seed = Date.now() % 1e9, links = 10000] = process.argv.slice(2);
const AFRESH = 40; // one link in so many is opened as from a bookmark
const MOST = 5; // faults told of a page

console.log(`seed ${seed}`);
let site = await bench();
/** What a page says to a link. A browser that somebody else ended is started again; one that the link ends, ends twice. */
async function asked(which, page, ...link) {
  try {
    return { page, ...(await page.after(...link)) };
  } catch {
    await site.close().catch(() => {});
    site = await bench();
    const again = await besieged(site, which);
    return { page: again, ...(await again.after(...link).catch((error) => ({ found: [error.message], answered: false }))) };
  }
}
const all = (await pages()).filter(({ name }) => new RegExp(process.env.PAGES ?? "", "u").test(name));
const rows = [];
const faults = [];
for (const which of all) {
  // Half of them on the first page, the rest on all.
  const count = Math.ceil(which.name === "index.html" ? links / 2 : links / 2 / Math.max(1, all.length - 1));
  const hostile = hostileLinks(chance(Number(seed) + rows.length));
  let page = await besieged(site, which);
  let answers = 0, wrong = 0;
  for (let i = 0; i < count; i += 1) {
    const link = hostile();
    const { found, answered, page: open } = await asked(which, page, link, i % AFRESH === 0);
    page = open;
    answers += answered;
    if (i % 100 === 99) console.log(`${which.name}: ${i + 1}`);
    if (found.length > 0 && ++wrong <= MOST) faults.push(`${which.name}#${link.slice(0, 600)}\n${found.map((one) => `* ${one.slice(0, 600)}`).join("\n")}`);
  }
  await page.close();
  rows.push([which.name, which.question ?? "(none)", count, answers, wrong]);
  console.log(rows.at(-1).join("  "));
}
await site.close();
await report(path, "# Hostile links",
  `Seed ${seed}. Each put into an open page's address, one in ${AFRESH} opened afresh. At fault is a dialog, a script, an error, a request to elsewhere, planted markup, or a number that the form does not come to.`,
  table(["page", "question", "links", "answered", "at fault"], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
