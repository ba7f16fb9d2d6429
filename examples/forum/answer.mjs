// What a forum's bot posts below a link to a plan: `node answer.mjs LINK` prints the answer as Markdown.
import { asText, readLink } from "boughline";

// A notice quotes the link, which anybody may have written: nothing in it may be markup. `asText` sees to its own.
const escaped = (text) => text.replace(/[\\`*_[\]()<>&#|~!$^]/gu, "\\$&");

const [link = ""] = process.argv.slice(2);
const { question, draft, view, notices } = readLink(link);
for (const notice of notices) console.log(`> ${escaped(notice)}\n`);
const [address = null] = /^https?:[\w.:/-]+/u.exec(link) ?? [];
// A link that names no question is of the whole plan.
console.log(asText(question ?? "trip-sheet", draft, view, "markdown", address));
