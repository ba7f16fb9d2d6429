// The headers that netlify.toml gives a path, so that what is served here is what will be published.
import { readFile } from "node:fs/promises";
import { parse } from "smol-toml";

/** A function from a path to its headers, of which each must stand in one rule only. */
export async function headerRules(file = "netlify.toml") {
  const rules = parse(await readFile(file, "utf8")).headers ?? [];
  return (path) => {
    const headers = {};
    for (const { for: pattern, values } of rules) {
      if (!matches(pattern, path)) continue;
      for (const [name, value] of Object.entries(values)) {
        if (name in headers) throw new Error(`${file}: two rules give ${path} the header ${name}.`);
        headers[name] = value;
      }
    }
    return headers;
  };
}

// A star stands for the rest of the path, as at the host.
const matches = (pattern, path) =>
  pattern.endsWith("*") ? path.startsWith(pattern.slice(0, -1)) : pattern === path;
