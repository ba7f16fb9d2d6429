const SVG = "http://www.w3.org/2000/svg";

function filled(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== false) node.setAttribute(name, value === true ? "" : String(value));
  }
  node.append(...children.filter((child) => child !== null));
  return node;
}

/** An HTML element; text children are text, never markup. */
export function element(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

/** An SVG element. */
export function svg(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children);
}

/** Sets text only where it differs, so that nothing is announced or selected anew. */
export function setText(node, text) {
  if (node.textContent !== text) node.textContent = text;
}
