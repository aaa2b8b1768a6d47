//! Where a run stands: its state, what has happened, and what has been noted on the way.

use super::given::Run;
use super::model::{Inflow, Mode, Model, State};
use super::outcome::{Event, Happening, Point};
use super::packed::{Packed, pack, unpack};
use super::stand::Bench;
use crate::peroxide::kinetics::Kinetics;
use crate::reference::constants::{AIR_NOT_OXYGEN, MOLAR_GAS_2019, STANDARD_GRAVITY_1901};
use crate::reference::flask::WATER_VOLUME;
use crate::reference::peroxide::DECOMPOSITION_HEAT_1982;

/// The greatest values so far.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Greatest {
    pub(super) flow_cm3_per_s: f64,
    pub(super) stem_rise_cm: f64,
    pub(super) froth_cm3: f64,
}

/// What a run shows at one moment.
struct Sight {
    flow_cm3_per_s: f64,
    back_pressure_pa: f64,
    stem_rise_cm: f64,
    froth_cm3: f64,
}

/// The run while it goes.
pub(super) struct Course<'a, S, const M: usize> {
    pub(super) run: &'a Run,
    pub(super) bench: Bench,
    pub(super) model: Model<S>,
    pub(super) strength: S,
    pub(super) mode: Mode,
    pub(super) inflow: Option<Inflow<S>>,
    pub(super) time: f64,
    pub(super) numbers: [f64; M],
    pub(super) steps: usize,
    pub(super) atol: [f64; M],
    pub(super) events: Vec<Event>,
    pub(super) points: Vec<Point>,
    /// Dry amounts at which the rejected gas and each vessel are complete.
    pub(super) marks: Vec<S>,
    pub(super) next_mark: usize,
    pub(super) frothed: bool,
    pub(super) boiling: bool,
    /// Whether the flask has stopped getting hotter since the last addition.
    pub(super) hottest: bool,
    /// Gas by dry amount at each mark: time, oxygen and nitrogen that have left.
    pub(super) marked: Vec<(S, S, S)>,
    pub(super) top: S,
    pub(super) greatest: Greatest,
    pub(super) ended: bool,
    pub(super) start: State<S>,
    pub(super) poured: [f64; 3],
}

impl<'a, S: Packed, const M: usize> Course<'a, S, M> {
    pub(super) fn new(run: &'a Run) -> Self {
        let room = run.room_c + 273.15;
        let peroxide: f64 =
            run.additions.iter().map(|a| a.concentration_mol_per_dm3 * a.volume_cm3 * 1e-3).sum();
        let bench = Bench::new(run, peroxide);
        let one = |index, value: f64, scale: f64| S::input(value, index, scale);
        let flask = one(5, bench.flask, 1e-6);
        let model = Model {
            kinetics: Kinetics {
                k_at_20: one(0, run.kinetics.k_at_20, run.kinetics.k_at_20),
                activation: one(1, run.kinetics.activation, 1e3),
                law: run.kinetics.law,
            },
            catalyst: one(2, run.catalyst_g * 1e-3, run.catalyst_g * 1e-3),
            space: flask + bench.tube,
            pressure: one(6, bench.barometer, 1e3) + bench.still,
            room: S::number(room),
            loss: one(4, run.heat_loss_w_per_k, 1.0),
            glass: one(7, run.glass_j_per_k, 1.0),
            heat: S::number(DECOMPOSITION_HEAT_1982.si()),
            isothermal: run.isothermal,
            moist: if run.dry { 0.0 } else { 1.0 },
        };
        let trough =
            (model.pressure - bench.still - bench.trough_vapour) / (MOLAR_GAS_2019.si() * bench.trough);
        let mut sum = trough * (run.rejected_cm3 * 1e-6);
        let mut marks = vec![sum];
        for vessel in &run.vessels {
            let volume = vessel.volume_cm3 * 1e-6;
            sum = sum + trough * volume + bench.taken_up * volume;
            marks.push(sum);
        }
        let zero = S::number(0.0);
        let water = S::number(run.heel_cm3 * 1e-6 / WATER_VOLUME);
        let free = model.space - run.heel_cm3 * 1e-6;
        let dry = (model.pressure - model.vapour(S::number(room))) * free / (MOLAR_GAS_2019.si() * room);
        let start = State {
            peroxide: zero,
            water,
            temperature: S::number(room),
            oxygen: dry * (1.0 - AIR_NOT_OXYGEN.si()),
            nitrogen: dry * AIR_NOT_OXYGEN.si(),
            oxygen_out: zero,
            nitrogen_out: zero,
            oxygen_lost: zero,
            nitrogen_lost: zero,
            vapour_out: zero,
            heat_out: zero,
        };
        // Absolute tolerances: amounts against the peroxide or the air, temperature against 1 K, heat against 10 J.
        let amount = peroxide.max(1e-3);
        let scales = [amount, amount, 1.0, 1e-2, 1e-2, amount, 1e-2, amount, 1e-2, amount, 10.0];
        let mut atol = [0.0; M];
        for (chunk, scale) in atol.chunks_exact_mut(S::NUMBERS).zip(scales) {
            chunk.fill(scale * run.rtol);
        }
        let mut course = Course {
            run,
            model,
            strength: one(3, 1.0, 1.0),
            mode: Mode { closed: false, covered: true, capped: None, spent: None },
            inflow: None,
            time: 0.0,
            numbers: pack(&start),
            steps: run.most_steps,
            atol,
            events: Vec::new(),
            points: Vec::new(),
            marks,
            next_mark: 0,
            frothed: false,
            boiling: false,
            hottest: false,
            marked: Vec::new(),
            top: start.temperature,
            greatest: Greatest::default(),
            ended: false,
            start,
            poured: [0.0; 3],
            bench,
        };
        course.mode.covered = run.heel_cm3 * 1e-6 >= course.bench.seal * (1.0 - 1e-12);
        course
    }

    pub(super) fn state(&self) -> State<S> {
        unpack(&self.numbers)
    }

    pub(super) fn happened(&mut self, what: Happening) {
        self.events.push(Event { time_s: self.time, what });
    }

    fn sight(&self, state: &State<S>) -> Sight {
        let rates = self.model.rates(state, &self.mode, self.inflow.as_ref());
        let bench = &self.bench;
        let flow = rates.flow.value();
        let through = self.mode.capped.map_or(flow, |most| flow.min(most)).max(0.0);
        let (back, rise) = if self.mode.closed {
            (rates.pressure.value() - bench.barometer, 0.0)
        } else if self.mode.covered {
            let back = bench.still.min(bench.stem) + bench.friction(through);
            (back, back / (bench.density * STANDARD_GRAVITY_1901.si()))
        } else {
            (0.0, 0.0)
        };
        Sight {
            flow_cm3_per_s: flow.max(0.0) * 1e6,
            back_pressure_pa: back,
            stem_rise_cm: rise * 100.0,
            froth_cm3: bench.froth(self.model.liquid(state).value(), flow) * 1e6,
        }
    }

    /// Looks at a state on the way, for the greatest values.
    pub(super) fn look(&self, numbers: &[f64; M], greatest: &mut Greatest) {
        greatest.raise(&self.sight(&unpack(numbers)));
    }

    /// Reads the present state, for the greatest values and for a report.
    pub(super) fn note(&mut self) -> Point {
        let state = self.state();
        let sight = self.sight(&state);
        let bench = &self.bench;
        let out = state.oxygen_out.value() + state.nitrogen_out.value();
        let filled = self.in_vessel(out);
        let point = Point {
            time_s: self.time,
            temperature_c: state.temperature.value() - 273.15,
            peroxide_mmol: state.peroxide.value() * 1e3,
            water_mmol: state.water.value() * 1e3,
            oxygen_mmol: state.oxygen.value() * 1e3,
            nitrogen_mmol: state.nitrogen.value() * 1e3,
            oxygen_out_mmol: state.oxygen_out.value() * 1e3,
            nitrogen_out_mmol: state.nitrogen_out.value() * 1e3,
            oxygen_lost_mmol: state.oxygen_lost.value() * 1e3,
            nitrogen_lost_mmol: state.nitrogen_lost.value() * 1e3,
            vapour_out_mmol: state.vapour_out.value() * 1e3,
            heat_out_j: state.heat_out.value(),
            flow_cm3_per_s: sight.flow_cm3_per_s,
            oxygen_fraction: (state.oxygen / (state.oxygen + state.nitrogen)).value(),
            stem_rise_cm: sight.stem_rise_cm,
            back_pressure_pa: sight.back_pressure_pa,
            collected_cm3: out / bench.per_volume() * 1e6,
            in_vessel_cm3: filled * 1e6,
        };
        self.greatest.raise(&sight);
        if state.temperature.value() > self.top.value() {
            self.top = state.temperature;
        }
        point
    }

    /// Volume of the gas in the vessel being filled; what dissolves is taken from it evenly. Its water stands h (1 - V/V₀) above the trough, so that
    /// n R T = (p - ρ g h (1 - V/V₀) - p_w) V: a quadratic in V.
    pub(super) fn in_vessel(&self, out: f64) -> f64 {
        let Some(index) = self.next_mark.checked_sub(1) else { return 0.0 };
        let (Some(vessel), Some(from)) = (self.run.vessels.get(index), self.marks.get(index)) else {
            return 0.0;
        };
        let (kept, taken_up) = (self.bench.per_volume(), self.bench.taken_up);
        let undissolved = (out - from.value()).max(0.0) * kept / (kept + taken_up);
        let amount = undissolved * MOLAR_GAS_2019.si() * self.bench.trough;
        let column = self.bench.density * STANDARD_GRAVITY_1901.si() * vessel.height_cm * 1e-2;
        let low = self.bench.barometer - self.bench.trough_vapour - column;
        let slope = column / (vessel.volume_cm3 * 1e-6);
        2.0 * amount / (low + (low * low + 4.0 * slope * amount).sqrt())
    }
}

impl Greatest {
    fn raise(&mut self, sight: &Sight) {
        self.flow_cm3_per_s = self.flow_cm3_per_s.max(sight.flow_cm3_per_s);
        self.stem_rise_cm = self.stem_rise_cm.max(sight.stem_rise_cm);
        self.froth_cm3 = self.froth_cm3.max(sight.froth_cm3);
    }
}
