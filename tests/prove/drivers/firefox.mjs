// Firefox, over WebDriver BiDi, behind the small interface of drivers/index.mjs.
import { createRequire } from "node:module";

const puppeteer = createRequire(new URL("../../../pkg-config/prove-tools/package.json", import.meta.url))("puppeteer-core");

export async function start({ scripts = true } = {}) {
  const browser = await puppeteer.launch({
    browser: "firefox",
    executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr",
    headless: true,
    protocolTimeout: 120000,
    // The driver lets files read each other otherwise, and what fails for people would pass here.
    extraPrefsFirefox: { "security.fileuri.strict_origin_policy": true, "javascript.enabled": scripts },
  });
  const page = await browser.newPage();
  const complaints = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  return {
    version: (await browser.version()).replace("/", " "),
    complaints,
    async open(address) {
      await page.goto("about:blank");
      await page.goto(address, { timeout: 60000 });
    },
    evaluate: (work, given) => page.evaluate(work, given),
    async type(selector, text) {
      await page.focus(selector);
      await page.keyboard.type(text);
    },
    press: (key) => page.keyboard.press(key),
    click: (selector) => page.click(selector),
    close: () => browser.close(),
  };
}
