//! Times of every plan, natively. `pkg-config/bench` reads the estimates beside those of the shipped module.

use boughline_bench::{asked, plans};
use criterion::{Criterion, Throughput, criterion_group, criterion_main};

fn questions(clock: &mut Criterion) {
    // A group a plan: its samples stand beside its times, and tell whether the module is of the same sources.
    for plan in plans() {
        let samples = match asked(&plan) {
            Ok(samples) => samples,
            Err(errors) => panic!("{}: {errors:?}", plan.name),
        };
        let mut group = clock.benchmark_group(plan.name);
        group.throughput(Throughput::Elements(u64::from(samples)));
        group.bench_function("native", |clock| clock.iter(|| asked(&plan)));
        group.finish();
    }
}

criterion_group!(benches, questions);
criterion_main!(benches);
