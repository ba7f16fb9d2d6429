// The states that a page can be in, reached in the same way on all of them.
import { settled } from "./browser.mjs";

const unfold = (page) => page.evaluate(() => document.querySelectorAll("details").forEach((one) => { one.open = true; }));

/** The invented example's whole answer, with everything unfolded and a link copied. */
export async function answered(page) {
  await page.click("#show-example");
  await settled(page);
  // After what is drawn last nothing is drawn anew.
  if ((await page.locator("#helps").count()) > 0) await page.locator("#helps").waitFor();
  await unfold(page);
  if ((await page.locator("#copy-link").count()) > 0) await page.click("#copy-link");
}

/** Nonsense in every box that can be seen. */
async function inError(page) {
  await unfold(page);
  for (const one of await page.locator("form [data-field] :is(input, textarea):visible").all()) await one.fill("1,200 zz");
  await settled(page);
  await unfold(page);
}

const ownRig = "tied.tree--hitch.upper--hitch.climber--turn.climber.bearing-pulley--turn.upper.bearing-pulley--hand.climber";
/** Two plans side by side, then two texts that are no links. */
const compared = (first, second) => async (page) => {
  await page.fill("#first-link", first);
  await page.fill("#second-link", second);
  await settled(page);
  await unfold(page);
};
const person = "f=1&u=si&bodyMass=80kg&stature=1.75m";
/** Plans with something on the page that the example has not. */
const PLANS = {
  "index.html": {
    "a rig of one's own": `q=can-i-climb&${person}&climbHeight=11m&measuredPull=520N&rig=own&ownRig=${ownRig}`,
    "a word without end": `q=can-i-climb&${person}&climbHeight=${"x".repeat(300)}&${"y".repeat(300)}=1&rig=own&ownRig=${"z".repeat(300)}`,
    "a climb that takes long": `q=can-i-climb&${person}&climbHeight=25m&rig=tail-5&measuredPull=600N`,
  },
  "cord.html": { "a cutting plan": "q=cut-plan&f=1&u=si&cords=2~6mm~1.8m~foot%20loop,1~7mm~2.1m&hanks=any~5m" },
};

/** What can be done with a page of this markup: `{ state: { fragment, reach(page) } }`. */
export function statesOf(name, whole) {
  const [html] = whole.split("<template"); // of the pocket edition the page that is open
  const states = { empty: { reach: async () => {} } };
  if (html.includes('id="show-example"')) states.answered = { reach: answered };
  if (/<form[\s>]/u.test(html) && html.includes("data-field=")) states["in error"] = { reach: inError };
  if (html.includes('id="first-link"')) {
    const plan = (rig) => `#v=1&q=can-i-climb&${person}&climbHeight=11m&rig=${rig}`;
    states.compared = { reach: compared(plan("tail-3"), plan("tail-5")) };
    states["in error"] = { reach: compared("z".repeat(300), "#v=9") };
  }
  for (const [state, plan] of Object.entries(PLANS[name] ?? {})) states[state] = { fragment: `#v=1&${plan}`, reach: unfold };
  if (Object.keys(states).length === 1) states.unfolded = { reach: unfold };
  return states;
}
