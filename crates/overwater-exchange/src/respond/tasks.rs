//! The tasks: a line each.

use overwater::catalogue;
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::Serialize;
use serde::de::DeserializeOwned;

use super::envelope::{answered, open};
use super::listing::{bounds, cautions, sources, species, version};
use super::work;
use crate::calculation::calculate;
use crate::columns::{calculate_columns, formulas};
use crate::propagation::propagate;
use crate::rate::rate;
use crate::read::Document;
use crate::reduction::reduce;
use crate::{Refusal, chemistry, locate, peroxide};

/// Something that can be asked for.
pub(super) trait Task: Sync {
    /// Its name.
    fn name(&self) -> &'static str;

    /// What it does, in a sentence.
    fn about(&self) -> &'static str;

    /// The answer to a whole request.
    fn answer(&self, text: &str) -> Result<String, Box<Refusal>>;

    /// The schema of its request.
    fn request_schema(&self, generator: &mut SchemaGenerator) -> Schema;

    /// The schema of its answer.
    fn answer_schema(&self, generator: &mut SchemaGenerator) -> Schema;
}

/// A task by the function that does it.
struct Door<Request, Answer> {
    name: &'static str,
    about: &'static str,
    work: fn(&Request) -> Result<Answer, Box<Refusal>>,
}

impl<Request, Answer> Task for Door<Request, Answer>
where
    Request: Document + Serialize + JsonSchema,
    Answer: Serialize + DeserializeOwned + JsonSchema,
{
    fn name(&self) -> &'static str {
        self.name
    }

    fn about(&self) -> &'static str {
        self.about
    }

    fn answer(&self, text: &str) -> Result<String, Box<Refusal>> {
        let request = open(text)?;
        let answer = (self.work)(&request).map_err(|refusal| placed(*refusal, text))?;
        answered(self.name, &answer)
    }

    fn request_schema(&self, generator: &mut SchemaGenerator) -> Schema {
        generator.subschema_for::<Request>()
    }

    fn answer_schema(&self, generator: &mut SchemaGenerator) -> Schema {
        generator.subschema_for::<Answer>()
    }
}

/// A refusal by the core, seen from the envelope.
fn placed(refusal: Refusal, text: &str) -> Box<Refusal> {
    let path = match refusal.path.as_str() {
        "" => "request".to_owned(),
        path => format!("request.{path}"),
    };
    let found = locate::in_json(text, &path);
    // Where the value is a text without escapes, a place in the text is a place in the document.
    let inside = match (found, refusal.span) {
        (Some((start, end)), Some((from, to)))
            if text.get(start..end).is_some_and(|value| value.starts_with('"') && !value.contains('\\')) =>
        {
            Some((start + 1 + from, start + 1 + to))
        }
        _ => found,
    };
    Box::new(Refusal { path, ..refusal }.at(text, inside))
}

/// A formula's inputs stand under `inputs` in a request: the paths of what is refused of them begin so.
fn of_inputs<'a>(
    formula: &str,
    mut given: impl Iterator<Item = &'a String>,
    mut refusal: Box<Refusal>,
) -> Box<Refusal> {
    let name = refusal.path.split('.').next().unwrap_or_default();
    let is_input = given.any(|given| given == name)
        || catalogue::find(formula)
            .is_ok_and(|formula| formula.inputs().iter().any(|bound| bound.name == name));
    if is_input {
        refusal.path = format!("inputs.{}", refusal.path);
    }
    refusal
}

/// Every task, by name.
#[rustfmt::skip]
pub(super) static TASKS: &[&dyn Task] = &[
    &Door { name: "plan", about: "a lesson to everything to weigh, dilute, fill, reject, wait for and be careful of", work: crate::plan },
    &Door { name: "schedule", about: "portions by the stop-watch that keep flow, heat and pressure within limits, or what stands in the way", work: crate::schedule::schedule },
    &Door { name: "run", about: "one preparation simulated: what happens when, what goes wrong, curves, balances", work: crate::run::run },
    &Door { name: "calibrate", about: "readings of a trial run to the activity of a catalyst at 20 degC with its uncertainty", work: crate::run::calibrate },
    &Door { name: "burn", about: "a sample in a jar: what burns, what is made and left, heat, flame, how much to take", work: crate::burn::burn },
    &Door { name: "dissolve", about: "a product of a burn in water: how much dissolves, the pH, what indicators show", work: crate::after::dissolve },
    &Door { name: "air", about: "a product of a burn in a room's air against the limits for people at work", work: crate::after::air },
    &Door { name: "species", about: "the species of the flames with their coefficients, or those that hold a text", work: species },
    &Door { name: "cautions", about: "what to be careful of in a lesson, and the facts that raise it", work: cautions },
    &Door { name: "reduce", about: "rows of readings to amounts, volumes, yields, molar masses, with the size of each correction", work: |request| work::of_reduction(request).and_then(|()| reduce(request, request.working)) },
    &Door { name: "rate", about: "readings against time to rates, half-lives, orders, activation energies", work: |request| work::of_rate(request).and_then(|()| rate(request)) },
    &Door { name: "propagate", about: "how uncertain the result of a formula is, by a stated rule set", work: |request| propagate(request).map_err(|refusal| of_inputs(&request.formula, request.inputs.keys(), refusal)) },
    &Door { name: "calculate", about: "one formula: the number, its sensitivities, the worked solution", work: |request| calculate(request).map_err(|refusal| of_inputs(&request.formula, request.inputs.keys(), refusal)) },
    &Door { name: "calculate_columns", about: "one formula over columns of values; a row without a result says why", work: calculate_columns },
    &Door { name: "formulas", about: "the formulas there are, with what each takes in and gives, or those that hold a text", work: formulas },
    &Door { name: "strength", about: "a strength of peroxide in every scale, and under every convention", work: peroxide::strength },
    &Door { name: "dilute", about: "how much stock to make up to a volume for a strength wanted", work: peroxide::dilute },
    &Door { name: "design_assay", about: "pipette, flask and aliquot that bring the titre of an assay into range", work: peroxide::design_assay },
    &Door { name: "weigh", about: "the molar mass of a chemical formula with its uncertainty, and what it is made of", work: chemistry::formula },
    &Door { name: "balance", about: "an equation with the smallest whole numbers", work: chemistry::balance },
    &Door { name: "sources", about: "where every number comes from, or those entries that hold a text", work: sources },
    &Door { name: "bounds", about: "what is accepted for each quantity, or for those that hold a text", work: bounds },
    &Door { name: "version", about: "the version of the library, and the tasks it knows", work: version },
];

/// The names of all tasks.
pub fn names() -> impl Iterator<Item = &'static str> {
    TASKS.iter().map(|task| task.name())
}
