//! From one addition and one event to the next.

use super::given::{Addition, Run};
use super::model::{Inflow, Mode, Model, Rates, STATES, State, Valued};
use super::outcome::{Event, Happening, Point, RunResult, VesselOutcome};
use super::packed::{Packed, pack, unpack};
use super::solver::{Exactness, Stop, advance};
use super::stand::Bench;
use crate::apparatus::suck_back;
use crate::peroxide::kinetics::Kinetics;
use crate::reference::constants::{AIR_NOT_OXYGEN, MOLAR_GAS_2019, STANDARD_GRAVITY_1901};
use crate::reference::flask::{PEROXIDE_VOLUME, WATER_HEAT, WATER_VOLUME};
use crate::reference::peroxide::DECOMPOSITION_HEAT_1982;
use crate::scalar::Sensitivities;
use crate::units::{Pressure, Temperature};
use crate::{Code, Error, Result};

/// What the outcome of a run is differentiated by, with the units of the derivatives.
pub const SENSITIVE_TO: [&str; 8] = [
    "kinetics.k_at_20 (relative)",
    "kinetics.activation [kJ/mol]",
    "catalyst_g (relative)",
    "concentration (relative)",
    "heat_loss_w_per_k [W/K]",
    "flask_cm3 [cm3]",
    "pressure_kpa [kPa]",
    "glass_j_per_k [J/K]",
];
const INPUTS: usize = SENSITIVE_TO.len();

/// How many functions are watched.
const WATCHED: usize = 10;
/// Share of steam in the gas at which it counts as boiling, and at which it no longer does.
const BOILING: [f64; 2] = [0.75, 0.70];

/// The run while it goes.
struct Course<'a, S, const M: usize> {
    run: &'a Run,
    bench: Bench,
    model: Model<S>,
    strength: S,
    mode: Mode,
    inflow: Option<Inflow<S>>,
    time: f64,
    numbers: [f64; M],
    steps: usize,
    atol: [f64; M],
    events: Vec<Event>,
    points: Vec<Point>,
    /// Dry amounts at which the rejected gas and each vessel are complete.
    marks: Vec<S>,
    next_mark: usize,
    frothed: bool,
    boiling: bool,
    /// Whether the flask has stopped getting hotter since the last addition.
    hottest: bool,
    /// Gas by dry amount at each mark: time, oxygen and nitrogen that have left.
    marked: Vec<(S, S, S)>,
    top: S,
    top_flow: f64,
    top_rise: f64,
    top_froth: f64,
    ended: bool,
    start: State<S>,
    poured: [f64; 3],
}

impl<'a, S: Packed, const M: usize> Course<'a, S, M> {
    fn new(run: &'a Run) -> Self {
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
            sum = sum + trough * (vessel.volume_cm3 * 1e-6);
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
            top_flow: 0.0,
            top_rise: 0.0,
            top_froth: 0.0,
            ended: false,
            start,
            poured: [0.0; 3],
            bench,
        };
        course.mode.covered = run.heel_cm3 * 1e-6 >= course.bench.seal * (1.0 - 1e-12);
        course
    }

    fn state(&self) -> State<S> {
        unpack(&self.numbers)
    }

    fn happened(&mut self, what: Happening) {
        self.events.push(Event { time_s: self.time, what });
    }

    /// Reads the present state, for the greatest values and for a report.
    fn note(&mut self) -> Point {
        let state = self.state();
        let rates = self.model.rates(&state, &self.mode, self.inflow.as_ref());
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
        let froth = bench.froth(self.model.liquid(&state).value(), flow);
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
            flow_cm3_per_s: flow.max(0.0) * 1e6,
            oxygen_fraction: (state.oxygen / (state.oxygen + state.nitrogen)).value(),
            stem_rise_cm: rise * 100.0,
            back_pressure_pa: back,
            collected_cm3: out / bench.per_volume() * 1e6,
            in_vessel_cm3: filled * 1e6,
        };
        self.top_flow = self.top_flow.max(point.flow_cm3_per_s);
        self.top_rise = self.top_rise.max(point.stem_rise_cm);
        self.top_froth = self.top_froth.max(froth * 1e6);
        if state.temperature.value() > self.top.value() {
            self.top = state.temperature;
        }
        point
    }

    /// Volume of the gas in the vessel being filled. Its water stands h (1 - V/V₀) above the trough, so that
    /// n R T = (p - ρ g h (1 - V/V₀) - p_w) V: a quadratic in V.
    fn in_vessel(&self, out: f64) -> f64 {
        let Some(index) = self.next_mark.checked_sub(1) else { return 0.0 };
        let (Some(vessel), Some(from)) = (self.run.vessels.get(index), self.marks.get(index)) else {
            return 0.0;
        };
        let amount = (out - from.value()).max(0.0) * MOLAR_GAS_2019.si() * self.bench.trough;
        let column = self.bench.density * STANDARD_GRAVITY_1901.si() * vessel.height_cm * 1e-2;
        let low = self.bench.barometer - self.bench.trough_vapour - column;
        let slope = column / (vessel.volume_cm3 * 1e-6);
        2.0 * amount / (low + (low * low + 4.0 * slope * amount).sqrt())
    }

    fn watched(&self, numbers: &[f64; M]) -> [f64; WATCHED] {
        self.watch(&unpack(numbers)).map(Valued::value)
    }

    /// Functions whose fall through 0 is an event, in the present mode; NaN where one does not apply.
    fn watch(&self, state: &State<S>) -> [S; WATCHED] {
        let never = S::number(f64::NAN);
        let rates: Rates<S> = self.model.rates(state, &self.mode, self.inflow.as_ref());
        let bench = &self.bench;
        let mode = &self.mode;
        let mark = self.marks.get(self.next_mark);
        let liquid = self.model.liquid(state);
        [
            mark.map_or(never, |mark| -(state.oxygen_out + state.nitrogen_out) + *mark),
            match mode.capped {
                None if mode.covered && !mode.closed => -rates.flow + bench.most_flow,
                Some(most) if most > 0.0 => rates.flow - most,
                _ => never,
            },
            if self.boiling {
                rates.vapour - self.model.pressure * BOILING[1]
            } else {
                -rates.vapour + self.model.pressure * BOILING[0]
            },
            if self.frothed {
                never
            } else {
                -(liquid * (rates.flow / (bench.area * bench.bubble_rise) + 1.0)) + bench.flask
            },
            if mode.spent.is_some() { never } else { state.peroxide - bench.spent },
            if mode.closed { self.model.pressure - rates.pressure } else { rates.dry },
            if mode.closed {
                let drawn = (rates.pressure - rates.vapour) * rates.free / (rates.free - bench.tube);
                drawn + rates.vapour - (bench.barometer - bench.rise)
            } else {
                never
            },
            if mode.closed && bench.open_funnel && mode.covered {
                rates.pressure - (bench.barometer - bench.tip)
            } else {
                never
            },
            if self.hottest { never } else { rates.derivative.temperature },
            if mode.covered { never } else { -liquid + bench.seal },
        ]
    }

    /// Sets the mode to fit the present state where no crossing can be waited for: at the start and after a portion.
    fn settle(&mut self) {
        let state = self.state();
        if !self.mode.covered && self.model.liquid(&state).value() >= self.bench.seal * (1.0 - 1e-12) {
            self.mode.covered = true;
            self.happened(Happening::TipCovered);
        }
        self.mode.spent = None;
        let still = state.peroxide.value() <= self.bench.spent;
        if still && self.bench.spent > 0.0 && state.peroxide.value() > 0.0 {
            self.mode.spent = Some(self.model.rate(&state, &self.mode).value() / state.peroxide.value());
        }
        self.mode.closed = false;
        let rates = self.model.rates(&state, &self.mode, self.inflow.as_ref());
        let short = rates.pressure.value() < self.model.pressure.value() * (1.0 - 1e-7);
        self.mode.closed = short || rates.dry.value() < 0.0;
        self.hottest = self.model.isothermal || rates.derivative.temperature.value() <= 0.0;
        self.boil(rates.vapour.value() / self.model.pressure.value());
        if self.mode.closed {
            self.mode.capped = None;
            return;
        }
        let over = rates.flow.value() > self.bench.most_flow || self.bench.most_flow <= 0.0;
        if self.mode.covered && over && self.mode.capped.is_none() {
            self.mode.capped = Some(self.bench.most_flow.max(0.0));
            self.happened(Happening::StemOvertopped);
        } else if self.mode.capped.is_some() && !over {
            self.mode.capped = None;
            self.happened(Happening::StemHolds);
        }
        let froth = self.bench.froth(self.model.liquid(&state).value(), rates.flow.value());
        if !self.frothed && froth >= self.bench.flask {
            self.frothed = true;
            self.happened(Happening::FrothAtBung);
        }
    }

    fn boil(&mut self, share: f64) {
        if !self.boiling && share >= BOILING[0] {
            self.boiling = true;
            self.happened(Happening::Boiling);
        } else if self.boiling && share <= BOILING[1] {
            self.boiling = false;
            self.happened(Happening::BoilingEnds);
        }
    }

    /// Notes the marks that gas displaced at once has passed: the gas that left was all alike.
    fn pass_marks(&mut self, before: &State<S>) {
        let after = self.state();
        let left = after.oxygen_out + after.nitrogen_out;
        let had = before.oxygen_out + before.nitrogen_out;
        while let Some(mark) = self.marks.get(self.next_mark).copied() {
            if left.value() < mark.value() {
                break;
            }
            let part = if left.value() > had.value() { (-had + mark) / (left - had) } else { S::number(1.0) };
            let between = |one: S, other: S| one + (other - one) * part;
            let oxygen = between(before.oxygen_out, after.oxygen_out);
            let nitrogen = between(before.nitrogen_out, after.nitrogen_out);
            self.marked.push((S::number(self.time), oxygen, nitrogen));
            let what = self.next_mark.checked_sub(1).map_or(Happening::Rejected, Happening::VesselFull);
            self.next_mark += 1;
            self.happened(what);
        }
    }

    /// Integrates to `end`, acting on every event on the way.
    fn follow(&mut self, end: f64) {
        while !self.ended && self.time < end {
            let mut steps = self.steps;
            let (model, mode, inflow) = (self.model, self.mode, self.inflow);
            let rhs = move |y: &[f64; M], d: &mut [f64; M]| {
                let rates = model.rates(&unpack::<S, M>(y), &mode, inflow.as_ref());
                *d = pack(&rates.derivative);
            };
            let exactness = Exactness { rtol: self.run.rtol, atol: &self.atol };
            let watch = |y: &[f64; M]| self.watched(y);
            let (time, numbers, stop, which) =
                advance::<M, WATCHED>((self.time, self.numbers), end, exactness, &mut steps, &rhs, &watch);
            self.steps = steps;
            self.time = time;
            self.numbers = numbers;
            self.note();
            match stop {
                Stop::End => {}
                Stop::Bound => {
                    let state = self.state();
                    let dry = state.water.value() * WATER_VOLUME < 1e-6;
                    self.happened(if dry { Happening::BoiledDry } else { Happening::StepBound });
                    self.ended = true;
                }
                Stop::Event => self.act(which),
            }
        }
    }

    /// The time of the present event with its derivatives, from g(y(t), inputs) = 0: t' = -g'/(dg/dt). The rate of g
    /// along the run is a central difference over 2 ms, in time only.
    fn event_time(&self, which: usize) -> S {
        if S::NUMBERS == 1 {
            return S::number(self.time);
        }
        let state = self.state();
        let f = self.model.rates(&state, &self.mode, self.inflow.as_ref()).derivative.array();
        let at = |step: f64| {
            let mut moved = state.array();
            for (value, slope) in moved.iter_mut().zip(f) {
                *value = *value + S::number(slope.value()) * step;
            }
            self.watch(&State::from_array(moved)).get(which).copied().unwrap_or_else(|| S::number(0.0))
        };
        let slope = (at(1e-3).value() - at(-1e-3).value()) / 2e-3;
        let g = at(0.0);
        S::number(self.time) - (g - g.value()) / slope
    }

    /// What an event changes. Where the equations change with it, the derivatives of the state jump by the difference
    /// of the rates times the derivative of the time.
    fn act(&mut self, which: usize) {
        let time = self.event_time(which);
        let late = time - time.value();
        let before = self.model.rates(&self.state(), &self.mode, self.inflow.as_ref()).derivative.array();
        match which {
            0 => {
                let state = self.state();
                let [_, _, _, _, _, oxygen, nitrogen, ..] = before;
                let left = (state.oxygen_out + oxygen * late, state.nitrogen_out + nitrogen * late);
                self.marked.push((time, left.0, left.1));
                let what = self.next_mark.checked_sub(1).map_or(Happening::Rejected, Happening::VesselFull);
                self.next_mark += 1;
                self.happened(what);
                return;
            }
            1 if self.mode.capped.is_some() => {
                self.mode.capped = None;
                self.happened(Happening::StemHolds);
            }
            1 => {
                self.mode.capped = Some(self.bench.most_flow.max(0.0));
                self.happened(Happening::StemOvertopped);
            }
            2 => {
                self.boiling = !self.boiling;
                let what = if self.boiling { Happening::Boiling } else { Happening::BoilingEnds };
                self.happened(what);
                return;
            }
            3 => {
                self.frothed = true;
                self.happened(Happening::FrothAtBung);
                return;
            }
            4 => {
                let state = self.state();
                self.mode.spent = Some((self.model.rate(&state, &self.mode) / state.peroxide).value());
                self.happened(Happening::Spent);
            }
            5 => {
                self.mode.closed = !self.mode.closed;
                let what = if self.mode.closed { Happening::WaterRises } else { Happening::GasLeaves };
                self.happened(what);
            }
            6 | 7 => {
                self.happened(if which == 6 { Happening::SuckBack } else { Happening::AirThroughFunnel });
                self.ended = true;
                return;
            }
            8 => {
                self.hottest = true;
                self.happened(Happening::Hottest);
                return;
            }
            _ => {
                self.mode.covered = true;
                self.happened(Happening::TipCovered);
            }
        }
        if S::NUMBERS > 1 {
            let after = self.model.rates(&self.state(), &self.mode, self.inflow.as_ref()).derivative.array();
            let mut state = self.state().array();
            for ((value, old), new) in state.iter_mut().zip(before).zip(after) {
                *value = *value + (old - new) * late;
            }
            self.numbers = pack(&State::from_array(state));
        }
    }

    fn stream(&self, addition: &Addition, share: f64) -> Inflow<S> {
        let volume = addition.volume_cm3 * 1e-6 * share;
        let peroxide = self.strength * (addition.concentration_mol_per_dm3 * 1e3 * volume);
        Inflow {
            peroxide,
            water: (-(peroxide * PEROXIDE_VOLUME) + volume) / WATER_VOLUME,
            temperature: S::number(addition.temperature_c + 273.15),
        }
    }

    fn all(mut self) -> Traced<S> {
        let run = self.run;
        // Everything that has a time of its own, in order: outputs, begins and ends of additions.
        let mut stations: Vec<(f64, Station)> = Vec::new();
        for (index, addition) in run.additions.iter().enumerate() {
            stations.push((addition.time_s, Station::Begin(index)));
            if addition.over_s > 0.0 {
                stations.push((addition.time_s + addition.over_s, Station::End));
            }
        }
        stations.extend(run.outputs_s.iter().map(|time| (*time, Station::Report)));
        stations.retain(|(time, _)| *time <= run.end_s);
        stations.sort_by(|(one, a), (other, b)| one.total_cmp(other).then(a.order().cmp(&b.order())));
        self.settle();
        let start = self.start;
        self.pass_marks(&start);
        for (time, station) in stations {
            self.follow(time);
            if self.ended {
                break;
            }
            match station {
                Station::Report => {
                    let point = self.note();
                    self.points.push(point);
                }
                Station::End => {
                    self.inflow = None;
                    self.settle();
                }
                Station::Begin(index) => {
                    let Some(addition) = run.additions.get(index) else { continue };
                    self.pour(addition);
                }
            }
        }
        self.follow(run.end_s);
        self.finish()
    }

    fn pour(&mut self, addition: &Addition) {
        let whole = self.stream(addition, 1.0);
        let heat = (whole.peroxide + whole.water).value() * WATER_HEAT * (addition.temperature_c - 25.0)
            + whole.peroxide.value() * self.model.heat.value();
        if addition.over_s > 0.0 {
            self.inflow = Some(self.stream(addition, 1.0 / addition.over_s));
        } else {
            let before = self.state();
            let state = self.model.pour(&before, &whole, &self.mode);
            self.numbers = pack(&state);
            self.pass_marks(&before);
        }
        for (sum, value) in self.poured.iter_mut().zip([whole.peroxide.value(), whole.water.value(), heat]) {
            *sum += value;
        }
        self.note();
        self.settle();
        self.note();
    }

    fn finish(mut self) -> Traced<S> {
        self.note();
        let state = self.state();
        let value = |s: &S| s.value();
        let [p, w, _, o, n, od, nd, oe, ne, wo, eo] = state.array().map(|s| value(&s));
        let start = self.start;
        // What had been poured by now, from a drip only its part; balances are taken where nothing is left to drip.
        let [poured_p, poured_w, poured_heat] = self.poured;
        let hydrogen_in = 2.0 * (poured_p + poured_w + start.water.value());
        let hydrogen = 2.0 * (p + w + wo);
        let oxygen_in = 2.0 * poured_p + poured_w + start.water.value() + 2.0 * start.oxygen.value();
        let oxygen = 2.0 * p + w + wo + 2.0 * (o + od + oe);
        let nitrogen_in = start.nitrogen.value();
        let nitrogen = n + nd + ne;
        let off = |now: f64, before: f64| ((now - before) / before).abs();
        let atoms = off(hydrogen, hydrogen_in).max(off(oxygen, oxygen_in)).max(off(nitrogen, nitrogen_in));
        let heat_in = self.model.enthalpy(&start).value() + poured_heat;
        let heat = self.model.enthalpy(&state).value() + eo;
        let all_heat = (poured_p * self.model.heat.value()).max(1.0);
        let whole = self.inflow.is_none() && !self.model.isothermal;
        let mut vessels = Vec::new();
        let (mut oxygen_before, mut nitrogen_before) = self
            .marked
            .first()
            .map_or((state.oxygen_out, state.nitrogen_out), |(_, oxygen, nitrogen)| (*oxygen, *nitrogen));
        for index in 0..self.run.vessels.len() {
            let full = self.marked.get(index + 1);
            let (oxygen, nitrogen) = full
                .map_or((state.oxygen_out, state.nitrogen_out), |(_, oxygen, nitrogen)| (*oxygen, *nitrogen));
            let (more_oxygen, more_nitrogen) = (oxygen - oxygen_before, nitrogen - nitrogen_before);
            vessels.push((full.map(|(time, ..)| *time), more_oxygen / (more_oxygen + more_nitrogen)));
            (oxygen_before, nitrogen_before) = (oxygen, nitrogen);
        }
        let hot = state.temperature.value().min(273.15 + 95.0);
        let shrinkage_to_come = suck_back::shrinkage::<f64>(
            Temperature::new(hot),
            Temperature::new(self.bench.trough),
            Pressure::new(self.bench.barometer),
        )
        .max(0.0);
        Traced {
            vessels,
            top: self.top,
            result: RunResult {
                points: self.points,
                events: self.events,
                vessels: Vec::new(),
                filled_at_s: None,
                top_temperature_c: self.top.value() - 273.15,
                top_flow_cm3_per_s: self.top_flow,
                top_stem_rise_cm: self.top_rise,
                top_froth_cm3: self.top_froth,
                shrinkage_to_come,
                atom_balance: if self.inflow.is_none() { atoms } else { f64::NAN },
                heat_balance: if whole { ((heat - heat_in) / all_heat).abs() } else { f64::NAN },
                steps: self.run.most_steps - self.steps,
                reached_s: self.time,
            },
        }
    }
}

#[derive(Debug, Clone, Copy)]
enum Station {
    Report,
    End,
    Begin(usize),
}

impl Station {
    /// At one time, a report shows the state before what is added then.
    fn order(self) -> u8 {
        match self {
            Station::Report => 0,
            Station::End => 1,
            Station::Begin(_) => 2,
        }
    }
}

struct Traced<S> {
    result: RunResult,
    /// Time full and fraction of oxygen of each vessel.
    vessels: Vec<(Option<S>, S)>,
    top: S,
}

/// Runs `work` and turns a panic inside the integrator into an error.
fn guarded<T>(work: impl FnOnce() -> T) -> Result<T> {
    std::panic::catch_unwind(std::panic::AssertUnwindSafe(work)).map_err(|_| {
        Error::new(Code::CannotBeMet, "run")
            .advice("the integrator gave up on this run: please report the input that led to it")
    })
}

/// Follows a preparation in time.
///
/// Everything that goes wrong in the preparation is an [`Event`], not an error; the run is bounded by
/// [`Run::most_steps`] and says [`Happening::StepBound`] when that was hit.
///
/// ```
/// use overwater::apparatus::run::{Addition, Happening, Run, simulate};
/// let portion = Addition {
///     time_s: 0.0, over_s: 0.0, volume_cm3: 5.0, concentration_mol_per_dm3: 1.785, temperature_c: 20.0,
/// };
/// let result = simulate(&Run { additions: vec![portion], end_s: 300.0, ..Run::default() })?;
/// // 8.9 mmol of peroxide warm 30 cm3 of water and the glass by at most 845 J / 165 J/K, 5 K.
/// assert!(result.top_temperature_c > 20.0 && result.top_temperature_c < 25.2);
/// assert!(result.first(Happening::Boiling).is_none());
/// # Ok::<(), overwater::Error>(())
/// ```
///
/// # Errors
/// As for [`Run::check`].
pub fn simulate(run: &Run) -> Result<RunResult> {
    run.check()?;
    let traced = guarded(|| Course::<f64, STATES>::new(run).all())?;
    let mut result = traced.result;
    for (vessel, (full_at_s, oxygen_fraction)) in run.vessels.iter().zip(traced.vessels) {
        // The share of nitrogen may end a rounding below 0.
        let oxygen_fraction = if oxygen_fraction > 1.0 { 1.0 } else { oxygen_fraction };
        result.vessels.push(VesselOutcome { name: vessel.name.clone(), full_at_s, oxygen_fraction });
    }
    result.filled_at_s = result.vessels.last().and_then(|vessel| vessel.full_at_s);
    Ok(result)
}

/// How the outcome moves with each of [`SENSITIVE_TO`].
#[derive(Debug, Clone, PartialEq)]
pub struct RunSensitivities {
    /// Derivatives of the time at which the last vessel is full; nothing where it is not (s).
    pub filled_at_s: Option<[f64; INPUTS]>,
    /// Derivatives of the highest temperature (K).
    pub top_temperature: [f64; INPUTS],
    /// Derivatives of the oxygen fraction of each vessel.
    pub oxygen_fraction: Vec<[f64; INPUTS]>,
}

/// Exact first derivatives of a run's outcome: the equations are integrated together with their derivatives, and events
/// move with the inputs. What is poured moves only in its strength. A stem that overtops keeps its greatest flow.
///
/// # Errors
/// As for [`simulate`].
pub fn sensitivities(run: &Run) -> Result<RunSensitivities> {
    const NUMBERS: usize = STATES * (INPUTS + 1);
    run.check()?;
    let traced = guarded(|| Course::<Sensitivities<INPUTS>, NUMBERS>::new(run).all())?;
    Ok(RunSensitivities {
        filled_at_s: traced.vessels.last().and_then(|(full, _)| *full).map(|time| time.derivatives()),
        top_temperature: traced.top.derivatives(),
        oxygen_fraction: traced.vessels.iter().map(|(_, fraction)| fraction.derivatives()).collect(),
    })
}
