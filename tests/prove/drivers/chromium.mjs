// Chromium behind the small interface of drivers/index.mjs.
import { createRequire } from "node:module";
import { driven } from "./driven.mjs";

const { chromium } = createRequire(new URL("../../../pkg-config/package.json", import.meta.url))("playwright-core");

/** What it cannot be brought to, and why. */
export const lacks = {};

export async function start({ scripts = true, forcedColours = false, calm = false } = {}) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
  const page = await (await browser.newContext({
    locale: "en-GB", javaScriptEnabled: scripts, forcedColors: forcedColours ? "active" : "none", reducedMotion: calm ? "reduce" : "no-preference",
  })).newPage();
  return { ...driven(`Chromium ${browser.version()}`, browser, page), resize: (width, height) => page.setViewportSize({ width, height }) };
}
