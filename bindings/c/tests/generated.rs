//! What is generated is what the generator would write now.

#[path = "../generate/functions.rs"]
mod functions;
#[path = "../generate/header.rs"]
mod header;
#[path = "../generate/output.rs"]
mod output;
#[path = "../generate/table.rs"]
mod table;

const ANEW: &str = "is stale: cargo run -p overwater-c --example generate";

#[test]
fn the_functions_are_those_of_the_catalogue() {
    let outputs = functions::outputs().unwrap();
    assert!(outputs.len() > 8, "only {} files", outputs.len());
    for output in outputs {
        assert!(output.is_so(), "{} {ANEW}", output.path.display());
    }
}

#[test]
fn the_header_is_that_of_the_functions() {
    let header = header::output().unwrap();
    assert!(header.is_so(), "{} {ANEW}", header.path.display());
    for door in overwater::catalogue::all() {
        let family = table::OF_GAS.iter().find(|row| door.name().starts_with(row.0));
        let name = family.map_or(door.name(), |row| row.0);
        for declaration in [format!("int32_t ow_{name}("), format!("int32_t ow_{name}_array(")] {
            assert_eq!(header.text.matches(&declaration).count(), 1, "{declaration}");
        }
    }
}

/// Callers without a compiler for C get small structs by value, bools and enums wrong.
#[test]
fn signatures_use_numbers_and_pointers_only() {
    let header = header::output().unwrap().text;
    let code: String =
        header.lines().filter(|line| !line.trim_start().starts_with("//")).collect::<Vec<_>>().join(" ");
    let mut seen = 0;
    for declaration in code.split(';').filter(|part| part.contains(" ow_") && part.contains('(')) {
        let (before, arguments) = declaration.split_once('(').unwrap();
        let result: Vec<&str> = before.split_whitespace().rev().take(2).collect();
        let returned = result[1];
        assert!(
            ["int32_t", "size_t"].contains(&returned) || result[0].starts_with('*'),
            "{returned} from {declaration}"
        );
        for argument in arguments.trim_end_matches(')').split(',').map(str::trim) {
            let plain = ["double ", "int32_t ", "size_t ", "ptrdiff_t "]
                .iter()
                .any(|kind| argument.starts_with(kind));
            assert!(plain || argument.contains('*') || argument == "void", "{argument} in {declaration}");
        }
        seen += 1;
    }
    assert!(seen > 130, "only {seen} functions");
    assert!(!code.contains("enum") && !code.contains("bool") && !code.contains("long double"));
}
