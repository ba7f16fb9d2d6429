// Nothing that is built gives leave, promises or reassures: pages, texts of the package, what others' pages load.
// The list is that of `tests/wording/permission.rs`, which reads the sentences of answers.
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";

const lines = readFileSync("tests/data/permission.txt", "utf8").split("\n").filter((line) => line !== "" && !line.startsWith("#"));
const untrue = lines.filter((line) => line.startsWith("said: ")).map((line) => line.slice("said: ".length));
const phrases = lines.filter((line) => !line.startsWith("said: "));
const found = new RegExp(`(?<!\\p{L})(?:${phrases.map((one) => one.replace(/[.*+?^$()[\]\\|{}]/gu, "\\$&")).join("|")})(?!\\p{L})`, "u");

/** The first phrase of leave in a text, with what stands round it; undefined where there is none. */
function leaveIn(text) {
  let plain = text.toLowerCase().replace(/\s+/gu, " ");
  for (const place of untrue) plain = plain.replaceAll(place, "");
  const at = plain.search(found);
  return at < 0 ? undefined : plain.slice(Math.max(0, at - 40), at + 60);
}

const entities = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'" };
/** What can be read or heard of a page, but for the names in the chapter on what is never said. */
function textOf(html) {
  const markup = html.replace(/<(script|style)\b[\s\S]*?<\/\1>/gu, " ")
    .replace(/<section class="chapter" id="never"[\s\S]*?<\/section>/u, (chapter) => chapter.replace(/<dt>[\s\S]*?<\/dt>/gu, " "));
  const heard = [...markup.matchAll(/ (?:aria-label|alt|title|placeholder|content)="([^"]*)"/gu)].map(([, text]) => text);
  // A word in another type is still in its sentence.
  return [markup.replace(/<\/?(?:b|i|em|strong|a|span|code)\b[^>]*>/gu, "").replace(/<[^>]*>/gu, " . "), ...heard].join(" . ")
    .replace(/&(?:amp|lt|gt|quot|#39);/gu, (entity) => entities[entity]);
}

/** The texts between quotes in a script: what it can put into a page. */
const quoted = (script) => [...script.matchAll(/"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/gu)].map(([, one, other]) => one ?? other).filter((text) => text.includes(" "));

for (const name of readdirSync("dist").filter((file) => file.endsWith(".html"))) {
  test(`${name} gives no leave`, () => assert.equal(leaveIn(textOf(readFileSync(`dist/${name}`, "utf8"))), undefined));
}

test("no text that a script of the pages holds gives leave", () => {
  for (const name of readdirSync("www/js").filter((file) => file.endsWith(".js"))) {
    for (const text of quoted(readFileSync(`www/js/${name}`, "utf8"))) assert.equal(leaveIn(text), undefined, `${name}: ${text}`);
  }
});

test("no text of the package gives leave", async () => {
  for (const name of ["README.md", "package.json"]) assert.equal(leaveIn(readFileSync(`dist/npm/${name}`, "utf8")), undefined, name);
  const { fields, catalogue, sources } = await import("boughline");
  const every = (value) => (typeof value === "string" ? [value] : value && typeof value === "object" ? Object.values(value).flatMap(every) : []);
  const texts = every([fields(), catalogue(), sources()]);
  assert.ok(texts.length > 500);
  for (const text of texts) assert.equal(leaveIn(text), undefined, text);
});

test("what the project says of itself gives no leave", () => {
  for (const name of ["README.md", "CHANGELOG.md", "examples/README.md"]) assert.equal(leaveIn(readFileSync(name, "utf8")), undefined, name);
});

test("leave is found where it is", () => {
  assert.match(leaveIn(textOf("<p>On this rig\n<b>you</b> can climb.</p>")), /you can climb/u);
  assert.match(leaveIn(textOf('<img alt="A limb that is safe">')), /is safe/u);
  assert.equal(leaveIn("No time is safe."), undefined);
  assert.ok(phrases.length > 80 && untrue.length < 12);
});
