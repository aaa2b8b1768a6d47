//! From one addition and one event to the next.

use super::course::Course;
use super::events::WATCHED;
use super::given::{Addition, Run};
use super::model::{Inflow, STATES};
use super::outcome::{Happening, RunResult, VesselOutcome};
use super::packed::{Packed, pack, unpack};
use super::solver::{Exactness, Stop, advance};
use crate::apparatus::suck_back;
use crate::reference::flask::{PEROXIDE_VOLUME, WATER_HEAT, WATER_VOLUME};
use crate::units::{Pressure, Temperature};
use crate::{Code, Error, Result};

impl<S: Packed, const M: usize> Course<'_, S, M> {
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
            let mut greatest = self.greatest;
            let mut look = |y: &[f64; M]| self.look(y, &mut greatest);
            let from = (self.time, self.numbers);
            let (time, numbers, stop, which) =
                advance::<M, WATCHED>(from, end, exactness, &mut steps, &rhs, &watch, &mut look);
            self.greatest = greatest;
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

    fn stream(&self, addition: &Addition, share: f64) -> Inflow<S> {
        let volume = addition.volume_cm3 * 1e-6 * share;
        let peroxide = self.strength * (addition.concentration_mol_per_dm3 * 1e3 * volume);
        Inflow {
            peroxide,
            water: (-(peroxide * PEROXIDE_VOLUME) + volume) / WATER_VOLUME,
            temperature: S::number(addition.temperature_c + 273.15),
        }
    }

    pub(super) fn all(mut self) -> Traced<S> {
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
        for (index, vessel) in self.run.vessels.iter().enumerate() {
            let full = self.marked.get(index + 1);
            let (oxygen, nitrogen) = full
                .map_or((state.oxygen_out, state.nitrogen_out), |(_, oxygen, nitrogen)| (*oxygen, *nitrogen));
            let dissolves = self.bench.taken_up * vessel.volume_cm3 * 1e-6;
            let lost = if full.is_some() { dissolves } else { 0.0 };
            let (more_oxygen, more_nitrogen) = (oxygen - oxygen_before - lost, nitrogen - nitrogen_before);
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
                top_flow_cm3_per_s: self.greatest.flow_cm3_per_s,
                top_stem_rise_cm: self.greatest.stem_rise_cm,
                top_froth_cm3: self.greatest.froth_cm3,
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

pub(super) struct Traced<S> {
    pub(super) result: RunResult,
    /// Time full and fraction of oxygen of each vessel.
    pub(super) vessels: Vec<(Option<S>, S)>,
    pub(super) top: S,
}

/// Runs `work` and turns a panic inside the integrator into an error.
pub(super) fn guarded<T>(work: impl FnOnce() -> T) -> Result<T> {
    std::panic::catch_unwind(std::panic::AssertUnwindSafe(work)).map_err(|_| {
        Error::new(Code::CannotBeMet, "run")
            .advice("the integrator gave up on this run: please report the input that led to it")
    })
}

/// Follows a preparation in time.
///
/// Everything that goes wrong in the preparation is an [`Event`](super::Event), not an error; the run is bounded by
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_inside_becomes_an_error() {
        let error = guarded(|| -> f64 { panic!("inside the integrator") }).unwrap_err();
        assert_eq!((error.code, error.parameter.as_ref()), (Code::CannotBeMet, "run"));
        assert_eq!(guarded(|| 2.0), Ok(2.0));
    }
}
