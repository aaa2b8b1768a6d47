//! No number is put in without its source: what the source files hold is in the list of sources.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use overwater::provenance::{Kind, entries, matching};

const CORE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../crates/overwater/src");

fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
    found
}

/// The code of a file: without comments, texts and what comes after the first test module.
fn code(path: &Path) -> String {
    let text = fs::read_to_string(path).unwrap();
    let text = text.split("#[cfg(test)]").next().unwrap();
    let mut code = String::new();
    for line in text.lines() {
        let line = line.split("//").next().unwrap().replace("\\\"", "");
        // Every second piece between quotation marks is a text.
        code.extend(line.split('"').step_by(2));
        code.push('\n');
    }
    code
}

/// The decimal numbers in a code, as written.
fn decimals(code: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut word = String::new();
    let mut before = ' ';
    for letter in code.chars().chain([' ']) {
        let exponent = (letter == '-' || letter == '+') && word.ends_with('e');
        if letter.is_ascii_alphanumeric() || letter == '_' || letter == '.' || exponent {
            if word.is_empty() && before == '.' {
                before = letter;
                continue;
            }
            word.push(letter);
        } else {
            let plain = word.replace('_', "");
            let starts_with_digit = plain.starts_with(|first: char| first.is_ascii_digit());
            let is_decimal = plain.contains('.') || plain.contains('e');
            if starts_with_digit && is_decimal && !plain.starts_with("0x") && plain.parse::<f64>().is_ok() {
                found.push(plain);
            }
            word.clear();
        }
        before = letter;
    }
    found
}

/// Numbers that are no data, with what they are.
const NO_DATA: [(f64, &str); 33] = [
    (60.0, "seconds in a minute"),
    (3600.0, "seconds in an hour"),
    (24.0, "a factorial"),
    (120.0, "a factorial"),
    (720.0, "a factorial"),
    (900.0, "seconds in a quarter of an hour"),
    (28_800.0, "seconds in eight hours"),
    (0.0, "nothing"),
    (0.5, "a half"),
    (1.0, "one"),
    (2.0, "two"),
    (3.0, "a power or a small factor of an equation"),
    (4.0, "a power or a small factor of an equation"),
    (1.5, "a power of the saturation equation"),
    (3.5, "a power of the saturation equation"),
    (7.5, "a power of the saturation equation"),
    (6.0, "the sixth root of the saturated vapour"),
    (2.5, "five peroxide for two permanganate, from the equation"),
    (128.0, "Poiseuille's factor for a diameter"),
    (20.0, "a stated condition, 20 degC"),
    (25.0, "a stated condition, 25 degC"),
    (100.0, "per cent"),
    (1e6, "pascal in a megapascal"),
    (1e-9, "a tie"),
    (273.15, "the zero of the Celsius scale"),
    (298.15, "a stated condition, 25 degC"),
    (0.355, "a power of the equation for Henry's constant"),
    (0.41, "a power of the equation for Henry's constant"),
    (5.0, "a power or a small factor of an equation"),
    (1000.0, "grams in a kilogram"),
    (1e-6, "cubic metres in a cubic centimetre, and a factor of the density of peroxide"),
    (7.0, "a power of the turbulent friction"),
    (0.02, "a bound on the vapour of moist gas"),
];

/// Files of the simulation and of the equilibrium that hold limits, defaults and the search, but no relation of nature; and
/// the table of activation energies, which is listed as a whole.
const NO_FORMULA: [&str; 14] = [
    "aqueous/solve.rs",
    "equilibrium/flame.rs",
    "equilibrium/interior.rs",
    "equilibrium/system.rs",
    "run/advice.rs",
    "run/calibration.rs",
    "run/course.rs",
    "run/events.rs",
    "run/given.rs",
    "run/sensitivities.rs",
    "run/simulation.rs",
    "run/solver.rs",
    "run/stand.rs",
    "peroxide/kinetics.rs",
];

#[test]
fn every_number_in_a_formula_is_in_the_list_of_sources() {
    let known: BTreeSet<u64> =
        entries().iter().filter_map(|entry| entry.value).map(|v| v.abs().to_bits()).collect();
    let mut seen = 0;
    for room in ["water", "gas", "peroxide", "apparatus", "burn"] {
        for path in files(&Path::new(CORE).join(room)) {
            if NO_FORMULA.iter().any(|ending| path.ends_with(ending)) {
                continue;
            }
            let code = code(&path);
            // What a source states of its own uncertainty stands in words beside the number, and in the list.
            let mut pieces = code.split("PropertyUncertainty::");
            let mut without = pieces.next().unwrap().to_owned();
            for piece in pieces {
                without.push_str(piece.split_once(';').map_or("", |(_, rest)| rest));
            }
            for written in decimals(&without) {
                let value: f64 = written.parse().unwrap();
                seen += 1;
                let is_known =
                    NO_DATA.iter().any(|(number, _)| *number == value) || known.contains(&value.to_bits());
                assert!(is_known, "{}: {written} is not in the list of sources", path.display());
            }
        }
    }
    assert!(seen > 40, "only {seen} numbers were found");
}

/// Tables of many rows are listed as a whole; everything else of `reference/` number by number.
const LISTED_AS_A_WHOLE: [&str; 15] = [
    "airborne.rs",
    "products_in_water.rs",
    "elements.rs",
    "burns.rs",
    "oxides.rs",
    "glassware.rs",
    "gases.rs",
    "henry.rs",
    "nasa9.rs",
    "thermochemistry.rs",
    "phase_transitions.rs",
    "acids.rs",
    "exposure_limits.rs",
    "over_water.rs",
    // Each with its own entry; two are written as quotients.
    "flask.rs",
];

#[test]
fn every_number_of_the_data_is_in_the_list_of_sources() {
    let known: BTreeSet<u64> =
        entries().iter().filter_map(|entry| entry.value).map(|v| v.abs().to_bits()).collect();
    let mut seen = 0;
    for path in files(&Path::new(CORE).join("reference")) {
        let name = path.file_name().unwrap().to_str().unwrap();
        if LISTED_AS_A_WHOLE.contains(&name) {
            continue;
        }
        let mut in_table = false;
        for line in code(&path).lines() {
            // A printed table and a table of structures are listed as a whole too.
            if line.contains(": Table = ") || line.contains("[Enhancement;") {
                in_table = true;
            }
            if line.starts_with('}') || line.starts_with(']') {
                in_table = false;
            }
            // Only the exponent of the standard atmosphere is written as a quotient; its value is listed.
            if in_table || line.contains("/ (") {
                continue;
            }
            for written in decimals(line) {
                let value: f64 = written.parse().unwrap();
                seen += 1;
                let is_known = value == 0.0 || value == 1.0 || known.contains(&value.to_bits());
                assert!(is_known, "{name}: {written} is not in the list of sources");
            }
        }
    }
    assert!(seen > 120, "only {seen} numbers were found");
}

#[test]
fn every_table_of_the_data_is_listed_by_its_name() {
    let ids: BTreeSet<String> = entries().into_iter().map(|entry| entry.id).collect();
    let mut seen = 0;
    for path in files(&Path::new(CORE).join("reference")) {
        for line in code(&path).lines() {
            let Some(rest) = line.strip_prefix("pub static ").or_else(|| line.strip_prefix("pub const "))
            else {
                continue;
            };
            let (name, kind) = rest.split_once(':').unwrap();
            if !kind.trim_start().starts_with('[') && !kind.contains("Table") {
                continue;
            }
            seen += 1;
            let id = name.trim().to_lowercase();
            let listed = ids.iter().any(|known| known == &id || known.contains(&id));
            assert!(listed, "{}: {id} is not in the list of sources", path.display());
        }
    }
    assert!(seen > 30, "only {seen} tables were found");
}

#[test]
fn a_search_finds_by_name_symbol_and_source() {
    assert!(matching("iapws").iter().any(|entry| entry.kind == Kind::Equation));
    assert!(matching("VAPOUR PRESSURE").len() > 5);
    assert!(matching("no such thing").is_empty());
    assert_eq!(matching("standard_gravity_1901").len(), 1);
}
