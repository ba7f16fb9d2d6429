// A field of the library's table as HTML.
import { fieldTree } from "../www/js/field-tree.js";

const entities = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
export const escaped = (text) => text.replace(/[&<>"]/g, (letter) => entities[letter]);

const attribute = ([name, value]) => (value === true ? ` ${name}` : value === false ? "" : ` ${name}="${escaped(value)}"`);

// What holds blocks has each of them on a line of its own.
function markup(tree) {
  if (typeof tree === "string") return escaped(tree);
  const [name, attributes, ...children] = tree;
  const line = name === "div" || name === "select" ? "\n" : "";
  const start = `<${name}${Object.entries(attributes).map(attribute).join("")}>`;
  return name === "input" ? start : [start, ...children.map(markup), `</${name}>`].join(line);
}

/** The markup of `field` in the form of `question`; `hint` is the field's line of help. */
export const fieldMarkup = (question, field, hint) => markup(fieldTree(question, field, hint));
