// One small interface to three engines. `start({ scripts, forcedColours, calm })` of each gives a browser with one page:
// `open(address)` afresh, `type(selector, text)` and `press(key)` as a keyboard does, `click(selector)`, `resize(width,
// height)`, `evaluate(work, given)` in the page with one value, `pdf()`, `complaints` (with `deaf` where it hears none, and why),
// `version`, `close()`; `lacks` says what one cannot be brought to. The rest is made of these.
import * as chromium from "./chromium.mjs";
import * as firefox from "./firefox.mjs";
import * as webkit from "./webkit.mjs";

const PATIENCE = Number(process.env.PATIENCE ?? 30000); // ms

const ENGINES = { chromium, firefox, webkit };
export const engines = Object.keys(ENGINES);

/** Why an engine cannot be brought to this; nothing where it can. */
export const lackOf = (engine, need) => ENGINES[engine].lacks[need];

/** A browser of that engine, with what is the same for all. */
export async function browserOf(engine, options) {
  const browser = await ENGINES[engine].start(options);
  const text = (selector) => browser.evaluate((selector) => document.querySelector(selector)?.textContent ?? null, selector);
  /** Asks the page until it says yes; `what` is told when it does not. */
  const until = async (what, asked, given) => {
    const end = Date.now() + PATIENCE;
    let broke = ""; // while another page is on its way nobody can be asked
    const yes = () => browser.evaluate(asked, given).catch((error) => { broke = `: ${error.message}`; });
    while (!(await yes())) {
      if (Date.now() > end) throw new Error(`never ${what}${broke}`);
      await new Promise((later) => { setTimeout(later, 100); });
    }
  };
  return {
    ...browser,
    text,
    until,
    async resize(width, height) {
      await browser.resize(width, height);
      await until(`${width} px wide`, (width) => innerWidth === width, width);
    },
    choose: (selector, value) => browser.evaluate(([selector, value]) => {
      const list = document.querySelector(selector);
      list.value = value;
      list.dispatchEvent(new Event("input", { bubbles: true }));
      list.dispatchEvent(new Event("change", { bubbles: true }));
    }, [selector, value]),
    /** What has the focus, by its name or text. */
    focused: () => browser.evaluate(() => {
      const one = document.activeElement;
      return one.name || one.id || one.textContent.trim().slice(0, 40);
    }),
  };
}
