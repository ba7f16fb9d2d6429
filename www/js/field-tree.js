// One field as label, hint, error slot and control: for the build, which writes it as HTML, and for an embedded
// question, which makes it as nodes. plan-field.js wires it; the contract is the class names, ids and data-attributes.
// No DOM here.

const ANSWERS = [{ id: "yes", noun: "yes" }, { id: "no", noun: "no" }];

/** The field as `[name, attributes, ...children]`, texts among the children; `hint` is its line of help. */
export function fieldTree(question, field, hint) {
  const id = `${question}-${field.id}`; // ids carry the question: one page may hold several
  const shared = { id, name: field.id, autocomplete: "off", "aria-describedby": `${id}-hint ${id}-error` };
  const options = field.kind === "yes-no" ? ANSWERS : field.options;
  const unit = options ? [] : [" ", ["span", { class: "unit", "data-unit": true }, field.unit ?? ""]];
  return ["div", { class: "field", "data-field": field.id },
    ["label", { for: id }, field.noun, ...unit],
    ["p", { class: "hint", id: `${id}-hint` }, hint],
    ["p", { class: "error", id: `${id}-error`, hidden: true }],
    options ? choiceBox(shared, options, field.likely) : textBox(shared, field.kind)];
}

// A number gets the decimal keyboard: a bare number takes the unit beside the label. A text may have several lines.
function textBox(shared, kind) {
  const plain = { autocapitalize: "off", spellcheck: "false" };
  return kind === "text"
    ? ["textarea", { ...shared, rows: "4", ...plain }]
    : ["input", { ...shared, type: "text", inputmode: "decimal", ...plain }];
}

// An empty first option only where nothing is taken for granted: nobody is to choose by not looking.
function choiceBox(shared, options, likely) {
  const rows = options.map(({ id, noun }) => ["option", { value: id, selected: id === likely }, noun]);
  return ["select", shared, ...(likely === null ? [["option", { value: "" }]] : []), ...rows];
}
