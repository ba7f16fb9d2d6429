import { element } from "./element.js";

/** The same table for a narrow place too, where its cells stand below their row's heading, each with its column's. */
export function stacking(content) {
  content.classList.add("stacking");
  const role = (one, name) => one.setAttribute("role", name); // laid out otherwise it is a table all the same
  const [head] = content.tHead.rows;
  role(content, "table");
  for (const group of [content.tHead, ...content.tBodies]) role(group, "rowgroup");
  for (const row of content.rows) {
    role(row, "row");
    for (const [i, cell] of [...row.cells].entries()) {
      role(cell, row === head ? "columnheader" : i === 0 ? "rowheader" : "cell");
      if (row !== head && i > 0) cell.dataset.head = head.cells[i].textContent;
    }
  }
  return content;
}

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
