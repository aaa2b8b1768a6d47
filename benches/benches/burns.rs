//! Flame temperatures with dissociation, and a whole burn in a jar.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater::burn::equilibrium::{Mixture, System, flame};
use overwater::burn::{Fuel, Jar, burnt};
use overwater::reference::nasa9::Species;

fn burns(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("flame temperature with dissociation");
    for (text, oxygen, nitrogen) in [
        ("S", 1.0, 0.0),
        ("H2", 0.5, 1.88),
        ("CO", 0.5, 1.88),
        ("CH4", 2.0, 7.52),
        ("Mg", 0.7, 0.0),
        ("Mg", 0.5, 0.0),
        ("Fe", 1.0, 0.0),
        ("octane", 12.5, 47.0),
    ] {
        let mut mixture = Mixture::default();
        mixture.add_fuel(&Fuel::find(text).expect("a fuel"), 1.0, 298.15).expect("an amount");
        for (name, amount) in [("O2", oxygen), ("N2", nitrogen)] {
            let species = Species::named(name).expect("a species");
            mixture.add_species(species, amount, 298.15).expect("an amount");
        }
        let system = System::of(&mixture).expect("a system");
        group.bench_function(format!("{text} with {oxygen} O2 and {nitrogen} N2"), |bencher| {
            bencher.iter(|| flame(&system, black_box(&mixture), 101.325).expect("a flame"));
        });
    }
    group.bench_function("species of CH4 in air looked up", |bencher| {
        let mut mixture = Mixture::default();
        for name in ["CH4", "O2", "N2"] {
            mixture.add_species(Species::named(name).expect("a species"), 1.0, 298.15).expect("an amount");
        }
        bencher.iter(|| System::of(black_box(&mixture)).expect("a system"));
    });
    group.finish();
    let jar = Jar { volume_cm3: 250.0, temperature_c: 20.0, pressure_kpa: 101.325, oxygen_fraction: 0.95 };
    let sulfur = Fuel::find("S").expect("a fuel");
    criterion.bench_function("burn, amounts and heat in a jar", |bencher| {
        bencher.iter(|| burnt(&sulfur, black_box(0.1), &jar).expect("a burn"));
    });
}

criterion_group!(benches, burns);
criterion_main!(benches);
