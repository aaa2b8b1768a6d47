//! A table of readings, from its text to the summary: the amount of dry gas in every row.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use overwater_exchange::reduction::reduce_table;
use overwater_exchange::reduction::request::ReductionRequest;

const ROWS: usize = 1_000_000;

fn table() -> String {
    let mut text = String::from("volume_cm3,temperature_c,pressure_kpa\n");
    for row in 0..ROWS {
        text.push_str(&format!(
            "{}.{},{}.{},100.{:02}\n",
            20 + row % 75,
            row % 10,
            15 + row % 13,
            row % 9,
            row % 97
        ));
    }
    text
}

fn reduction(c: &mut Criterion) {
    let text = table();
    let request = ReductionRequest { format: 1, ..ReductionRequest::default() };
    let mut group = c.benchmark_group("reduce");
    group.sample_size(20);
    group.throughput(Throughput::Elements(ROWS as u64));
    group.bench_function("a million rows of CSV", |b| {
        b.iter(|| reduce_table(black_box(&request), text.as_bytes(), None));
    });
    group.finish();
}

criterion_group!(benches, reduction);
criterion_main!(benches);
