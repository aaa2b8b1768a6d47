//! One lesson simulated with all its events, and the search for a schedule.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater::apparatus::run::{Addition, Limits, Run, RunVessel, advise, sensitivities, simulate};

/// Twelve portions of 5 cm3 of 20 vol, a tube and four jars, twenty minutes.
fn lesson() -> Run {
    let vessel = |name: &str, volume_cm3| RunVessel { name: name.to_owned(), volume_cm3, height_cm: 15.0 };
    let mut vessels = vec![vessel("tube", 55.0)];
    vessels.extend((1..=4).map(|jar| vessel(&format!("jar {jar}"), 250.0)));
    Run {
        additions: (0..13)
            .map(|index| Addition {
                time_s: f64::from(index) * 30.0,
                over_s: 0.0,
                volume_cm3: 5.0,
                concentration_mol_per_dm3: 1.785,
                temperature_c: 20.0,
            })
            .collect(),
        rejected_cm3: 200.0,
        vessels,
        end_s: 1200.0,
        open_funnel: false,
        tube_rise_cm: 100.0,
        ..Run::default()
    }
}

fn run(criterion: &mut Criterion) {
    let lesson = lesson();
    let mut group = criterion.benchmark_group("run");
    let once = simulate(&lesson).unwrap();
    assert_eq!(once.reached_s, 1200.0, "the lesson must not end early: {:?}", once.events);
    group.bench_function("a lesson of 20 minutes at 1e-8", |bencher| {
        bencher.iter(|| simulate(black_box(&lesson)).unwrap());
    });
    group.bench_function("its sensitivities", |bencher| {
        bencher.iter(|| sensitivities(black_box(&lesson)).unwrap());
    });
    group.sample_size(10);
    group.bench_function("advise", |bencher| {
        bencher.iter(|| advise(black_box(&lesson), 1.785, &Limits::default()));
    });
    group.finish();
}

criterion_group!(benches, run);
criterion_main!(benches);
