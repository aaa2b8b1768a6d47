//! What `help()` shows of a function, made from the catalogue and the bounds table.

use super::{Calculation, Input};

/// Keywords of every NumPy ufunc that are handed on.
pub(super) const HANDED_ON: [(&str, &str); 7] = [
    ("out", "None"),
    ("where", "True"),
    ("casting", "'same_kind'"),
    ("order", "'K'"),
    ("dtype", "None"),
    ("subok", "True"),
    ("signature", "None"),
];

/// The signature that `inspect` reads, and the description.
pub(super) fn text(calculation: &Calculation) -> String {
    let formula = calculation.formula;
    let output = formula.output();
    let unit = match output.unit.text {
        "" => String::new(),
        unit => format!(", in {unit}"),
    };
    let mut text = format!("{}({})\n--\n\n", formula.name(), signature(&calculation.inputs));
    text.push_str(&format!("{}{unit}.\n\nParameters\n----------\n", capital(output.name)));
    for (index, input) in calculation.inputs.iter().enumerate() {
        text.push_str(&parameter(input, index > 0));
    }
    text.push_str(
        "out, where, casting, order, dtype, subok, signature\n    As for any NumPy ufunc; for arrays only.\n\n",
    );
    text.push_str(&format!(
        "Returns\n-------\nfloat or array\n    The {}{unit}: a float for floats and ints; otherwise what NumPy, pandas, \
         Polars, xarray or dask\n    make of it, in the shape that the arguments broadcast to.\n\n",
        output.name
    ));
    text.push_str(
        "Raises\n------\nOverwaterError\n    For a number outside its range. An array holds NaN there instead, and \
         `numpy.errstate` decides\n    about the invalid value.\nTypeError\n    For what is neither a number nor an array of \
         numbers; it names the argument.\n\nNotes\n-----\n",
    );
    let source = output.source.map_or("by definition", |source| source.text);
    text.push_str(&format!("Source: {source}.\n"));
    if let Some(uncertainty) = formula.property_uncertainty() {
        text.push_str(&format!("Uncertainty of the relation itself: {}.\n", uncertainty.stated));
    }
    text
}

fn signature(inputs: &[Input]) -> String {
    let mut parts = Vec::new();
    for (index, input) in inputs.iter().enumerate() {
        parts.push(match input.default {
            Some(value) => format!("{}={value:?}", input.limits.name),
            None => input.limits.name.to_owned(),
        });
        if index == 0 {
            parts.push("*".to_owned());
        }
    }
    parts.extend(HANDED_ON.iter().map(|(name, default)| format!("{name}={default}")));
    parts.join(", ")
}

fn parameter(input: &Input, by_name: bool) -> String {
    let limits = input.limits;
    let default = input.default.map_or_else(String::new, |value| format!(", default {value:?}"));
    let by_name = if by_name { ", by name only" } else { "" };
    format!(
        "{} : number or array_like{default}{by_name}\n    {}, {} ({}).\n",
        limits.name,
        capital(limits.symbol.name),
        limits.range(),
        limits.why
    )
}

fn capital(text: &str) -> String {
    let mut rest = text.chars();
    rest.next().map_or_else(String::new, |first| first.to_uppercase().chain(rest).collect())
}
