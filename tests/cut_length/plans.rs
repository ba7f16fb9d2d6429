//! Random cords that are in order.

use crate::plans::{Plan, draft};
use boughline::cord::CordUse;
use boughline::field::Said;
use boughline::question::cut_length::Inputs;
use proptest::prelude::*;

fn number(id: &'static str, said: impl Strategy<Value = f64>) -> impl Strategy<Value = (&'static str, Said)> {
    said.prop_map(move |si| (id, Said::Number(si)))
}

/// Cords of every use, ends that go with it, and a length that is wanted or not.
pub(crate) fn cord_plans() -> impl Strategy<Value = Plan> {
    let sizes = (
        number("ropeDiameter", 0.008..=0.016_f64),
        number("hitchCord", 0.004..=0.014_f64),
        number("slingCord", 0.004..=0.014_f64),
        number("haulCord", 0.004..=0.010_f64),
    );
    let more = (
        prop::option::of(number("hitchCoils", 1.0..=9.0_f64)),
        prop::option::of(number("hitchCrossings", 0.0..=6.0_f64)),
        prop::option::of(number("bodyMass", 40.0..=150.0_f64)),
        prop::sample::select(vec!["nylon", "polyester", "aramid", "hmpe"]),
    );
    let length = prop::option::of((prop::sample::select(vec!["freeLeg", "finishedLength"]), 0.0..=3.0_f64));
    let used = (prop::sample::select(CordUse::ALL.to_vec()), any::<prop::sample::Index>());
    (used, sizes, more, length)
        .prop_map(|((cord_use, ends), (rope, hitch, sling, haul), (coils, crossings, mass, fibre), length)| {
            let ends = ends.get(cord_use.pattern().ends);
            let text = |id, text: &str| (id, Said::Text(text.to_owned()));
            let mut plan = vec![
                text("cordUse", cord_use.named().id),
                text("cordEnds", ends.named().id),
                text("cordFibre", fibre),
                text("rig", "haul-cord-3"),
                rope,
                hitch,
                sling,
                haul,
            ];
            plan.extend([coils, crossings, mass].into_iter().flatten());
            plan.extend(length.map(|(id, si)| (id, Said::Number(si))));
            plan
        })
        .prop_filter("its length leaves room for its coils", |plan| Inputs::of(&draft(plan)).is_ok())
}
