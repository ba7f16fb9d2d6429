import { correction, generate } from "lean-qr";
import { svg } from "./element.js";

const QUIET = 4; // modules of white that a reader needs on every side (ISO/IEC 18004)

/** The dark modules of a code as one path, a run of a row at a time; nothing where the text is too long for any code. */
export function codePath(text) {
  let code;
  try {
    code = generate(text, { minCorrectionLevel: correction.L, maxCorrectionLevel: correction.M });
  } catch {
    return null;
  }
  let d = "";
  for (let y = 0; y < code.size; y += 1) {
    for (let x = 0; x < code.size; x += 1) {
      let run = 0;
      while (code.get(x + run, y)) run += 1;
      if (run > 0) d += `M${x + QUIET} ${y + QUIET}h${run}v1h-${run}z`;
      x += run;
    }
  }
  return { d, size: code.size + 2 * QUIET };
}

/** The code as a drawing, dark on light in every scheme; nothing where the text is too long. */
export function codeDrawing(text) {
  const code = codePath(text);
  if (code === null) return null;
  return svg("svg", { class: "code", viewBox: `0 0 ${code.size} ${code.size}`, role: "img", "aria-label": "QR code of the link beside it", "shape-rendering": "crispEdges" },
    svg("path", { d: code.d }));
}
