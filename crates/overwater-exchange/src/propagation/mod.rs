//! A formula with uncertain inputs: how uncertain is its result, by a stated rule set.

pub mod answer;
mod inputs;
pub mod request;

use overwater::bounds::Bound;
use overwater::catalogue;
use overwater::readings::uncertainty::budget::budget;
use overwater::readings::uncertainty::correlation::Correlation;
use overwater::readings::uncertainty::input::Input;
use overwater::readings::uncertainty::model::{FormulaModel, MeasurementModel};
use overwater::readings::uncertainty::monte_carlo::{Plan, Stop, monte_carlo};
use overwater::readings::uncertainty::rules::RuleSet;
use overwater::readings::uncertainty::school::{self, SchoolRules, add_up};
use overwater::readings::uncertainty::stated::stated;
use overwater::{Code, Error, nearest};

use crate::Refusal;
use crate::calculation::in_order;
use crate::seed::Seed;
use answer::{Behaviour, DrawnAnswer, LineAnswer, PropagationAnswer, StatedAnswer};
use request::{CorrelationRequest, PropagationRequest, RuleSetRequest, UncertainRequest};

/// Figures of a stated standard uncertainty.
const FIGURES: usize = 2;

/// Carries the uncertainties of a formula's inputs to its result.
///
/// ```
/// use overwater_exchange::propagation::propagate;
/// let request = overwater_exchange::propagation_from_toml(
///     r#"
///     format = 1
///     formula = "molar_volume"
///     [inputs]
///     temperature_c = { value = 20.0, half_width = 0.5 }
///     pressure_kpa = { value = 101.325, standard_uncertainty = 0.1 }
///     "#,
/// )?;
/// let answer = propagate(&request)?;
/// // u(V)/V is the root of the sum of squares of u(T)/T and u(p)/p.
/// let expected = ((0.5 / 3f64.sqrt() / 293.15).powi(2) + (0.1 / 101.325f64).powi(2)).sqrt();
/// assert!((answer.standard_uncertainty.unwrap() / answer.value / expected - 1.0).abs() < 1e-12);
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// `unknown_name` for a formula, an input or a set of school rules, `missing`, `given_twice`, and what the core refuses.
pub fn propagate(request: &PropagationRequest) -> Result<PropagationAnswer, Box<Refusal>> {
    let formula = catalogue::find(&request.formula)?;
    let ordered = in_order(&*formula, &request.inputs, |value| UncertainRequest {
        value: Some(value),
        ..UncertainRequest::default()
    })?;
    let model = FormulaModel::new(&*formula);
    let relation = if request.relation {
        model.relation()
    } else {
        model.relation().map(|input| Input::exact(input.name, 1.0))
    };
    let asked = Asked {
        rules: request.rules,
        school_rules: request.school_rules.as_deref(),
        coverage: request.coverage,
        seed: request.seed,
        draws: request.draws,
        correlations: &request.correlations,
    };
    let of =
        PropagationAnswer { formula: request.formula.clone(), ..PropagationAnswer::of(formula.output()) };
    Ok(carry(&model, &ordered, relation, &asked, of)?)
}

/// The rule set that is asked for, and what it is told.
pub(crate) struct Asked<'a> {
    pub(crate) rules: RuleSetRequest,
    pub(crate) school_rules: Option<&'a str>,
    pub(crate) coverage: Option<f64>,
    pub(crate) seed: Option<Seed>,
    pub(crate) draws: Option<usize>,
    pub(crate) correlations: &'a [CorrelationRequest],
}

/// Carries the uncertainties of inputs through a model, by the rule set that is asked for; `answer` says of what.
pub(crate) fn carry(
    model: &impl MeasurementModel,
    given: &[(&'static Bound, UncertainRequest)],
    relation: Option<Input>,
    asked: &Asked<'_>,
    mut answer: PropagationAnswer,
) -> Result<PropagationAnswer, Error> {
    let coverage = asked.coverage.unwrap_or(0.95);
    let correlations: Vec<Correlation> = asked
        .correlations
        .iter()
        .map(|given| {
            let [one, other] = &given.between;
            Correlation::new(one.clone(), other.clone(), given.coefficient)
        })
        .collect();
    let rules = match asked.rules {
        RuleSetRequest::Gum => RuleSet::Gum,
        RuleSetRequest::MonteCarlo => RuleSet::MonteCarlo,
        RuleSetRequest::School => RuleSet::School,
    };
    refuse_what_does_not_go_with(rules, asked)?;
    answer.rules = rules.name().to_owned();
    answer.rules_source = rules.source().to_owned();
    if rules == RuleSet::School {
        let rules = school_rules(asked.school_rules)?;
        let inputs = given
            .iter()
            .map(|(bound, given)| inputs::school(bound, given))
            .chain(relation.map(|input| Ok(inputs::known(input.name, input.value))))
            .collect::<Result<Vec<_>, Error>>()?;
        let found = add_up(model, &inputs, rules)?;
        answer.school_rules = Some(rules.name.to_owned());
        answer.value = found.value;
        answer.half_width = Some(found.half_width);
        answer.stated = StatedAnswer { value: found.stated.value, uncertainty: found.stated.uncertainty };
        answer.lines = found.lines.iter().map(|line| LineAnswer::school(line, given)).collect();
        return Ok(answer);
    }
    let inputs: Vec<Input> = given
        .iter()
        .map(|(bound, given)| inputs::input(bound, given))
        .chain(relation.map(Ok))
        .collect::<Result<_, Error>>()?;
    let first_order = budget(model, &inputs, &correlations, coverage)?;
    answer.value = first_order.value;
    answer.coverage = Some(coverage);
    answer.lines = first_order.lines.iter().map(|line| LineAnswer::gum(line, given)).collect();
    if rules == RuleSet::Gum {
        answer.standard_uncertainty = Some(first_order.standard_uncertainty);
        answer.degrees_of_freedom = Some(first_order.degrees_of_freedom).filter(|number| number.is_finite());
        answer.coverage_factor = Some(first_order.coverage_factor);
        answer.expanded_uncertainty = Some(first_order.expanded_uncertainty);
    } else {
        let plan = Plan {
            coverage,
            seed: asked.seed.map_or(Plan::default().seed, |seed| seed.0),
            stop: asked.draws.map_or(Plan::default().stop, Stop::After),
            threads: 2,
        };
        let drawn = monte_carlo(model, &inputs, &correlations, plan)?;
        answer.value = drawn.value;
        answer.standard_uncertainty = Some(drawn.standard_uncertainty);
        answer.drawn = Some(DrawnAnswer {
            shortest: drawn.shortest,
            symmetric: drawn.symmetric,
            draws: drawn.draws as f64,
            without_result: drawn.failed as f64,
            seed: Seed(plan.seed),
            behaviour: match drawn.stable {
                None => Behaviour::AsMany,
                Some(true) => Behaviour::Stable,
                Some(false) => Behaviour::NotStable,
            },
        });
    }
    let shown = answer.expanded_uncertainty.or(answer.standard_uncertainty).unwrap_or(0.0);
    let text = stated(answer.value, shown, FIGURES);
    answer.stated = StatedAnswer { value: text.value, uncertainty: text.uncertainty };
    Ok(answer)
}

fn school_rules(name: Option<&str>) -> Result<&'static SchoolRules, Error> {
    let Some(name) = name else { return Ok(&school::HALF_DIVISION_2026) };
    school::ALL.iter().find(|rules| rules.name == name).copied().ok_or_else(|| {
        let names: Vec<&str> = school::ALL.iter().map(|rules| rules.name).collect();
        let error = Error::new(Code::UnknownName, "school_rules").value(name).allowed(names.join(", "));
        match nearest(name, names.iter().copied()) {
            Some(near) => error.advice(format!("did you mean {near}?")),
            None => error.advice("name one of these"),
        }
    })
}

/// Rule sets are not mixed: what one of them does not know is refused, not dropped.
fn refuse_what_does_not_go_with(rules: RuleSet, request: &Asked<'_>) -> Result<(), Error> {
    let school = rules == RuleSet::School;
    let drawing = rules == RuleSet::MonteCarlo;
    let given = [
        ("school_rules", request.school_rules.is_some(), school),
        ("coverage", request.coverage.is_some(), !school),
        ("correlations", !request.correlations.is_empty(), !school),
        ("seed", request.seed.is_some(), drawing),
        ("draws", request.draws.is_some(), drawing),
    ];
    match given.iter().find(|(_, is_given, known)| *is_given && !*known) {
        None => Ok(()),
        Some((key, ..)) => Err(Error::new(Code::Contradiction, *key)
            .allowed(format!("nothing, with rules = \"{}\"", rules.name()))
            .advice("leave it out, or choose the rule set that knows it: rule sets are not mixed")),
    }
}
