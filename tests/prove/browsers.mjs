// The same journey in three engines, over http with the published headers and from disk: `node browsers.mjs TABLE [ENGINE ...]`.
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { siteServer } from "../../pkg-config/site.mjs";
import { onDisk, pageBytes } from "../pages/browser.mjs";
import { editionFolder, publishNext } from "../pages/editions.mjs";
import { browserOf, engines, lackOf } from "./drivers/index.mjs";
import * as journey from "./lib/journey.mjs";
import * as looks from "./lib/looks.mjs";
import { pages } from "./lib/pages.mjs";
import { report, table } from "./lib/table.mjs";
import * as web from "./lib/web.mjs";

const [path = "target/browsers.md", ...only] = process.argv.slice(2);
/** The site on a port of its own, until `end` is called. */
async function serving(folder) {
  const server = await siteServer({ folder });
  await new Promise((ready) => { server.listen(0, "127.0.0.1", ready); });
  return {
    address: `http://127.0.0.1:${server.address().port}/`,
    end() {
      server.closeAllConnections();
      server.close();
    },
  };
}
const { address: site, end } = await serving();
const folder = await mkdtemp(join(tmpdir(), "boughline-browsers-"));
const every = await pages();
const asked = every.filter(({ question, html }) => question !== null && html.includes('id="first"') && html.includes('id="copy-link"'));
const places = { "over http": site, "from disk": onDisk };

/** Writes a saved copy and answers with its address. */
async function saved(name, text) {
  await writeFile(join(folder, name), text);
  return pathToFileURL(join(folder, name)).href;
}

/** A site that is updated while it is open. */
async function updating(browser) {
  const edition = await editionFolder();
  const own = await serving(edition);
  try {
    await web.updated(browser, `${own.address}index.html`, () => publishNext(edition));
  } finally {
    own.end();
    await rm(edition, { recursive: true });
  }
}

/** Keeps what an engine printed beside the table, for whoever wants to look at it. */
async function printing(browser) {
  const paper = join(dirname(path), `trip-sheet ${browser.version}.pdf`);
  await mkdir(dirname(path), { recursive: true });
  return looks.printed(browser, `${site}trip-sheet.html`, (bytes) => writeFile(paper, bytes));
}

/** Every step of the journey as `[name, walk(browser), options]`; an engine that lacks one of the options is told of. */
const STEPS = [
  ...Object.entries(places).flatMap(([place, at]) => [
    [`a newcomer's first answer, ${place}`, (browser) => journey.newcomer(browser, `${at}index.html`)],
    [`keys alone, ${place}`, (browser) => journey.byKeys(browser, `${at}index.html`)],
    ...asked.map(({ name, question }) => [`link and back: ${name}, ${place}`, (browser) => journey.roundTrip(browser, at + name, question)]),
    [`link and back: trip-sheet.html, ${place}`, (browser) => looks.sheetAgain(browser, `${at}trip-sheet.html`)],
    [`link and back: compare.html, ${place}`, (browser) => looks.comparisonAgain(browser, `${at}compare.html`)],
  ]),
  ["a page saved as it was served computes", async (browser) => journey.computes(browser, await saved("served.html", await pageBytes()))],
  ...asked.map(({ name, question }) => [`a page saved as it stands, with its plan: ${name}`, async (browser) => {
    const { text, said } = await journey.serialised(browser, site + name, question);
    await journey.sameAgain(browser, await saved(`stands ${name}`, text), said);
  }]),
  ["the pocket edition computes from disk", (browser) => journey.computes(browser, `${onDisk}pocket.html`)],
  ["the site once its server is gone", async (browser) => web.withoutServer(browser, await serving())],
  ["an update of the site, by its button", updating],
  ["a question in somebody else's page", (browser) => web.embedded(browser, site)],
  ["every page 320 px wide", (browser) => looks.narrow(browser, site, every)],
  ["every page in letters of 200 %", (browser) => looks.largeLetters(browser, site, every)],
  ["the trip sheet printed", printing, { pdf: true }],
  ["forced colours", (browser) => looks.forcedColours(browser, `${site}index.html`), { forcedColours: true }],
  ["nothing moves where that is asked for", (browser) => looks.calm(browser, `${site}index.html`), { calm: true }],
  ["with scripts switched off", (browser) => journey.withoutScripts(browser, `${site}index.html`), { scripts: false }],
].filter(([name]) => new RegExp(process.env.STEPS ?? "", "u").test(name));

const faults = [];
/** Walks one step and says how it went. */
async function walked(engine, name, work) {
  const began = Date.now();
  try {
    const told = await work();
    return `${((Date.now() - began) / 1000).toFixed(1)} s${typeof told === "string" ? `, ${told}` : ""}`;
  } catch (error) {
    faults.push(`* ${engine}, ${name}: ${error.message.slice(0, 1500)}`);
    console.log(faults.at(-1));
    return "FAILS";
  }
}

const rows = new Map(STEPS.map(([name]) => [name, []]));
const heads = []; // each engine as it calls itself
for (const engine of engines.filter((engine) => only.length === 0 || only.includes(engine))) {
  const at = heads.push(engine) - 1;
  let browser = null;
  let before = null; // the options it was started with
  const leave = async () => {
    await browser?.close().catch(() => {});
    browser = null;
  };
  for (const [name, work, options = {}] of STEPS) {
    let cell = Object.keys(options).map((need) => lackOf(engine, need)).find(Boolean);
    cell = cell ? `not tried: ${cell}` : await walked(engine, name, async () => {
      if (browser === null || JSON.stringify(options) !== before) {
        await leave();
        browser = await browserOf(engine, options);
        before = JSON.stringify(options);
        heads[at] = browser.version;
      }
      browser.complaints.length = 0;
      return work(browser);
    });
    // Whatever a fault left behind is not the next step's.
    if (cell === "FAILS") await leave();
    rows.get(name).push(cell);
    console.log(`${engine}: ${name}: ${cell}`);
  }
  await leave();
}
end();
await rm(folder, { recursive: true });
await report(path, "# The journey in three engines", table(["step", ...heads], [...rows].map(([name, cells]) => [name, ...cells])), ...faults);
if (faults.length > 0) process.exitCode = 1;
