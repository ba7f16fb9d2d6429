// What was measured, as the parts of one file: ratios first, and a sentence to each table.
import { availableParallelism, loadavg } from "node:os";
import { table } from "../prove/lib/table.mjs";
import { asked } from "./asked.mjs";
import { LIMIT, PLANS } from "./cutting.mjs";
import { EDITS } from "./edits.mjs";
import { proportion } from "./grown.mjs";
import { middle } from "./times.mjs";

const ratio = (number) => (number === null ? "" : number.toFixed(2));
const ms = (time) => time.toFixed(time < 10 ? 2 : 0);

function ofAsked(found) {
  const rows = asked(found);
  const missed = rows.filter(({ holds }) => !holds);
  return [
    "## What was asked",
    `Of ${rows.length} bounds ${rows.length - missed.length} hold.`,
    table(["asked", "measured", "holds"], rows.map(({ asked, measured, holds }) => [asked, measured, holds ? "yes" : "no"])),
    ...(missed.length === 0 ? [] : ["Where it goes in what does not hold:", missed.map(({ asked, why }) => `* ${asked}: ${why}`).join("\n")]),
  ];
}

function ofContenders(plans) {
  const [climb] = plans;
  const over = (time) => middle(climb.each.map((one) => time(one) / one.native.ms));
  const ways = [
    ["native", 1, climb.native], ["the shipped module", over(({ wasm }) => wasm), climb.wasm],
    ["plain JavaScript", over(({ twin }) => twin), middle(climb.each.map(({ twin }) => twin))],
  ];
  return [
    "## One climb three ways",
    "20,000 climbs of 60 strokes: the module stands between a native build and a twin by hand.",
    table(["", "over native", "ms here"], ways.map(([name, times, time]) => [name, ratio(times), ms(time)])),
    "## Every question, the module over a native build",
    "The longer an answer is reckoned, the nearer the module is to native; of a short one most is the crossing, in which the answer becomes an object of JavaScript, and which the native side has not.",
    table(["what", "over native", "in single rounds", "module, ms here", "native, ms here (interval of the middle, 95 %)"], plans.map(({ name, ratios, native, wasm, each }) => {
      const { low, high } = each.find((one) => one.native.ms === native).native;
      return [name, ratio(middle(ratios)), ratios.map(ratio).join(", "), ms(wasm), `${ms(native)} (${ms(low)} to ${ms(high)})`];
    })),
  ];
}

function ofGrowth(growth) {
  const whole = growth.map(({ question, by, rows }) => {
    const [larger, longer] = [rows.at(-1).size / rows[0].size, rows.at(-1).ms / rows[0].ms];
    return { question, by, from: rows[0].size, to: rows.at(-1).size, larger, longer, word: proportion(larger, longer) };
  });
  const more = growth.flatMap(({ question, by, rows }) =>
    rows.flatMap(({ size, word }, at) => (word === "more than in proportion" ? [`${question}, ${by} from ${rows[at - 1].size} to ${size}`] : [])));
  const steps = growth.flatMap(({ question, by, rows }) => rows.map(({ size, larger, longer, ms: time, word }, at) =>
    [...(at === 0 ? [question, by] : ["", ""]), size, ratio(larger), ratio(longer), ms(time), word]));
  return [
    "## Growth",
    `How much longer a question takes when it grows: ${whole.filter(({ word }) => word === "more than in proportion").length} of ${whole.length} grow more than in proportion from end to end.`,
    table(["question", "by", "from", "to", "larger", "longer", ""],
      whole.map(({ question, by, from, to, larger, longer, word }) => [question, by, from, to, ratio(larger), ratio(longer), word])),
    `Step by step, each size beside the one above it. More than in proportion: ${more.length === 0 ? "none" : more.join("; ")}. Out of which hanks is a search, whose effort is counted and ends.`,
    table(["question", "by", "size", "larger", "longer", "ms here", ""], steps),
  ];
}

const ofCutting = (rows) => [
  "## Cutting plans",
  `Of ${PLANS} plans each: what usually comes is proved at once, cords that go three to a hank or just do not are the hard kind.`,
  table(["cords", "proved", `within ${LIMIT} ms`, "with the longest remainder", "ms, middle", "ms, slowest"],
    rows.map(({ kind, count, proved, inTime, whole, middle, slowest }) => [`${kind}, ${count}`, proved, inTime, whole, ms(middle), ms(slowest)])),
];

const WORK = ["engine", "page", "layout", "rest"];
const WAITS = ["latency", "bytes", "script", "layout", "rest"];

function ofPages(pages) {
  const [quickest] = [...pages].sort((one, other) => one.edit.middle - other.edit.middle);
  const over = (of, least) => ratio(of / least);
  const least = { edit: quickest.edit.middle, first: Math.min(...pages.map(({ first }) => first.middle)) };
  return [
    "## On a phone: an edit",
    `Chromium, processor four times slower, ${EDITS} edits: from the edit until the frame with its answer is on the screen; beside it the main thread’s time for one.`,
    table(["page", "over the quickest", "middle, ms", "worst, ms", "the library", "the page’s script", "style and layout", "the rest"],
      pages.map(({ name, edit }) => [name, over(edit.middle, least.edit), ms(edit.middle), ms(edit.worst), ...WORK.map((part) => ms(edit.parts[part]))])),
    "## On a phone: the first answer",
    "The same over 1.6 Mbit/s and 150 ms with an empty cache, from the navigation on; beside it what latency, bytes and work come to one after another. `pkg-config/prove first-answer` has every page.",
    table(["page", "over the quickest", "middle, ms", "worst, ms", "latency", "bytes", "script and library", "style and layout", "the rest"],
      pages.map(({ name, first }) => [name, over(first.middle, least.first), ms(first.middle), ms(first.worst), ...WAITS.map((part) => ms(first.parts[part]))])),
  ];
}

/** The whole file, a part a paragraph. */
export const tables = (found) => [
  "# Measured",
  `Ratios within one run are what counts; times are this machine’s, whose ${availableParallelism()} cores had ${loadavg()[1].toFixed(1)} programs to run.`,
  ...ofContenders(found.plans), ...ofAsked(found), ...ofGrowth(found.growth), ...ofCutting(found.cutting), ...ofPages(found.pages),
];
