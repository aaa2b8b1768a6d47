//! One reading at a time, columns of them, and how many are best worked on together.

use std::hint::black_box;

use criterion::{
    BenchmarkGroup, Criterion, Throughput, criterion_group, criterion_main, measurement::WallTime,
};
use overwater::gas::collected::DryAmount;
use overwater::scalar::{Formula, Lanes, Notation};
use overwater::water::vapour::VapourPressure;

const ROWS: usize = 4096;

/// Columns that sweep the part of the bounds in which every row has a result.
fn columns<const IN: usize>(ranges: [(f64, f64); IN]) -> [Vec<f64>; IN] {
    ranges.map(|(least, greatest)| {
        // A stride that is prime to the number of rows, so that neighbours differ.
        (0..ROWS).map(|row| least + (greatest - least) * ((row * 1237) % ROWS) as f64 / ROWS as f64).collect()
    })
}

/// A column through `Lanes<N>`, compiled for the processor that it runs on as `fill` is.
struct Wide<'a, F, const IN: usize, const N: usize> {
    formula: &'a F,
    columns: &'a [Vec<f64>; IN],
    results: &'a mut [f64],
}

impl<F: Formula<IN>, const IN: usize, const N: usize> pulp::WithSimd for Wide<'_, F, IN, N> {
    type Output = ();

    #[inline(always)]
    fn with_simd<S: pulp::Simd>(self, _: S) {
        let columns = self.columns.each_ref().map(|column| column.as_chunks::<N>().0);
        for (index, results) in self.results.as_chunks_mut::<N>().0.iter_mut().enumerate() {
            *results = self.formula.evaluate(columns.map(|column| Lanes(column[index]))).0;
        }
    }
}

fn wide<F: Formula<IN>, const IN: usize, const N: usize>(
    group: &mut BenchmarkGroup<'_, WallTime>,
    formula: &F,
    columns: &[Vec<f64>; IN],
) {
    let mut results = vec![0.0; ROWS];
    group.bench_function(format!("lanes of {N}"), |bencher| {
        bencher.iter(|| {
            let columns = black_box(columns);
            pulp::Arch::new().dispatch(Wide::<F, IN, N> { formula, columns, results: &mut results });
            black_box(&results);
        });
    });
}

fn formula<F: Formula<IN>, const IN: usize>(
    criterion: &mut Criterion,
    formula: &F,
    ranges: [(f64, f64); IN],
) {
    let columns = columns(ranges);
    let mut results = vec![0.0; ROWS];

    let mut group = criterion.benchmark_group(format!("{}, column of {ROWS}", F::NAME));
    group.throughput(Throughput::Elements(ROWS as u64));
    group.bench_function("one at a time", |bencher| {
        bencher.iter(|| {
            for (row, result) in black_box(&mut results).iter_mut().enumerate() {
                *result = formula.evaluate(columns.each_ref().map(|column| column[row]));
            }
        });
    });
    group.bench_function("one at a time, checked", |bencher| {
        bencher.iter(|| {
            for (row, result) in black_box(&mut results).iter_mut().enumerate() {
                *result = formula.number(columns.each_ref().map(|column| column[row])).unwrap_or(f64::NAN);
            }
        });
    });
    group.bench_function("fill", |bencher| {
        bencher.iter(|| {
            let columns = black_box(&columns).each_ref().map(Vec::as_slice);
            formula.fill(columns, black_box(&mut results)).unwrap();
        });
    });
    wide::<F, IN, 2>(&mut group, formula, &columns);
    wide::<F, IN, 4>(&mut group, formula, &columns);
    wide::<F, IN, 8>(&mut group, formula, &columns);
    wide::<F, IN, 16>(&mut group, formula, &columns);
    wide::<F, IN, 32>(&mut group, formula, &columns);
    group.finish();

    let reading = columns.each_ref().map(|column| column[1]);
    let mut group = criterion.benchmark_group(format!("{}, one reading", F::NAME));
    group.bench_function("number", |bencher| {
        bencher.iter(|| formula.number(black_box(reading)));
    });
    group.bench_function("sensitivities", |bencher| {
        bencher.iter(|| formula.sensitivities(black_box(reading)));
    });
    group.bench_function("working, recorded", |bencher| {
        bencher.iter(|| formula.working(black_box(reading)));
    });
    group.bench_function("working, written out", |bencher| {
        bencher
            .iter(|| formula.working(black_box(reading)).map(|(_, solution)| solution.steps(Notation::Text)));
    });
    group.finish();
}

fn lanes(criterion: &mut Criterion) {
    formula(criterion, &VapourPressure::default(), [(0.0, 100.0)]);
    formula(criterion, &DryAmount::default(), [(10.0, 500.0), (5.0, 40.0), (95.0, 105.0), (-100.0, 100.0)]);
}

criterion_group!(benches, lanes);
criterion_main!(benches);
