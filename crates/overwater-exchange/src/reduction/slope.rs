//! The molar volume from the slope of volume against the amount that each portion can give.

use overwater::readings::Outcome;
use overwater::readings::line::lines;
use overwater::readings::series::{Demands, MOST_ROWS, Names, Series};
use overwater::symbols;
use overwater::{Code, Error};

use super::answer::SlopeAnswer;
use crate::lines::{Axes, lines_answer};

/// The name of the result.
pub(super) const SLOPE: &str = "molar_volume_slope_dm3_per_mol";

/// The points.
#[derive(Debug, Default)]
pub(super) struct Slope {
    expected_mmol: Vec<f64>,
    volume_cm3: Vec<f64>,
}

impl Slope {
    pub(super) fn push(&mut self, outcome: &Outcome<f64>) -> Result<(), Error> {
        if self.expected_mmol.len() >= MOST_ROWS {
            return Err(Error::new(Code::TooLarge, "rows")
                .allowed(format!("at most {MOST_ROWS} for a slope"))
                .advice("take every tenth row"));
        }
        self.expected_mmol.extend(outcome.get(&symbols::EXPECTED_AMOUNT));
        self.volume_cm3.extend(outcome.get(&symbols::REFERENCE_VOLUME));
        Ok(())
    }

    pub(super) fn answer(&self, accepted: Option<&(String, f64)>) -> Result<SlopeAnswer, Error> {
        let names = Names { x: "expected_amount_mmol", y: "reference_volume_cm3" };
        let series = Series::new(names, &self.expected_mmol, &self.volume_cm3, &Demands::rows(2))?;
        let both = lines(&series)?;
        let axes = Axes { x: "n(expected)", x_unit: "mmol", y: "V(ref)", y_unit: "cm3" };
        let causes = both.warning.map_or(&[][..], |warning| warning.may_mean_of_portions());
        let mut lines = lines_answer(&both, &axes, causes);
        // A cm3 for each mmol is a dm3 for each mol.
        lines.slope_unit = "dm3/mol".to_owned();
        let accepted = accepted.filter(|(name, _)| name == SLOPE).map(|(_, value)| value);
        let error = |slope: f64| accepted.map(|accepted| 100.0 * (slope / accepted - 1.0));
        Ok(SlopeAnswer {
            name: SLOPE.to_owned(),
            words: "molar volume measured, from the slope".to_owned(),
            percent_error: error(both.with_intercept.slope),
            percent_error_through_origin: error(both.through_origin.slope),
            lines,
        })
    }
}
