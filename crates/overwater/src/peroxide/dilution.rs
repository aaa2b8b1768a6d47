//! Diluting a stock: V1 = c2 V2 / c1.

use crate::bounds::{self, Bound};
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{Concentration, Dimensioned, Volume};
use crate::{Code, Error};

/// The volume of stock that is made up to `made_up` to give the concentration wanted.
#[inline(always)]
pub fn stock_volume<S: Scalar>(
    stock: Concentration<S>,
    wanted: Concentration<S>,
    made_up: Volume<S>,
) -> Volume<S> {
    (wanted * made_up / stock).checkpoint(&symbols::STOCK_VOLUME)
}

/// `stock_volume(stock_mol_per_dm3, wanted_mol_per_dm3, made_up_to_cm3)` in cm3.
///
/// ```
/// use overwater::peroxide::dilution::StockVolume;
/// use overwater::scalar::Formula;
/// // 500 cm3 of 20 vol from a stock assayed at 96 vol: 104 cm3 (arithmetic: 20 x 500/96).
/// let concentration = |volumes: f64| 2.0 * volumes / 22.414;
/// let stock = StockVolume.number([concentration(96.0), concentration(20.0), 500.0])?;
/// assert!((stock - 104.17).abs() < 0.005);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct StockVolume;

impl Formula<3> for StockVolume {
    const NAME: &'static str = "stock_volume";

    fn inputs(&self) -> [&'static Bound; 3] {
        [&bounds::STOCK_MOL_PER_DM3, &bounds::WANTED_MOL_PER_DM3, &bounds::MADE_UP_TO_CM3]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::STOCK_VOLUME
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [stock, wanted, made_up]: [S; 3]) -> S {
        let stock = Concentration::new(stock.enter(&symbols::STOCK_CONCENTRATION));
        let wanted = Concentration::new(wanted.enter(&symbols::WANTED_CONCENTRATION));
        let made_up = Volume::new(made_up.enter(&symbols::MADE_UP_VOLUME));
        let volume = stock_volume(stock, wanted, made_up);
        // A stock weaker than what is wanted would have to be concentrated, not diluted. The concentrations are compared,
        // because with equal ones the volume may be rounded to just above the one it is made up to.
        let room = stock.si() - wanted.si();
        volume.si().where_within(room, 0.0, f64::MAX).leave(&symbols::STOCK_VOLUME)
    }

    fn refusal(&self, [stock, wanted, _]: [f64; 3]) -> Error {
        Error::new(Code::CannotBeMet, "wanted_mol_per_dm3")
            .value(format!("{wanted} mol/dm3"))
            .allowed(format!("at most the stock's {stock} mol/dm3"))
            .advice("a solution cannot be made stronger by diluting: take a stronger stock")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_stock_of_the_strength_wanted_is_taken_as_it_is(
            concentration in 0.005_1..=14.0_f64,
            made_up in 0.05..=1e4_f64,
        ) {
            let volume = StockVolume.number([concentration, concentration, made_up]).unwrap();
            prop_assert!((volume / made_up - 1.0).abs() < 1e-15, "{volume} of {made_up}");
            prop_assert!(StockVolume.number([concentration * (1.0 - 1e-12), concentration, made_up]).is_err());
        }
    }

    #[test]
    fn diluting_never_makes_a_solution_stronger() {
        assert!((StockVolume.number([1.5, 1.5, 250.0]).unwrap() - 250.0).abs() < 1e-12);
        let error = StockVolume.number([1.5, 1.6, 250.0]).unwrap_err();
        assert_eq!(error.code, Code::CannotBeMet);
        assert!(error.to_string().contains("1.6 mol/dm3"), "{error}");
    }
}
