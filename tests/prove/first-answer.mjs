// How long a newcomer waits: `node first-answer.mjs TABLE`. A mid-range phone's processor on a slow mobile network opens a
// link with a whole plan and an empty cache; from the navigation until the first answer is on the screen.
import { availableParallelism, loadavg } from "node:os";
import { brotliCompressSync } from "node:zlib";
import { bench } from "../pages/browser.mjs";
import { fullLink, pages } from "./lib/pages.mjs";
import { middle, report, table } from "./lib/table.mjs";

const RUNS = Number(process.env.RUNS ?? 3);
const TARGET = 1500; // ms
const SLOW_DOWN = 4;
const NETWORK = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 };

/** Notes on the page's own clock when its first answer can be seen, or on a page that only tells, its first words. */
function watch() {
  const seen = () => {
    const answer = document.querySelector("#first, .headline");
    if (answer) return answer.checkVisibility() && answer.textContent.trim() !== "";
    return performance.getEntriesByName("first-contentful-paint").length > 0;
  };
  const look = () => {
    if (document.readyState !== "loading" && seen()) requestAnimationFrame(() => { globalThis.firstAnswer = performance.now(); });
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** Seconds that the page's main thread works until then, at this machine's own speed and over no network. */
async function work(site, { name, question }) {
  const page = await site.page();
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  await page.addInitScript(watch);
  await page.goto(site.url + name + (question ? fullLink(question) : ""), { waitUntil: "commit", timeout: 60000 });
  await page.waitForFunction(() => globalThis.firstAnswer, null, { timeout: 60000 });
  const { metrics } = await session.send("Performance.getMetrics");
  await page.context().close();
  return metrics.find((metric) => metric.name === "TaskDuration").value;
}

/** What a quiet machine would come to at the most: two ways there and back, the bytes, and the slowed work one after another. */
const reckoned = (bytes, seconds) => Math.round(2 * NETWORK.latency + (bytes / NETWORK.downloadThroughput) * 1000 + seconds * 1000 * SLOW_DOWN);

async function time(site, { name, question }) {
  const page = await site.page();
  const session = await page.context().newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", NETWORK);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOW_DOWN });
  await page.addInitScript(watch);
  await page.goto(site.url + name + (question ? fullLink(question) : ""), { waitUntil: "commit", timeout: 60000 });
  await page.waitForFunction(() => globalThis.firstAnswer, null, { timeout: 60000 });
  const took = await page.evaluate(() => globalThis.firstAnswer);
  await page.context().close();
  return took;
}

const site = await bench();
const rows = [];
for (const page of await pages()) {
  await (await fetch(site.url + page.name, { headers: { "Accept-Encoding": "br" } })).arrayBuffer(); // packed before, as a host does
  const times = [];
  for (let run = 0; run < RUNS; run += 1) times.push(Math.round(await time(site, page)));
  const seconds = Math.min(await work(site, page), await work(site, page));
  const bytes = brotliCompressSync(page.html).length;
  rows.push([page.name, page.question ?? "(only tells)", (bytes / 1024).toFixed(0), seconds.toFixed(2), reckoned(bytes, seconds), times.join(", "), middle(times), middle(times) <= TARGET ? "yes" : "no"]);
}
await site.close();
await report(process.argv[2] ?? "target/first-answer.md",
  "# Until the first answer is on the screen",
  `Chromium, processor ${SLOW_DOWN} times slower, 1.6 Mbit/s, 150 ms, empty cache, a link with a whole plan; the middle of ${RUNS} runs. Reported, not held to.`,
  `Beside it this machine's ${availableParallelism()} cores had ${loadavg()[0].toFixed(1)} programs to run: more than cores, and the times are longer than a phone's. What is reckoned hangs less on that: the latency twice, the bytes, and the main thread's own time slowed down.`,
  table(["page", "question", "KB", "work, s", "reckoned, ms", "runs, ms", "middle, ms", `within ${TARGET} ms`], rows));
