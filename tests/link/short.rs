//! A short link leaves out what nobody said, so what is taken for granted belongs to the version of the figures.
//!
//! `data/taken-for-granted.tsv`: the version, a field, and what stands for it when nothing is said. A change of any of
//! these changes plans that are out in the world: raise `link::FIGURES` and write the file anew with
//! `GOLDEN=write cargo test --test link`, so that an old short link says that its figures are others.

use boughline::field::{Kind, Row};
use boughline::link::FIGURES;
use boughline::question::all_fields;

const TABLE: &str = "tests/data/taken-for-granted.tsv";

fn taken(row: &Row) -> Option<String> {
    match row.kind {
        Kind::Choice { likely, .. } => likely.map(str::to_owned),
        Kind::Quantity(limits) => limits.likely.map(|likely| format!("{likely:?}")),
        _ => None,
    }
}

#[test]
fn nothing_else_is_taken_for_granted_without_another_version_of_the_figures() {
    let rows = all_fields().into_iter().filter_map(|row| Some(format!("{FIGURES}\t{}\t{}\n", row.id, taken(row)?)));
    let now: String = rows.collect();
    if std::env::var("GOLDEN").is_ok_and(|what| what == "write") {
        std::fs::write(TABLE, &now).expect("the table can be written");
    }
    assert_eq!(std::fs::read_to_string(TABLE).expect("the table is there"), now);
}
