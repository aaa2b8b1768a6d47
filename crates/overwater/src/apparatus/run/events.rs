//! What is watched while a run goes, and what changes when it happens.

use super::course::Course;
use super::model::{Rates, State, Valued};
use super::outcome::Happening;
use super::packed::{Packed, pack, unpack};

/// How many functions are watched.
pub(super) const WATCHED: usize = 10;
/// Share of steam in the gas at which it counts as boiling, and at which it no longer does.
const BOILING: [f64; 2] = [0.75, 0.70];

impl<S: Packed, const M: usize> Course<'_, S, M> {
    pub(super) fn watched(&self, numbers: &[f64; M]) -> [f64; WATCHED] {
        self.watch(&unpack(numbers)).map(Valued::value)
    }

    /// Functions whose fall through 0 is an event, in the present mode; NaN where one does not apply.
    pub(super) fn watch(&self, state: &State<S>) -> [S; WATCHED] {
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
            if mode.closed {
                // A little above the pressure at which gas leaves, so that a flask that is closed at just that pressure
                // is seen to open.
                self.model.pressure * (1.0 + self.slack()) - rates.pressure
            } else {
                rates.dry
            },
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

    /// Share of the pressure by which a state may be off for its tolerance alone.
    fn slack(&self) -> f64 {
        (10.0 * self.run.rtol).max(1e-7)
    }

    /// Sets the mode to fit the present state where no crossing can be waited for: at the start and after a portion.
    pub(super) fn settle(&mut self) {
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
        let above = rates.pressure.value() >= self.model.pressure.value() * (1.0 + self.slack());
        self.mode.closed = short || (rates.dry.value() < 0.0 && !above);
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

    pub(super) fn boil(&mut self, share: f64) {
        if !self.boiling && share >= BOILING[0] {
            self.boiling = true;
            self.happened(Happening::Boiling);
        } else if self.boiling && share <= BOILING[1] {
            self.boiling = false;
            self.happened(Happening::BoilingEnds);
        }
    }

    /// Notes the marks that gas displaced at once has passed: the gas that left was all alike.
    pub(super) fn pass_marks(&mut self, before: &State<S>) {
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

    /// The time of the present event with its derivatives, from g(y(t), inputs) = 0: t' = -g'/(dg/dt). The rate of g
    /// along the run is a central difference over 2 ms, in time only.
    pub(super) fn event_time(&self, which: usize) -> S {
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
    pub(super) fn act(&mut self, which: usize) {
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
}
