// Firefox, over WebDriver BiDi, behind the small interface of drivers/index.mjs.
import { createRequire } from "node:module";
import { driven } from "./driven.mjs";

const puppeteer = createRequire(new URL("../../../pkg-config/prove-tools/package.json", import.meta.url))("puppeteer-core");

/** What it cannot be brought to, and why. */
export const lacks = {};

export async function start({ scripts = true, forcedColours = false, calm = false } = {}) {
  const browser = await puppeteer.launch({
    browser: "firefox",
    executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr",
    headless: true,
    protocolTimeout: 120000,
    // The driver lets files read each other otherwise, and what fails for people would pass here.
    extraPrefsFirefox: {
      "security.fileuri.strict_origin_policy": true,
      "javascript.enabled": scripts,
      "intl.accept_languages": "en-GB",
      "browser.display.document_color_use": forcedColours ? 2 : 0,
      "ui.prefersReducedMotion": Number(calm),
    },
  });
  const page = await browser.newPage();
  return { ...driven(`Firefox ${(await browser.version()).split("/")[1]}`, browser, page), resize: (width, height) => page.setViewport({ width, height }) };
}
