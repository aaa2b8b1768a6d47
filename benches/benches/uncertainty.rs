//! A million draws with mean, standard deviation and intervals; the budget of one reading.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater::catalogue;
use overwater::readings::uncertainty::budget::budget;
use overwater::readings::uncertainty::input::Input;
use overwater::readings::uncertainty::model::FormulaModel;
use overwater::readings::uncertainty::monte_carlo::{Plan, Stop, monte_carlo};

fn uncertainty(criterion: &mut Criterion) {
    let formula = catalogue::find("dry_amount").expect("a formula");
    let model = FormulaModel::new(&*formula);
    let inputs = [
        Input::normal("volume_cm3", 86.5, 0.3),
        Input::normal("temperature_c", 21.0, 0.3),
        Input::normal("pressure_kpa", 100.36, 0.1),
        Input::normal("inside_minus_outside_mm", 12.0, 0.5),
    ];
    criterion.bench_function("uncertainty, budget of one reading", |bencher| {
        bencher.iter(|| budget(&model, black_box(&inputs), &[], 0.95).expect("a budget"));
    });
    let mut group = criterion.benchmark_group("uncertainty, a million draws of four inputs");
    group.sample_size(10);
    for threads in [1, 2] {
        let plan = Plan { threads, stop: Stop::After(1_000_000), ..Plan::default() };
        group.bench_function(format!("{threads} threads"), |bencher| {
            bencher.iter(|| monte_carlo(&model, black_box(&inputs), &[], plan).expect("a result"));
        });
    }
    group.finish();
}

criterion_group!(benches, uncertainty);
criterion_main!(benches);
