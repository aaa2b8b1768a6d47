//! One request in JSON to one answer in JSON: a lesson, a formula, and how long it takes to refuse 100 MB.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater_exchange::{respond, respond_with_status};

const LESSON: &[u8] = include_bytes!("../../tests/vectors/plan-oxygen-lesson.request.json");
const FORMULA: &[u8] = include_bytes!("../../tests/vectors/calculate-dry-amount.request.json");

fn exchange(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("exchange");
    for (name, request) in [("plan", LESSON), ("calculate", FORMULA)] {
        assert!(respond_with_status(request).1, "{name} must be answered");
        group.bench_function(name, |bencher| bencher.iter(|| respond(black_box(request))));
    }
    let long = vec![b'['; 100_000_000];
    group.bench_function("refuse 100 MB", |bencher| bencher.iter(|| respond(black_box(&long))));
    group.finish();
}

criterion_group!(benches, exchange);
criterion_main!(benches);
