//! The equations of one preparation, written once over [`Scalar`].
//!
//! State: peroxide P and water W in the flask (W with its vapour), temperature T, oxygen O and nitrogen N in the free
//! volume, what has left for the vessels (Od, Nd), what has escaped by the funnel (Oe, Ne), all vapour that has left
//! (Wo) and all heat that has left (Eo). SI units.
//!
//! ```text
//! V(liquid) = v(W) W + v(P) P                    additive volumes; the vapour's water is counted as liquid, < 0.1 %
//! V(free)   = V(flask) + V(tube) - V(liquid)
//! n(dry)    = (p - p_w) V(free)/(R T)            well mixed, saturated with vapour; p constant while gas leaves
//! n(vapour) = p_w V(free)/(R T)
//! P' = -r + inflow,  O' = r/2 - out x,  W' = r + inflow - vapour out
//! C T' + L (vapour out + n(vapour)') = Φ
//! Φ = c(W) inflow (T(in) - T) + (q - c(gas) θ/2) r - U (T - T(room)),   θ = T - 298.15 K,  L = L₀ + (c(vapour) - c(W)) θ
//! C = c(W) (W - n(vapour) + P) + c(gas) n(dry) + c(vapour) n(vapour) + C(glass)
//! ```
//!
//! The pressure p is barometer + outlet depth + bubble: it is reached at once (the time constant of the gas against
//! the tube is milliseconds), and gas stored by changes of friction, some Pa of 10⁵, is left out. Friction does act
//! on the funnel stem. p_w stays below p by itself: when all heat of the reaction goes into steam, q = (1/2) L y, so that
//! steam is at most 82 % of the gas and the liquid at most 95 degC at one atmosphere. The molar heat capacity of dissolved
//! peroxide is taken as that of water, those of the gases as one constant: assumptions, which make the heat of reaction
//! depend on T through the oxygen alone.

use super::stand::LEAST_DRY_SHARE;
use crate::peroxide::kinetics::Kinetics;
use crate::reference::constants::MOLAR_GAS_2019;
use crate::reference::flask::{
    GAS_HEAT, HEAT_ZERO, PEROXIDE_VOLUME, VAPORISATION, VAPOUR_HEAT, WATER_HEAT, WATER_VOLUME,
};
use crate::scalar::{Scalar, Sensitivities};
use crate::units::{Dimensioned, Temperature};
use crate::water::vapour::{saturation_pressure, saturation_slope};

/// A scalar whose number can be looked at, to choose a branch.
pub(super) trait Valued: Scalar {
    fn value(self) -> f64;
}

impl Valued for f64 {
    fn value(self) -> f64 {
        self
    }
}

impl<const N: usize> Valued for Sensitivities<N> {
    fn value(self) -> f64 {
        Sensitivities::value(&self)
    }
}

/// How many numbers a state has.
pub(super) const STATES: usize = 11;

/// A state, in SI units.
#[derive(Debug, Clone, Copy)]
pub(super) struct State<S> {
    pub peroxide: S,
    pub water: S,
    pub temperature: S,
    pub oxygen: S,
    pub nitrogen: S,
    pub oxygen_out: S,
    pub nitrogen_out: S,
    pub oxygen_lost: S,
    pub nitrogen_lost: S,
    pub vapour_out: S,
    pub heat_out: S,
}

impl<S: Copy> State<S> {
    pub(super) fn from_array([a, b, c, d, e, f, g, h, i, j, k]: [S; STATES]) -> Self {
        State {
            peroxide: a,
            water: b,
            temperature: c,
            oxygen: d,
            nitrogen: e,
            oxygen_out: f,
            nitrogen_out: g,
            oxygen_lost: h,
            nitrogen_lost: i,
            vapour_out: j,
            heat_out: k,
        }
    }

    pub(super) fn array(&self) -> [S; STATES] {
        [
            self.peroxide,
            self.water,
            self.temperature,
            self.oxygen,
            self.nitrogen,
            self.oxygen_out,
            self.nitrogen_out,
            self.oxygen_lost,
            self.nitrogen_lost,
            self.vapour_out,
            self.heat_out,
        ]
    }
}

/// What is fixed in one run.
#[derive(Debug, Clone, Copy)]
pub(super) struct Model<S> {
    pub kinetics: Kinetics<S>,
    pub catalyst: S,
    /// Flask and tube (m3).
    pub space: S,
    /// Pressure in the flask while gas leaves (Pa).
    pub pressure: S,
    pub room: S,
    /// Heat lost for each kelvin (W/K).
    pub loss: S,
    /// Glass that follows the liquid (J/K).
    pub glass: S,
    pub heat: S,
    /// Terms switched off for comparison with closed forms.
    pub isothermal: bool,
    /// 1, or 0 for a gas without vapour.
    pub moist: f64,
}

/// Liquid that runs in steadily.
#[derive(Debug, Clone, Copy)]
pub(super) struct Inflow<S> {
    pub peroxide: S,
    pub water: S,
    pub temperature: S,
}

/// In which way the preparation is running; it changes only at events.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Mode {
    /// No gas leaves: the flask is cooling.
    pub closed: bool,
    /// The tip of the funnel is under liquid.
    pub covered: bool,
    /// Flow that the tube takes when the stem is full to the top (m3/s).
    pub capped: Option<f64>,
    /// The decay rate that is kept when next to nothing is left (1/s).
    pub spent: Option<f64>,
}

/// Everything that follows from a state.
#[derive(Debug, Clone, Copy)]
pub(super) struct Rates<S> {
    pub derivative: State<S>,
    /// Volume flow of moist gas out of the flask, at its temperature (m3/s).
    pub flow: S,
    /// Dry gas that leaves, or would leave if the flask is closed (mol/s).
    pub dry: S,
    /// Pressure that the gas would have now (Pa).
    pub pressure: S,
    /// Vapour pressure (Pa).
    pub vapour: S,
    pub free: S,
}

impl<S: Valued> Model<S> {
    pub(super) fn liquid(&self, state: &State<S>) -> S {
        state.water * WATER_VOLUME + state.peroxide * PEROXIDE_VOLUME
    }

    pub(super) fn vapour(&self, temperature: S) -> S {
        if self.moist == 0.0 {
            S::number(0.0)
        } else {
            saturation_pressure(Temperature::new(temperature)).si() * self.moist
        }
    }

    /// Pressure that is left to the dry gas. A trial step of the integrator may lie above the boiling point, where the
    /// quotient of vapour and dry gas would change its sign and heat the flask without end: there it stays at a thousand,
    /// which cools the step back.
    fn dry_pressure(&self, vapour: S) -> S {
        let (left, least) = (self.pressure - vapour, self.pressure * LEAST_DRY_SHARE);
        if left.value() > least.value() { left } else { least }
    }

    fn gas_constant() -> S {
        S::number(MOLAR_GAS_2019.si())
    }

    pub(super) fn rate(&self, state: &State<S>, mode: &Mode) -> S {
        if let Some(decay) = mode.spent {
            return state.peroxide * decay;
        }
        if state.peroxide.value() <= 0.0 {
            return state.peroxide * 0.0;
        }
        self.kinetics.rate(state.temperature, self.catalyst, state.peroxide / self.liquid(state))
    }

    /// Enthalpy of what is in the flask, counted from water and gases at 25 degC (J).
    pub(super) fn enthalpy(&self, state: &State<S>) -> S {
        let theta = state.temperature - HEAT_ZERO;
        let free = self.space - self.liquid(state);
        let vapour = self.vapour(state.temperature) * free / (state.temperature * Self::gas_constant());
        let sensible = (state.water - vapour + state.peroxide) * WATER_HEAT
            + (state.oxygen + state.nitrogen) * GAS_HEAT
            + vapour * VAPOUR_HEAT
            + self.glass;
        sensible * theta + self.heat * state.peroxide + vapour * VAPORISATION
    }

    /// The right-hand side.
    pub(super) fn rates(&self, state: &State<S>, mode: &Mode, inflow: Option<&Inflow<S>>) -> Rates<S> {
        let zero = S::number(0.0);
        let gas = Self::gas_constant();
        let t = state.temperature;
        let theta = t - HEAT_ZERO;
        let (p_in, w_in, t_in) = inflow.map_or((zero, zero, t), |i| (i.peroxide, i.water, i.temperature));
        let rate = self.rate(state, mode);
        let free = self.space - self.liquid(state);
        let pressure = self.pressure;
        let vapour = self.vapour(t);
        // dp_w/dT by a dual number in T alone: the equation itself gives its slope.
        let slope = if self.moist == 0.0 { zero } else { saturation_slope(t, vapour) };
        let room = free / (gas * t);
        let per_volume = S::number(1.0) / (gas * t);
        let (n_vapour, n_dry) = (vapour * room, state.oxygen + state.nitrogen);
        let p_dry = self.dry_pressure(vapour);
        let a = p_dry * per_volume;
        let d = vapour * per_volume;
        let b = p_dry * room / t + slope * room;
        let f = slope * room - n_vapour / t;
        let y = vapour / p_dry;
        let latent = theta * (VAPOUR_HEAT - WATER_HEAT) + VAPORISATION;
        let capacity = (state.water - n_vapour + state.peroxide) * WATER_HEAT
            + n_dry * GAS_HEAT
            + n_vapour * VAPOUR_HEAT
            + self.glass;
        // Heat that is at hand, and the shrinking of the free volume without what evaporates.
        let at_hand = (w_in + p_in) * WATER_HEAT * (t_in - t) + (self.heat - theta * (GAS_HEAT * 0.5)) * rate
            - self.loss * (t - self.room);
        let closing = -((rate + w_in) * WATER_VOLUME + (p_in - rate) * PEROXIDE_VOLUME);
        let half = rate * 0.5;

        let open_warming = if self.isothermal {
            zero
        } else {
            (at_hand - latent * y * half) / (capacity + latent * (y * b + f))
        };
        let open_dry = (half - a * closing + b * open_warming) / (d * WATER_VOLUME + 1.0);
        let (warming, dry, vapour_out) = if mode.closed {
            let warming = if self.isothermal {
                zero
            } else {
                (at_hand - latent * d * closing) / (capacity + latent * f)
            };
            (warming, zero, zero)
        } else {
            (open_warming, open_dry, y * open_dry)
        };
        let flow = (dry + vapour_out) * gas * t / pressure;
        // What the tube takes; the rest escapes by the funnel.
        let by_tube = if !mode.covered {
            zero
        } else {
            match mode.capped {
                Some(most) if most <= 0.0 => zero,
                Some(most) if flow.value() > 0.0 => S::number(most) / flow,
                _ => S::number(1.0),
            }
        };
        let share = state.oxygen / n_dry;
        let (oxygen, nitrogen) = (dry * share, dry * (S::number(1.0) - share));
        let derivative = State {
            peroxide: p_in - rate,
            water: w_in + rate - vapour_out,
            temperature: warming,
            oxygen: half - oxygen,
            nitrogen: -nitrogen,
            oxygen_out: oxygen * by_tube,
            nitrogen_out: nitrogen * by_tube,
            oxygen_lost: oxygen * (S::number(1.0) - by_tube),
            nitrogen_lost: nitrogen * (S::number(1.0) - by_tube),
            vapour_out,
            heat_out: dry * theta * GAS_HEAT
                + vapour_out * (theta * VAPOUR_HEAT + VAPORISATION)
                + self.loss * (t - self.room),
        };
        Rates {
            derivative,
            flow,
            dry: if mode.closed { open_dry } else { dry },
            pressure: n_dry * gas * t / free + vapour,
            vapour,
            free,
        }
    }

    /// A portion is poured in at once: liquids mix, and the gas that it displaces leaves. `None` where so much cold
    /// liquid comes in that the gas shrinks more than it is displaced: nothing leaves then.
    pub(super) fn pour(&self, before: &State<S>, portion: &Inflow<S>, mode: &Mode) -> State<S> {
        let gas = Self::gas_constant();
        let came = (portion.peroxide + portion.water) * WATER_HEAT * (portion.temperature - HEAT_ZERO)
            + portion.peroxide * self.heat;
        let wanted = self.enthalpy(before) + came;
        let mut after = *before;
        after.peroxide = before.peroxide + portion.peroxide;
        let n_dry = before.oxygen + before.nitrogen;
        let share = before.oxygen / n_dry;
        // Fixed-point steps: the liquid dominates, so that each one gains one to two figures; the number is fixed.
        for _ in 0..16 {
            let t = after.temperature;
            let vapour = self.vapour(t);
            let y = vapour / self.dry_pressure(vapour);
            let free = self.space - self.liquid(&after);
            let kept = (self.pressure - vapour) * free / (gas * t);
            let leaves = n_dry - kept;
            let out = if leaves.value() > 0.0 { leaves } else { S::number(0.0) };
            let theta = t - HEAT_ZERO;
            let carried = out * theta * GAS_HEAT + out * y * (theta * VAPOUR_HEAT + VAPORISATION);
            // A stem that overtops without any flow lets nothing into the tube.
            let takes = mode.covered && mode.capped.is_none_or(|most| most > 0.0);
            let by_tube = if takes { S::number(1.0) } else { S::number(0.0) };
            let (oxygen, nitrogen) = (out * share, out * (S::number(1.0) - share));
            after.water = before.water + portion.water - out * y;
            after.vapour_out = before.vapour_out + out * y;
            after.oxygen = before.oxygen - oxygen;
            after.nitrogen = before.nitrogen - nitrogen;
            after.oxygen_out = before.oxygen_out + oxygen * by_tube;
            after.nitrogen_out = before.nitrogen_out + nitrogen * by_tube;
            after.oxygen_lost = before.oxygen_lost + oxygen * (S::number(1.0) - by_tube);
            after.nitrogen_lost = before.nitrogen_lost + nitrogen * (S::number(1.0) - by_tube);
            after.heat_out = before.heat_out + carried;
            if self.isothermal {
                continue;
            }
            let missing = wanted - carried - self.enthalpy(&after);
            let capacity = (after.water + after.peroxide) * WATER_HEAT + self.glass;
            after.temperature = after.temperature + missing / capacity;
        }
        after
    }
}
