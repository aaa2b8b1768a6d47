//! The functions for the formulas of the catalogue: in Rust for the library, and as lists for the tests in Rust and in C.

use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::fmt::Write as _;

use overwater::catalogue::{self, AnyFormula};
use overwater_c::gas::GASES;

use super::output::{Output, formatted};
use super::table::{FILES, OF_GAS, OfGas, PLAIN, Plain};

type Result<T> = std::result::Result<T, Box<dyn Error>>;
type Formulas = BTreeMap<String, Box<dyn AnyFormula>>;

const BY: &str = "Written by `cargo run -p overwater-c --example generate` from the catalogue of the core.";
const USES: &str = "#![allow(clippy::too_many_arguments)] // Each column has its stride.\n\n";

/// Every generated file but the header.
pub(crate) fn outputs() -> Result<Vec<Output>> {
    let mut left: Formulas = catalogue::all().into_iter().map(|f| (f.name().to_owned(), f)).collect();
    let mut files: BTreeMap<&str, String> = BTreeMap::new();
    for (file, about) in FILES {
        files.insert(file, format!("//! {about}\n//! {BY}\n\n{USES}{}\n", imports(file)));
    }
    files.insert(
        "species",
        format!("//! Gases, each by its number.\n//! {BY}\n\n{USES}{}\n", imports("species")),
    );
    let mut doors = String::new();
    let mut list = String::new();
    for Plain(file, name, value, since) in PLAIN {
        let formula = left.remove(*name).ok_or_else(|| format!("{name} is not in the catalogue"))?;
        if !inputs_differ(formula.as_ref()) {
            return Err(format!("{name} has two inputs of one name").into());
        }
        let text = files.get_mut(file).ok_or_else(|| format!("{file} is not in the list of files"))?;
        let inputs = formula.inputs();
        let sources = [formula.output().source.map_or(DEFINED, |source| source.text)];
        let ranges: Vec<String> = inputs.iter().map(|bound| bound.range()).collect();
        text.push_str(&pair(&Pair {
            name,
            of_gas: false,
            value,
            since,
            formula: formula.as_ref(),
            ranges: &ranges,
            sources: &sources,
        }));
        writeln!(doors, "plain{}!({name}, {file}::ow_{name}, {file}::ow_{name}_array),", inputs.len())?;
        writeln!(list, "PLAIN{}(ow_{name}, \"{name}\"{})", inputs.len(), limits(formula.as_ref()))?;
    }
    for family in OF_GAS {
        let text = files.get_mut("species").ok_or("no file for the gases")?;
        of_gas(family, &mut left, text, &mut doors, &mut list)?;
    }
    if !left.is_empty() {
        return Err(format!("without a C function: {:?}", left.keys().collect::<Vec<_>>()).into());
    }
    let mut outputs = Vec::new();
    let mut module = format!(
        "//! The formulas of the catalogue, one function for a number and one for columns.\n//! {BY}\n\n"
    );
    for (file, text) in files {
        writeln!(module, "pub mod {file};")?;
        outputs.push(Output::new(&format!("src/elementwise/{file}.rs"), formatted(&text)?));
    }
    outputs.push(Output::new("src/elementwise/mod.rs", formatted(&module)?));
    let doors = format!(
        "//! Every formula of the catalogue behind its two C functions. {BY}\n\nuse super::door::*;\nuse overwater_c::elementwise::*;\n\n\
         pub(crate) fn doors() -> Vec<Door> {{ vec![{doors}] }}\n"
    );
    outputs.push(Output::new("tests/support/doors.rs", formatted(&doors)?));
    let list = format!(
        "/* Every formula behind its C functions, with the limits of each input. {BY}\n   Define the macros PLAIN1 to PLAIN6 and GAS1 to GAS3, then include it. */\n{list}"
    );
    outputs.push(Output::new("../../tests/c/formulas.h", list));
    Ok(outputs)
}

fn inputs_differ(formula: &dyn AnyFormula) -> bool {
    let inputs = formula.inputs();
    let names: BTreeSet<&str> = inputs.iter().map(|bound| bound.name).collect();
    names.len() == inputs.len()
}

const DEFINED: &str = "follows from definitions";

fn imports(file: &str) -> String {
    let of_gas = file == "species";
    let helpers = if of_gas {
        "use crate::array::array_of_gas;\nuse crate::error::ow_error;\nuse crate::scalar::scalar_of_gas;\n"
    } else {
        "use crate::array::array;\nuse crate::error::ow_error;\nuse crate::scalar::scalar;\n"
    };
    let mut rooms: Vec<&str> = Vec::new();
    let values = PLAIN.iter().filter(|row| row.0 == file).map(|row| row.2);
    let of_gases = OF_GAS.iter().filter(|_| of_gas).map(|row| row.1);
    for value in values.chain(of_gases) {
        for room in ["apparatus", "burn", "conventions", "gas", "peroxide", "water"] {
            if value.contains(&format!("{room}::")) && !rooms.contains(&room) {
                rooms.push(room);
            }
        }
    }
    rooms.sort_unstable();
    format!("use overwater::{{{}}};\n\n{helpers}", rooms.join(", "))
}

/// The limits of each input for the list in C, written so that they are read back to the bit.
fn limits(formula: &dyn AnyFormula) -> String {
    formula.inputs().iter().fold(String::new(), |mut text, bound| {
        let _ = write!(text, ", {:?}, {:?}", bound.least, bound.greatest);
        text
    })
}

fn of_gas(
    OfGas(name, value, since): &OfGas,
    left: &mut Formulas,
    text: &mut String,
    doors: &mut String,
    list: &mut String,
) -> Result<()> {
    let mut members = Vec::new();
    for (number, gas) in GASES {
        let key = catalogue::of_gas(name, gas.name());
        let Some(formula) = left.remove(&key) else { continue };
        let constant = format!("OW_GAS_{}", gas.name().replace([' ', '-'], "_").to_uppercase());
        let inputs = formula.inputs().len();
        writeln!(doors, "gas{inputs}!({key}, {number}, species::ow_{name}, species::ow_{name}_array),")?;
        writeln!(list, "GAS{inputs}(ow_{name}, \"{key}\", {constant}{})", limits(formula.as_ref()))?;
        members.push((gas.name(), formula));
    }
    let (_, first) = members.first().ok_or_else(|| format!("no gas has {name}"))?;
    let mut ranges = Vec::new();
    for place in 0..first.inputs().len() {
        let mut by_range: Vec<(String, Vec<&str>)> = Vec::new();
        for (gas, formula) in &members {
            let range = formula.inputs().get(place).map(|bound| bound.range()).unwrap_or_default();
            match by_range.iter_mut().find(|(known, _)| *known == range) {
                Some((_, gases)) => gases.push(gas),
                None => by_range.push((range, vec![gas])),
            }
        }
        // The range of most gases without their names.
        by_range.sort_by_key(|(_, gases)| gases.len());
        let most = by_range.pop().map(|(range, _)| range).unwrap_or_default();
        let mut words = most;
        for (range, gases) in by_range {
            write!(words, "; {}: {range}", gases.join(", "))?;
        }
        ranges.push(words);
    }
    let mut sources: Vec<&str> = Vec::new();
    for (_, formula) in &members {
        let source = formula.output().source.map_or(DEFINED, |source| source.text);
        if !sources.contains(&source) {
            sources.push(source);
        }
    }
    let gases: Vec<&str> = members.iter().map(|(gas, _)| *gas).collect();
    let gas_line = format!("{}: OW_GAS_... of one of {}; else OW_CANNOT_BE_MET", "gas", gases.join(", "));
    ranges.push(gas_line);
    text.push_str(&pair(&Pair {
        name,
        of_gas: true,
        value,
        since,
        formula: first.as_ref(),
        ranges: &ranges,
        sources: &sources,
    }));
    Ok(())
}

struct Pair<'a> {
    name: &'a str,
    of_gas: bool,
    value: &'a str,
    since: &'a str,
    formula: &'a dyn AnyFormula,
    ranges: &'a [String],
    sources: &'a [&'a str],
}

/// The function for a number and the one for columns.
fn pair(pair: &Pair<'_>) -> String {
    let Pair { name, of_gas, value, since, formula, ranges, sources } = pair;
    let bounds = formula.inputs();
    let names: Vec<&str> = bounds.iter().map(|bound| bound.name).collect();
    let output = formula.output();
    let unit = output.unit.suffix();
    let result = if unit.is_empty() || output.id.ends_with(&unit) {
        output.id.to_owned()
    } else {
        format!("{}_{unit}", output.id)
    };
    // One of the inputs may be the same quantity as the result.
    let result = if names.contains(&result.as_str()) { "result".to_owned() } else { result };
    let in_unit =
        if output.unit.text.is_empty() { String::new() } else { format!(" in {}", output.unit.text) };
    let title = capital(output.name);

    let mut about: Vec<String> = vec![format!("{title}{in_unit}."), String::new()];
    if *of_gas {
        about.extend(ranges.last().map(|line| format!("{line}.")));
    }
    for (bound, range) in bounds.iter().zip(ranges.iter()) {
        about.push(format!("{}: {}, {range} ({}).", bound.name, bound.symbol.name, bound.why));
    }
    if let Some(uncertainty) = formula.property_uncertainty().filter(|_| !of_gas) {
        about.push(format!("Uncertainty of the relation: {}.", uncertainty.stated));
    }
    about.push(format!("Source: {}.", sources.join("; ")));
    about.push(format!("Since {since}."));
    let about = about.iter().fold(String::new(), |mut text, line| {
        for piece in wrapped(line) {
            let piece = piece.replace('[', r"\[").replace(']', r"\]").replace('<', r"\<");
            let _ = writeln!(text, "{}", format!("/// {piece}").trim_end());
        }
        text
    });
    let safety = "///\n/// # Safety\n/// The rules for pointers at the top of the header.\n";
    let (gas, gas_value, rows_of, suffix) = if *of_gas {
        ("gas: i32, ", format!("{value}, gas"), format!("{value}, \"{name}\", gas"), "_of_gas")
    } else {
        ("", format!("&{value}"), format!("\"{name}\""), "")
    };
    let scalars = names.iter().map(|n| format!("{n}: f64, ")).collect::<String>();
    let columns = names.iter().map(|n| format!("{n}: *const f64, {n}_stride: isize, ")).collect::<String>();
    let pairs = names.iter().map(|n| format!("({n}, {n}_stride)")).collect::<Vec<_>>().join(", ");
    let numbers = names.join(", ");
    format!(
        "\n{about}{safety}#[unsafe(no_mangle)]\n\
         pub unsafe extern \"C\" fn ow_{name}({gas}{scalars}{result}: *mut f64, error: *mut ow_error) -> i32 {{\n\
         // SAFETY: passed on.\n\
         unsafe {{ scalar{suffix}({gas_value}, [{numbers}], {result}, error) }}\n}}\n\
         \n/// `ow_{name}` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since {since}.\n{safety}#[unsafe(no_mangle)]\n\
         pub unsafe extern \"C\" fn ow_{name}_array({gas}count: usize, {columns}{result}: *mut f64, {result}_stride: isize, \
         error: *mut ow_error) -> i32 {{\n\
         // SAFETY: passed on.\n\
         unsafe {{ array{suffix}({rows_of}, count, [{pairs}], ({result}, {result}_stride), error) }}\n}}\n"
    )
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Lines of at most 110 characters.
fn wrapped(text: &str) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split(' ') {
        if let Some(line) = lines.last_mut() {
            if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > 106 {
                lines.push(format!("  {word}"));
            } else {
                if !line.is_empty() {
                    line.push(' ');
                }
                line.push_str(word);
            }
        }
    }
    lines
}
