//! Random values over the whole closed range of a row of the bounds table, its ends included.

use overwater::bounds::Bound;
use overwater::scalar::Formula;
use proptest::prelude::*;

/// Every value that `bound` accepts.
///
/// Half of the values are spread evenly over the range; a quarter are spread evenly over its powers of ten (over
/// the range itself where that reaches down to 0 or below); an eighth lie within a thousandth of the range of an
/// end; an eighth are an end itself or one of the three numbers next to it.
pub fn within(bound: &'static Bound) -> BoxedStrategy<f64> {
    let (least, greatest) = (bound.least, bound.greatest);
    let powers = if least > 0.0 {
        (least.ln()..=greatest.ln()).prop_map(move |log| log.exp().clamp(least, greatest)).boxed()
    } else {
        (least..=greatest).boxed()
    };
    let sliver = (greatest - least) * 1e-3;
    prop_oneof![
        4 => least..=greatest,
        2 => powers,
        1 => prop_oneof![least..=least + sliver, greatest - sliver..=greatest],
        1 => (any::<bool>(), 0..4_u32).prop_map(move |(low, steps)| beside_an_end(bound, low, steps)),
    ]
    .boxed()
}

/// The lower or the upper end (`steps` 0), or the number so many steps inside of it.
fn beside_an_end(bound: &Bound, low: bool, steps: u32) -> f64 {
    let end = if low { bound.least } else { bound.greatest };
    (0..steps).fold(end, |value, _| if low { value.next_up() } else { value.next_down() })
}

/// Inputs of a formula, each over the whole range of its row of the bounds table.
pub fn inputs<const IN: usize>(formula: &impl Formula<IN>) -> [BoxedStrategy<f64>; IN] {
    formula.inputs().map(within)
}

#[cfg(test)]
mod tests {
    use super::*;
    use overwater::bounds;
    use overwater::gas::collected::DryAmount;
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;

    fn draw(bound: &'static Bound, count: usize) -> Vec<f64> {
        let mut runner = TestRunner::deterministic();
        let strategy = within(bound);
        (0..count).map(|_| strategy.new_tree(&mut runner).unwrap().current()).collect()
    }

    #[test]
    fn every_row_is_filled_to_its_ends_and_never_left() {
        for bound in bounds::ALL {
            let values = draw(bound, 2000);
            assert!(values.iter().all(|value| bound.check(*value).is_ok()), "{}", bound.name);
            assert!(values.contains(&bound.least), "{}: the lower end is missing", bound.name);
            assert!(values.contains(&bound.greatest), "{}: the upper end is missing", bound.name);
            let inner = values.iter().filter(|value| {
                let share = (*value - bound.least) / (bound.greatest - bound.least);
                (0.1..0.9).contains(&share)
            });
            assert!(inner.count() > 500, "{}: the middle is thin", bound.name);
        }
    }

    #[test]
    fn small_values_of_a_wide_range_are_drawn_too() {
        let small = draw(&bounds::VOLUME_CM3, 2000).iter().filter(|value| **value < 100.0).count();
        assert!(small > 150, "only {small} of 2000 volumes are below 100 cm3");
    }

    #[test]
    fn numbers_beside_an_end_are_inside() {
        let bound = &bounds::TEMPERATURE_C;
        assert_eq!(beside_an_end(bound, true, 0), 0.0);
        assert_eq!(beside_an_end(bound, true, 2), 0.0_f64.next_up().next_up());
        assert_eq!(beside_an_end(bound, false, 1), 100.0_f64.next_down());
    }

    #[test]
    fn inputs_follow_the_order_of_the_formula() {
        let formula = DryAmount::default();
        let mut runner = TestRunner::deterministic();
        for _ in 0..200 {
            let drawn = inputs(&formula).new_tree(&mut runner).unwrap().current();
            for (bound, value) in formula.inputs().into_iter().zip(drawn) {
                assert_eq!(bound.check(value), Ok(value));
            }
        }
    }
}
