//! A short link leaves out what nobody said, so what is taken for granted belongs to the version of the figures.
//!
//! `data/taken-for-granted.tsv`: the version, a field, and what stands for it when nothing is said. A change of any of
//! these changes plans that are out in the world: raise `link::FIGURES` and write the file anew with
//! `GOLDEN=write cargo test --test link`, so that an old short link says that its figures are others.

use boughline::Draft;
use boughline::ascent::USUAL_RIG;
use boughline::field::{Kind, Row};
use boughline::link::FIGURES;
use boughline::question::{Question, all_fields};
use boughline::reeving::RIG;

const TABLE: &str = "tests/data/taken-for-granted.tsv";

fn taken(row: &Row) -> Option<String> {
    match row.kind {
        Kind::Choice { likely, .. } => likely.map(str::to_owned),
        Kind::Quantity(limits) => limits.likely.map(|likely| format!("{likely:?}")),
        _ => None,
    }
}

/// A rig must be chosen, and yet something is said of a climb and of a rope before it is.
fn rigs() -> [(&'static str, &'static str); 2] {
    let rope = Draft::new().set("crotchHeight", "12 m").set("anchor", "base");
    let rows = Question::RopeLength.assumed(&rope).expect("in order");
    let usual = rows.iter().find_map(|row| match row.kind {
        Kind::Choice { likely, .. } if row.id == RIG.row.id => likely,
        _ => None,
    });
    [(USUAL_RIG.named().id, "a climb"), (usual.expect("one is taken"), "a rope's length")]
}

#[test]
fn nothing_else_is_taken_for_granted_without_another_version_of_the_figures() {
    let rows = all_fields().into_iter().filter_map(|row| Some(format!("{FIGURES}\t{}\t{}\n", row.id, taken(row)?)));
    let rigs = rigs().map(|(rig, what)| format!("{FIGURES}\t{}\t{rig} for {what}\n", RIG.row.id));
    let now: String = rows.chain(rigs).collect();
    if std::env::var("GOLDEN").is_ok_and(|what| what == "write") {
        std::fs::write(TABLE, &now).expect("the table can be written");
    }
    assert_eq!(std::fs::read_to_string(TABLE).expect("the table is there"), now);
}
