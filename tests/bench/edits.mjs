// How long somebody who types waits for the answer: every question's page in Chromium at a phone's processor, from the
// edit until the frame with the answer to it is on the screen; and what the time goes into.
import { box } from "../pages/browser.mjs";
import { inTime } from "../pages/in-time.mjs";
import { onPhone, typeOn, worked } from "../prove/lib/phone.mjs";
import { middle } from "./times.mjs";

export const EDITS = 15;
const BETWEEN = 200; // ms from an answer to the next edit

/** What is typed: each text once, so that every answer is a new one. */
const texts = {
  bodyMass: (at) => `${70 + at} kg`,
  crotchHeight: (at) => `${140 + 2 * at}0 cm`,
  ropeDiameter: (at) => `${(10 + at / 10).toFixed(1)} mm`,
};

/** The box that is typed in, where it is not the climber's mass. */
const edited = { "rope-length": "crotchHeight", "cut-length": "ropeDiameter" };

/** Makes the page note, on its own clock, how long after an edit a frame with the answer to it is on the screen. */
function watchEdits() {
  const { port1, port2 } = new MessageChannel();
  let begun = 0;
  port1.onmessage = () => globalThis.answered(performance.now() - begun);
  // Before any listener of the page, which answers within the event.
  addEventListener("input", () => {
    begun = performance.now();
    requestAnimationFrame(() => port2.postMessage(null));
  }, { capture: true });
}

/** Puts a text in the place of what is in a box, in one edit. Answers with the ms until it has been answered. */
async function edit(page, field, text) {
  await box(page, field).evaluate((input) => input.select());
  const waited = inTime(page.evaluate(() => new Promise((done) => { globalThis.answered = done; })));
  await page.keyboard.insertText(text);
  const ms = await waited;
  await page.waitForTimeout(BETWEEN);
  return ms;
}

/** The engine's share of what a page's script takes, by the profiler. */
async function engineShare(session, work) {
  await session.send("Profiler.enable");
  await session.send("Profiler.setSamplingInterval", { interval: 500 });
  await session.send("Profiler.start");
  await work();
  const { profile } = await session.send("Profiler.stop");
  const frames = new Map(profile.nodes.map(({ id, callFrame }) => [id, callFrame]));
  let [engine, script] = [0, 0];
  for (const [at, id] of profile.samples.entries()) {
    const { url, functionName } = frames.get(id);
    if (url.startsWith("wasm:")) engine += profile.timeDeltas[at];
    else if (!["(idle)", "(program)", "(root)"].includes(functionName)) script += profile.timeDeltas[at];
  }
  return engine / (engine + script);
}

/** Of a question's page the middle and the worst edit in ms, and the ms of the main thread that one goes into. */
export async function edits(site, which) {
  const { page, session } = await onPhone(site, which);
  const field = edited[which.question] ?? "bodyMass";
  await page.evaluate(watchEdits);
  await page.evaluate(typeOn);
  const said = () => page.locator("#answer").evaluate((answer) => answer.textContent);
  await edit(page, field, texts[field](0)); // compiles what it needs
  const before = await said();
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const start = await worked(session);
  const times = [];
  for (let at = 1; at <= EDITS; at += 1) times.push(await edit(page, field, texts[field](at)));
  const end = await worked(session);
  if (before === await said()) throw new Error(`${which.name}: what was typed changed no answer.`);
  const share = await engineShare(session, async () => {
    for (let at = EDITS; at > 0; at -= 3) await edit(page, field, texts[field](at));
  });
  await page.context().close();
  const [all, script, layout] = ["all", "script", "layout"].map((part) => ((end[part] - start[part]) * 1000) / EDITS);
  return {
    middle: middle(times), worst: Math.max(...times),
    parts: { engine: script * share, page: script * (1 - share), layout, rest: all - script - layout },
  };
}
