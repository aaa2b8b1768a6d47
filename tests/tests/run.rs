//! The simulation of a preparation against closed forms, balances, an independent solver and its own properties.

use overwater::apparatus::run::{
    Addition, Happening, Limits, Run, RunResult, RunVessel, TrialReading, advise, calibrate, sensitivities,
    simulate,
};
use overwater::apparatus::tube;
use overwater::peroxide::kinetics::{Kinetics, Law, first_order, half_life};
use overwater::units::{Length, VolumeFlow};
use overwater::{Code, Error};
use overwater_testkit::compare::{Tolerance, assert_close};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;

fn portion(time_s: f64, volume_cm3: f64, concentration_mol_per_dm3: f64) -> Addition {
    Addition { time_s, over_s: 0.0, volume_cm3, concentration_mol_per_dm3, temperature_c: 20.0 }
}

fn vessels(volumes: &[f64]) -> Vec<RunVessel> {
    let one = |(index, volume_cm3): (usize, &f64)| RunVessel {
        name: format!("vessel {index}"),
        volume_cm3: *volume_cm3,
        height_cm: 15.0,
    };
    volumes.iter().enumerate().map(one).collect()
}

/// Thirteen portions of 5 cm3 of 20 vol, every half minute; a boiling tube and four jars.
fn lesson() -> Run {
    Run {
        additions: (0..13).map(|index| portion(f64::from(index) * 30.0, 5.0, 1.785)).collect(),
        rejected_cm3: 200.0,
        vessels: vessels(&[55.0, 250.0, 250.0, 250.0, 250.0]),
        outputs_s: (1..=20).map(|index| f64::from(index) * 60.0).collect(),
        ..Run::default()
    }
}

/// A run without heat, vapour and the change of liquid volume by water, for the closed forms.
fn isothermal() -> Run {
    Run {
        additions: vec![portion(0.0, 5.0, 1.785)],
        isothermal: true,
        dry: true,
        end_s: 600.0,
        ..Run::default()
    }
}

const R: f64 = 8.314_462_618_153_24;
/// Molar volumes that the model states: 18.015/0.9982 and 34.014/1.45 cm3/mol.
const WATER: f64 = 18.015e-6 / 0.998_2;
const PEROXIDE: f64 = 34.014e-6 / 1.45;

#[test]
fn isothermal_first_order_is_the_closed_form() {
    // A saturating law far above its half concentration is of zero order: P falls by k m t, no exponent in between.
    let zero_order = Run {
        kinetics: Kinetics { k_at_20: 0.02, activation: 0.0, law: Law::Saturating { half: 1e-3 } },
        outputs_s: vec![100.0],
        ..isothermal()
    };
    let point = simulate(&zero_order).unwrap().points[0];
    assert!((point.peroxide_mmol - (8.925 - 0.02 * 0.4e-3 * 100.0 * 1e3)).abs() < 1e-4, "{point:?}");

    // First order in P/V with V shrinking by (v(P) - v(W)) for each mole: dP/dt = -κ P/(V∞ + δ P), whose solution is
    // V∞ ln(P/P₀) + δ (P - P₀) = -κ t.
    let times: Vec<f64> = (1..=20).map(|index| f64::from(index) * 25.0).collect();
    let run = Run { outputs_s: times.clone(), rtol: 1e-10, ..isothermal() };
    let result = simulate(&run).unwrap();
    let start = 5.0 * 1.785e-3;
    let delta = PEROXIDE - WATER;
    let end_volume = 30e-6 - start * delta;
    let kappa = 5e-4 * 0.4e-3;
    assert_eq!(result.points.len(), 20);
    let mut greatest = 0.0_f64;
    for (point, time) in result.points.iter().zip(times) {
        let left = point.peroxide_mmol * 1e-3;
        let closed = -(end_volume * (left / start).ln() + delta * (left - start)) / kappa;
        greatest = greatest.max((closed / time - 1.0).abs());
        // Gas that left is all that was made and what the liquid displaced: the free volume is all that is kept.
        let made = 0.5 * (start - left);
        let pressure = 101_325.0 + (point.back_pressure_pa - friction(point.flow_cm3_per_s));
        let displaced = pressure * (5e-6 - (start - left) * delta) / (R * 293.15);
        let out = (point.oxygen_out_mmol + point.nitrogen_out_mmol) * 1e-3;
        greatest = greatest.max((out / (made + displaced) - 1.0).abs());
    }
    println!("greatest relative difference {greatest:e}");
    assert!(greatest < 1e-8, "{greatest:e}");

    // With the volume fixed that is V = V∞ (1 - exp(-k t)): the same room's exponential.
    assert!((first_order(1.0_f64, 0.01, 60.0) - f64::exp(-0.6)).abs() < 1e-15);
}

fn friction(flow_cm3_per_s: f64) -> f64 {
    tube::drop(VolumeFlow::new(flow_cm3_per_s * 1e-6), Length::new(5e-3), Length::new(0.8))
}

#[test]
fn adiabatic_rise_is_the_closed_form() {
    // Without heat loss, glass and vapour, the whole heat warms the liquid and the gas; the gas carries its share away
    // at the temperature it has: (C + c(gas) n) dT = (q - c(gas) θ/2) r dt, a first-order linear equation in the extent.
    for (concentration, expected) in [(0.8923, 20.0), (1.7846, 41.0), (2.6769, 62.0)] {
        let run = Run {
            heel_cm3: 1e-6,
            seal_cm3: 1e-6,
            additions: vec![portion(0.0, 50.0, concentration)],
            heat_loss_w_per_k: 0.0,
            glass_j_per_k: 0.0,
            dry: true,
            end_s: 20_000.0,
            rtol: 1e-10,
            ..Run::default()
        };
        let result = simulate(&run).unwrap();
        let rise = result.top_temperature_c - 20.0;
        assert!((rise - expected).abs() < 1.5, "{concentration}: {rise}");
        // Liquid alone: q P over 75.3 J/(mol K) for each mole, which decomposing does not change.
        let p = 50e-6 * concentration * 1e3;
        let w = (50e-6 - p * PEROXIDE) / WATER;
        let upper = 94_660.0 * p / (4.18 * 18.015 * (p + w));
        assert!(rise < upper && rise > upper * 0.985, "{rise} {upper}");
        // The gas in the flask stays at p V/(R T), at most 8.5 mmol of 29.1 J/(mol K): with it, by Simpson's rule in T.
        let c = 4.18 * 18.015;
        let liquid = c * (p + w + 1e-12 / WATER);
        let pressure = 101_325.0 + 998.2 * 9.80665 * 0.1 + 58.24;
        let mut t = 293.15;
        let steps = 20_000;
        let extent = p / f64::from(steps);
        for step in 0..steps {
            let slope = |t: f64, made: f64| {
                let space = 250e-6 + std::f64::consts::FRAC_PI_4 * 25e-6 * 0.8;
                let free = space - (w + made) * WATER - (p - made) * PEROXIDE;
                (94_660.0 - 0.5 * 29.1 * (t - 298.15)) / (liquid + 29.1 * pressure * free / (R * t))
            };
            let made = f64::from(step) * extent;
            let middle = t + 0.5 * extent * slope(t, made);
            t += extent * slope(middle, made + 0.5 * extent);
        }
        println!("{concentration}: rise {rise}, closed form off by {:e}", rise / (t - 293.15) - 1.0);
        assert!((rise / (t - 293.15) - 1.0).abs() < 1e-6, "{rise} {}", t - 293.15);
        assert!(result.heat_balance < 1e-8, "{}", result.heat_balance);
    }
}

#[test]
fn purity_with_constant_flow_is_the_mixed_flask() {
    // Zero order, no vapour: oxygen comes steadily, and after a volume v of gas the fraction is 1 - 0.79 exp(-v/V(free)).
    let run = Run {
        kinetics: Kinetics { k_at_20: 0.1, activation: 0.0, law: Law::Saturating { half: 1e-3 } },
        additions: vec![portion(0.0, 20.0, 2.677)],
        outputs_s: vec![1.0, 500.0, 1000.0],
        rtol: 1e-10,
        ..isothermal()
    };
    let result = simulate(&Run { end_s: 1200.0, ..run }).unwrap();
    let fraction = |index: usize| {
        let at: &overwater::apparatus::run::Point = &result.points[index];
        (at.oxygen_fraction, at.oxygen_out_mmol + at.nitrogen_out_mmol, at.oxygen_mmol + at.nitrogen_mmol)
    };
    let (start, out0, held) = fraction(0);
    for index in [1, 2] {
        let (now, out, _) = fraction(index);
        // The liquid shrinks by 5.4 cm3 for each mole, so that V(free) is constant to 0.1 %: the closed form to 1e-3.
        let closed = 1.0 - (1.0 - start) * (-(out - out0) / held).exp();
        assert!((now - closed).abs() < 1e-3 * (1.0 - closed) + 1e-5, "{now} {closed}");
    }
    assert!(fraction(2).0 > 0.88, "{:?}", fraction(2));
}

#[test]
fn pressures_of_tube_and_stem() {
    // Poiseuille by hand for 0.8 m of 5, 4, 3 and 2 mm at 10 cm3/s: 11, 26, 82, 410 Pa; 98 Pa for each cm of water.
    for (bore, expected) in [(5.0, 10.6), (4.0, 25.8), (3.0, 81.7), (2.0, 413.5)] {
        let drop = tube::drop(VolumeFlow::new(1e-5), Length::new(bore * 1e-3), Length::new(0.8));
        assert!((drop / expected - 1.0).abs() < 5e-3, "{bore}: {drop}");
    }
    let result = simulate(&lesson()).unwrap();
    let point = result.points.iter().find(|point| point.flow_cm3_per_s > 1.0).unwrap();
    assert!((point.back_pressure_pa / point.stem_rise_cm - 97.89).abs() < 0.01);
    assert!((point.back_pressure_pa - friction(point.flow_cm3_per_s) - 978.9 - 58.24).abs() < 0.1);
}

#[test]
fn a_flask_at_sixty_degrees_shrinks_by_28_per_cent() {
    let run = Run {
        additions: vec![portion(0.0, 60.0, 2.677)],
        heat_loss_w_per_k: 0.0,
        glass_j_per_k: 0.0,
        end_s: 3000.0,
        ..Run::default()
    };
    let mut run = run;
    // Choose the strength that ends at 60 degC.
    let (mut low, mut high) = (0.5, 3.0);
    for _ in 0..30 {
        let middle: f64 = 0.5 * (low + high);
        run.additions[0].concentration_mol_per_dm3 = middle;
        if simulate(&run).unwrap().top_temperature_c < 60.0 { low = middle } else { high = middle }
    }
    let result = simulate(&run).unwrap();
    assert!((result.top_temperature_c - 60.0).abs() < 1e-3);
    // With 19.94 and 2.339 kPa: 1 - (81.38 x 293.15)/(98.99 x 333.15) = 0.277.
    assert!((result.shrinkage_to_come - 0.277).abs() < 5e-4, "{}", result.shrinkage_to_come);
}

#[test]
fn half_lives_of_a_textbook() {
    // OpenStax Chemistry 2e (2019), table 12.1: 1.000, 0.500, 0.250, 0.125, 0.0625 mol/dm3 at 0, 6, 12, 18, 24 h.
    let k = std::f64::consts::LN_2 / (6.00 * 3600.0);
    assert!((half_life(k) / 3600.0 - 6.00).abs() < 1e-12);
    for (hours, printed) in [(0.0, 1.000), (6.0, 0.500), (12.0, 0.250), (18.0, 0.125), (24.0, 0.0625)] {
        assert!((first_order(1.0, k, hours * 3600.0) - printed).abs() < 5e-6);
    }
}

#[test]
fn atoms_and_heat_are_kept() {
    let runs = [
        lesson(),
        Run { additions: vec![portion(0.0, 100.0, 8.92)], ..lesson() },
        Run { additions: vec![portion(5.0, 30.0, 2.677)], stem_length_cm: 5.0, ..lesson() },
        Run { heel_cm3: 5.0, ..lesson() },
        Run {
            additions: vec![Addition { over_s: 300.0, ..portion(10.0, 40.0, 2.677) }],
            kinetics: Kinetics { k_at_20: 0.3, activation: 40_000.0, law: Law::Saturating { half: 200.0 } },
            ..lesson()
        },
    ];
    for (index, run) in runs.iter().enumerate() {
        let result = simulate(run).unwrap();
        assert!(result.atom_balance < 1e-10, "{index}: {:e}", result.atom_balance);
        assert!(result.heat_balance < 100.0 * run.rtol, "{index}: {:e}", result.heat_balance);
        println!("{index}: atoms {:e}, heat {:e}", result.atom_balance, result.heat_balance);
    }
}

/// The figures that a sheet would print, rounded to its last digit.
fn printed(result: &RunResult) -> Vec<String> {
    let mut figures = vec![
        format!("{:.1}", result.top_temperature_c),
        format!("{:.2}", result.top_flow_cm3_per_s),
        format!("{:.1}", result.top_stem_rise_cm),
    ];
    figures.extend(result.vessels.iter().map(|vessel| format!("{:.4}", vessel.oxygen_fraction)));
    figures.extend(result.events.iter().map(|event| format!("{:.2} {:?}", event.time_s, event.what)));
    figures
}

#[test]
fn a_tighter_tolerance_changes_no_printed_figure() {
    let close = |one: &RunResult, other: &RunResult, tolerance: f64| {
        assert_eq!(one.events.len(), other.events.len());
        for (a, b) in one.events.iter().zip(&other.events) {
            assert_eq!(a.what, b.what);
            assert!((a.time_s - b.time_s).abs() < tolerance, "{a:?} {b:?}");
        }
    };
    let coarse = simulate(&lesson()).unwrap();
    let half = simulate(&Run { rtol: 5e-9, ..lesson() }).unwrap();
    let fine = simulate(&Run { rtol: 1e-12, ..lesson() }).unwrap();
    assert!(coarse.events.len() >= 7);
    assert_eq!(printed(&coarse), printed(&half));
    // Events to 1 ms against a run ten thousand times as exact.
    close(&coarse, &fine, 1e-3);
    for (one, other) in coarse.points.iter().zip(&fine.points) {
        assert!((one.temperature_c - other.temperature_c).abs() < 1e-6 * 300.0);
        assert!((one.collected_cm3 / other.collected_cm3 - 1.0).abs() < 1e-7);
    }
}

#[test]
fn a_hundred_volumes_at_once_boil_and_say_so() {
    let run = Run { additions: vec![portion(0.0, 100.0, 8.92)], ..lesson() };
    let result = simulate(&run).unwrap();
    let boiling = result.first(Happening::Boiling).unwrap();
    let over = result.first(Happening::StemOvertopped).unwrap();
    assert!(over < boiling && result.first(Happening::FrothAtBung).is_some());
    assert!(result.first(Happening::StepBound).is_none());
    // All heat into steam: q = L y/2, y = 2 x 94.66/41.5 = 4.56, 82 % steam, 94.8 degC at 102.4 kPa.
    assert!((result.top_temperature_c - 94.8).abs() < 0.3, "{}", result.top_temperature_c);
    assert!(
        result.points.iter().all(|point| point.temperature_c.is_finite() && point.peroxide_mmol >= -1e-6)
    );
    let worse =
        Run { additions: vec![portion(0.0, 200.0, 8.92)], heel_cm3: 10.0, catalyst_g: 5.0, ..lesson() };
    let result = simulate(&worse).unwrap();
    assert!(result.first(Happening::Boiling).is_some() && result.first(Happening::StepBound).is_none());
}

#[test]
fn the_bound_on_steps_is_told() {
    let result = simulate(&Run { most_steps: 7, ..lesson() }).unwrap();
    assert_eq!(result.events.last().unwrap().what, Happening::StepBound);
    assert!(result.reached_s < 1200.0);
}

#[test]
fn water_runs_back_or_air_comes_in_when_the_flask_cools() {
    let hot = Run { additions: vec![portion(0.0, 50.0, 2.677)], end_s: 6000.0, ..lesson() };
    let open = simulate(&Run { outputs_s: vec![], ..hot.clone() }).unwrap();
    let air = open.first(Happening::AirThroughFunnel).unwrap();
    assert!(open.first(Happening::WaterRises).unwrap() < air && open.reached_s == air);
    let tap = simulate(&Run { open_funnel: false, outputs_s: vec![], ..hot }).unwrap();
    let back = tap.first(Happening::SuckBack).unwrap();
    assert!(back > tap.first(Happening::WaterRises).unwrap());
    assert!(tap.first(Happening::AirThroughFunnel).is_none());
}

#[test]
fn gas_escapes_until_the_tip_is_covered() {
    let result = simulate(&Run { heel_cm3: 8.0, ..lesson() }).unwrap();
    let covered = result.first(Happening::TipCovered).unwrap();
    assert_eq!(covered, 90.0, "8 + 4 x 5 cm3 cover 25 cm3 with the fourth portion");
    let before = result.points.iter().find(|point| point.time_s == 60.0).unwrap();
    assert!(before.oxygen_out_mmol == 0.0 && before.oxygen_lost_mmol > 0.0);
}

#[test]
fn gas_in_a_half_full_vessel_is_under_less_pressure() {
    // Water stands 15 cm above the trough in an empty vessel, and less as it fills: n R T = (p - ρ g h (1 - V/V₀) - p_w) V.
    let run = Run { outputs_s: (1..=40).map(|index| 150.0 + f64::from(index) * 2.0).collect(), ..lesson() };
    let result = simulate(&run).unwrap();
    let dry = 101_325.0 - 2_339.2;
    let mut seen = 0;
    for point in &result.points {
        let level = point.collected_cm3 - 200.0 - 55.0;
        if !(level > 1.0 && level < 249.0) {
            continue;
        }
        let inside = point.in_vessel_cm3;
        let pressure = dry - 998.2 * 9.80665 * 0.15 * (1.0 - inside / 250.0);
        assert!((inside * pressure / (level * dry) - 1.0).abs() < 1e-5, "{point:?}");
        assert!(inside > level && inside < 1.016 * level);
        seen += 1;
    }
    assert!(seen > 20, "{seen}");
}

#[test]
fn two_events_in_one_step_are_both_found() {
    // Two vessels of a tenth of a cubic centimetre each: far less than what comes in one step.
    let run = Run { vessels: vessels(&[100.0, 0.1, 0.1]), ..lesson() };
    let result = simulate(&run).unwrap();
    let times: Vec<f64> = result.vessels.iter().map(|vessel| vessel.full_at_s.unwrap()).collect();
    assert!(times[0] < times[1] && times[1] < times[2] && times[2] - times[0] < 1.0, "{times:?}");
}

#[test]
fn sensitivities_are_those_of_the_run() {
    // Central differences of the run itself, only here.
    let base = Run { rtol: 1e-11, outputs_s: vec![], ..lesson() };
    let exact = sensitivities(&base).unwrap();
    let outcome = |change: &dyn Fn(&mut Run)| {
        let mut run = base.clone();
        change(&mut run);
        let result = simulate(&run).unwrap();
        (result.filled_at_s.unwrap(), result.top_temperature_c, result.vessels[1].oxygen_fraction)
    };
    type Change = fn(&mut Run, f64);
    let changes: [(usize, f64, Change); 8] = [
        (0, 1e-4, |run, by| run.kinetics.k_at_20 *= 1.0 + by),
        (1, 1e-2, |run, by| run.kinetics.activation += 1e3 * by),
        (2, 1e-4, |run, by| run.catalyst_g *= 1.0 + by),
        (3, 1e-4, |run, by| run.additions.iter_mut().for_each(|a| a.concentration_mol_per_dm3 *= 1.0 + by)),
        (4, 1e-3, |run, by| run.heat_loss_w_per_k += by),
        (5, 0.5, |run, by| run.flask_cm3 += by),
        (6, 0.1, |run, by| run.pressure_kpa += by),
        (7, 0.5, |run, by| run.glass_j_per_k += by),
    ];
    for (index, step, change) in changes {
        let (up, down) = (outcome(&|run| change(run, step)), outcome(&|run| change(run, -step)));
        let differences = [
            (exact.filled_at_s.unwrap()[index], (up.0 - down.0) / (2.0 * step)),
            (exact.top_temperature[index], (up.1 - down.1) / (2.0 * step)),
            (exact.oxygen_fraction[1][index], (up.2 - down.2) / (2.0 * step)),
        ];
        for (which, (dual, difference)) in differences.into_iter().enumerate() {
            let scale = difference.abs().max(1e-4);
            assert!((dual - difference).abs() < 1e-3 * scale, "{index} {which}: {dual} {difference}");
        }
    }
}

#[test]
fn bad_input_is_refused_by_name() {
    let refused = |change: &dyn Fn(&mut Run)| -> Error {
        let mut run = lesson();
        change(&mut run);
        simulate(&run).unwrap_err()
    };
    type Case = (&'static str, Code, fn(&mut Run));
    let cases: [Case; 15] = [
        ("tube_bore_mm", Code::OutOfRange, |run| run.tube_bore_mm = 0.0),
        ("stem_length_cm", Code::OutOfRange, |run| run.stem_length_cm = -1.0),
        ("kinetics.k_at_20", Code::OutOfRange, |run| run.kinetics.k_at_20 = 0.0),
        ("additions[12].volume_cm3", Code::Contradiction, |run| run.additions[12].volume_cm3 = 300.0),
        ("additions[1].time_s", Code::Contradiction, |run| run.additions[0].time_s = 40.0),
        ("outputs_s[1]", Code::Contradiction, |run| run.outputs_s[0] = 900.0),
        ("room_c", Code::NotANumber, |run| run.room_c = f64::NAN),
        ("vessels[0].volume_cm3", Code::OutOfRange, |run| run.vessels[0].volume_cm3 = 0.0),
        ("additions[0].concentration_mol_per_dm3", Code::NotANumber, |run| {
            run.additions[0].concentration_mol_per_dm3 = f64::INFINITY;
        }),
        ("additions[12].time_s", Code::Contradiction, |run| run.additions[12].time_s = 1201.0),
        ("additions[0].temperature_c", Code::OutOfRange, |run| run.additions[0].temperature_c = 80.0),
        ("heel_cm3", Code::Contradiction, |run| *run = Run { heel_cm3: 246.0, ..Run::default() }),
        ("kinetics.order", Code::OutOfRange, |run| run.kinetics.law = Law::Power { order: 3.0 }),
        ("kinetics.half_mol_per_m3", Code::NotANumber, |run| {
            run.kinetics.law = Law::Saturating { half: f64::NAN };
        }),
        ("vessels", Code::TooLarge, |run| run.vessels = vessels(&[1.0; 1001])),
    ];
    for (parameter, code, change) in cases {
        let error = refused(&change);
        assert_eq!((error.parameter.as_ref(), error.code), (parameter, code), "{error}");
    }
}

/// Numbers between 0 and 1, the same on every run.
struct Noise(u64);

impl Noise {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / 9_007_199_254_740_992.0
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.unit()).ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }
}

#[test]
fn calibration_covers_the_truth_in_95_of_100_trials() {
    let mut noise = Noise(20);
    let mut covered = 0;
    let truth = 0.008 * 30e-6 / 0.4e-3;
    for _ in 0..1000 {
        let readings: Vec<TrialReading> = (1..=20)
            .map(|index| f64::from(index) * 20.0)
            .map(|time_s| TrialReading {
                time_s,
                volume_cm3: 110.0 * (1.0 - f64::exp(-0.008 * time_s)) + noise.normal(),
                temperature_c: None,
            })
            .collect();
        let found = calibrate(&readings, 0.4, 30.0, 50_000.0, 20.0).unwrap();
        covered += i32::from((found.k_at_20 - truth).abs() <= found.half_width_95);
    }
    println!("{covered} of 1000 cover the truth");
    assert!((920..=980).contains(&covered), "{covered} of 1000");
}

#[test]
fn calibration_takes_a_simulated_trial_with_its_temperature() {
    // One portion in a flask whose glass holds its warmth back: the run's own k comes out of its own readings.
    let run = Run {
        additions: vec![portion(0.0, 5.0, 1.785)],
        end_s: 900.0,
        outputs_s: (0..=90).map(|index| f64::from(index) * 10.0).collect(),
        ..Run::default()
    };
    let result = simulate(&run).unwrap();
    let first = result.points[1].peroxide_mmol;
    let readings: Vec<TrialReading> = result.points[1..]
        .iter()
        .map(|point| TrialReading {
            time_s: point.time_s,
            volume_cm3: (8.925 - point.peroxide_mmol) * 12.0,
            temperature_c: Some(point.temperature_c),
        })
        .collect();
    assert!(first < 8.925);
    let found = calibrate(&readings, 0.4, 30.0, 50_000.0, 20.0).unwrap();
    assert!((found.k_at_20 / 5e-4 - 1.0).abs() < 3e-3, "{found:?}");
    // Taken as 20 degC throughout, the same readings look faster.
    let cold: Vec<TrialReading> =
        readings.iter().map(|reading| TrialReading { temperature_c: None, ..*reading }).collect();
    assert!(calibrate(&cold, 0.4, 30.0, 50_000.0, 20.0).unwrap().k_at_20 > 1.05 * found.k_at_20);
}

#[test]
fn calibration_refuses_what_is_not_a_trial() {
    let good: Vec<TrialReading> = (1..=8)
        .map(|index| TrialReading {
            time_s: f64::from(index) * 30.0,
            volume_cm3: 100.0 * (1.0 - f64::exp(-0.01 * f64::from(index) * 30.0)),
            temperature_c: None,
        })
        .collect();
    let with = |change: &dyn Fn(&mut Vec<TrialReading>)| {
        let mut readings = good.clone();
        change(&mut readings);
        calibrate(&readings, 0.4, 30.0, 50_000.0, 20.0).unwrap_err()
    };
    let error = with(&|readings| readings[3].volume_cm3 = f64::NAN);
    assert_eq!((error.parameter.as_ref(), error.code), ("readings[3].volume_cm3", Code::NotANumber));
    let error = with(&|readings| readings.swap(2, 3));
    assert_eq!((error.parameter.as_ref(), error.code), ("readings[3].time_s", Code::Contradiction));
    assert_eq!(with(&|readings| readings.truncate(4)).code, Code::Missing);
    let error =
        with(&|readings| readings.iter_mut().for_each(|reading| reading.volume_cm3 = 0.3 * reading.time_s));
    assert_eq!(error.code, Code::CannotBeMet, "{error}");
}

#[test]
fn advice_names_the_limit_in_the_way_and_what_helps() {
    let advice = advise(&lesson(), 1.785, &Limits::default()).unwrap();
    assert!(advice.result.top_flow_cm3_per_s <= 6.0 && advice.additions.len() > 5);
    let short = Run { stem_length_cm: 8.0, ..lesson() };
    let error = advise(&short, 1.785, &Limits::default()).unwrap_err();
    assert_eq!((error.code, error.parameter.as_ref()), (Code::CannotBeMet, "limits.stem_margin_cm"));
    assert!(error.advice.contains("longer stem"));
    let pure = Limits { oxygen_fractions: vec![0.99], ..Limits::default() };
    let error = advise(&lesson(), 1.785, &pure).unwrap_err();
    assert_eq!(error.parameter, "limits.oxygen_fractions");
    assert_eq!(
        advise(&Run { vessels: vec![], ..lesson() }, 1.785, &Limits::default()).unwrap_err().code,
        Code::Missing
    );
}

/// The file was made once by another integrator from equations written a second time; its header says how.
#[test]
fn an_independent_solver_agrees() {
    let text = include_str!("../data/run_radau.csv");
    let run = Run {
        additions: vec![portion(0.0, 20.0, 1.785)],
        end_s: 400.0,
        outputs_s: (1..=20).map(|index| f64::from(index) * 20.0).collect(),
        rtol: 1e-10,
        ..Run::default()
    };
    let result = simulate(&run).unwrap();
    let rows: Vec<Vec<f64>> = text
        .lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_digit()))
        .map(|line| line.split(',').map(|cell| cell.parse().unwrap()).collect())
        .collect();
    assert_eq!((rows.len(), result.points.len()), (20, 20));
    let mut greatest = 0.0_f64;
    for (row, point) in rows.iter().zip(&result.points) {
        let ours = [
            point.time_s,
            point.peroxide_mmol,
            point.water_mmol,
            point.temperature_c + 273.15,
            point.oxygen_mmol,
            point.nitrogen_mmol,
            point.oxygen_out_mmol,
            point.nitrogen_out_mmol,
            point.vapour_out_mmol,
            point.heat_out_j,
        ];
        assert_eq!(row.len(), ours.len());
        for (column, (theirs, ours)) in row.iter().zip(ours).enumerate() {
            let off = (ours / theirs - 1.0).abs();
            assert!(off < 1e-6, "{column} at {}: {ours} {theirs}", point.time_s);
            greatest = greatest.max(off);
        }
    }
    println!("greatest relative difference from the other solver {greatest:e}");
}

fn any_run() -> impl Strategy<Value = Run> {
    (
        (100.0..600.0_f64, 15.0..60.0_f64, 0.1..1.5_f64, 1e-4..2e-3_f64, 30e3..80e3_f64),
        (10.0..30.0_f64, 90.0..104.0_f64, 2.0..8.0_f64, 3.0..18.0_f64, 10.0..40.0_f64),
        (0.05..0.5_f64, 0.0..100.0_f64, 40.0..300.0_f64, 0.0..300.0_f64, 0.0..3.0_f64),
    )
        .prop_map(
            |((flask, heel, catalyst, k, activation), (room, pressure, bore, depth, stem), rest)| {
                let (loss, glass, jar, rejected, tip) = rest;
                Run {
                    flask_cm3: flask,
                    heel_cm3: heel,
                    seal_cm3: 15.0,
                    catalyst_g: catalyst,
                    kinetics: Kinetics { k_at_20: k, activation, law: Law::Power { order: 1.0 } },
                    room_c: room,
                    pressure_kpa: pressure,
                    tube_bore_mm: bore,
                    outlet_depth_cm: depth,
                    stem_length_cm: stem,
                    heat_loss_w_per_k: loss,
                    glass_j_per_k: glass,
                    rejected_cm3: rejected,
                    tip_depth_cm: tip,
                    vessels: vessels(&[55.0, jar]),
                    ..Run::default()
                }
            },
        )
}

/// A flask that warms for long after a portion, so that the flow is greatest long after anything happens.
#[test]
fn the_greatest_flow_is_seen_between_two_events() {
    let run = Run {
        flask_cm3: 570.0,
        heel_cm3: 15.0,
        seal_cm3: 15.0,
        catalyst_g: 0.32,
        kinetics: Kinetics { k_at_20: 9.3e-4, activation: 78_500.0, law: Law::Power { order: 1.0 } },
        pressure_kpa: 90.0,
        tube_bore_mm: 2.0,
        stem_length_cm: 30.0,
        additions: vec![portion(0.0, 10.0, 2.09), portion(180.0, 10.0, 2.09)],
        vessels: vessels(&[55.0, 270.0]),
        end_s: 240.0,
        ..Run::default()
    };
    let at_events = simulate(&run).unwrap();
    let outputs_s = (0..2400).map(|index| f64::from(index) * 0.1).collect();
    let everywhere = simulate(&Run { outputs_s, ..run }).unwrap();
    let greatest = everywhere.points.iter().map(|point| point.flow_cm3_per_s).fold(0.0, f64::max);
    assert!(greatest > 7.0, "{greatest}");
    assert_close("flow", at_events.top_flow_cm3_per_s, greatest, Tolerance::Relative(1e-3));
    let rise = everywhere.points.iter().map(|point| point.stem_rise_cm).fold(0.0, f64::max);
    assert_close("rise", at_events.top_stem_rise_cm, rise, Tolerance::Relative(1e-3));
}

/// A limit that a schedule breaks when it is simulated by somebody who does not know how it was found.
fn breaks(run: &Run, limits: &Limits, result: &RunResult) -> Option<String> {
    let bad = [
        Happening::StemOvertopped,
        Happening::Boiling,
        Happening::FrothAtBung,
        Happening::SuckBack,
        Happening::AirThroughFunnel,
        Happening::StepBound,
        Happening::BoiledDry,
    ];
    if let Some(what) = bad.iter().find(|what| result.first(**what).is_some()) {
        return Some(format!("{what:?}"));
    }
    let over = [
        (result.top_flow_cm3_per_s, limits.greatest_flow_cm3_per_s),
        (result.top_temperature_c, limits.top_temperature_c),
        (result.top_stem_rise_cm, run.stem_length_cm - limits.stem_margin_cm),
        (result.top_froth_cm3, limits.froth_share * run.flask_cm3),
    ];
    if let Some((value, limit)) = over.iter().find(|(value, limit)| value.is_nan() || value > limit) {
        return Some(format!("{value} over {limit}"));
    }
    result.filled_at_s.is_none().then(|| "not filled".to_owned())
}

#[test]
fn advice_keeps_its_limits_on_two_hundred_apparatuses() {
    let limits = Limits { activity_factor: 1.0, ..Limits::default() };
    let advised = std::cell::Cell::new(0);
    let mut runner = TestRunner::new(ProptestConfig {
        cases: 200,
        failure_persistence: None,
        ..ProptestConfig::default()
    });
    runner
        .run(&(any_run(), 0.8..2.7_f64), |(run, concentration)| {
            let advice = match advise(&run, concentration, &limits) {
                Ok(advice) => advice,
                Err(error) => {
                    prop_assert_eq!(error.code, Code::CannotBeMet);
                    return Ok(());
                }
            };
            advised.set(advised.get() + 1);
            let outputs_s = (0..40).map(|index| f64::from(index) * advice.tube_out_s / 40.0).collect();
            let again = Run { additions: advice.additions, end_s: advice.tube_out_s, outputs_s, ..run };
            let result = simulate(&again).unwrap();
            // Outputs are further looks at the flow, between the steps that the search saw.
            let wider =
                Limits { greatest_flow_cm3_per_s: 6.0 * 1.001, top_temperature_c: 60.001, ..limits.clone() };
            prop_assert_eq!(breaks(&again, &wider, &result), None);
            Ok(())
        })
        .unwrap();
    println!("{} of 200 could be advised", advised.get());
    assert!(advised.get() >= 30, "only {} of 200 could be advised", advised.get());
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn more_catalyst_is_never_slower_and_a_hotter_room_never_cooler(run in any_run(), concentration in 0.8..2.7_f64) {
        let additions: Vec<Addition> =
            (0..8).map(|index| Addition { temperature_c: run.room_c, ..portion(f64::from(index) * 20.0, 5.0, concentration) }).collect();
        let run = Run { additions, stem_length_cm: 150.0, heel_cm3: run.heel_cm3.min(40.0), open_funnel: false, tube_rise_cm: 200.0, ..run };
        let base = simulate(&run).unwrap();
        let more = simulate(&Run { catalyst_g: run.catalyst_g * 1.5, ..run.clone() }).unwrap();
        match (base.filled_at_s, more.filled_at_s) {
            (Some(base), Some(more)) => prop_assert!(more <= base + 1e-3, "{} {}", base, more),
            (Some(_), None) => prop_assert!(false, "more catalyst, not filled: {:?}", more.events),
            _ => {}
        }
        let warmer = Run { room_c: run.room_c + 5.0, ..run };
        prop_assert!(simulate(&warmer).unwrap().top_temperature_c >= base.top_temperature_c - 1e-6);
    }

    #[test]
    fn the_greatest_values_are_those_of_a_close_look(run in any_run(), concentration in 0.8..2.7_f64) {
        let additions = (0..4).map(|index| portion(f64::from(index) * 60.0, 5.0, concentration)).collect();
        let run = Run { additions, end_s: 300.0, ..run };
        let result = simulate(&run).unwrap();
        let close = simulate(&Run { outputs_s: (0..1500).map(|index| f64::from(index) * 0.2).collect(), ..run }).unwrap();
        // Each look is at a state of the run, so that neither sees more than there is.
        for (one, other) in [
            (result.top_flow_cm3_per_s, close.top_flow_cm3_per_s),
            (result.top_stem_rise_cm, close.top_stem_rise_cm),
            (result.top_froth_cm3, close.top_froth_cm3),
        ] {
            prop_assert!((one - other).abs() <= 2e-3 * other, "{} and {}", one, other);
        }
    }

    #[test]
    fn no_input_within_bounds_hangs_or_breaks(
        run in any_run(),
        volume in 0.1..60.0_f64,
        concentration in 0.0..14.0_f64,
        order in 0.5..2.0_f64,
        over_s in prop_oneof![Just(0.0), 1.0..100.0_f64],
    ) {
        let kinetics = Kinetics { law: Law::Power { order }, ..run.kinetics };
        let run = Run {
            kinetics,
            additions: vec![Addition { over_s, ..portion(3.0, volume, concentration) }],
            flask_cm3: run.flask_cm3.max(150.0),
            ..run
        };
        let result = simulate(&run).unwrap();
        prop_assert!(result.steps <= run.most_steps);
        prop_assert!(result.top_temperature_c.is_finite() && result.top_temperature_c < 100.0);
        prop_assert!(result.first(Happening::StepBound).is_none(), "{:?}", result.events);
    }
}
