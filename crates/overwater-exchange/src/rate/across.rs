//! What several runs say together: order, Michaelis and Menten, activation energy.

use overwater::readings::arrhenius::{WorstLines, arrhenius, straightened};
use overwater::readings::bootstrap::bootstrap;
use overwater::readings::line::{StraightLine, lines};
use overwater::readings::michaelis_menten::{MichaelisMenten, saturation};
use overwater::readings::model::{Parameter, fit};
use overwater::readings::order::from_rates;
use overwater::readings::series::{Demands, Names, Series};
use overwater::reference::constants::MOLAR_GAS_2019;
use overwater::{Code, Error, Result};

use super::answer::{ArrheniusAnswer, MeasureAnswer, OrderAnswer, RunPointAnswer, SaturationAnswer};
use super::prepared::Prepared;
use super::request::WorstLinesRequest;
use crate::lines::{Axes, finite, line_answer, lines_answer};

/// Rates, or rate constants, against a concentration or a temperature.
pub(super) struct Compared<'a> {
    pub(super) names: Names,
    pub(super) runs: Vec<&'a str>,
    pub(super) x: Vec<f64>,
    pub(super) y: Vec<f64>,
    /// Standard errors of y, where there are any.
    pub(super) errors: Vec<Option<f64>>,
    pub(super) x_unit: &'a str,
    pub(super) y_unit: &'a str,
    /// Where y comes from.
    pub(super) from: String,
}

impl Compared<'_> {
    fn series(&self) -> Result<Series<'_>> {
        Series::new(self.names, &self.x, &self.y, &Demands { positive: true, ..Demands::rows(2) })
    }

    fn points(
        &self,
        plotted: impl Fn(f64, f64) -> (f64, f64),
        line: impl Fn(f64) -> f64,
    ) -> Vec<RunPointAnswer> {
        let rows = self.x.iter().zip(&self.y).zip(&self.runs);
        rows.map(|((x, y), run)| {
            let (plotted_x, plotted_y) = plotted(*x, *y);
            let fitted = line(plotted_x);
            RunPointAnswer { run: (*run).to_owned(), x: *x, y: *y, plotted_x, plotted_y, fitted }
        })
        .collect()
    }
}

/// How many different values there are.
pub(super) fn different(values: &[f64]) -> usize {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    sorted.dedup();
    sorted.len()
}

/// The order from rates at several concentrations.
pub(super) fn order(compared: &Compared<'_>) -> Result<OrderAnswer> {
    let series = compared.series()?;
    let found = from_rates(&series)?;
    let both = lines(&series)?;
    let axes = Axes { x: "concentration", x_unit: compared.x_unit, y: "rate", y_unit: compared.y_unit };
    let causes = if found.order > 1.0 && both.with_intercept.intercept < 0.0 {
        &[
            "the order is above 1",
            "a reading of the concentration or of the rate that is off by the same amount each time",
        ]
    } else {
        &[
            "the order is below 1",
            "a reaction that goes on without this substance, or a rate read too high by the same amount",
        ]
    };
    Ok(OrderAnswer {
        from: compared.from.clone(),
        order: MeasureAnswer {
            value: found.order,
            unit: String::new(),
            standard_error: finite(found.standard_error),
            interval: None,
        },
        rate_constant: found.rate_constant,
        line: line_answer(&found.line),
        lines: lines_answer(&both, &axes, causes),
        points: compared.points(|c, rate| (c.ln(), rate.ln()), |x| found.line.at(x)),
        concentration_unit: compared.x_unit.to_owned(),
        rate_unit: compared.y_unit.to_owned(),
    })
}

/// Michaelis and Menten.
pub(super) fn enzyme(compared: &Compared<'_>, prepared: &Prepared) -> Result<SaturationAnswer> {
    let series = compared.series()?;
    let found = saturation(&series)?;
    let drawn = match &prepared.bootstrap {
        Some(plan) if found.fit.degrees_of_freedom > 0 => {
            bootstrap(&MichaelisMenten, &series, &found.fit, plan).ok()
        }
        _ => None,
    };
    let number = |index: usize, unit: &str| MeasureAnswer {
        value: found.fit.parameters.get(index).copied().unwrap_or(f64::NAN),
        unit: unit.to_owned(),
        standard_error: found.fit.standard_errors.get(index).copied().and_then(finite),
        interval: drawn
            .as_ref()
            .and_then(|drawn| drawn.intervals.get(index))
            .map(|interval| [interval.lower, interval.upper]),
    };
    Ok(SaturationAnswer {
        from: compared.from.clone(),
        greatest_rate: number(0, compared.y_unit),
        half_rate_concentration: number(1, compared.x_unit),
        double_reciprocal_greatest_rate: found.double_reciprocal.greatest_rate,
        double_reciprocal_half_rate_concentration: found.double_reciprocal.half_rate_concentration,
        residual_standard_deviation: finite(found.fit.residual_sd),
    })
}

/// Activation energy.
pub(super) fn activation(compared: &Compared<'_>, prepared: &Prepared) -> Result<ArrheniusAnswer> {
    let series = compared.series()?;
    let bars: Vec<f64> = compared
        .errors
        .iter()
        .zip(&compared.y)
        .filter_map(|(error, y)| error.map(|error| error / y))
        .collect();
    let (worst, through) = match prepared.worst_lines {
        WorstLinesRequest::Scatter => (WorstLines::Scatter, "one standard deviation of the residuals"),
        WorstLinesRequest::StandardErrors if bars.len() == compared.y.len() => {
            (WorstLines::ErrorBars(&bars), "one standard error of the coldest and the hottest rate")
        }
        WorstLinesRequest::StandardErrors => {
            return Err(Error::new(Code::Missing, "worst_lines")
                .value("standard_errors")
                .advice("not every rate has a standard error: take worst_lines = \"scatter\""));
        }
    };
    let found = arrhenius(&series, &MOLAR_GAS_2019, worst)?;
    let (x, y) = straightened(&series)?;
    let straight = Series::new(compared.names, &x, &y, &Demands::rows(2))?;
    let line = [found.line.intercept, found.line.slope].map(Parameter::Free);
    let drawn = match &prepared.bootstrap {
        Some(plan) if found.line.degrees_of_freedom > 0 => fit(&StraightLine, &straight, line)
            .and_then(|fit| bootstrap(&StraightLine, &straight, &fit, plan))
            .ok(),
        _ => None,
    };
    let per_slope = -found.gas_constant().si() / 1e3;
    let interval = |of: &dyn Fn(&[f64; 2]) -> f64| {
        drawn.as_ref().map(|drawn| {
            let interval = drawn.interval_of(of);
            [interval.lower, interval.upper]
        })
    };
    let a = found.pre_exponential();
    Ok(ArrheniusAnswer {
        from: compared.from.clone(),
        activation_energy: MeasureAnswer {
            value: found.activation_energy_kj_per_mol,
            unit: "kJ/mol".to_owned(),
            standard_error: finite(found.activation_energy_error),
            interval: interval(&|[_, slope]| per_slope * slope),
        },
        ln_pre_exponential: MeasureAnswer {
            value: found.ln_pre_exponential,
            unit: String::new(),
            standard_error: finite(found.ln_pre_exponential_error),
            interval: interval(&|[intercept, _]| *intercept),
        },
        pre_exponential: finite(a),
        pre_exponential_unit: compared.y_unit.to_owned(),
        covariance: finite(found.covariance),
        correlation: finite(found.correlation),
        worst_lines: finite(found.worst.least_kj_per_mol + found.worst.greatest_kj_per_mol)
            .map(|_| [found.worst.least_kj_per_mol, found.worst.greatest_kj_per_mol]),
        worst_lines_through: through.to_owned(),
        gas_constant: found.gas_constant().si(),
        line: line_answer(&found.line),
        points: compared.points(|t, k| (1.0 / t, k.ln()), |x| found.line.at(x)),
    })
}
