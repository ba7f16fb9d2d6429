// The pocket edition with the present plan in it, for where there is no network.

const SLOT = '<meta name="plan" content="">';

/** The pocket edition's text with this plan in its slot; none where it has no such slot. */
export function pocketWith(html, plan) {
  const escaped = plan.replace(/&/gu, "&amp;").replace(/"/gu, "&quot;");
  const head = html.slice(0, html.indexOf("</head>")); // this very text is in the page's script too
  return head.includes(SLOT) ? html.replace(SLOT, () => SLOT.replace('""', () => `"${escaped}"`)) : null;
}

/** What the file is called: several plans stand apart by their day. */
export function fileName(day) {
  const two = (number) => String(number).padStart(2, "0");
  return `boughline-plan-${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}.html`;
}

function download(text, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "text/html" }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000); // some browsers ask first where to put it
}

/** Fetches, fills and hands over; answers with the sentence that says what came of it. */
async function kept(plan, carriesBody) {
  try {
    const response = await fetch("pocket.html");
    const text = response.ok ? pocketWith(await response.text(), plan) : null;
    if (text === null) return "The pocket edition is not where it should be. Open this page again, or save it by your browser’s menu.";
    const name = fileName(new Date());
    download(text, name);
    return `${name} is among your downloads. ${carriesBody ? "It carries your weight and strength. " : ""}Open it once before you leave.`;
  } catch {
    return "The pocket edition could not be fetched: there is no network. Save this page by your browser’s menu instead.";
  }
}

/** Wires the part of the page; `fragment()` writes the plan's link, "" or null when there is none, and `carriesBody()` tells whether a body is in it. */
export function offerKeeping(fragment, carriesBody) {
  const at = (id) => document.getElementById(id);
  const fetches = /^https?:/u.test(location.protocol);
  at("keep-pocket").hidden = !fetches;
  at("keep-by-hand").hidden = fetches;
  at("kept").textContent = "";
  at("keep-button").addEventListener("click", async () => {
    const plan = fragment();
    if (plan === null) return;
    at("kept").textContent = plan === "" ? "First mend the boxes marked above." : "Fetching it.";
    if (plan !== "") at("kept").textContent = await kept(plan, carriesBody());
  });
}
