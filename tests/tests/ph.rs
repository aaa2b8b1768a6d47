//! pH of what burns leave in water.

use overwater::burn::aqueous::{
    Acid, Activity, Constants, Equilibrium, Held, Hydroxide, Mixture, Water, dissolve, universal_indicator,
};
use overwater::reference::products_in_water::PRODUCTS_IN_WATER;
use overwater::units::Temperature;
use overwater::{Code, Result};
use proptest::prelude::*;

fn at_25() -> Constants<f64> {
    Constants::at(Temperature::new(298.15))
}

fn ph(mixture: &Mixture<f64>, activity: Activity) -> f64 {
    Equilibrium::of(mixture, &at_25(), activity).unwrap().ph
}

const IN_20_CM3: Water =
    Water { water_cm3: 20.0, temperature_c: 25.0, pressure_kpa: 101.325, gas_space_cm3: None };

#[track_caller]
fn close(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{got} is not {expected} within {tolerance}");
}

#[test]
fn figures_of_the_trade() {
    // 0.05 g of sodium in 20 cm3: 2.175 mmol/20 cm3 = 0.1087 mol/dm3 of hydroxide, 14.00 - 0.96 = 13.0 by hand; a meter
    // shows 12.9, as 0.776 of it is active (Davies, by hand: lg γ = -0.509 (0.2480 - 0.0326)).
    let sodium = dissolve("Na2O", 0.05 / 22.990 / 2.0 * 61.979, &IN_20_CM3).unwrap();
    close(sodium.ph_ideal, 13.03, 0.01);
    close(sodium.ph, 12.92, 0.01);
    // Sulfur dioxide of 0.2 mol/dm3: h²/(0.2 - h) = 10^-1.85 gives 0.0465, pH 1.33 by hand.
    let sulfur = Mixture::water().with_acid(Acid::SulfurDioxide, 0.2);
    close(ph(&sulfur, Activity::Ideal), 1.333, 0.001);
    close(ph(&sulfur, Activity::Davies), 1.34, 0.01);
}

#[test]
fn textbook_figures() {
    // Closed forms, by hand, each with the constant of the table: strong base; 4 s³ = K of a hydroxide; half a buffer.
    close(ph(&Mixture::water(), Activity::Ideal), 6.997, 0.001);
    close(ph(&Mixture::water().with_univalent(1e-3), Activity::Ideal), 10.995, 0.001);
    let magnesia = Mixture::water().with_hydroxide(Hydroxide::Magnesium, 0.1);
    close(ph(&magnesia, Activity::Ideal), 13.995 - (11.25 - 2f64.log10()) / 3.0, 0.002);
    let buffer = Mixture::water().with_acid(Acid::Phosphoric, 0.02).with_univalent(0.03);
    close(ph(&buffer, Activity::Ideal), 7.21, 0.001);
    // The same buffer of I = 0.04 with Davies: -lg(K γ1/γ2), lg γ1 = -0.0787 by hand, so 7.21 - 3 x 0.0787 = 6.97. The
    // phosphate standard buffer of 0.025 mol/dm3 each reads 6.865 at 25 degC (NIST, from memory; I = 0.1, where the
    // same gives 6.89).
    close(ph(&buffer, Activity::Davies), 6.97, 0.02);
    let standard = Mixture::water().with_acid(Acid::Phosphoric, 0.05).with_univalent(0.075);
    close(ph(&standard, Activity::Davies), 6.865, 0.03);
    // Saturated limewater reads 12.45 at 25 degC (NIST secondary standard, from memory); its solubility product is
    // poorly known.
    let lime = Equilibrium::of(
        &Mixture::water().with_hydroxide(Hydroxide::Calcium, 1.0),
        &at_25(),
        Activity::Davies,
    );
    close(lime.unwrap().ph, 12.45, 0.1);
    // Water in equilibrium with air of 400 ppm: 0.0000136 mol/dm3 of CO2, pH 5.61 by sqrt(K c).
    let rain = Mixture::water().holding(Acid::CarbonDioxide, Held::Saturated { concentration: 1.36e-5 });
    close(ph(&rain, Activity::Ideal), 5.61, 0.01);
}

#[test]
fn a_gas_keeps_its_share_over_the_water() {
    // 0.20 g of SO2 (3.12 mmol) in a jar of 250 cm3 with 20 cm3 of water. By hand at 25 degC: H = 0.013 mol/(m3 Pa) is
    // 32.2 volumes of gas in one of water; uncharged c, ions sqrt(0.0141 c): (20 + 230/32.2) c + 20 sqrt(0.0141 c) = 3.12
    // mmol gives c = 0.0889 mol/dm3, ions 0.0355, dissolved 2.49 mmol; activity coefficients add a little.
    let jar = Water { gas_space_cm3: Some(230.0), ..IN_20_CM3 };
    let found = dissolve("SO2", 3.12e-3 * 64.064, &jar).unwrap();
    close(found.dissolved_mmol, 2.49, 0.04);
    close(found.ph_ideal, 1.450, 0.003);
    close(found.pressure_kpa.unwrap(), 0.0889e3 / 0.013 / 1e3, 0.4);
    // Led in wholly it is more, and more acid.
    let led_in = dissolve("SO2", 3.12e-3 * 64.064, &IN_20_CM3).unwrap();
    assert!(led_in.dissolved_mmol == led_in.amount_mmol && led_in.ph < found.ph);
    // Carbon dioxide: of 4 mmol not more than its own pressure of 101 kPa keeps dissolved: 0.034 mol/dm3 x 20 cm3 =
    // 0.68 mmol (0.83 volumes at 25 degC), pH 3.92 by sqrt(10^-6.35 x 0.034).
    let carbon = dissolve("CO2", 4e-3 * 44.009, &IN_20_CM3).unwrap();
    close(carbon.dissolved_mmol, 0.68, 0.02);
    close(carbon.ph, 3.92, 0.02);
    assert_eq!(carbon.pressure_kpa, Some(101.325));
}

#[test]
fn peroxide_makes_the_solution_less_alkaline_until_it_has_gone() {
    let product_g = 0.05 / 22.990 / 2.0 * 77.978;
    let found = dissolve("Na2O2", product_g, &IN_20_CM3).unwrap();
    let after = found.ph_without_peroxide.unwrap();
    let oxide = dissolve("Na2O", 0.05 / 22.990 / 2.0 * 61.979, &IN_20_CM3).unwrap();
    close(after, oxide.ph, 1e-6);
    assert!(found.ph < after - 0.1 && found.ph > 12.0, "{} {after}", found.ph);
    assert_eq!(found.reaction.as_deref(), Some("Na2O2 + 2H2O -> 2Na+ + 2OH- + H2O2"));
    assert!(oxide.ph_without_peroxide.is_none());
}

#[test]
fn what_does_not_dissolve_leaves_the_water_neutral_and_little_magnesia_dissolves() {
    for product in ["Fe3O4", "Fe2O3", "CuO", "ZnO"] {
        let found = dissolve(product, 0.2, &IN_20_CM3).unwrap();
        close(found.ph, found.neutral_ph, 1e-9);
        assert_eq!((found.dissolved_mmol, found.universal_indicator), (0.0, "green"), "{product}");
    }
    let magnesia = dissolve("MgO", 0.1658, &IN_20_CM3).unwrap();
    assert!(magnesia.ph > 10.0 && magnesia.ph < 10.6, "{}", magnesia.ph);
    assert_eq!(magnesia.litmus, "blue");
    // 1.12e-4 mol/dm3 without activity coefficients, which raise it by a few per cent.
    close(magnesia.concentration_mol_per_dm3, 1.15e-4, 4e-6);
    assert!(magnesia.dissolved_mmol < 0.003 && magnesia.amount_mmol > 4.0);
    // So little that all dissolves: the same as with as much of a soluble base.
    let trace = dissolve("MgO", 1e-4, &Water { water_cm3: 1e5, ..IN_20_CM3 }).unwrap();
    close(trace.dissolved_mmol, trace.amount_mmol, 1e-12);
}

#[test]
fn every_product_has_a_balanced_reaction_and_a_ph() {
    for product in &PRODUCTS_IN_WATER {
        let found = dissolve(product.formula, 0.1, &IN_20_CM3).unwrap();
        assert!(found.ph > 0.0 && found.ph < 14.0, "{}: {}", product.formula, found.ph);
        assert_eq!(found.reaction.is_some(), product.reaction.is_some());
        assert_eq!(found.universal_indicator, universal_indicator(found.ph));
        assert!(!product.note.is_empty());
    }
}

#[test]
fn nonsense_is_refused() {
    let code = |result: Result<_>| -> (Code, String) {
        let error: overwater::Error = Result::<overwater::burn::aqueous::InWater>::unwrap_err(result);
        (error.code, error.to_string())
    };
    let (unknown, text) = code(dissolve("Na202", 0.1, &IN_20_CM3));
    assert_eq!(unknown, Code::UnknownName);
    assert!(text.contains("did you mean Na2O2?"), "{text}");
    for mass in [0.0, -1.0] {
        assert_eq!(code(dissolve("SO2", mass, &IN_20_CM3)).0, Code::OutOfRange);
    }
    assert_eq!(code(dissolve("SO2", f64::NAN, &IN_20_CM3)).0, Code::NotANumber);
    for water in [
        Water { water_cm3: 0.0, ..IN_20_CM3 },
        Water { temperature_c: 60.0, ..IN_20_CM3 },
        Water { pressure_kpa: 0.0, ..IN_20_CM3 },
        Water { gas_space_cm3: Some(-1.0), ..IN_20_CM3 },
    ] {
        assert_eq!(code(dissolve("SO2", 0.1, &water)).0, Code::OutOfRange);
    }
    let not_a_number = Mixture::water().with_univalent(f64::NAN);
    let error = Equilibrium::of(&not_a_number, &at_25(), Activity::Ideal).unwrap_err();
    assert_eq!(error.code, Code::CannotBeMet);
}

/// The charge balance with activity coefficients, solved by halving alone.
fn by_halving(mixture: &Mixture<f64>, constants: &Constants<f64>) -> f64 {
    use overwater::burn::aqueous::{charges, davies, saturation};
    let mut g = 1.0;
    let mut root = 0.0;
    for _ in 0..60 {
        let (mut low, mut high) = (-46.0_f64, 9.0_f64);
        let at = |x: f64| {
            let a = x.exp();
            let mut dissolved = [None; 2];
            for (place, (held, k)) in
                dissolved.iter_mut().zip(mixture.hydroxides.iter().zip(constants.hydroxides))
            {
                *place = held.map(|held| [held.min(saturation(k, constants.water, a, g)), 0.0]);
            }
            charges(mixture, constants, a, g, &dissolved)
        };
        while high - low > 1e-13 {
            let middle = 0.5 * (low + high);
            let found = at(middle);
            if found.positive > found.negative {
                high = middle
            } else {
                low = middle
            }
            if middle == low && middle == high {
                break;
            }
            if 0.5 * (low + high) == middle {
                break;
            }
        }
        root = 0.5 * (low + high);
        g = davies((0.5 * at(root).twice_strength).min(0.5));
    }
    -root / std::f64::consts::LN_10
}

fn mixtures() -> impl Strategy<Value = Mixture<f64>> {
    let amount = || prop_oneof![Just(0.0), (-9.0..0.3_f64).prop_map(|power| 10f64.powf(power))];
    (
        amount(),
        proptest::array::uniform5(amount()),
        proptest::array::uniform2(amount()),
        prop_oneof![Just(0.0), 0.0..20.0_f64],
    )
        .prop_map(|(univalent, acids, solids, gas_ratio)| {
            let mut mixture = Mixture::water().with_univalent(univalent);
            for (acid, concentration) in Acid::ALL.into_iter().zip(acids) {
                let gas_ratio = if acid == Acid::HydrogenSulfate { 0.0 } else { gas_ratio };
                mixture = mixture.holding(acid, Held::Total { concentration, gas_ratio });
            }
            for (solid, concentration) in Hydroxide::ALL.into_iter().zip(solids) {
                mixture = mixture.with_hydroxide(solid, concentration);
            }
            mixture
        })
}

proptest! {
    #[test]
    fn newton_finds_what_halving_finds(mixture in mixtures(), celsius in 0.0..45.0_f64) {
        let constants = Constants::at(Temperature::new(celsius + 273.15));
        let found = Equilibrium::of(&mixture, &constants, Activity::Davies).unwrap();
        let expected = by_halving(&mixture, &constants);
        prop_assert!((found.ph - expected).abs() < 1e-7, "{} {expected}", found.ph);
    }

    #[test]
    fn more_acid_is_never_less_acid_and_more_base_never_less_basic(
        power in -9.0..0.7_f64,
        factor in 1.0001..3.0_f64,
    ) {
        let low = 10f64.powf(power);
        let high = low * factor;
        for activity in [Activity::Davies, Activity::Ideal] {
            // Sulfuric acid loses its first proton wholly: HSO4- without a partner is that proton.
            for acid in Acid::ALL {
                let of = |c: f64| ph(&Mixture::water().with_acid(acid, c), activity);
                prop_assert!(of(high) <= of(low) + 1e-7, "{acid:?} {low} {high}");
            }
            let alkali = |c: f64| ph(&Mixture::water().with_univalent(c), activity);
            prop_assert!(alkali(high) >= alkali(low) - 1e-7, "{low} {high}");
            for solid in Hydroxide::ALL {
                let of = |c: f64| ph(&Mixture::water().with_hydroxide(solid, c), activity);
                prop_assert!(of(high) >= of(low) - 1e-7, "{solid:?} {low} {high}");
            }
        }
    }

    #[test]
    fn base_into_acid_raises_the_ph(acid in 1e-4..0.2_f64, base in 0.0..0.3_f64, more in 1e-5..0.05_f64) {
        for held in [Acid::SulfurDioxide, Acid::CarbonDioxide, Acid::Phosphoric] {
            let of = |base: f64| ph(&Mixture::water().with_acid(held, acid).with_univalent(base), Activity::Davies);
            prop_assert!(of(base + more) > of(base) - 1e-7);
        }
    }
}
