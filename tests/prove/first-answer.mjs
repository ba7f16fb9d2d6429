// How long a newcomer waits: `node first-answer.mjs TABLE`. A mid-range phone's processor on a slow mobile network opens a
// link with a whole plan and an empty cache; from the navigation until the first answer is on the screen, and how far what
// stands there is pushed about meanwhile.
import { availableParallelism, loadavg } from "node:os";
import { brotliCompressSync } from "node:zlib";
import { parts } from "../../pkg-config/parts.mjs";
import { bench } from "../pages/browser.mjs";
import { pages } from "./lib/pages.mjs";
import { SLOW_DOWN, firstAnswer, sum, waits, workToFirst } from "./lib/phone.mjs";
import { middle, report, table } from "./lib/table.mjs";

const RUNS = Number(process.env.RUNS ?? 3);
const TARGET = 1500; // ms, for a page that carries its own question's part; the whole library alone takes as long
const STEADY = 0.1; // layout shift that nobody minds

const site = await bench();
const rows = [];
const faults = [];
for (const page of (await pages()).filter(({ name }) => new RegExp(process.env.PAGES ?? "", "u").test(name))) {
  await (await fetch(site.url + page.name, { headers: { "Accept-Encoding": "br" } })).arrayBuffer(); // packed before, as a host does
  const runs = [];
  for (let run = 0; run < RUNS; run += 1) runs.push(await firstAnswer(site, page));
  const [work] = [await workToFirst(site, page), await workToFirst(site, page)].sort((one, other) => one.all - other.all);
  const bytes = brotliCompressSync(page.html).length;
  const times = runs.map(({ ms }) => ms);
  const shifted = Math.max(...runs.map((one) => one.shifted));
  const held = page.name.slice(0, -5) in parts;
  if (held && middle(times) > TARGET) faults.push(`* ${page.name}: ${middle(times)} ms`);
  if (shifted > STEADY) faults.push(`* ${page.name}: what stands there is pushed about, by ${shifted.toFixed(2)}`);
  rows.push([
    page.name, page.question ?? "(only tells)", (bytes / 1024).toFixed(0), work.all.toFixed(2), Math.round(sum(waits(bytes, work))),
    times.join(", "), middle(times), held ? "yes" : "no", shifted.toFixed(3),
  ]);
  console.log(rows.at(-1).join("  "));
}
await site.close();
await report(process.argv[2] ?? "target/first-answer.md",
  "# Until the first answer is on the screen",
  `Chromium, processor ${SLOW_DOWN} times slower, 1.6 Mbit/s, 150 ms, empty cache, a link with a whole plan; the middle of ${RUNS} runs. A page with the part of one question is held to ${TARGET} ms, every page to a shift of ${STEADY}.`,
  `Beside it this machine's ${availableParallelism()} cores had ${loadavg()[0].toFixed(1)} programs to run: more than cores, and the times are longer than a phone's. What is reckoned hangs less on that: the latency twice, the bytes, and the main thread's own time slowed down.`,
  table(["page", "question", "KB", "work, s", "reckoned, ms", "runs, ms", "middle, ms", `held to ${TARGET} ms`, "shift"], rows), ...faults);
if (faults.length > 0) process.exitCode = 1;
