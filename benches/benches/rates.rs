//! A fit of the first order to sixty readings, and a thousand of them for a bootstrap.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater::readings::bootstrap::{Plan, bootstrap};
use overwater::readings::curve::{FirstOrder, Known, first_order};
use overwater::readings::line::lines;
use overwater::readings::series::{Demands, Series, VOLUME_AGAINST_TIME};

/// 80 cm3 with a half-life of 40 s, read every 5 s, each reading off by up to 0.4 cm3.
fn readings() -> (Vec<f64>, Vec<f64>) {
    let time: Vec<f64> = (0..60).map(|row| f64::from(row) * 5.0).collect();
    let scatter = [0.3, -0.2, 0.1, -0.4, 0.2, 0.0, 0.3];
    let volume = time
        .iter()
        .zip(scatter.iter().cycle())
        .map(|(t, e)| 80.0 * (1.0 - (-std::f64::consts::LN_2 / 40.0 * (t - 2.0)).exp()) + e)
        .collect();
    (time, volume)
}

fn rates(c: &mut Criterion) {
    let (time, volume) = readings();
    let Ok(series) = Series::new(VOLUME_AGAINST_TIME, &time, &volume, &Demands::rows(3)) else { return };
    let mut group = c.benchmark_group("rates");
    group.bench_function("two lines, 60 readings", |b| b.iter(|| lines(black_box(&series))));
    group.bench_function("first order, 60 readings, three numbers", |b| {
        b.iter(|| first_order(black_box(&series), Known::Fitted, Known::Fitted));
    });
    group.bench_function("first order, 60 readings, start known", |b| {
        b.iter(|| first_order(black_box(&series), Known::Fitted, Known::Value(2.0)));
    });
    let Ok(growth) = first_order(&series, Known::Fitted, Known::Fitted) else { return };
    for threads in [1, 2] {
        let plan = Plan { threads, ..Plan::default() };
        group.bench_function(format!("1000 replicates, {threads} threads"), |b| {
            b.iter(|| bootstrap(&FirstOrder, black_box(&series), &growth.fit, &plan));
        });
    }
    group.finish();
}

criterion_group!(benches, rates);
criterion_main!(benches);
