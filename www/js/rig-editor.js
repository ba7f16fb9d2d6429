import { element, setText } from "./element.js";
import { withMoved, withRope, withStop, withWord, withoutStop } from "./rig-rows.js";

// A rig of one's own by choosing, for whoever would rather not write it. Text and rows stay in step both ways.

const WAITS = "The rows below follow as soon as the text can be read; the sentence at the box says what stands in the way.";

/** What has more to be said of it: a turn's kind or share, a knot's slack, a helper's pull. */
const WITH = new Set(["turn", "knot", "helper"]);

/** Starts the editor in `node`, beside the text box of the plan's own rig. */
export function rigEditor(node, engine) {
  new RigEditor(node, engine).start();
}

class RigEditor {
  constructor(node, engine) {
    this.node = node;
    this.engine = engine;
    this.box = node.closest("fieldset").querySelector("textarea");
    this.words = engine.rigWords();
    this.ropes = [];
    this.written = null;
    this.kept = null; // a text that could not be read when a row took its place
    this.note = element("p", { class: "hint", role: "status" });
    this.list = element("div", { class: "ropes" });
  }

  start() {
    const kinds = element("datalist", { id: "rig-turns" }, ...this.words.with.map(({ id, noun }) => element("option", { value: id }, noun)));
    const button = (word, press) => {
      const made = element("button", { type: "button" }, word);
      made.addEventListener("click", press);
      return made;
    };
    this.example = button("Begin with an example", () => this.begin());
    this.back = button("Put back what I wrote", () => this.putBack());
    this.node.replaceChildren(
      element("p", { class: "by-choosing" }, "The same by choosing:"), this.note, this.list,
      element("p", { class: "row" },
        button("Add a rope", () => this.change(withRope(this.ropes), this.ropes.length, 0)),
        this.example, this.back),
      kinds);
    // What was filled in by a link or an example, and what is being typed.
    for (const type of ["input", "mirrored"]) this.box.addEventListener(type, () => this.follow());
    this.follow();
  }

  begin() {
    const row = this.engine.fields().find(({ id }) => id === "ownRig");
    const read = this.engine.readRig(row.example);
    if (read.ok) this.change(read.ropes, 0, 0);
  }

  /** The text that a row took the place of, as it was typed. */
  putBack() {
    this.write(this.kept);
    this.box.focus();
  }

  /** Fills the text box as typing does. */
  write(text) {
    this.kept = null;
    this.box.value = text;
    this.box.dispatchEvent(new Event("input", { bubbles: true }));
  }

  /** Offers only what loses nothing: an example where nothing is typed, and the text that a row took the place of. */
  offer() {
    this.example.hidden = this.box.value.trim() !== "";
    this.back.hidden = this.kept === null;
  }

  /** Takes over what the text says, unless the rows said it. */
  follow() {
    this.offer();
    if (this.box.value === this.written) return;
    const read = this.engine.readRig(this.box.value);
    const empty = this.box.value.trim() === "";
    setText(this.note, read.ok || empty ? "" : WAITS);
    if (!read.ok && !empty) return;
    this.written = this.box.value;
    this.ropes = read.ok ? read.ropes : [];
    this.draw();
  }

  /** Writes changed rows into the text, as if they had been typed; redraws where `rope` is given, and goes to that stop. */
  change(ropes, rope, stop) {
    const unread = this.box.value !== this.written && this.box.value.trim() !== "" ? this.box.value : this.kept;
    this.ropes = ropes;
    this.written = this.engine.writeRig(ropes);
    this.write(this.written);
    this.kept = unread;
    this.offer();
    setText(this.note, "");
    if (rope === undefined) return;
    this.draw();
    const rows = this.list.querySelectorAll(`[data-rope="${rope}"] [data-stop]`);
    (rows[Math.min(stop, rows.length - 1)] ?? this.node).querySelector("select, button")?.focus();
  }

  draw() {
    this.list.replaceChildren(...this.ropes.map((stops, rope) =>
      element("fieldset", { "data-rope": rope },
        element("legend", {}, `Rope ${rope + 1}, from one end to the other`),
        element("ol", {}, ...stops.map((one, stop) => this.stop(one, rope, stop))),
        this.press("Add a stop", `Add a stop to rope ${rope + 1}`, () => this.change(withStop(this.ropes, rope), rope, stops.length)))));
  }

  press(word, label, react) {
    const made = element("button", { type: "button", class: "quiet", "aria-label": label }, word);
    made.addEventListener("click", react);
    return made;
  }

  stop(one, rope, stop) {
    const place = `rope ${rope + 1}, stop ${stop + 1}`;
    const amount = element("input", { type: "text", value: one.with, list: "rig-turns", autocomplete: "off", autocapitalize: "off", spellcheck: "false", "aria-label": `With what: ${place}`, hidden: !WITH.has(one.does) && one.with === "" });
    const choice = (key, what) => {
      const options = this.words[key].map(({ id, noun }) => element("option", { value: id, selected: id === one[key] }, noun));
      if (!this.words[key].some(({ id }) => id === one[key])) options.unshift(element("option", { value: one[key], selected: true }, one[key]));
      const select = element("select", { "aria-label": `${what}: ${place}` }, ...options);
      select.addEventListener("change", () => {
        this.change(withWord(this.ropes, rope, stop, key, select.value));
        if (key === "does") amount.hidden = !WITH.has(select.value) && amount.value === "";
      });
      return select;
    };
    amount.addEventListener("input", (event) => {
      event.stopPropagation(); // the editor's own boxes are not fields of the plan
      this.change(withWord(this.ropes, rope, stop, "with", amount.value));
    });
    return element("li", { "data-stop": stop },
      element("span", { class: "stop-row" }, choice("does", "What the rope does"), choice("on", "Where"), amount),
      element("span", { class: "stop-moves" },
        this.press("↑ earlier", `Earlier: ${place}`, () => this.change(withMoved(this.ropes, rope, stop, -1), rope, Math.max(stop - 1, 0))),
        this.press("↓ later", `Later: ${place}`, () => this.change(withMoved(this.ropes, rope, stop, 1), rope, stop + 1)),
        this.press("✕ remove", `Remove: ${place}`, () => this.change(withoutStop(this.ropes, rope, stop), rope, Math.max(stop - 1, 0)))));
  }
}
