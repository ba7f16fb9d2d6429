import { LISTS, textOf, withRow, withWord, withoutRow } from "./cutting-rows.js";
import { element } from "./element.js";

// A list of cords or hanks by rows, beside the text box that holds it. Text and rows stay in step both ways.

/** Starts the editor in `node`, of the list it names; `view()` is how a bare number is read. Answers with `add(row)`. */
export function listEditor(node, engine, view) {
  const editor = new ListEditor(node, engine, view);
  editor.start();
  return editor;
}

class ListEditor {
  constructor(node, engine, view) {
    this.node = node;
    this.engine = engine;
    this.view = view;
    this.list = node.dataset.listEditor;
    this.box = node.closest("fieldset").querySelector(`[name="${this.list}"]`);
    this.fibres = engine.fields().find(({ id }) => id === "cordFibre").options;
    this.rows = [];
    this.written = null;
    this.place = element("ol", { class: "rows" });
  }

  start() {
    const { one } = LISTS[this.list];
    const add = element("button", { type: "button" }, `Add a ${one}`);
    add.addEventListener("click", () => this.change(withRow(this.list, this.rows), this.rows.length));
    this.node.replaceChildren(this.place, element("p", { class: "row" }, add));
    for (const type of ["input", "mirrored"]) this.box.addEventListener(type, () => this.follow());
    // The row that is left gets the units of its bare numbers.
    this.node.addEventListener("focusout", () => this.tidy());
    this.follow();
  }

  /** Takes over what the text says, unless the rows said it. */
  follow() {
    if (this.box.value === this.written) return;
    this.written = this.box.value;
    this.rows = this.engine.readRows(this.list, this.box.value);
    this.draw();
  }

  /** Fills the text box as typing does. */
  write(text) {
    this.written = text;
    this.box.value = text;
    this.box.dispatchEvent(new Event("input", { bubbles: true }));
  }

  tidy() {
    const text = this.engine.tidy(this.list, this.box.value, this.view());
    if (text === this.box.value) return;
    this.write(text);
    this.rows = this.engine.readRows(this.list, text);
    // Word by word: whoever goes from box to box keeps their place.
    this.rows.forEach((row, at) => LISTS[this.list].columns.forEach(({ id }) => {
      const control = this.place.children[at]?.querySelector(`[data-part="${id}"]`);
      if (control && control !== document.activeElement) control.value = row[id];
    }));
  }

  /** One more row, from elsewhere on the page. */
  add(row) {
    this.change([...this.rows, { ...LISTS[this.list].fresh, ...row }], null);
    this.tidy();
  }

  /** Writes changed rows; where `row` is given they are drawn anew, and it gets the focus. */
  change(rows, row) {
    this.rows = rows;
    this.write(textOf(this.list, rows));
    if (row === undefined) return;
    this.draw();
    if (row === null) return;
    const at = this.place.children[Math.min(row, rows.length - 1)];
    (at?.querySelector("input") ?? this.node.querySelector(":scope > p button")).focus();
  }

  draw() {
    this.place.replaceChildren(...this.rows.map((row, at) => this.row(row, at)));
  }

  row(row, at) {
    const { one, columns } = LISTS[this.list];
    const remove = element("button", { type: "button", class: "quiet", "aria-label": `Remove ${one} ${at + 1}` }, "✕ remove");
    remove.addEventListener("click", () => this.change(withoutRow(this.rows, at), Math.max(at - 1, 0)));
    const part = ({ id, noun }) => {
      const control = id === "fibre" ? this.fibre(row[id]) : element("input", {
        type: "text", value: row[id], autocomplete: "off", autocapitalize: "off", spellcheck: "false",
        inputmode: ["name", "diameter"].includes(id) ? null : "decimal",
      });
      control.dataset.part = id;
      control.addEventListener("input", (event) => {
        event.stopPropagation(); // the editor's own boxes are not fields of the plan
        this.change(withWord(this.rows, at, id, control.value));
      });
      return element("label", { class: `part-${id}` }, element("span", {}, noun), control);
    };
    return element("li", {}, element("div", { class: "parts-of", role: "group", "aria-label": `${one} ${at + 1}` }, ...columns.map(part), remove));
  }

  fibre(chosen) {
    const nothing = this.list === "cords" ? "as below" : "any";
    return element("select", {},
      element("option", { value: "" }, nothing),
      ...this.fibres.map(({ id, noun }) => element("option", { value: id, selected: id === chosen }, noun)));
  }
}
