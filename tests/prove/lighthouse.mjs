// Every page over http as a phone gets it, audited: `node lighthouse.mjs TABLE`. Accessibility, best practices and
// findability must be 100; performance hangs on how busy this machine is and is reported.
import { createRequire } from "node:module";
import { loadavg } from "node:os";
import { siteServer } from "../../pkg-config/site.mjs";
import { pageNames } from "../pages/browser.mjs";
import { report, table } from "./lib/table.mjs";

const tools = createRequire(new URL("../../pkg-config/prove-tools/package.json", import.meta.url));
const { default: lighthouse } = await import(tools.resolve("lighthouse"));
const { launch } = await import(tools.resolve("chrome-launcher"));

const PERFORMANCE = 98; // at least, where nothing else runs
const WHOLE = ["accessibility", "best-practices", "seo"];
const [path = "target/lighthouse.md", ...only] = process.argv.slice(2);

const server = await siteServer();
await new Promise((ready) => { server.listen(0, "127.0.0.1", ready); });
const site = `http://127.0.0.1:${server.address().port}/`;
const chrome = await launch({
  chromePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  chromeFlags: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-component-update", "--disable-sync"],
});

const audited = async (name) => (await lighthouse(site + name, { port: chrome.port, logLevel: "error", onlyCategories: ["performance", ...WHOLE] })).lhr;

const rows = [];
const faults = [];
for (const name of (await pageNames()).filter((name) => only.length === 0 || only.includes(name))) {
  await (await fetch(site + name, { headers: { "Accept-Encoding": "br" } })).arrayBuffer(); // packed before, as a host does
  let lhr = await audited(name);
  if (lhr.runtimeError) lhr = await audited(name); // now and then the browser loses the beginning of its own trace
  const score = (category) => Math.round((lhr.categories[category].score ?? 0) * 100);
  const missed = (category) => lhr.categories[category].auditRefs
    .filter(({ id, weight }) => weight > 0 && lhr.audits[id].score !== null && lhr.audits[id].score < (category === "performance" ? 0.9 : 1))
    .map(({ id }) => `${id} ${lhr.audits[id].displayValue ?? ""}`.trim());
  const slow = missed("performance");
  rows.push([name, score("performance"), ...WHOLE.map(score), slow.join("; ")]);
  console.log(rows.at(-1).join("  "));
  for (const category of WHOLE) {
    if (score(category) < 100) faults.push(`* ${name}, ${category}: ${missed(category).join("; ") || lhr.runtimeError?.message || "no score"}`);
  }
}
await chrome.kill();
server.closeAllConnections();
server.close();
await report(path, "# Audits of every page",
  `A phone's screen, processor and network as the audit imitates them. Performance is to be ${PERFORMANCE} on a machine that does nothing else; this one had ${loadavg()[0].toFixed(1)} programs waiting.`,
  table(["page", "performance", ...WHOLE, "what costs speed"], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
