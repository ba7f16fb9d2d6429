// What drivers that speak of a page alike have in common.

/** The small interface of drivers/index.mjs on this page, but for `resize`. */
export function driven(version, browser, page) {
  const complaints = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  return {
    version,
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
    pdf: () => page.pdf({ format: "A4" }),
    close: () => browser.close(),
  };
}
