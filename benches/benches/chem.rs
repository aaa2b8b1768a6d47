//! Text to molar mass, and text to balanced equation.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use overwater::chem::{Formula, Reaction, Weights};

fn molar_mass(c: &mut Criterion) {
    let mut group = c.benchmark_group("molar_mass");
    for text in ["H2O2", "CuSO4.5H2O", "K4[Fe(CN)6]", "Ca10(PO4)6(OH)2", "SO₄²⁻"] {
        group.bench_function(text, |b| {
            b.iter(|| {
                Formula::parse(black_box(text))
                    .and_then(|f| f.molar_mass(Weights::Exact))
                    .map(|m| m.value_g_per_mol)
            });
        });
    }
    group.finish();
}

fn balance(c: &mut Criterion) {
    let mut group = c.benchmark_group("balance");
    for (name, text) in [
        ("peroxide", "H2O2 -> H2O + O2"),
        ("permanganate half", "MnO4- + H+ + e- -> Mn^2+ + H2O"),
        ("ferrocyanide", "K4[Fe(CN)6] + KMnO4 + H2SO4 -> KHSO4 + Fe2(SO4)3 + MnSO4 + HNO3 + CO2 + H2O"),
    ] {
        group.bench_function(name, |b| {
            b.iter(|| {
                Reaction::parse(black_box(text)).and_then(|r| r.balance()).map(|e| e.reactants().len())
            });
        });
    }
    group.finish();
}

criterion_group!(benches, molar_mass, balance);
criterion_main!(benches);
