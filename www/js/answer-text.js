import { cautionsOf, sentencesOf } from "./answer-words.js";

// An answer in short as text, for a chat or a forum. Its words are the engine's; all of it is behind the link. No DOM here.

const listed = (heading, lines) => (lines.length === 0 ? [] : ["", heading, ...lines.map((line) => `- ${line}`)]);
const figureLine = ({ noun, text, range }) => `${noun}: ${text}${range ? ` (${range})` : ""}`;
const cautionLine = ({ grave, text }) => (grave ? `Warning: ${text}` : text);

/** The answer's sentences, every figure with its range, what is missing, every caution, and the link that leads to all of it. */
export function answerText(title, answer, link, { version, figures }) {
  const { headline, sentences } = sentencesOf(answer);
  const { assumed, missing = [], cautions, rigs = [] } = answer;
  const arithmetic = cautions.filter(({ id }) => id === "arithmetic");
  return [
    ...[title, headline, ...sentences, assumed].filter(Boolean),
    ...listed("Rigs", rigs.map(({ noun, first }) => `${noun}: ${first}`)),
    ...listed("In numbers", answer.figures.map(figureLine)),
    ...listed("Not entered yet", missing.map(({ message }) => message)),
    ...listed("Watch for", [...arithmetic, ...cautionsOf(answer)].map(cautionLine)),
    "",
    "All of it, with workings and sources:",
    link,
    `Boughline ${version}, figures ${figures}`,
  ].join("\n");
}
