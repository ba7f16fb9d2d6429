import { defineQuestion } from "./embed-element.js";

// The script that somebody else's page has. It brings the engine's part for a question from beside itself, once.

const script = document.currentScript ?? document.querySelector('script[src$="/embed.js"]'); // a module has no current script
const beside = (name) => new URL(name, script.src).href;
const published = SITE_ADDRESS === "" ? beside("") : SITE_ADDRESS.replace(/\/?$/u, "/"); // a copy elsewhere has no pages beside it

defineQuestion({
  bring: (question) => import(beside(`embed-${question}.js`)),
  site: (page) => new URL(page, published).href,
});
