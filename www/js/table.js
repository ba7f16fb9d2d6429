import { element } from "./element.js";

/** A table of rows that each begin with their heading; `foot`, if there is one, is a row that sums them up. */
export function table(caption, heads, rows, foot = null) {
  const row = ([first, ...rest]) =>
    element("tr", {}, element("th", { scope: "row" }, first), ...rest.map((cell) => element("td", {}, cell)));
  return element("table", {},
    element("caption", {}, caption),
    element("thead", {}, element("tr", {}, ...heads.map((head) => element("th", { scope: "col" }, head)))),
    element("tbody", {}, ...rows.map(row)),
    foot && element("tfoot", {}, row(foot)));
}
