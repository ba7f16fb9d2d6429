// How long a newcomer waits: `node first-answer.mjs TABLE`. A mid-range phone's processor on a slow mobile network opens a
// link with a whole plan and an empty cache; from the navigation until the first answer is on the screen, and how far what
// stands there is pushed about meanwhile.
import { availableParallelism, loadavg } from "node:os";
import { brotliCompressSync } from "node:zlib";
import { parts } from "../../pkg-config/parts.mjs";
import { bench } from "../pages/browser.mjs";
import { fullLink, pages } from "./lib/pages.mjs";
import { middle, report, table } from "./lib/table.mjs";

const RUNS = Number(process.env.RUNS ?? 3);
const TARGET = 1500; // ms, for a page that carries its own question's part; the whole library alone takes as long
const STEADY = 0.1; // layout shift that nobody minds
const PHONE = { width: 412, height: 823 };
const SLOW_DOWN = 4;
const NETWORK = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 };

/** Notes on the page's own clock when its first answer can be seen, or on a page that only tells, its first words. */
function watch() {
  const seen = () => {
    const answer = document.querySelector("#first, .headline");
    if (answer) return answer.textContent.trim() !== "" && answer.checkVisibility();
    return performance.getEntriesByName("first-contentful-paint").length > 0;
  };
  // What is found before a frame is on the screen with it; a message is heard next, before whatever the page does after.
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => { globalThis.firstAnswer = performance.now(); };
  const look = () => {
    if (document.readyState !== "loading" && seen()) port2.postMessage(null);
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
  globalThis.shifted = 0;
  new PerformanceObserver((list) => { for (const { value } of list.getEntries()) globalThis.shifted += value; }).observe({ type: "layout-shift", buffered: true });
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
  const page = await site.page({ viewport: PHONE });
  const session = await page.context().newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", NETWORK);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOW_DOWN });
  await page.addInitScript(watch);
  await page.goto(site.url + name + (question ? fullLink(question) : ""), { waitUntil: "commit", timeout: 60000 });
  await page.waitForFunction(() => globalThis.firstAnswer, null, { timeout: 60000 });
  const took = await page.evaluate(() => ({ ms: Math.round(globalThis.firstAnswer), shifted: globalThis.shifted }));
  await page.context().close();
  return took;
}

const site = await bench();
const rows = [];
const faults = [];
for (const page of (await pages()).filter(({ name }) => new RegExp(process.env.PAGES ?? "", "u").test(name))) {
  await (await fetch(site.url + page.name, { headers: { "Accept-Encoding": "br" } })).arrayBuffer(); // packed before, as a host does
  const runs = [];
  for (let run = 0; run < RUNS; run += 1) runs.push(await time(site, page));
  const seconds = Math.min(await work(site, page), await work(site, page));
  const bytes = brotliCompressSync(page.html).length;
  const times = runs.map(({ ms }) => ms);
  const shifted = Math.max(...runs.map((one) => one.shifted));
  const held = page.name.slice(0, -5) in parts;
  if (held && middle(times) > TARGET) faults.push(`* ${page.name}: ${middle(times)} ms`);
  if (shifted > STEADY) faults.push(`* ${page.name}: what stands there is pushed about, by ${shifted.toFixed(2)}`);
  rows.push([page.name, page.question ?? "(only tells)", (bytes / 1024).toFixed(0), seconds.toFixed(2), reckoned(bytes, seconds), times.join(", "), middle(times), held ? "yes" : "no", shifted.toFixed(3)]);
  console.log(rows.at(-1).join("  "));
}
await site.close();
await report(process.argv[2] ?? "target/first-answer.md",
  "# Until the first answer is on the screen",
  `Chromium, processor ${SLOW_DOWN} times slower, 1.6 Mbit/s, 150 ms, empty cache, a link with a whole plan; the middle of ${RUNS} runs. A page with the part of one question is held to ${TARGET} ms, every page to a shift of ${STEADY}.`,
  `Beside it this machine's ${availableParallelism()} cores had ${loadavg()[0].toFixed(1)} programs to run: more than cores, and the times are longer than a phone's. What is reckoned hangs less on that: the latency twice, the bytes, and the main thread's own time slowed down.`,
  table(["page", "question", "KB", "work, s", "reckoned, ms", "runs, ms", "middle, ms", `held to ${TARGET} ms`, "shift"], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
