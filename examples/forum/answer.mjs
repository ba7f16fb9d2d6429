// What a forum's bot posts below a link to a plan: `node answer.mjs LINK` prints the answer as Markdown.
import { asText, readLink } from "boughline";

const [link = ""] = process.argv.slice(2);
const { question, draft, view, notices } = readLink(link);
for (const notice of notices) console.log(`> ${notice}\n`);
// A link that names no question is of the whole plan.
console.log(asText(question ?? "trip-sheet", draft, view, "markdown", link.replace(/#.*$/su, "")));
