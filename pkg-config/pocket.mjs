// The pocket edition: every page that a plan can go to, in one file that holds the library once.
import { inlined, moduleOf, stylesOf } from "./inline.mjs";

const main = /<main>\n([\s\S]*?)<\/main>\n/;

/** The names of the pages that the menus carry a plan to, in their order. The first is the one that opens. */
export const pagesOf = (menus) => [...menus.matchAll(/<a href="([\w-]+)\.html" data-page="/g)].map(([, name]) => name);

/** One page of the pocket: what stands in it, what it is made of, and the names it goes by. */
function leaf(name, html) {
  const content = main.exec(html)?.[1];
  const title = /<title>(.*)<\/title>/.exec(html)?.[1];
  const [module, [sheet]] = [moduleOf(html), stylesOf(html)];
  if (!content || !title || !module || !sheet) throw new Error(`${name}.html lacks <main>, <title>, a style sheet or a script to put into the pocket edition.`);
  return { name, content, module, sheet, names: `data-leaf="${name}" data-title="${title}"` };
}

/** Each page's own styles, of which those of the open page count: two pages may style one name in two ways. */
const styles = (leaves) => leaves.map(({ name, sheet }, i) =>
  `<link rel="stylesheet" href="${sheet}" data-leaf="${name}" media="${i === 0 ? "all" : "not all"}">\n`).join("");

/** In the pocket a page is not another file but another fragment; any other page stays where the site is. */
const withinOneFile = (html, names, address) => html.replace(/<a href="([\w-]+)\.html(#[^"]*)?"/g, (whole, name, place = "") => {
  if (names.includes(name)) return `<a href="#${name}/" data-leaf="${name}"`;
  return address === "" ? whole : `<a href="${new URL(`${name}.html${place}`, address)}"`;
});

/** The pocket edition of these pages; `expanded` gives one in full, unmarked in its menus. */
export async function pocketEdition(names, expanded, site, address) {
  const whole = await Promise.all(names.map((name) => expanded(`${name}.html`)));
  const leaves = names.map((name, i) => leaf(name, whole[i]));
  const [first, ...others] = leaves;
  const templates = others.map(({ names, content }) => `<template ${names}>\n${content}</template>\n`).join("");
  const html = whole[0]
    .replace(main, () => `<main ${first.names}>\n${first.content}</main>\n${templates}`)
    .replace('<meta charset="utf-8">', (charset) => `${charset}\n<!-- A plan that this copy opens on: the part of its link behind #. -->\n<meta name="plan" content="">`)
    .replace(/(<meta name="description" content=")[^"]*/, "$1Every question of rope arithmetic for people who climb trees in one file that computes without a network, with a plan in it or without.")
    .replace(`src="${first.module}"`, 'src="js/pocket-pages.js"')
    .replace(`<link rel="stylesheet" href="${first.sheet}">\n`, styles(leaves));
  const openers = leaves.map(({ name, module }) => `  ${JSON.stringify(name)}: () => import("../${module}"),\n`).join("");
  return inlined(withinOneFile(html, names, address), site, "boughline/inline", `import { openPocket } from "./pocket.js";\nopenPocket({\n${openers}});\n`);
}
