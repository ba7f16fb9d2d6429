//! Times of every plan, natively: `pkg-config/bench` reads the estimates beside those of the shipped module. With `--answers`
//! the answers instead, a line of JSON each, which tell whether the module is of the same sources.

use boughline_bench::{Plan, asked, plans};
use criterion::{Criterion, criterion_group};

/// What a plan comes to, where it is to be seen.
fn answer(plan: &Plan, is_seen: bool) -> Option<String> {
    asked(plan, is_seen).unwrap_or_else(|errors| panic!("{}: {errors:?}", plan.name))
}

fn questions(clock: &mut Criterion) {
    for plan in plans() {
        clock.benchmark_group(plan.name).bench_function("native", |clock| clock.iter(|| answer(&plan, false)));
    }
}

criterion_group!(benches, questions);

fn main() {
    if std::env::args().any(|arg| arg == "--answers") {
        for plan in plans() {
            println!("{}", answer(&plan, true).unwrap_or_default());
        }
    } else {
        benches();
        Criterion::default().configure_from_args().final_summary();
    }
}
