// The same journey in three engines, over http with the published headers and from disk: `node browsers.mjs TABLE`.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { siteServer } from "../../pkg-config/site.mjs";
import { onDisk, pageBytes } from "../pages/browser.mjs";
import { browserOf, engines } from "./drivers/index.mjs";
import * as journey from "./lib/journey.mjs";
import { pages } from "./lib/pages.mjs";
import { report, table } from "./lib/table.mjs";

const [path = "target/browsers.md", ...only] = process.argv.slice(2);
/** The site on a port of its own, until `end` is called. */
async function serving() {
  const server = await siteServer();
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
const asked = (await pages()).filter(({ question, html }) => question !== null && html.includes('id="first"') && html.includes('id="copy-link"'));

/** Writes a saved copy and answers with its address. */
async function saved(name, text) {
  await writeFile(join(folder, name), text);
  return pathToFileURL(join(folder, name)).href;
}

/** Every step of the journey as `[name, walk(browser)]`. */
function steps() {
  const places = { "over http": site, "from disk": onDisk };
  return [
    ...Object.entries(places).flatMap(([place, at]) => [
      [`a newcomer's first answer, ${place}`, (browser) => journey.newcomer(browser, `${at}index.html`)],
      [`keys alone, ${place}`, (browser) => journey.byKeys(browser, `${at}index.html`)],
      ...asked.map(({ name, question }) => [`link and back: ${name}, ${place}`, (browser) => journey.roundTrip(browser, at + name, question)]),
    ]),
    ["a page saved as it was served computes", async (browser) => journey.computes(browser, await saved("served.html", await pageBytes()))],
    ...asked.map(({ name, question }) => [`a page saved as it stands, with its plan: ${name}`, async (browser) => {
      const { text, said } = await journey.serialised(browser, site + name, question);
      await journey.sameAgain(browser, await saved(`stands ${name}`, text), said);
    }]),
    ["the site once its server is gone", async (browser) => {
      const own = await serving();
      await journey.kept(browser, `${own.address}index.html`).finally(own.end);
      await journey.newcomer(browser, `${own.address}index.html`);
    }],
    ...(existsSync("dist/pocket.html") ? [["the pocket edition computes from disk", (browser) => journey.computes(browser, `${onDisk}pocket.html`)]] : []),
  ];
}

const all = engines.filter((engine) => only.length === 0 || only.includes(engine));
const walked = steps().filter(([name]) => new RegExp(process.env.STEPS ?? "", "u").test(name));
const rows = new Map(walked.map(([name]) => [name, []]));
const versions = [];
const faults = [];
/** Walks one step, notes how it went, and says whether well. */
async function walk(engine, name, work) {
  const began = Date.now();
  try {
    await work();
    rows.get(name).push(`${((Date.now() - began) / 1000).toFixed(1)} s`);
  } catch (error) {
    rows.get(name).push("FAILS");
    faults.push(`* ${engine}, ${name}: ${error.message.slice(0, 1500)}`);
  }
  console.log(`${engine}: ${name}: ${rows.get(name).at(-1)}`);
  return rows.get(name).at(-1) !== "FAILS";
}
for (const engine of all) {
  let browser = await browserOf(engine);
  versions.push(browser.version);
  for (const [name, work] of walked) {
    browser.complaints.length = 0;
    if (await walk(engine, name, () => work(browser))) continue;
    // Whatever a fault left behind is not the next step's.
    await browser.close().catch(() => {});
    browser = await browserOf(engine);
  }
  await browser.close();
}
const off = "with scripts switched off";
rows.set(off, []);
for (const engine of all) {
  if (engine === "webkit") {
    rows.get(off).push("its driver needs scripts");
    continue;
  }
  const browser = await browserOf(engine, { scripts: false });
  await walk(engine, off, () => journey.withoutScripts(browser, `${site}index.html`));
  await browser.close();
}
end();
await rm(folder, { recursive: true });
await report(path, "# The journey in three engines", table(["step", ...versions], [...rows].map(([name, cells]) => [name, ...cells])), ...faults);
if (faults.length > 0) process.exitCode = 1;
