// Answers are hidden by the page's own CSS. Only a running script can reveal them,
// and no way of saving a page keeps what it does here: a dead copy shows no number.

const REVEALED = `
:root { order: 1; } /* of no effect there, and inherited by nothing: the mark of the sheet itself */
.live { display: block; }
.live.room { visibility: visible; }
.live[hidden] { display: none; }
.dead { display: none; }
.error:not([hidden]) { display: block; }
`;

const TOO_OLD =
  "Why: this browser lacks what the page needs to be sure that a dead copy shows no number (adopted style sheets). A newer browser has it.";

let sheet = null;

/** Shows the answers; where this browser cannot, it says so. */
export function reveal() {
  if (!revealed()) conceal(TOO_OLD);
}

function revealed() {
  if (!("adoptedStyleSheets" in Document.prototype)) return false;
  try {
    if (sheet === null) {
      sheet = new CSSStyleSheet();
      sheet.replaceSync(REVEALED);
    }
    if (!document.adoptedStyleSheets.includes(sheet)) {
      document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    }
  } catch {
    return false;
  }
  // Whatever parts a page has, this tells whether the sheet took effect.
  return getComputedStyle(document.documentElement).order === "1";
}

/** Hides every answer and says why. */
export function conceal(reason) {
  if (sheet !== null) document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  say(reason);
}

/** The reason in words, in place of the guesses in the markup; null brings the guesses back. */
export function say(reason) {
  const words = document.getElementById("dead-reason");
  words.textContent = reason ?? "";
  words.hidden = reason === null;
  for (const guess of document.querySelectorAll(".cause-unknown")) guess.hidden = reason !== null;
}
