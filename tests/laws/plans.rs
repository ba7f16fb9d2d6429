//! Random plans that are in order.
#![allow(dead_code, reason = "each test file uses some of it")]

use boughline::Draft;
use boughline::field::{Kind, Row, Said};
use boughline::quantity::{Dimension, STANDARD_GRAVITY, canonical_si, units};
use boughline::question::Question;
use proptest::prelude::*;

/// What is said in each field.
pub(crate) type Plan = Vec<(&'static str, Said)>;

pub(crate) fn draft(plan: &Plan) -> Draft {
    let mut draft = Draft::new();
    for (id, said) in plan {
        draft.put(id, said.clone());
    }
    draft
}

/// The plan with something else said in a field.
pub(crate) fn with(plan: &Plan, id: &'static str, said: Said) -> Plan {
    let mut plan = without(plan, &[id]);
    plan.push((id, said));
    plan
}

pub(crate) fn without(plan: &Plan, ids: &[&str]) -> Plan {
    plan.iter().filter(|(known, _)| !ids.contains(known)).cloned().collect()
}

/// The ways of saying one SI value: the number, or its text in a unit.
fn said_of(si: f64, dimension: Dimension, way: usize) -> Said {
    let units: Vec<_> = units().filter(|unit| unit.dimension == dimension).collect();
    match way % (units.len() + 2) {
        0 => Said::Number(si),
        1 => Said::Text(canonical_si(si, dimension)),
        place => {
            let unit = units.get(place - 2).expect("the remainder is less than their number");
            Said::Text(format!("{:.2} {}", unit.count(si), unit.symbol))
        }
    }
}

/// Rigs of people's own, in either form.
const OWN_RIGS: &[&str] = &[
    "tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper carabiner, hand climber",
    "tied tree, backup climber, hitch climber\ntied upper, turn climber 0.85, turn upper 90 %, hand climber\ntied tree, hitch upper",
    "tied.climber--turn.tree.ring--hand.climber--hitch.climber",
    "TIED climber , turn tree 0,6,hitch upper, turn ground, turn upper, hand ground",
    "tied tree, turn climber, turn tree, hand climber, helper ground 150 N",
    "hand climber, knot climber 2 m, turn upper, turn climber, hitch climber, hitch upper, tied tree",
];

/// Lengths of rope to buy, in either form.
const LADDERS: &[&str] = &["30 m", "20 m; 45,5 m; 150 ft", "50ft--75ft--400m", "60 m, 20 m,\n100 ft"];

/// Something that the field takes.
pub(crate) fn value(row: &'static Row) -> BoxedStrategy<Said> {
    match row.kind {
        Kind::Quantity(limits) => (limits.least..=limits.most, any::<usize>())
            .prop_map(move |(si, way)| said_of(si, limits.dimension, way))
            .prop_filter("rounding can leave the limits", |said| row.reading(said).is_ok())
            .boxed(),
        Kind::Choice { options, .. } => (0..options.len())
            .prop_map(move |at| Said::Text(options.get(at).expect("in the list").id.to_owned()))
            .boxed(),
        Kind::Text(_) if row.id == "ropeStock" => {
            prop::sample::select(LADDERS).prop_map(|text| Said::Text(text.to_owned())).boxed()
        }
        Kind::Text(_) => prop::sample::select(OWN_RIGS).prop_map(|text| Said::Text(text.to_owned())).boxed(),
        _ => unreachable!("a kind that these tests do not know"),
    }
}

/// Every field said or not, but those that are needed always. One's own test is said of the rig that can have it.
pub(crate) fn plans() -> impl Strategy<Value = Plan> {
    // A rig that is somebody's own must be said.
    let needed = ["bodyMass", "climbHeight", "rig", "ownRig"];
    let tested = ["testMass", "testPull"];
    let fields: Vec<BoxedStrategy<Option<(&'static str, Said)>>> = Question::CanIClimb
        .fields()
        .iter()
        .filter(|row| !tested.contains(&row.id))
        .map(|row| {
            let said = value(row).prop_map(|said| (row.id, said));
            if needed.contains(&row.id) { said.prop_map(Some).boxed() } else { prop::option::of(said).boxed() }
        })
        .collect();
    let test = prop::option::weighted(0.2, (10.0..300.0_f64, 1.05..2.95_f64));
    (fields, test).prop_map(|(fields, test)| {
        let mut plan: Plan = fields.into_iter().flatten().collect();
        let tail = plan.contains(&("rig", Said::Text("tail-3".to_owned())));
        if let Some((mass, advantage)) = test.filter(|_| tail) {
            plan.push(("testMass", Said::Number(mass)));
            plan.push(("testPull", Said::Number(mass * STANDARD_GRAVITY / advantage)));
        }
        plan
    })
}
