// Chromium behind the small interface of drivers/index.mjs.
import { createRequire } from "node:module";
import { driven } from "./driven.mjs";

const { chromium } = createRequire(new URL("../../../pkg-config/package.json", import.meta.url))("playwright-core");

export async function start({ scripts = true } = {}) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
  const page = await (await browser.newContext({ javaScriptEnabled: scripts })).newPage();
  return driven(`Chromium ${browser.version()}`, browser, page);
}
