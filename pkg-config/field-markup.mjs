// One row of the library's field table as label, control, hint and error slot.
// www/js/plan-field.js wires what is written here; the contract is the class names, ids and data-attributes.

const entities = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
export const escaped = (text) => text.replace(/[&<>"]/g, (letter) => entities[letter]);

const answers = [{ id: "yes", noun: "yes" }, { id: "no", noun: "no" }];

/** The markup of `field` in the form of `question`; `hint` is the field's line of help. */
export function fieldMarkup(question, field, hint) {
  const id = `${question}-${field.id}`; // ids carry the question: one page may hold several
  const shared = `id="${id}" name="${field.id}" autocomplete="off" aria-describedby="${id}-hint ${id}-error"`;
  const options = field.kind === "yes-no" ? answers : field.options;
  const unit = options ? "" : ` <span class="unit" data-unit>${escaped(field.unit ?? "")}</span>`;
  return [
    `<div class="field" data-field="${field.id}">`,
    `<label for="${id}">${escaped(field.noun)}${unit}</label>`,
    `<p class="hint" id="${id}-hint">${escaped(hint)}</p>`,
    `<p class="error" id="${id}-error" hidden></p>`,
    options ? choiceBox(shared, options, field.likely) : textBox(shared, field.kind),
    `</div>`,
  ].join("\n");
}

// A number gets the decimal keyboard: a bare number takes the unit beside the label. A text may have several lines.
function textBox(shared, kind) {
  const plain = `autocapitalize="off" spellcheck="false"`;
  return kind === "text" ? `<textarea ${shared} rows="4" ${plain}></textarea>` : `<input ${shared} type="text" inputmode="decimal" ${plain}>`;
}

// An empty first option only where nothing is taken for granted: nobody is to choose by not looking.
function choiceBox(shared, options, likely) {
  const rows = options.map(({ id, noun }) => `<option value="${id}"${id === likely ? " selected" : ""}>${escaped(noun)}</option>`);
  if (likely === null) rows.unshift(`<option value=""></option>`);
  return `<select ${shared}>\n${rows.join("\n")}\n</select>`;
}
