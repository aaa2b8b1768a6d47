//! The only place that knows the integrator: `differential-equations`, eighth-order Dormand-Prince.
//!
//! It is driven step by step, so that several events can be watched at once. States between steps are used only to
//! find when something happens and how great a value became; what is reported there is integrated to, not interpolated.

use differential_equations::interpolate::Interpolation;
use differential_equations::methods::ExplicitRungeKutta;
use differential_equations::ode::{ODE, OrdinaryNumericalMethod};
use differential_equations::status::Status;

struct System<'a, const M: usize>(RightHandSide<'a, M>);

impl<const M: usize> ODE<f64, [f64; M]> for System<'_, M> {
    fn diff(&self, _: f64, y: &[f64; M], dydt: &mut [f64; M]) {
        (self.0)(y, dydt);
    }
}

/// y' as a function of y: no equation here depends on the time itself.
pub(super) type RightHandSide<'a, const M: usize> = &'a dyn Fn(&[f64; M], &mut [f64; M]);
/// Functions of the state whose fall through 0 is an event.
pub(super) type Watch<'a, const M: usize, const W: usize> = &'a dyn Fn(&[f64; M]) -> [f64; W];

/// What looks at the states on the way.
pub(super) type Look<'a, const M: usize> = &'a mut dyn FnMut(&[f64; M]);

/// Parts of a step that are looked at: a step of this order reaches far, and the flow may rise and fall within it.
const PARTS: u32 = 4;

/// Why the integrator stopped.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Stop {
    /// It reached the end.
    End,
    /// Something happened at this time.
    Event,
    /// The bound on steps was hit, or the step became too small.
    Bound,
}

/// How exactly, and how far.
#[derive(Debug, Clone, Copy)]
pub(super) struct Exactness<'a> {
    pub rtol: f64,
    pub atol: &'a [f64],
}

/// Integrates from `t` to `end`, stopping at the first sign change of any of the `watch` functions from above 0 to
/// not above 0 (NaN never). Gives the time, the state, why it stopped, and which one; `steps` is counted down. `look` sees
/// the states before the last.
pub(super) fn advance<const M: usize, const W: usize>(
    (t, y): (f64, [f64; M]),
    end: f64,
    exactness: Exactness<'_>,
    steps: &mut usize,
    rhs: RightHandSide<'_, M>,
    watch: Watch<'_, M, W>,
    look: Look<'_, M>,
) -> (f64, [f64; M], Stop, usize) {
    let system = System(rhs);
    let mut solver = ExplicitRungeKutta::dop853()
        .rtol(exactness.rtol)
        .atol(exactness.atol.to_vec())
        .h_max(end - t)
        .max_steps(usize::MAX);
    if solver.init(&system, t, end, &y).is_err() {
        return (t, y, Stop::Bound, 0);
    }
    let mut before = watch(&y);
    loop {
        let left = end - solver.t();
        if left <= 1e-12 * end.abs().max(1.0) {
            return (end, *solver.y(), Stop::End, 0);
        }
        if solver.h() > left || !solver.h().is_finite() {
            solver.set_h(left);
        }
        if *steps == 0 || solver.h() < 1e-13 {
            return (solver.t(), *solver.y(), Stop::Bound, 0);
        }
        *steps -= 1;
        if solver.step(&system).is_err() {
            return (solver.t(), *solver.y(), Stop::Bound, 0);
        }
        if matches!(solver.status(), Status::RejectedStep) {
            continue;
        }
        let after = watch(solver.y());
        let (from, to) = (solver.t_prev(), solver.t());
        let mut first: Option<(f64, usize)> = None;
        for (index, (start, stop)) in before.iter().zip(&after).enumerate() {
            if *start > 0.0 && *stop <= 0.0 {
                let at = when(&mut solver, (from, to), index, watch);
                if first.is_none_or(|(earlier, _)| at < earlier) {
                    first = Some((at, index));
                }
            }
        }
        let seen = first.map_or(to, |(at, _)| at);
        look(solver.y_prev());
        for part in 1..PARTS {
            let at = from + (seen - from) * f64::from(part) / f64::from(PARTS);
            if let Ok(y) = solver.interpolate(at) {
                look(&y);
            }
        }
        if let Some((at, index)) = first {
            let start = *solver.y_prev();
            if at - from <= 1e-12 * end.abs().max(1.0) {
                return (from, start, Stop::Event, index);
            }
            // Integrated to the event from the step before it, not interpolated.
            let none = |_: &[f64; M]| [0.0_f64; 0];
            let (_, state, stop, _) =
                advance::<M, 0>((from, start), at, exactness, steps, rhs, &none, &mut |_| {});
            let stop = if stop == Stop::End { Stop::Event } else { stop };
            return (at, state, stop, index);
        }
        before = after;
    }
}

/// Halves the step until the change of sign is known to 1e-9 s; at most sixty times.
fn when<const M: usize, const W: usize>(
    solver: &mut impl Interpolation<f64, [f64; M]>,
    (from, to): (f64, f64),
    index: usize,
    watch: Watch<'_, M, W>,
) -> f64 {
    let (mut low, mut high) = (from, to);
    for _ in 0..60 {
        if high - low < 1e-9 {
            break;
        }
        let middle = 0.5 * (low + high);
        let above = solver
            .interpolate(middle)
            .ok()
            .and_then(|y| watch(&y).get(index).copied())
            .is_some_and(|value| value > 0.0);
        if above {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}
