//! One formula, one set of values: the number, how far each input moves it, and the worked solution.

use std::collections::BTreeMap;

use overwater::bounds::Bound;
use overwater::catalogue::{self, AnyFormula};
use overwater::scalar::{Notation, Solution, Symbol};
use overwater::{Code, Error, nearest};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{FORMAT, Refusal};

/// A formula by its name, with its inputs by theirs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CalculationRequest {
    /// The format of the request; 1.
    pub format: u32,
    /// The formula's name, as in "dry_amount".
    pub formula: String,
    /// Its inputs; the unit stands at the end of each name.
    pub inputs: BTreeMap<String, f64>,
}

/// What a formula gave.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CalculationAnswer {
    /// The format of the answer; 1.
    pub format: u32,
    /// The version of the library that gave it.
    pub library_version: String,
    /// The formula's name.
    pub formula: String,
    /// The inputs in the formula's order.
    pub inputs: Vec<InputAnswer>,
    /// The result.
    pub result: ResultAnswer,
    /// The worked solution, step by step.
    pub steps: Vec<StepAnswer>,
}

/// An input as it was put in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct InputAnswer {
    /// Its name, with the unit at the end.
    pub name: String,
    /// What it is.
    pub words: String,
    /// Its value.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// The least value accepted.
    pub least: f64,
    /// The greatest value accepted.
    pub greatest: f64,
    /// How much the result changes for one unit of it.
    pub sensitivity: f64,
}

/// The result.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ResultAnswer {
    /// Its name, with the unit at the end.
    pub name: String,
    /// Its symbol.
    pub symbol: String,
    /// What it is.
    pub words: String,
    /// Its value.
    pub value: f64,
    /// Its unit.
    pub unit: String,
}

/// One step of a worked solution.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StepAnswer {
    /// The symbol of what is worked out.
    pub symbol: String,
    /// What it is.
    pub words: String,
    /// The relation in symbols.
    pub relation: String,
    /// The relation with numbers and units put in.
    pub numbers: String,
    /// The result with its unit.
    pub result: String,
    /// The whole step in LaTeX mathematics, an equals sign a line (`aligned` of the package `amsmath`).
    pub latex: String,
    /// Where the relation comes from.
    pub source: String,
}

/// The name of a result: what it is, with the unit at the end.
#[must_use]
pub fn result_name(symbol: &Symbol) -> String {
    match symbol.unit.suffix().as_str() {
        "" => symbol.id.to_owned(),
        suffix => format!("{}_{suffix}", symbol.id),
    }
}

/// The values in the order of a formula's inputs; `taken` makes one of the number that is taken where nothing is said.
///
/// # Errors
/// `unknown_name` for a name that is none of its inputs, `missing` for an input without a value that must have one.
pub fn in_order<T: Clone>(
    formula: &dyn AnyFormula,
    given: &BTreeMap<String, T>,
    taken: impl Fn(f64) -> T,
) -> Result<Vec<(&'static Bound, T)>, Error> {
    let inputs = formula.inputs();
    let names = || inputs.iter().map(|bound| bound.name);
    if let Some(unknown) = given.keys().find(|name| !names().any(|known| known == name.as_str())) {
        let allowed: Vec<&str> = names().collect();
        let error = Error::new(Code::UnknownName, unknown.clone()).allowed(allowed.join(", "));
        return Err(match nearest(unknown, names()) {
            Some(near) => error.advice(format!("did you mean {near}?")),
            None => error,
        });
    }
    inputs
        .iter()
        .map(|bound| match given.get(bound.name).cloned().or_else(|| bound.where_unsaid().map(&taken)) {
            Some(value) => Ok((*bound, value)),
            None => Err(Error::new(Code::Missing, bound.name).allowed(bound.range()).advice(format!(
                "{} needs the {}",
                formula.name(),
                bound.symbol.name
            ))),
        })
        .collect()
}

/// Works out a formula.
///
/// ```
/// use overwater_exchange::calculation::{CalculationRequest, calculate};
/// let request = CalculationRequest {
///     format: 1,
///     formula: "vapour_pressure".to_owned(),
///     inputs: [("temperature_c".to_owned(), 20.0)].into(),
/// };
/// let answer = calculate(&request)?;
/// assert_eq!(answer.result.name, "vapour_pressure_kpa");
/// // CRC Handbook: 2.3388 kPa.
/// assert!((answer.result.value - 2.339).abs() < 5e-4);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// `unknown_name` and `missing` for names, and what the formula refuses.
pub fn calculate(request: &CalculationRequest) -> Result<CalculationAnswer, Box<Refusal>> {
    let formula = catalogue::find(&request.formula)?;
    let inputs = in_order(&*formula, &request.inputs, |value| value)?;
    let values: Vec<f64> = inputs.iter().map(|(_, value)| *value).collect();
    let (value, slopes) = formula.sensitivities(&values)?;
    let (_, solution) = formula.working(&values)?;
    let output = formula.output();
    Ok(CalculationAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        formula: formula.name().to_owned(),
        inputs: inputs
            .into_iter()
            .zip(slopes)
            .map(|((bound, value), sensitivity)| InputAnswer {
                name: bound.name.to_owned(),
                words: bound.symbol.name.to_owned(),
                value,
                unit: bound.symbol.unit.text.to_owned(),
                least: bound.least,
                greatest: bound.greatest,
                sensitivity,
            })
            .collect(),
        result: ResultAnswer {
            name: result_name(output),
            symbol: output.text.to_owned(),
            words: output.name.to_owned(),
            value,
            unit: output.unit.text.to_owned(),
        },
        steps: steps(&solution),
    })
}

/// A worked solution as it is sent.
pub(crate) fn steps(solution: &Solution) -> Vec<StepAnswer> {
    let latex = solution.steps(Notation::Latex);
    let text = solution.steps(Notation::Text);
    text.into_iter()
        .zip(latex)
        .map(|(step, latex)| StepAnswer {
            symbol: step.symbol.text.to_owned(),
            words: step.symbol.name.to_owned(),
            relation: step.relation,
            numbers: step.numbers,
            result: step.result,
            latex: format!(
                r"\begin{{aligned}} {} &= {} \\ &= {} \\ &= {} \end{{aligned}}",
                latex.symbol.latex, latex.relation, latex.numbers, latex.result
            ),
            source: step.symbol.source.map(|source| source.text.to_owned()).unwrap_or_default(),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn request(formula: &str, inputs: &[(&str, f64)]) -> CalculationRequest {
        let inputs = inputs.iter().map(|(name, value)| ((*name).to_owned(), *value)).collect();
        CalculationRequest { format: 1, formula: formula.to_owned(), inputs }
    }

    #[test]
    fn names_are_checked_before_numbers() {
        let refused =
            |formula: &str, inputs: &[(&str, f64)]| calculate(&request(formula, inputs)).unwrap_err();
        let refusal = refused("vapour_presure", &[]);
        assert_eq!(
            (refusal.code.as_str(), refusal.advice.as_str()),
            ("unknown_name", "did you mean vapour_pressure?")
        );
        let refusal = refused("vapour_pressure", &[("temprature_c", 20.0)]);
        assert_eq!(
            (refusal.path.as_str(), refusal.advice.as_str()),
            ("temprature_c", "did you mean temperature_c?")
        );
        let refusal = refused("vapour_pressure", &[]);
        assert_eq!((refusal.code.as_str(), refusal.path.as_str()), ("missing", "temperature_c"));
        let refusal = refused("vapour_pressure", &[("temperature_c", 120.0)]);
        assert_eq!((refusal.code.as_str(), refusal.allowed.as_str()), ("out_of_range", "0 to 100 degC"));
    }

    #[test]
    fn the_answer_holds_the_sensitivities_and_the_solution() {
        let inputs = [
            ("volume_cm3", 86.5),
            ("temperature_c", 21.0),
            ("pressure_kpa", 100.36),
            ("inside_minus_outside_mm", 12.0),
        ];
        let answer = calculate(&request("dry_amount", &inputs)).unwrap();
        assert_eq!(answer.result.name, "amount_mmol");
        // n is proportional to V.
        let volume = &answer.inputs[0];
        assert!((volume.sensitivity * volume.value / answer.result.value - 1.0).abs() < 1e-14);
        let last = answer.steps.last().unwrap();
        assert_eq!(last.relation, "p(dry) × V / (R × T)");
        assert!(
            last.latex.starts_with(r"\begin{aligned} n &= \frac{p_\mathrm{dry}\,V}{R\,T} \\ &= \frac{"),
            "{}",
            last.latex
        );
        assert!(last.latex.ends_with(r" \\ &= 3.4574\,\mathrm{mmol} \end{aligned}"), "{}", last.latex);
        let text = serde_json::to_string(&answer).unwrap();
        assert_eq!(serde_json::from_str::<CalculationAnswer>(&text).unwrap(), answer);
    }
}
