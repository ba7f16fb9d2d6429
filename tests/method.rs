//! The method page's tables: every source stands in them, and every formula as it is printed gives what the library
//! gives.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::panic, reason = "a symbol that nobody explains fails the test")]

#[path = "method/sums.rs"]
mod sums;

use boughline::method::{Chapter, Formula, Term, chapters, digits};
use boughline::question::all_fields;
use boughline::source::{Obtained, SOURCES};
use boughline::words::method;
use std::collections::BTreeSet;
use sums::{names, value};

fn formulas() -> Vec<Formula> {
    chapters().into_iter().flat_map(|chapter| chapter.formulas).collect()
}

#[test]
fn every_source_stands_by_a_formula_a_table_or_a_note() {
    let cited: BTreeSet<&str> = chapters().iter().flat_map(Chapter::sources).map(|source| source.id).collect();
    let missing: Vec<&str> = SOURCES.iter().map(|source| source.id).filter(|id| !cited.contains(id)).collect();
    assert!(missing.is_empty(), "write in a chapter of src/method/ what comes from {missing:?}");
}

#[test]
fn every_formula_as_it_is_printed_gives_what_the_library_gives() {
    let mut tried = 0;
    for formula in formulas() {
        let has_equation = formula.symbols.contains(" = ");
        let Some(example) = formula.example.as_ref().filter(|_| has_equation) else {
            assert!(
                !has_equation && formula.example.is_none(),
                "{}: an equation and an example go together",
                formula.id
            );
            continue;
        };
        let mut known: Vec<(String, f64)> = vec![("π".to_owned(), std::f64::consts::PI)];
        known.extend(example.given.0.iter().map(|(symbol, number)| ((*symbol).to_owned(), *number)));
        for term in formula.terms.iter().filter(|term| !term.symbol.is_empty()) {
            known.extend(term.ends().map(|[_, likely, _]| (term.symbol.to_owned(), likely)));
        }
        let mut result = f64::NAN;
        for line in formula.symbols.lines() {
            let (symbol, sum) = line.split_once(" = ").unwrap_or_else(|| panic!("{}: {line}", formula.id));
            result = value(sum, &known).unwrap_or_else(|wrong| panic!("{}: {wrong} in {line}", formula.id));
            known.push((symbol.to_owned(), result));
        }
        let off = (result - example.gives).abs() / example.gives.abs();
        assert!(off < 1e-9, "{}: {} is printed, {} is reckoned", formula.id, result, example.gives);
        tried += 1;
    }
    assert!(tried > 45, "{tried}");
}

#[test]
fn every_symbol_is_explained_and_none_for_nothing() {
    for formula in formulas() {
        let mut printed = BTreeSet::new();
        for line in formula.symbols.lines() {
            printed.extend(names(line));
        }
        printed.remove("π");
        let helpers: BTreeSet<String> = {
            let lines: Vec<&str> = formula.symbols.lines().collect();
            let count = lines.len().saturating_sub(1);
            lines.iter().take(count).filter_map(|line| line.split(" = ").next().map(str::to_owned)).collect()
        };
        let explained: BTreeSet<String> =
            formula.terms.iter().filter(|term| !term.symbol.is_empty()).map(|term| term.symbol.to_owned()).collect();
        let of_its_own: BTreeSet<String> = printed.difference(&helpers).cloned().collect();
        if formula.symbols.contains(" = ") {
            assert_eq!(of_its_own, explained, "{}", formula.id);
        }
    }
}

#[test]
fn rows_are_whole_and_ids_are_their_own() {
    let mut ids = BTreeSet::new();
    for chapter in chapters() {
        assert!(ids.insert(chapter.id.to_owned()) && !chapter.about.is_empty(), "{}", chapter.id);
        for formula in &chapter.formulas {
            assert!(ids.insert(format!("formula-{}", formula.id)), "{} twice", formula.id);
            assert!(
                !formula.words.is_empty() && !formula.used.is_empty() && !formula.from.is_empty(),
                "{}",
                formula.id
            );
            for Term { means, figure, sources, .. } in &formula.terms {
                assert!(!means.is_empty(), "{}", formula.id);
                let chosen = formula.id == "changes";
                assert!(
                    figure.is_none() || !sources.is_empty() || chosen,
                    "{}: where does {means} come from?",
                    formula.id
                );
                if let Some(spread) = figure {
                    assert!(spread.low <= spread.likely && spread.likely <= spread.high, "{}: {means}", formula.id);
                    let judged = sources.iter().any(|source| source.obtained != Obtained::Definition);
                    assert!(spread.low == spread.high || judged, "{}: {means} has a range by definition", formula.id);
                }
            }
        }
        for table in &chapter.tables {
            assert!(ids.insert(format!("table-{}", table.id)) && !table.rows.is_empty(), "{}", table.id);
            assert!(table.rows.iter().all(|row| row.len() == table.heads.len()), "{}", table.id);
        }
        assert!(chapter.notes.iter().all(|note| !note.about.is_empty() && !note.says.is_empty()));
    }
    for row in all_fields() {
        assert!(!row.why.is_empty(), "{}", row.id);
    }
}

#[test]
fn figures_are_printed_with_every_digit_and_none_that_a_conversion_leaves() {
    let [metres, millimetres] = [0.1 + 0.2, 0.012 / 0.001].map(digits);
    assert_eq!((metres.as_str(), millimetres.as_str()), ("0.3", "12"));
    assert_eq!([0.001_68, -0.2921, 80_000.0, -0.0].map(digits), ["0.00168", "−0.2921", "80000", "0"]);
    for chapter in method().chapters {
        for term in chapter.formulas.iter().flat_map(|formula| &formula.terms) {
            for number in term.figure.iter().flatten() {
                assert!(number.len() < 14 && !number.contains("NaN"), "{}: {number}", term.means);
            }
        }
    }
}
