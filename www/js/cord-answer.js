import { cordDrawing } from "./cord-drawing.js";
import { fitted } from "./scroll-box.js";
import { table } from "./table.js";

// What only the answer to "What length of cord?" has: the cord piece by piece, drawn and as a table.

function showCord(place, answer) {
  const row = ({ noun, text, range }) => [noun, text, range ?? "–"];
  const rows = answer.pieces.map(({ length }) => row(length));
  place.querySelector(".drawing").replaceChildren(cordDrawing(answer));
  place.querySelector(".items").replaceChildren(fitted(table("From one end of the cord to the other", ["Piece", "Length", "Range"], rows, row(answer.total))));
}

export const cordLength = {
  draw: (answer) => showCord(document.getElementById("cord"), answer),
  glance: ({ first }) => first,
  status: ({ first }) => first,
};
