//! pH of a solution, with and without activity coefficients.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater::burn::aqueous::{Acid, Activity, Constants, Equilibrium, Hydroxide, Mixture};
use overwater::units::Temperature;

fn ph(c: &mut Criterion) {
    let constants = Constants::at(Temperature::new(293.15));
    let mut group = c.benchmark_group("ph");
    for (name, mixture) in [
        ("sulfur dioxide", Mixture::water().with_acid(Acid::SulfurDioxide, 0.156)),
        ("sodium hydroxide", Mixture::water().with_univalent(0.109)),
        ("magnesium hydroxide", Mixture::water().with_hydroxide(Hydroxide::Magnesium, 0.2)),
        (
            "three acids half neutralised",
            Mixture::water()
                .with_acid(Acid::SulfurDioxide, 0.05)
                .with_acid(Acid::CarbonDioxide, 0.03)
                .with_acid(Acid::Phosphoric, 0.04)
                .with_univalent(0.08),
        ),
    ] {
        for activity in [Activity::Davies, Activity::Ideal] {
            group.bench_function(format!("{name}, {activity:?}"), |b| {
                b.iter(|| {
                    Equilibrium::of(black_box(&mixture), black_box(&constants), activity).map(|e| e.ph)
                });
            });
        }
    }
    group.finish();
}

criterion_group!(benches, ph);
criterion_main!(benches);
