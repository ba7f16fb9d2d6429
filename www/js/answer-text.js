// An answer as text for a chat or a forum. Its words are the engine's. No DOM here.

const listed = (heading, lines) => (lines.length === 0 ? [] : ["", heading, ...lines.map((line) => `- ${line}`)]);
const figureLine = ({ noun, text, range }) => `${noun}: ${text}${range ? ` (${range})` : ""}`;

/** The answer to a question with its ranges, what is missing, every caution, and the link that leads back to it. */
export function answerText(title, answer, link, { version, figures }) {
  const { verdict, first, second, assumed, missing = [], cautions } = answer;
  return [
    ...[title, verdict?.text, first, second, assumed].filter(Boolean),
    ...listed("In numbers", answer.figures.map(figureLine)),
    ...listed("Not entered yet", missing.map(({ message }) => message)),
    ...listed("Watch for", cautions.map(({ text }) => text)),
    "",
    link,
    `Boughline ${version}, figures ${figures}`,
  ].join("\n");
}
