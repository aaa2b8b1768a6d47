//! `overwater rate` as a person and as a script meet it: what it prints, and what it refuses.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod support;

use std::path::PathBuf;

use support::{example, overwater, piped, text};

fn options(name: &str, content: &str) -> PathBuf {
    support::file("rate", name, &format!("format = 1\n{content}\n"))
}

fn refused(table: &str, words: &[&str]) {
    support::refused("rate", &[], table.as_bytes(), words);
}

fn json(arguments: &[&str], table: &str) -> serde_json::Value {
    let mut all = vec!["--json"];
    all.extend(arguments);
    let output = piped("rate", &all, table.as_bytes());
    assert!(output.status.success(), "{}", text(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// V = 50 cm3 (1 - exp(-t/50 s)), to 0.1 cm3.
const GOOD: &str =
    "time_s,volume_cm3\n0,0.0\n10,9.1\n20,16.5\n30,22.6\n40,27.5\n60,34.9\n80,39.9\n120,45.5\n";

#[test]
fn the_example_gives_the_sheet_and_the_page_that_lie_beside_it() {
    let page = support::file("rate", "page.html", "");
    let printed = example("rate", "rate-at-five-temperatures", &["--html", page.to_str().unwrap()]);
    let held = include_str!("../../../examples/rate-at-five-temperatures.txt");
    assert_eq!(
        printed, held,
        "examples/rate-at-five-temperatures.txt is stale: write the printed rates into it"
    );
    assert!(printed.lines().all(|line| line.chars().count() <= 80), "{printed}");
    let held = include_str!("../../../examples/rate-at-five-temperatures.html");
    let page = std::fs::read_to_string(page).unwrap();
    assert!(
        page == held,
        "examples/rate-at-five-temperatures.html is stale: write the page anew with --html"
    );
}

#[test]
fn three_ways_side_by_side_with_what_each_is_worth() {
    let printed = text(&piped("rate", &[], GOOD.as_bytes()).stdout);
    for words in [
        "8 of 8 row(s)",
        "volume against time, one run",
        "first two: slope between two readings, which reach 18 % of the whole",
        // 0.1813/0.2 - 1 = -9.4 % on the curve that the readings were made from; the fitted one is as near as they allow.
        "reads 9.3 % low on such a curve",
        "whole curve: all 8 readings, if the reaction is of the first order",
        "tangent: parabola through the first 4 readings",
    ] {
        assert!(
            printed.split_whitespace().collect::<Vec<_>>().join(" ").contains(words),
            "{words}: {printed}"
        );
    }
    let answer = json(&[], GOOD);
    let rates = &answer["runs"][0]["initial_rates"];
    let value = |index: usize| rates[index]["rate"]["value"].as_f64().unwrap();
    assert_eq!(rates[2]["way"], "first_two");
    assert!((value(2) - 0.91).abs() < 1e-12, "{rates}");
    // 50 cm3/50 s, from readings off by up to 0.05 cm3.
    assert!((value(1) - 1.0).abs() < 0.01, "{rates}");
    assert_eq!(rates[1]["rate"]["unit"], "cm3/s");
}

#[test]
fn figures_are_three_unless_more_are_asked_for() {
    let cell = |arguments: &[&str]| {
        let printed = text(&piped("rate", arguments, GOOD.as_bytes()).stdout);
        let line = printed.lines().find(|line| line.starts_with("   1  ")).unwrap().to_owned();
        line.split_whitespace().last().unwrap().to_owned()
    };
    assert_eq!(cell(&[]), "0.910");
    assert_eq!(cell(&["--figures", "5"]), "0.91000");
    // The volumes have three figures, the times three.
    assert_eq!(cell(&["--figures", "data"]), "0.910");
    let coarse = GOOD
        .replace(".0\n", "\n")
        .replace(".1\n", "\n")
        .replace(".5\n", "\n")
        .replace(".6\n", "\n")
        .replace(".9\n", "\n");
    let printed = text(&piped("rate", &["--figures", "data"], coarse.as_bytes()).stdout);
    assert!(printed.lines().any(|line| line.starts_with("   1 ") && line.ends_with(" 0.90")), "{printed}");
    let rows = options(
        "rows.toml",
        "[[rows]]\ntime_s = 0\nvolume_cm3 = 0\n[[rows]]\ntime_s = 1\nvolume_cm3 = 3\n[[rows]]\ntime_s = 2\nvolume_cm3 = 5\n[[rows]]\ntime_s = 3\nvolume_cm3 = 6",
    );
    let output = overwater("rate", &[rows.to_str().unwrap(), "--figures", "data"]);
    assert!(text(&output.stderr).contains("needs a table"), "{}", text(&output.stderr));
    assert!(overwater("rate", &[rows.to_str().unwrap()]).status.success());
    let wrong = piped("rate", &["--figures", "16"], GOOD.as_bytes());
    assert!(text(&wrong.stderr).contains("a number from 1 to 15, or data"), "{}", text(&wrong.stderr));
}

#[test]
fn headers_that_leave_something_open_are_refused() {
    for (header, words) in [
        ("time,volume_cm3", vec!["column time ", "time_s, time_min, time_h", "[ambiguous]"]),
        ("time_s,volume", vec!["column volume ", "volume_cm3", "unit", "[ambiguous]"]),
        ("tme_s,volume_cm3", vec!["tme_s", "did you mean time_s?", "[unknown_name]"]),
        ("time_s,time_min", vec!["column time_min", "time_s gives the same", "[given_twice]"]),
        ("volume_cm3,volume_dm3", vec!["column volume_dm3", "[given_twice]"]),
        ("time_s,volume_psi", vec!["volume_psi", "did you mean volume_"]),
        ("time_s,colour", vec!["readings is missing", "volume_cm3, mass_g", "[missing]"]),
        ("temperature_c,volume_cm3", vec!["time is missing", "when each volume was read", "[missing]"]),
        ("volume_cm3,concentration_mol_per_dm3", vec!["initial_concentration", "[given_twice]"]),
        ("time_s,rate_cm3_per_s", vec!["one column of readings", "without times"]),
    ] {
        refused(&format!("{header}\n1,2\n2,3\n"), &words);
    }
}

/// Bad rows: refused with row, line and column; left out and said with `--keep-good`.
#[test]
fn rows_that_cannot_be_are_refused_with_row_and_column() {
    for (cells, words) in [
        (",49.0", ["column time_s", "the cell is blank", "[missing]"]),
        ("150,", ["column volume_cm3", "the cell is blank", "[missing]"]),
        ("150,nan", ["column volume_cm3", "not a finite number", "[not_a_number]"]),
        ("inf,49.0", ["column time_s", "not a finite number", "[not_a_number]"]),
        ("150,49 cm3", ["column volume_cm3", "\"49 cm3\"", "[syntax]"]),
        ("150,forty", ["column volume_cm3", "\"forty\"", "[syntax]"]),
        ("150,\"1,049\"", ["column volume_cm3", "decimal = \"comma\"", "[ambiguous]"]),
        ("150,49,0", ["all columns", "separate the cells by semicolons", "[syntax]"]),
        ("150", ["all columns", "1 cells", "[syntax]"]),
        ("120,49.0", ["column time_s", "the same value stands in the row before", "[contradiction]"]),
        ("110,49.0", ["column time_s", "greater than 120", "[contradiction]"]),
        ("150,44.0", ["column volume_cm3", "not below 45.5", "[contradiction]"]),
    ] {
        let table = format!("{GOOD}{cells}\n");
        let mut all = words.to_vec();
        all.extend(["row 9 (line 10)", "--keep-good"]);
        refused(&table, &all);
        let kept = piped("rate", &["--keep-good"], table.as_bytes());
        assert!(kept.status.success(), "{}", text(&kept.stderr));
        let printed = text(&kept.stdout);
        assert!(printed.contains("8 of 9 row(s)") && printed.contains("row 9 (line 10)"), "{printed}");
        assert!(text(&kept.stderr).contains(words[0]), "{}", text(&kept.stderr));
        // What is left is what the good rows alone give.
        let (kept, good) = (json(&["--keep-good"], &table), json(&[], GOOD));
        assert_eq!(kept["runs"][0]["curve"], good["runs"][0]["curve"], "{cells}");
    }
}

/// A volume that falls by no more than a misreading is used, and said; the limit can be moved.
#[test]
fn a_volume_that_falls_a_little_is_said() {
    let falls = format!("{GOOD}150,45.0\n");
    let answer = json(&[], &falls);
    let warnings = answer["runs"][0]["warnings"].to_string();
    assert!(warnings.contains("volume falls at row(s) 9, within what a misreading does"), "{warnings}");
    // 0.5 of 45.5 cm3 is 1.1 %.
    let strict = options("strict.toml", "may_go_back_percent = 1.0");
    support::refused("rate", &["--options", strict.to_str().unwrap()], falls.as_bytes(), &["row 9", "leak"]);
    let lenient = options("lenient.toml", "may_go_back_percent = 5.0");
    let far = format!("{GOOD}150,43.5\n");
    assert_eq!(json(&["--options", lenient.to_str().unwrap()], &far)["rows_good"], 9);
    // A mass does not rise.
    let mass = "time_s,mass_g\n0,120.00\n10,119.80\n20,119.65\n30,119.70\n40,119.50\n50,119.44\n";
    refused(mass, &["row 4 (line 5)", "column mass_g", "119.7 g", "not above 119.65 g", "draught"]);
}

#[test]
fn what_is_too_little_is_refused() {
    refused("time_s,volume_cm3\n10,9.1\n", &["run 1: rows = 1 rows is missing", "4 or more", "[missing]"]);
    refused("", &["no row of readings"]);
    refused("time_s,volume_cm3\n", &["no row of readings", "[missing]"]);
    // All times the same: each after the first stands twice.
    refused(
        "time_s,volume_cm3\n5,1\n5,2\n5,3\n5,4\n",
        &["row 2 (line 3)", "row 4 (line 5)", "column time_s"],
    );
    let twice = "temperature_c,rate_constant_per_s\n20,0.1\n20,0.2\n20,0.3\n";
    refused(twice, &["temperature_k", "in every row", "[contradiction]"]);
    let equal = "initial_concentration_mol_per_dm3,rate_cm3_per_s\n0.1,0.1\n0.1,0.2\n";
    refused(equal, &["initial_concentration_mol_per_dm3", "in every row", "[contradiction]"]);
    refused("rate_cm3_per_s\n0.1\n", &["temperature_c", "what each rate was measured at"]);
    // One run of two is too short: the other is kept.
    let rows: String = GOOD.lines().skip(1).map(|line| format!("A,{line}\n")).collect();
    let table = format!("run,time_s,volume_cm3\n{rows}B,0,0\nB,5,3\n");
    refused(&table, &["run B: rows = 2 rows is missing"]);
    let kept = json(&["--keep-good"], &table);
    assert_eq!((kept["runs"].as_array().unwrap().len(), kept["bad_runs"][0]["run"].as_str()), (1, Some("B")));
}

#[test]
fn rates_that_have_no_logarithm_are_refused_by_row() {
    let table =
        "initial_concentration_mol_per_dm3,rate_cm3_per_s\n0.1,0.1\n0,0\n0.2,0.2\n0.3,-0.3\n0.4,0.4\n";
    refused(
        table,
        &["row 2 (line 3), column rate_cm3_per_s", "row 4 (line 5)", "greater than 0", "[out_of_range]"],
    );
    let kept = json(&["--keep-good"], table);
    assert!((kept["order"]["order"]["value"].as_f64().unwrap() - 1.0).abs() < 1e-12);
    assert_eq!(kept["rows_good"], 3);
}

#[test]
fn gas_that_cannot_be_dry_is_refused() {
    let wet = options("wet.toml", "gas = \"O2\"\n[given]\ngas_temperature_c = 99\npressure_kpa = 95");
    let words = ["run 1: pressure_kpa", "beside the vapour", "[contradiction]"];
    support::refused("rate", &["--options", wet.to_str().unwrap()], GOOD.as_bytes(), &words);
}

#[test]
fn decimal_commas_byte_order_mark_and_separators() {
    let plain = json(&[], GOOD);
    let commas = GOOD.replace(',', ";").replace('.', ",");
    for table in [
        format!("\u{feff}{}", GOOD.replace('\n', "\r\n")),
        commas.clone(),
        GOOD.replace(',', "\t"),
        format!("# a note\n{GOOD}"),
    ] {
        let answer = json(&[], &table);
        assert_eq!(answer["runs"][0]["curve"], plain["runs"][0]["curve"], "{table}");
    }
    assert!(json(&[], &commas)["notes"].to_string().contains("decimal signs"));
    let mixed = commas.replace("9,1", "9.1");
    refused(&mixed, &["column volume_cm3", "one decimal sign", "[ambiguous]"]);
    let thousands = "time_s;volume_cm3\n0;0\n1;1,100\n2;1,900\n3;2,500\n";
    refused(thousands, &["stand for thousands", "[ambiguous]"]);
    let comma = options("comma.toml", "decimal = \"comma\"");
    assert_eq!(json(&["--options", comma.to_str().unwrap()], thousands)["runs"][0]["points"][1]["y"], 1.1);
    refused("time_s,volume_cm3\n0,\u{fffd}\n", &["\u{fffd}"]);
    support::refused("rate", &[], b"time_s,volume_cm3\n0,4\xff\n", &["UTF-8"]);
}

#[test]
fn options_that_cannot_be_are_refused_by_key() {
    for (name, content, words) in [
        ("key", "gass = \"O2\"", vec!["did you mean gas?", "key.toml:2"]),
        ("given", "[given]\ntime_s = 3", vec!["given.time_s", "columns of the table"]),
        ("unit", "[given]\npressure = 3", vec!["given.pressure", "pressure_kpa"]),
        ("twice", "[given]\nfinal_volume_cm3 = 50\nfinal_volume_dm3 = 0.05", vec!["gives the same quantity"]),
        ("both", "fit_final_value = true\n[given]\nfinal_volume_cm3 = 50", vec!["final_volume_cm3 is given"]),
        ("draw", "bootstrap = { replicates = 5 }", vec!["bootstrap.replicates = 5", "20 to 100000"]),
        ("level", "bootstrap = { level_percent = 10 }", vec!["bootstrap.level", "0.5 to 0.999"]),
        ("back", "may_go_back_percent = -1", vec!["may_go_back_percent = -1 %", "0 to 100 %"]),
        ("gas", "gas = \"Qx\"", vec!["gas"]),
        ("way", "rate_from = \"chord\"", vec!["rate_from", "tangent"]),
    ] {
        let path = options(&format!("{name}.toml"), content);
        support::refused("rate", &["--options", path.to_str().unwrap()], GOOD.as_bytes(), &words);
    }
    let output = overwater("rate", &["no-such-file.csv"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stderr).contains("cannot be read"));
}

/// A file of any length is read no further than the greatest number of rows, and held no further.
#[test]
fn a_table_without_end_is_refused_at_its_limit() {
    let row = |row: usize| format!("{},{}.5\n", row + 1, row / 2);
    let table = |rows: usize| -> String { (0..rows).map(row).collect() };
    refused(
        &format!("time_s,volume_cm3\n{}", table(100_001)),
        &["more than 100000 rows", "every tenth reading", "[too_large]"],
    );
    let rates = format!("initial_concentration_mol_per_dm3,rate_cm3_per_s\n{}", table(100_000));
    assert_eq!(json(&[], &rates)["rows_good"], 100_000);
}

/// Bad rows are counted, but only the first of them held.
#[test]
#[cfg(target_os = "linux")]
fn memory_is_flat() {
    let table = (0..10).map(|row| format!("{row},{}.5\n", row * row)).collect::<String>();
    let header = format!("time_s,volume_cm3\n{table}");
    let (early, late) = support::peaks("rate", &["--keep-good"], &header, |_| "5,\n".to_owned());
    assert!(late <= early + 1024, "{early} kB after 3 MB, {late} kB after 24 MB");
}
