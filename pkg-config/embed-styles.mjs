// The styles of an embedded question: www/css/embed.css under the site's own tokens, as a page of somebody else's may set them.
import { readFile } from "node:fs/promises";

const NAMES = ["paper", "ink", "soft", "rule", "edge", "can", "warn"];

const declared = (block) => new Map([...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name, value]));

/** What `:root` declares before any condition, in the dark, and in forced colours. */
function tokensIn(css) {
  const blocks = [...css.matchAll(/(@media \([\w-]+: [\w-]+\) \{\s*)?:root \{([^}]*)\}/g)].map(([, media = "", block]) => [media, declared(block)]);
  const of = (word) => blocks.find(([media]) => media.includes(word))?.[1];
  return { light: blocks.find(([media]) => media === "")?.[1], dark: of("dark"), forced: of("forced") };
}

/** Colours follow the scheme of the page round it where the browser can tell, else the reader's. */
export async function embedStyles(folder) {
  const { light, dark, forced } = tokensIn(await readFile(`${folder}/css/tokens.css`, "utf8"));
  const missing = [light, dark, forced].some((tokens) => NAMES.some((name) => !tokens?.has(name)));
  if (missing) throw new Error("tokens.css looks different: each of its three blocks declares every colour of embed-styles.mjs.");
  const rule = (value) => NAMES.map((name) => `--${name}: var(--boughline-${name}, ${value(name)});`).join(" ");
  return `${await readFile(`${folder}/css/embed.css`, "utf8")}
.sheet { --prose: ${light.get("prose")}; --plain: ${light.get("plain")}; ${rule((name) => light.get(name))} }
@media (prefers-color-scheme: dark) { .sheet { ${rule((name) => dark.get(name))} } }
@supports (color: light-dark(red, red)) { .sheet { color-scheme: inherit; ${rule((name) => `light-dark(${light.get(name)}, ${dark.get(name)})`)} } }
@media (forced-colors: active) { .sheet { ${NAMES.map((name) => `--${name}: ${forced.get(name)};`).join(" ")} } }
`;
}
