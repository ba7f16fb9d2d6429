// What a phone makes of each question's page: the wait for its first answer, and for the answer to an edit.
import { brotliCompressSync } from "node:zlib";
import { parts } from "../../pkg-config/parts.mjs";
import { bench } from "../pages/browser.mjs";
import { pages } from "../prove/lib/pages.mjs";
import { firstAnswer, waits, workToFirst } from "../prove/lib/phone.mjs";
import { edits } from "./edits.mjs";
import { middle } from "./times.mjs";

const RUNS = 3;

/** `{ name, question, first, edit }` of each question's page. */
export async function onPhones() {
  const site = await bench();
  const found = [];
  for (const page of (await pages()).filter(({ name }) => name.slice(0, -5) in parts)) {
    await (await fetch(site.url + page.name, { headers: { "Accept-Encoding": "br" } })).arrayBuffer(); // packed before, as a host does
    const runs = [];
    for (let run = 0; run < RUNS; run += 1) runs.push((await firstAnswer(site, page)).ms);
    const work = await workToFirst(site, page);
    const first = { middle: middle(runs), worst: Math.max(...runs), parts: waits(brotliCompressSync(page.html).length, work) };
    found.push({ name: page.name, question: page.question, first, edit: await edits(site, page) });
    console.log(`   ${page.name}: first answer ${first.middle} ms, an edit ${found.at(-1).edit.middle.toFixed(0)} ms`);
  }
  await site.close();
  return found;
}
