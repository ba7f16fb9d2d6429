import assert from "node:assert/strict";
import { test } from "node:test";
import { KNOWN, usualView, viewByTables } from "../../www/js/usual-view.js";

test("a reader's language gives units and decimal mark, and no country is guessed from a bare language", () => {
  for (const [language, system, decimal] of [
    ["en-GB", "si", "."], ["en", "si", "."], ["en-US", "us", "."], ["es-US", "us", "."], ["de-DE", "si", ","],
    ["fr", "si", ","], ["pt-BR", "si", ","], ["de-CH", "si", "."], ["ar-EG", "si", "."], ["", "si", "."], ["not a language", "si", "."],
  ]) assert.deepEqual(usualView(language), { system, decimal }, language);
});

test("what is known of a language is what the tables say", () => {
  for (const [language, view] of KNOWN) assert.deepEqual(view, viewByTables(language), language);
});
