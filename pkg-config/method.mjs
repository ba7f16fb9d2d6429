// How the library reckons as HTML: its own tables, as pages show them.
import { escaped } from "./field-markup.mjs";

const cited = (ids) => ids.map((id) => `<a href="#source-${id}">${id}</a>`).join(", ");
const unit = (symbol) => (symbol ? ` ${escaped(symbol)}` : "");
const upper = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** A table that scrolls in its own place where it is wider than the page. */
function table(caption, heads, rows, id = "") {
  const cells = (row) => row.map((cell, at) => (at ? `<td>${cell}</td>` : `<th scope="row">${cell}</th>`)).join("");
  return [
    `<div class="scroll"${id && ` id="${id}"`} tabindex="0" role="region" aria-label="${escaped(caption.replace(/<[^>]*>/g, ""))}">`,
    `<table>`,
    `<caption>${caption}</caption>`,
    `<thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join("")}</tr></thead>`,
    `<tbody>`,
    ...rows.map((row) => `<tr>${cells(row)}</tr>`),
    `</tbody>`,
    `</table>`,
    `</div>`,
  ].join("\n");
}

function figure({ figure: ends, unit: symbol }) {
  if (!ends) return `given${symbol ? `, in ${escaped(symbol)}` : ""}`;
  const [low, likely, high] = ends;
  return low === high ? `${likely}${unit(symbol)}` : `${likely}${unit(symbol)} (${low} to ${high})`;
}

function terms(formula) {
  if (!formula.terms.length) return [];
  const [result] = formula.symbols.at(-1)?.split(" = ") ?? [];
  const rows = formula.terms.map((term) => [
    term.symbol ? `<b>${escaped(term.symbol)}</b> ${escaped(term.means)}` : escaped(upper(term.means)),
    term.symbol && term.symbol === result && !term.figure ? `the result${term.unit ? `, in ${escaped(term.unit)}` : ""}` : figure(term),
    cited(term.sources),
  ]);
  return [table(`Figures: ${escaped(formula.gives)}`, ["what", "likely (range)", "from"], rows)];
}

function example({ example: tried }) {
  if (!tried) return [];
  const said = ({ symbol, value, unit: of }) => `${escaped(symbol)} = ${value}${unit(of)}`;
  const given = tried.given.length ? `With ${tried.given.map(said).join(", ")}: ` : "At likely values: ";
  return [`<p class="example">Example, by the library itself. ${given}<strong>${said(tried.gives)}</strong>.</p>`];
}

function formulaMarkup(formula) {
  return [
    `<section class="formula" id="formula-${formula.id}">`,
    `<h3>${escaped(formula.gives)}</h3>`,
    `<p>${escaped(formula.words)}</p>`,
    ...(formula.symbols.length ? [`<p class="equation">${formula.symbols.map(escaped).join("<br>")}</p>`] : []),
    ...terms(formula),
    ...example(formula),
    `<p class="rests">Rests on ${cited(formula.sources)}. Used: ${escaped(formula.used)}</p>`,
    `</section>`,
  ].join("\n");
}

function tableMarkup({ id, caption, heads, rows, sources }) {
  const shown = rows.map((row) => row.map((cell, at) => {
    if (!/^sources?$/.test(heads[at])) return escaped(cell);
    return cited(cell.split(", "));
  }));
  const from = sources.length ? `\n<p class="rests">Rests on ${cited(sources)}.</p>` : "";
  return table(escaped(caption), heads.map(escaped), shown, `table-${id}`) + from;
}

function noteMarkup({ about, says, sources }) {
  return `<dt>${escaped(upper(about))}</dt>\n<dd>${escaped(says)}${sources.length ? ` <span class="rests">Rests on ${cited(sources)}.</span>` : ""}</dd>`;
}

function chapterMarkup({ id, title, about, formulas, tables, notes }) {
  return [
    `<section class="chapter" id="${id}" aria-labelledby="${id}-title">`,
    `<h2 id="${id}-title">${escaped(title)}</h2>`,
    `<p>${escaped(about)}</p>`,
    ...formulas.map(formulaMarkup),
    ...tables.map(tableMarkup),
    ...(notes.length ? [`<dl class="notes">`, ...notes.map(noteMarkup), `</dl>`] : []),
    `</section>`,
  ].join("\n");
}

function takes({ kind, range, options, example: shown }) {
  if (options) return options.map(({ noun }) => escaped(noun)).join("; ");
  return kind === "text" ? `a text, as ${escaped(shown)}` : escaped(range);
}

function fieldsMarkup(fields) {
  const left = ({ likely, options }) => (likely === null ? "nothing is taken" : escaped(options?.find(({ id }) => id === likely)?.noun ?? likely));
  const rows = fields.map((field) => [
    `<span id="field-${field.id}">${escaped(field.noun)}</span> <code>${field.id}</code>`, takes(field), left(field), escaped(field.why),
  ]);
  return [
    `<section class="chapter" id="fields" aria-labelledby="fields-title">`,
    `<h2 id="fields-title">Every box, its limits and why</h2>`,
    `<p>What is outside its limits is refused with a sentence; what is left open is taken as shown, and the answer says so. The word in another type is the box’s name in links.</p>`,
    table("All boxes", ["box", "what it takes", "left open", "why"], rows),
    `</section>`,
  ].join("\n");
}

/** Where each source is used: formulas, tables and chapters that rest on it. */
function usesOf(chapters) {
  const uses = new Map();
  const add = (ids, href, name) => {
    for (const id of ids) uses.set(id, (uses.get(id) ?? new Map()).set(href, name));
  };
  for (const chapter of chapters) {
    for (const { id, gives, sources } of chapter.formulas) add(sources, `formula-${id}`, gives);
    for (const { id, caption, sources } of chapter.tables) add(sources, `table-${id}`, caption.split(/[:;,]/)[0]);
    for (const { sources } of chapter.notes) add(sources, chapter.id, chapter.title);
  }
  return uses;
}

function sourcesMarkup({ sources, chapters }) {
  const uses = usesOf(chapters);
  const line = ({ id, title, obtained }) => {
    const used = [...uses.get(id) ?? []].map(([href, name]) => `<a href="#${href}">${escaped(name)}</a>`).join("; ");
    return `<dt id="source-${id}">${escaped(title)}</dt>\n<dd><b>${escaped(upper(obtained))}.</b> <code>${id}</code>. Used for: ${used}.</dd>`;
  };
  return [
    `<section class="chapter" id="sources" aria-labelledby="sources-title">`,
    `<h2 id="sources-title">Every source, and how its figures were obtained</h2>`,
    `<p>Read means read in a stored copy of the source; quoted, read in a second source that quotes the first; from memory, recalled and not checked; computed, reckoned again from open data; judged, nobody published it.</p>`,
    `<dl class="sources">`,
    ...sources.map(line),
    `</dl>`,
    `</section>`,
  ].join("\n");
}

const more = [["fields", "Every box, its limits and why"], ["sources", "Every source, and how its figures were obtained"]];

/** The list of what stands on the page. */
export function contents({ chapters }) {
  const link = ([id, title]) => `<li><a href="#${id}">${escaped(title)}</a></li>`;
  return [
    `<nav class="contents" aria-label="On this page">`,
    `<ol>`,
    ...chapters.map(({ id, title }) => link([id, title])),
    ...more.map(link),
    `</ol>`,
    `<details>`,
    `<summary>Every formula by name</summary>`,
    `<ul>`,
    ...chapters.flatMap(({ formulas }) => formulas.map(({ id, gives }) => link([`formula-${id}`, gives]))),
    `</ul>`,
    `</details>`,
    `</nav>`,
  ].join("\n");
}

/** All chapters, boxes and sources. */
export const method = (tables, fields) => [...tables.chapters.map(chapterMarkup), fieldsMarkup(fields), sourcesMarkup(tables)].join("\n\n");
