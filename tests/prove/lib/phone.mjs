// A mid-range phone as a browser imitates it, and how long somebody with one waits for a page's first answer.
import { fullLink } from "./pages.mjs";

export const SLOW_DOWN = 4; // times slower than this machine's processor
export const NETWORK = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 };
const SCREEN = { width: 412, height: 823 };
const PATIENCE = 60000; // ms

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

/** Keeps a page from taking typing for stopped, so that what it does then is in no measure of what it does before. */
export function typeOn() {
  const LATE = 400; // ms: the least that the pages wait for
  const later = globalThis.setTimeout;
  globalThis.setTimeout = (run, after, ...rest) => (after >= LATE ? 0 : later(run, after, ...rest));
}

/** Opens a page with a whole plan, after `before(session)`, until its first answer is on the screen. */
async function opened(site, { name, question }, options, before) {
  const page = await site.page(options);
  const session = await page.context().newCDPSession(page);
  await before(session, page);
  await page.addInitScript(watch);
  await page.goto(site.url + name + (question ? fullLink(question) : ""), { waitUntil: "commit", timeout: PATIENCE });
  await page.waitForFunction(() => globalThis.firstAnswer, null, { timeout: PATIENCE });
  return { page, session };
}

/** A page opened at the processor of a phone, with its first answer on the screen. */
export const onPhone = (site, which) => opened(site, which, { viewport: SCREEN },
  (session) => session.send("Emulation.setCPUThrottlingRate", { rate: SLOW_DOWN }));

/** Milliseconds from the navigation to the first answer over a phone's network, and how far things are pushed about. */
export async function firstAnswer(site, which) {
  const { page } = await opened(site, which, { viewport: SCREEN }, async (session) => {
    await session.send("Network.enable");
    await session.send("Network.emulateNetworkConditions", NETWORK);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOW_DOWN });
  });
  const took = await page.evaluate(() => ({ ms: Math.round(globalThis.firstAnswer), shifted: globalThis.shifted }));
  await page.context().close();
  return took;
}

/** Seconds of the main thread's own time so far: all, and of it script, and style and layout. */
export async function worked(session) {
  const { metrics } = await session.send("Performance.getMetrics");
  const of = (name) => metrics.find((metric) => metric.name === name).value;
  return { all: of("TaskDuration"), script: of("ScriptDuration"), layout: of("RecalcStyleDuration") + of("LayoutDuration") };
}

/** Seconds that a page's main thread works until its first answer, at this machine's own speed and over no network. */
export async function workToFirst(site, which) {
  const { page, session } = await opened(site, which, {}, async (session, page) => {
    await page.addInitScript(typeOn);
    await session.send("Performance.enable", { timeDomain: "threadTicks" });
  });
  const work = await worked(session);
  await page.context().close();
  return work;
}

/** The parts, in ms, of what a quiet machine would come to at the most: two ways there and back, the bytes, the slowed work. */
export const waits = (bytes, { all, script, layout }) => {
  const slowed = (seconds) => seconds * 1000 * SLOW_DOWN;
  return {
    latency: 2 * NETWORK.latency, bytes: (bytes / NETWORK.downloadThroughput) * 1000,
    script: slowed(script), layout: slowed(layout), rest: slowed(all - script - layout),
  };
};

export const sum = (parts) => Object.values(parts).reduce((total, part) => total + part, 0);
