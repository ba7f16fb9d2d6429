//! Random plans that are in order.
#![allow(dead_code, reason = "each test file uses some of it")]

use boughline::Draft;
use boughline::field::{Form, Kind, Limits, Row, Said};
use boughline::quantity::{STANDARD_GRAVITY, System, canonical_si, units};
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

/// The ways of saying one SI value: the number, or its text in a unit, bare ones as a box leaves them.
fn said_of(row: &Row, limits: Limits, si: f64, way: usize) -> Said {
    let units: Vec<_> = units().filter(|unit| unit.dimension == limits.dimension).collect();
    let bare = |system: System| {
        let number = format!("{:.2}", row.bare_unit(system).map_or(si, |unit| unit.count(si)));
        Said::Text(row.tidied(&number, system))
    };
    match way % (units.len() + 4) {
        0 => Said::Number(si),
        1 => Said::Text(canonical_si(si, limits.dimension)),
        2 => bare(System::Si),
        3 => bare(System::Us),
        place => {
            let unit = units.get(place - 4).expect("the remainder is less than their number");
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

/// Cords that are wanted, and hanks that there are, in either form.
const LISTS: &[&str] = &[
    "2 ~ 6 mm ~ 1.8 m ~ foot loop\n1 ~ 7 mm ~ 2,1 m",
    "3~5mm~6ft~polyester~a%20loop,1~8mm~14ft",
    "12 ~ 6 ~ 1.25\n7 ~ 6 ~ 0.8",
    "any ~ 20 m\n6 mm ~ 3.2 m ~ 0 ~ x1",
    "any~10m~12.50,any~5m~7~x2,6mm~50ft~30",
    "6mm~2m~0~x1",
];

/// Every text above that a form can read, and its own example.
fn texts(row: &'static Row, form: &Form) -> Vec<String> {
    let said = [OWN_RIGS, LADDERS, LISTS].concat().into_iter().chain([form.example]);
    said.map(str::to_owned).filter(|text| row.reading(&Said::Text(text.clone())).is_ok()).collect()
}

/// Something that the field takes, its ends among it.
pub(crate) fn value(row: &'static Row) -> BoxedStrategy<Said> {
    match row.kind {
        Kind::Quantity(limits) => {
            let Limits { least, most, example, .. } = limits;
            let si = prop_oneof![
                6 => least..=most,
                // Most of what people have is near the low end.
                3 => (0.0..=1.0_f64).prop_map(move |share| least + (most - least) * share * share * share),
                1 => prop::sample::select(vec![least, most, example]),
            ];
            (si, any::<usize>())
                .prop_map(move |(si, way)| said_of(row, limits, si, way))
                .prop_filter("rounding can leave the limits", |said| row.reading(said).is_ok())
                .boxed()
        }
        Kind::Choice { options, .. } => (0..options.len())
            .prop_map(move |at| Said::Text(options.get(at).expect("in the list").id.to_owned()))
            .boxed(),
        Kind::Text(form) => prop::sample::select(texts(row, form)).prop_map(Said::Text).boxed(),
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
