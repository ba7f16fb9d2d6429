//! Strengths and minima of gear.

use super::formula::formula;
use super::table::{digits, range};
use super::unit::{KN, RATIO};
use super::{Chapter, Table};
use crate::field::Spread;
use crate::gear::{
    CLAMP_LOAD, CORD, Connector, Fibre, Knot, LIFE_LINE, LIFE_PART, Minimum, PULLEY_MINIMUM, RopeKind, cord_minimum,
};
use crate::quantity::{KILONEWTON, Length};
use crate::source::{ATTAWAY, CALIFORNIA, EN_1891, GEOMETRY, JUDGED, KNOT_STRENGTH};

fn minima() -> Table {
    let mut table = Table::new("minima", "Published minimum strengths", &["part", "kN at least", "source"], &[]);
    let mut row = |name: &str, minimum: Minimum| {
        let cells = vec![
            name.to_owned(),
            digits((minimum.force.in_kilonewtons() * 1e3).round() / 1e3),
            minimum.source.id.to_owned(),
        ];
        let empty = Table::new("", "", &[], &[]);
        table = std::mem::replace(&mut table, empty).row(cells, &[minimum.source]);
    };
    for kind in RopeKind::ALL {
        if let Some(minimum) = kind.minimum() {
            row(kind.named().noun, minimum);
        }
    }
    row("climbing line, 5,400 lbf", LIFE_LINE);
    row("every part that bears a tree worker, 5,000 lbf", LIFE_PART);
    row("rope clamp, without damage", CLAMP_LOAD);
    row("pulley", PULLEY_MINIMUM);
    for diameter in [4.0, 5.0, 6.0, 7.0, 8.0] {
        if let Some(force) = cord_minimum(Length::millimetres(diameter)) {
            row(&format!("accessory cord of {diameter} mm"), Minimum { force, source: CORD.source });
        }
    }
    table
}

fn connectors() -> Table {
    const HEADS: &[&str] = &["connector", "along, gate shut", "along, gate open", "across"];
    let mut table = Table::new("connectors", "What connectors bear at least, kN", HEADS, &[]);
    for connector in Connector::ALL {
        let minimums = connector.minimums();
        let mut cells = vec![connector.named().noun.to_owned()];
        cells.extend(minimums.map(|minimum| digits(minimum.force.in_kilonewtons())));
        table = table.row(cells, &minimums.map(|minimum| minimum.source));
    }
    table
}

fn knots() -> Table {
    let mut heads = vec!["fibre"];
    let kinds = [("any knot", Knot::Any), ("overhand", Knot::Overhand), ("sewn or spliced eye", Knot::Eye)];
    heads.extend(kinds.map(|(name, _)| name));
    let mut table =
        Table::new("knots", "Share of strength that is left: to plan on (range)", &heads, &[KNOT_STRENGTH, JUDGED]);
    for fibre in Fibre::ALL {
        let mut cells = vec![fibre.named().noun.to_owned()];
        cells.extend(kinds.map(|(_, knot)| range(knot.kept(*fibre), 1.0)));
        table = table.row(cells, &[]);
    }
    table
}

fn moduli() -> Table {
    let mut table = Table::new(
        "moduli",
        "Force at a strain of one, kN: likely (range)",
        &["rope", "kN"],
        &[ATTAWAY, EN_1891, CALIFORNIA, JUDGED],
    );
    for kind in RopeKind::ALL {
        let cells = vec![kind.named().noun.to_owned(), range(kind.modulus(), KILONEWTON.si(1.0))];
        table = table.row(cells, &[]);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "gear",
        "Strengths and minima of gear",
        "A part is held against its label, or else against the least that its standard allows where there is one; and against the published minimum for what bears a life. A strength is of new gear in a test: wear, edges, wet, sun and knots lessen it.",
        vec![
            formula("over-load", "Strength over load")
                .words("What the part bears as it is tied, over the peak that it may carry.")
                .symbols(RATIO, "f = S / P")
                .term("f", "times the load", RATIO)
                .term("S", "strength as tied", KN)
                .term("P", "peak load", KN)
                .from(&[GEOMETRY])
                .used("What does each part carry? No figure is ever called enough.")
                .answered(loads()),
            formula("knots", "Strength that a knot leaves")
                .words("Half, to plan on: material moves it more than the knot does, and stiff fibres lose most.")
                .figure("", "any knot, nylon or polyester", Knot::Any.kept(Fibre::Nylon), RATIO, &[KNOT_STRENGTH])
                .figure("", "any knot, aramid or HMPE", Knot::Any.kept(Fibre::Aramid), RATIO, &[KNOT_STRENGTH])
                .from(&[KNOT_STRENGTH])
                .used("Every rope and cord that is tied."),
        ],
    )
    .table(minima())
    .table(connectors())
    .table(knots())
    .table(moduli())
}

/// The first part of the example's rig that is held against a strength while somebody climbs.
fn loads() -> Option<([(&'static str, f64); 2], f64)> {
    use crate::draft::Draft;
    use crate::question::{Effort, loads};
    let draft = Draft::new()
        .set("bodyMass", "80 kg")
        .set("climbHeight", "11 m")
        .set("rig", "tail-3")
        .set("anchor", "canopy")
        .set("kitMass", "8 kg");
    let answer = loads::ask(&loads::Inputs::of(&draft).ok()?, Effort::samples(50));
    for state in &answer.states {
        let Ok(carried) = &state.carried else { continue };
        for load in &carried.loads {
            if let (Some(strength), Some(ratio)) = (load.strength, load.ratio) {
                let Spread { likely, .. } = load.peak;
                let size = KILONEWTON.si(1.0);
                return Some(([("S", strength.rigged() / size), ("P", likely / size)], ratio.likely));
            }
        }
    }
    None
}
