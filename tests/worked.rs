//! Published and hand-worked rows, through the public door: a link in, a figure out.
//!
//! `data/worked/*.tsv`: the plan in the form of a link, the figure by its place in the answer, what it should come to in
//! SI, and the tolerance: half of the last place that the source prints. The same run writes every figure of every row, bit for bit, to
//! `worked.json`, for the test that compares them with the WebAssembly as shipped.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "what is missing fails the test"
)]

use boughline::error::Error;
use boughline::field::Said;
use boughline::link::{self, Link};
use boughline::quantity::{Decimal, System, View};
use boughline::question::{
    Effort, Question, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use boughline::words::{
    Figure, advantage_report, cord_report, cut_report, descent_report, error_lines, loads_report, report,
    rescue_report, rope_report,
};
use serde_json::{Map, Value, json};
use std::path::PathBuf;

/// A row of a table.
struct Row {
    name: &'static str,
    plan: &'static str,
    figure: &'static str,
    expected: f64,
    tolerance: f64,
}

const COLUMNS: &str = "name\tplan\tfigure\texpected\ttolerance\tsource\thow";

fn rows() -> Vec<Row> {
    let table = |text: &'static str| {
        assert!(text.starts_with(&format!("{COLUMNS}\n")));
        text.lines().skip(1)
    };
    let lines = table(include_str!("data/worked/can-i-climb.tsv"));
    lines
        .chain(table(include_str!("data/worked/rope-length.tsv")))
        .chain(table(include_str!("data/worked/cut-length.tsv")))
        .chain(table(include_str!("data/worked/advantage.tsv")))
        .chain(table(include_str!("data/worked/loads.tsv")))
        .chain(table(include_str!("data/worked/cut-plan.tsv")))
        .chain(table(include_str!("data/worked/coming-down.tsv")))
        .chain(table(include_str!("data/worked/rescue.tsv")))
        .map(|line| {
            let cells: Vec<&str> = line.split('\t').collect();
            let &[name, plan, figure, expected, tolerance, source, how] = cells.as_slice() else {
                panic!("seven columns are wanted: {line}");
            };
            assert!(!source.is_empty() && !how.is_empty(), "{name}: every number has a source");
            let number = |text: &str| text.parse().unwrap_or_else(|_| panic!("{name}: {text} is no number"));
            Row { name, plan, figure, expected: number(expected), tolerance: number(tolerance) }
        })
        .collect()
}

fn read(row: &Row) -> Link {
    let link = link::read(row.plan);
    assert_eq!(link.notices, [], "{}", row.name);
    assert!(link.question.is_some(), "{}", row.name);
    link
}

/// Every figure of a row, at full effort, as the page of somebody who follows the link shows it; one of a state by the
/// ids of both: `start/down`.
fn figures(row: &Row, link: &Link) -> Vec<(String, Figure)> {
    let wrong = |errors: &[Error]| -> ! { panic!("{}: {:?}", row.name, error_lines(errors, View::default())) };
    let by_id = |figures: Vec<Figure>| figures.into_iter().map(|figure| (figure.id.to_owned(), figure)).collect();
    match link.question {
        Some(Question::CanIClimb) => {
            let inputs = can_i_climb::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            by_id(report(&can_i_climb::ask(&inputs, Effort::FULL), link.view).figures)
        }
        Some(Question::RopeLength) => {
            let inputs = rope_length::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            let report = rope_report(&rope_length::ask(&inputs), link.view);
            let mut figures: Vec<(String, Figure)> = by_id(report.figures);
            for state in report.states {
                for figure in state.items.into_iter().chain([state.total]) {
                    figures.push((format!("{}/{}", state.id, figure.id), figure));
                }
            }
            figures
        }
        Some(Question::CutLength) => {
            let inputs = cut_length::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            let report = cord_report(&cut_length::ask(&inputs), link.view);
            let mut figures: Vec<(String, Figure)> = by_id(report.figures);
            figures.extend(by_id(report.pieces.into_iter().map(|piece| piece.length).collect()));
            figures
        }
        Some(Question::Advantage) => {
            let inputs = advantage::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            let report = advantage_report(&advantage::ask(&inputs, Effort::FULL), link.view);
            let mut figures: Vec<(String, Figure)> = by_id(report.figures);
            for rig in report.rigs {
                figures.extend(rig.figures.into_iter().map(|figure| (format!("{}/{}", rig.id, figure.id), figure)));
            }
            figures
        }
        Some(Question::Loads) => {
            let inputs = loads::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            let report = loads_report(&loads::ask(&inputs, Effort::FULL), link.view);
            let mut figures: Vec<(String, Figure)> = by_id(report.figures);
            figures.extend(by_id(report.limb.figures));
            for state in report.states {
                for part in state.parts {
                    let place = |figure: &Figure| format!("{}/{}/{}", state.id, part.id, figure.id);
                    let all = [Some(part.load), Some(part.peak), part.strength, part.ratio];
                    figures.extend(all.into_iter().flatten().map(|figure| (place(&figure), figure)));
                }
            }
            figures
        }
        Some(Question::CutPlan) => {
            let inputs = cut_plan::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            let report = cut_report(&cut_plan::ask(&inputs, Effort::FULL), link.view);
            let mut figures: Vec<(String, Figure)> = by_id(report.figures);
            for kind in report.kinds {
                figures.extend(kind.figures.into_iter().map(|figure| (format!("{}/{}", kind.id, figure.id), figure)));
            }
            figures
        }
        Some(Question::ComingDown) => {
            let inputs = coming_down::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            by_id(descent_report(&coming_down::ask(&inputs, Effort::FULL), link.view).figures)
        }
        Some(Question::Rescue) => {
            let inputs = rescue::Inputs::of(&link.draft).unwrap_or_else(|errors| wrong(&errors));
            let report = rescue_report(&rescue::ask(&inputs), link.view);
            let mut figures: Vec<(String, Figure)> = by_id(report.figures);
            let ways = report.ways.into_iter().filter_map(|way| way.total.map(|total| (way.id, total)));
            let hauls = report.hauls.into_iter().flat_map(|haul| [(haul.id, haul.pull), (haul.id, haul.people)]);
            figures.extend(ways.chain(hauls).map(|(id, figure)| (format!("{id}/{}", figure.id), figure)));
            figures
        }
        _ => panic!("{}: no question that is known here", row.name),
    }
}

#[test]
fn every_worked_row_comes_to_its_printed_figure() {
    let rows = rows();
    for question in Question::ALL {
        let asked = rows.iter().any(|row| read(row).question == Some(*question));
        assert!(asked, "{}: work out a row of it by hand in tests/data/worked/", question.id());
    }
    for row in &rows {
        let figures = figures(row, &read(row));
        let figure = figures.iter().find(|(place, _)| place == row.figure);
        let (_, figure) = figure.unwrap_or_else(|| panic!("{}: no {}", row.name, row.figure));
        let found = figure.value.expect(row.name);
        // The half of the last place is itself allowed: 1.8525 is printed 1.853, and neither is a round number of bits.
        let off = (found - row.expected).abs();
        assert!(
            off <= row.tolerance + row.expected.abs() * 4.0 * f64::EPSILON,
            "{}: {found}, {} wanted",
            row.name,
            row.expected
        );
    }
    println!("{} rows", rows.len());
}

#[test]
fn worked_rows_have_names_of_their_own() {
    let rows = rows();
    for (at, row) in rows.iter().enumerate() {
        assert!(rows.iter().skip(at + 1).all(|other| other.name != row.name), "{}", row.name);
    }
}

/// Sixteen hexadecimal digits, or null for what is endless.
fn bits(value: Option<f64>) -> Value {
    value.map_or(Value::Null, |value| Value::String(format!("{:016x}", value.to_bits())))
}

fn worked_json() -> PathBuf {
    let target = || PathBuf::from(std::env::var_os("CARGO_TARGET_DIR").unwrap_or_else(|| "target".into()));
    std::env::var_os("WORKED_JSON").map_or_else(|| target().join("worked.json"), PathBuf::from)
}

/// Not a check in itself: what is written is compared elsewhere. It fails where the file cannot be written or lacks a
/// row.
#[test]
fn every_worked_row_is_written_down_bit_for_bit() {
    let rows: Vec<Value> = rows()
        .iter()
        .map(|row| {
            let link = read(row);
            let draft: Map<String, Value> = link
                .draft
                .ids()
                .map(|id| {
                    let Some(Said::Text(text)) = link.draft.get(id) else { panic!("{}: {id} is no text", row.name) };
                    (id.to_owned(), Value::String(text.clone()))
                })
                .collect();
            let figures: Map<String, Value> = figures(row, &link)
                .into_iter()
                .map(|(place, figure)| (place, json!([bits(figure.value), bits(figure.low), bits(figure.high)])))
                .collect();
            assert!(figures.contains_key(row.figure), "{}", row.name);
            let system = if link.view.system == System::Si { "si" } else { "us" };
            let decimal = if link.view.decimal == Decimal::Point { "." } else { "," };
            let view = json!({ "system": system, "decimal": decimal });
            json!({ "name": row.name, "question": link.question.map(Question::id), "draft": draft, "view": view, "figures": figures })
        })
        .collect();
    let path = worked_json();
    std::fs::create_dir_all(path.parent().expect("a file is in a folder")).unwrap();
    std::fs::write(&path, format!("{:#}\n", Value::Array(rows))).unwrap();
}
