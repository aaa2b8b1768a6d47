//! Where the ticks of an axis stand.

/// Round numbers from `low` to `high`, about `wanted` of them, in steps of 1, 2 or 5 times a power of ten.
pub(super) fn ticks(low: f64, high: f64, wanted: f64) -> Vec<f64> {
    let length = high - low;
    if !(length > 0.0 && length.is_finite()) {
        return vec![low];
    }
    let rough = length / wanted;
    let power = 10_f64.powf(rough.log10().floor());
    let step = [1.0, 2.0, 5.0].into_iter().map(|unit| unit * power).find(|step| *step >= rough);
    let step = step.unwrap_or(10.0 * power);
    // What lies a rounding outside is inside.
    let slack = 1e-9;
    let first = (low / step * (1.0 - slack * low.signum())).ceil();
    let last = (high / step * (1.0 + slack * high.signum())).floor();
    let count = (last - first).clamp(0.0, 100.0) as u32;
    // Divided, where the step is below 1: 3 x 0.1 is not 0.3, 3 / 10 is.
    (0..=count)
        .map(|index| first + f64::from(index))
        .map(|number| if step < 1.0 { number / (1.0 / step).round() } else { number * step })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::ticks;

    #[test]
    fn ticks_are_round_and_end_inside() {
        let from_zero = |high| ticks(0.0, high, 8.0);
        assert_eq!(from_zero(1615.0), [0.0, 500.0, 1000.0, 1500.0]);
        assert_eq!(from_zero(800.0).len(), 9);
        assert_eq!(from_zero(0.3), [0.0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3]);
        assert_eq!(from_zero(f64::NAN), [0.0]);
        assert_eq!(from_zero(0.0), [0.0]);
    }

    #[test]
    fn ticks_of_any_stretch_are_round() {
        assert_eq!(ticks(0.0, 1.0, 8.0), [0.0, 0.2, 0.4, 0.6, 0.8, 1.0]);
        assert_eq!(ticks(3.19, 3.42, 5.0), [3.2, 3.25, 3.3, 3.35, 3.4]);
        assert_eq!(ticks(-0.62, 0.48, 4.0), [-0.5, 0.0]);
        assert_eq!(ticks(-7.0, -3.0, 4.0), [-7.0, -6.0, -5.0, -4.0, -3.0]);
        assert_eq!(ticks(0.0, 300.0, 6.0), [0.0, 50.0, 100.0, 150.0, 200.0, 250.0, 300.0]);
        assert_eq!(ticks(2.0, 2.0, 5.0), [2.0]);
        assert_eq!(ticks(0.0, f64::NAN, 5.0), [0.0]);
    }
}
