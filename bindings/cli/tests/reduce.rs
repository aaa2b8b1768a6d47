//! `overwater reduce` as a person and as a script meet it: what it prints, and what it refuses.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod support;

use std::path::PathBuf;
use std::process::Output;

use support::text;

fn overwater(arguments: &[&str]) -> Output {
    support::overwater("reduce", arguments)
}

fn reduce(arguments: &[&str], table: &[u8]) -> Output {
    support::piped("reduce", arguments, table)
}

fn file(name: &str, content: &str) -> PathBuf {
    support::file("reduce", name, content)
}

fn example(name: &str, more: &[&str]) -> String {
    support::example("reduce", name, more)
}

#[test]
fn the_examples_give_the_results_that_lie_beside_them() {
    for (name, held) in [
        ("hydrogen-molar-volume", include_str!("../../../examples/hydrogen-molar-volume.txt")),
        ("class-set", include_str!("../../../examples/class-set.txt")),
    ] {
        let printed = example(name, &[]);
        assert_eq!(printed, held, "examples/{name}.txt is stale: write the printed results into it");
        assert!(printed.lines().all(|line| line.chars().count() <= 80), "{printed}");
    }
    let working = include_str!("../../../examples/hydrogen-molar-volume-working.txt");
    assert_eq!(example("hydrogen-molar-volume", &["--working"]), working);
}

const GOOD: &str = "volume_cm3,temperature_c,pressure_kpa\n45.0,20.0,100.9\n";

#[test]
fn figures_are_three_unless_more_are_asked_for() {
    // n = (100.9 - 2.3392) kPa x 45.0 cm3 / (8.31446 J/(mol K) x 293.15 K) = 1.81967 mmol.
    let three = text(&reduce(&[], GOOD.as_bytes()).stdout);
    assert!(three.contains("   1        1.82\n"), "{three}");
    let six = text(&reduce(&["--figures", "6"], GOOD.as_bytes()).stdout);
    assert!(six.contains(" 1.81967\n"), "{six}");
}

#[test]
fn the_working_is_written_in_every_format() {
    for (format, words) in [
        ("text", "n (amount)\n  = p(dry) × V / (R × T)\n"),
        ("markdown", "**amount** (ideal gas equation)\n\n$$ \\begin{aligned} n &= \\frac{"),
        (
            "latex",
            "\\paragraph{amount} ideal gas equation\n\\begin{equation*}\n\\begin{aligned} n &= \\frac{",
        ),
        ("html", "<mi>n</mi></mtd><mtd style=\"text-align:left;padding:0.25em 0.1em\"><mo>=</mo><mfrac>"),
    ] {
        let printed = text(&reduce(&["--working", "--format", format], GOOD.as_bytes()).stdout);
        assert!(printed.contains(words), "{words:?} is not in: {printed}");
    }
    let two = format!("{GOOD}55.0,20.0,100.9\n");
    let printed = text(&reduce(&["--working=2"], two.as_bytes()).stdout);
    assert!(printed.contains("× 55 cm3 /"), "{printed}");
    let output = reduce(&["--working=3"], two.as_bytes());
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stderr).contains("row 3"), "{}", text(&output.stderr));
}

fn refused(arguments: &[&str], table: &[u8], words: &[&str]) {
    support::refused("reduce", arguments, table, words);
}

#[test]
fn headers_that_leave_something_open_are_refused() {
    let rest = "\n45.0,20.0,100.9\n";
    for (header, words) in [
        ("volume,temperature_c,pressure_kpa", vec!["column volume ", "volume_cm3", "[ambiguous]"]),
        ("volume_cm3,temperature_c,pressure", vec!["column pressure ", "pressure_kpa", "unit"]),
        (
            "volum_cm3,temperature_c,pressure_kpa",
            vec!["volum_cm3", "did you mean volume_cm3?", "[unknown_name]"],
        ),
        ("volume_cm3,temperature_c,pressure_psi", vec!["pressure_psi", "did you mean pressure_"]),
        (
            "volume_cm3,volume_dm3,pressure_kpa",
            vec!["column volume_dm3", "volume_cm3 gives the same", "[given_twice]"],
        ),
    ] {
        refused(&[], format!("{header}{rest}").as_bytes(), &words);
    }
    let missing = "volume_cm3,temperature_c\n45.0,20.0\n";
    refused(&[], missing.as_bytes(), &["column pressure_kpa is missing", "[missing]"]);
}

#[test]
fn cells_that_cannot_be_are_refused_with_row_and_column() {
    for (cells, words) in [
        (",20.0,100.9", ["column volume_cm3", "the cell is blank", "[missing]"]),
        ("45 cm3,20.0,100.9", ["column volume_cm3", "\"45 cm3\"", "[syntax]"]),
        ("45.0,nan,100.9", ["column temperature_c", "not a finite number", "[not_a_number]"]),
        ("45.0,20.0,inf", ["column pressure_kpa", "not a finite number", "[not_a_number]"]),
        ("45.0,20.0,1009", ["column pressure_kpa", "1009 kPa", "[out_of_range]"]),
        ("0,20.0,100.9", ["column volume_cm3", "0.01 to 1000000 cm3", "[out_of_range]"]),
        ("45.0,99.9,90", ["column pressure_kpa", "beside the vapour", "[contradiction]"]),
        ("45,0,20,0,100,9", ["all columns", "separate the cells by semicolons", "[syntax]"]),
        ("\"1,013\",20.0,100.9", ["column volume_cm3", "decimal = \"comma\"", "[ambiguous]"]),
        ("45.0,20.0", ["all columns", "2 cells", "[syntax]"]),
    ] {
        let table = format!("{GOOD}{cells}\n");
        let mut all = words.to_vec();
        all.push("row 2 (line 3)");
        all.push("--keep-good");
        refused(&[], table.as_bytes(), &all);
        let kept = reduce(&["--keep-good"], table.as_bytes());
        assert!(kept.status.success(), "{}", text(&kept.stderr));
        assert!(text(&kept.stdout).contains("1 of 2 row(s)"), "{}", text(&kept.stdout));
        assert!(text(&kept.stdout).contains("1.82"), "{}", text(&kept.stdout));
        assert!(text(&kept.stdout).contains("row 2 (line 3)"), "{}", text(&kept.stdout));
        assert!(text(&kept.stderr).contains(words[0]), "{}", text(&kept.stderr));
    }
    let only_bad = "volume_cm3,temperature_c,pressure_kpa\n,20.0,100.9\n";
    refused(&["--keep-good"], only_bad.as_bytes(), &["the cell is blank"]);
}

#[test]
fn decimal_commas_and_a_byte_order_mark() {
    let plain = text(&reduce(&["--json"], GOOD.as_bytes()).stdout);
    let plain: serde_json::Value = serde_json::from_str(&plain).unwrap();
    for table in [
        "volume_cm3;temperature_c;pressure_kpa\n45,0;20,0;100,9\n",
        "\u{feff}volume_cm3,temperature_c,pressure_kpa\r\n45.0,20.0,100.9\r\n",
        "\u{feff}volume_cm3\ttemperature_c\tpressure_kpa\n45,0\t20\t100,9\n",
        "# a note\nvolume_cm3,temperature_c,pressure_kpa\n\"45,0\",\"20,0\",\"100,9\"\n",
    ] {
        let output = reduce(&["--json"], table.as_bytes());
        assert!(output.status.success(), "{table}: {}", text(&output.stderr));
        let answer: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
        assert_eq!(answer["rows"][0]["results"], plain["rows"][0]["results"], "{table}");
    }
    let mixed = "volume_cm3;temperature_c;pressure_kpa\n45,0;20,0;100.9\n";
    refused(&[], mixed.as_bytes(), &["column pressure_kpa", "one decimal sign", "[ambiguous]"]);
    let told = file("comma.toml", "format = 1\ndecimal = \"comma\"\n");
    let thousands = "volume_cm3;temperature_c;pressure_kpa\n45;20;100,900\n";
    refused(&[], thousands.as_bytes(), &["stand for thousands", "[ambiguous]"]);
    let output = reduce(&["--options", told.to_str().unwrap()], thousands.as_bytes());
    assert!(text(&output.stdout).contains("1.82"), "{}", text(&output.stderr));
}

#[test]
fn a_balance_is_read_against_time() {
    let options = file(
        "balance.toml",
        "format = 1\npractical = \"mass_loss_rate\"\ngas = \"CO2\"\n[given]\ntemperature_c = 20\npressure_kpa = 101.325\n",
    );
    let options = ["--options", options.to_str().unwrap()];
    let table = "time_s,mass_after_g\n0,120.00\n30,119.78\n60,119.66\n";
    let output = reduce(&options, table.as_bytes());
    assert!(output.status.success(), "{}", text(&output.stderr));
    // 0.22 g / (44.009 + 18.015 x 2.3392/98.986) g/mol = 4.95 mmol; 0.34 g: 7.65 mmol.
    let printed = text(&output.stdout);
    for words in ["4.95", "7.65", "the first row's mass is that at the start"] {
        assert!(printed.contains(words), "{words} is not in: {printed}");
    }
    refused(
        &options,
        "time_s,mass_after_g\n0,120\n60,119\n60,118\n".as_bytes(),
        &["row 3 (line 4)", "column time_s", "[contradiction]"],
    );
    refused(
        &options,
        "time_s,mass_after_g\n0,120\n60,119\n30,118\n".as_bytes(),
        &["row 3 (line 4)", "after that of the row before"],
    );
    refused(
        &options,
        "time_s,mass_after_g\n0,120\n60,121\n".as_bytes(),
        &["row 2 (line 3)", "column mass_after_g", "exchanged"],
    );
}

/// Rows need not all hold the same: what a row lacks stays blank in its own column.
#[test]
fn rows_with_and_without_a_level() {
    let rows = "format = 1\n[given]\ntemperature_c = 20\npressure_kpa = 100.9\n[[rows]]\nvolume_cm3 = 45\n\
                [[rows]]\nvolume_cm3 = 45\ninside_minus_outside_mm = 100\n";
    let output = overwater(&[file("rows.toml", rows).to_str().unwrap()]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    let printed = text(&output.stdout);
    let line =
        |start: &str| printed.lines().filter(|line| line.starts_with(start)).nth(1).unwrap().to_owned();
    let cells = |line: String| line.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
    // 0.979 kPa of 97.58 kPa.
    assert_eq!(cells(line("   1 ")), ["1", "+2.4", "+3.0"]);
    assert_eq!(cells(line("   2 ")), ["2", "+2.4", "+4.1", "+1.0"]);
    let header = printed.lines().find(|line| line.contains("vapour, n")).unwrap();
    assert!(header.trim_end().ends_with("level, n"), "{printed}");
}

#[test]
fn volumes_that_no_hydrocarbon_gives() {
    let options = file("burnt.toml", "format = 1\npractical = \"eudiometry_water_liquid\"\n");
    let options = ["--options", options.to_str().unwrap()];
    let head = "sample_gas_cm3,mixed_gas_cm3,burnt_gas_cm3,washed_gas_cm3\n";
    let printed = text(&reduce(&options, format!("{head}10,60,35,15\n").as_bytes()).stdout);
    assert!(printed.contains("C2H6"), "{printed}");
    for cells in ["10,60,15,35", "10,60,55,35"] {
        let table = format!("{head}{cells}\n");
        refused(&options, table.as_bytes(), &["column burnt_gas_cm3", "right columns", "[contradiction]"]);
    }
}

#[test]
fn options_that_cannot_be_are_refused_by_key() {
    for (name, options, words) in [
        ("key", "format = 1\npracticle = \"amount\"\n", vec!["did you mean practical?", "key.toml:2"]),
        ("practical", "format = 1\npractical = \"amonut\"\n", vec!["did you mean amount?"]),
        ("given", "format = 1\n[given]\naltitude = 3\n", vec!["given.altitude", "altitude_m"]),
        ("reference", "format = 1\nreference = { temperature_c = 0 }\n", vec!["reference is missing", "STP"]),
        (
            "twice",
            "format = 1\n[given]\nvolume_cm3 = 3\n",
            vec!["column volume_cm3", "the options gives the same"],
        ),
        ("gas", "format = 1\ngas = \"Qx\"\n", vec!["gas"]),
        (
            "reaction",
            "format = 1\nreaction = \"Mg + HCl -> MgCl2 + H2\"\ngas = \"O2\"\nreagent = \"Mg\"\n",
            vec!["gas = \"O2\"", "MgCl2, H2"],
        ),
        (
            "ice",
            "format = 1\nconstants = \"classroom\"\n[given]\ntemperature_k = 293\n",
            vec!["temperature_k", "temperature_c"],
        ),
        (
            "accepted",
            "format = 1\naccepted = { amount_mol = 3.0 }\n",
            vec!["accepted.amount_mol", "amount_mmol"],
        ),
    ] {
        let path = file(&format!("{name}.toml"), options);
        refused(&["--options", path.to_str().unwrap()], GOOD.as_bytes(), &words);
    }
    let syringe = file("syringe.toml", "format = 1\ncollector = \"syringe\"\n");
    refused(
        &["--options", syringe.to_str().unwrap()],
        GOOD.as_bytes(),
        &["relative_saturation_fraction is missing"],
    );
}

#[test]
fn empty_tables_and_files_that_are_not_there() {
    refused(&[], b"", &["no row of readings"]);
    refused(&[], b"volume_cm3,temperature_c,pressure_kpa\n", &["no row of readings", "[missing]"]);
    refused(&[], b"volume_cm3,temperature_c,pressure_kpa\n4\xff,20,100\n", &["UTF-8"]);
    let output = overwater(&["no-such-file.csv"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stderr).contains("cannot be read"));
}

/// Twelve megabytes of rows: only the summary is printed, and of bad rows ten are named.
#[test]
fn a_long_table_is_summed() {
    let mut table = String::from("volume_cm3,temperature_c,pressure_kpa\n");
    for row in 0..300_000 {
        table.push_str(&format!("{},20.{},100.{}\n", 40 + row % 50, row % 10, row % 7));
    }
    let printed = text(&reduce(&[], table.as_bytes()).stdout);
    assert!(printed.contains("300000 of 300000 row(s)"), "{printed}");
    assert!(printed.lines().count() < 20, "{printed}");
    let bad = table.replace(",20.3,", ",,");
    let output = reduce(&[], bad.as_bytes());
    assert_eq!(output.status.code(), Some(2));
    let message = text(&output.stderr);
    assert!(message.contains("30000 rows in all have no result"), "{message}");
    assert_eq!(message.matches("the cell is blank").count(), 10, "{message}");
}

/// The figures of a result are those of the row's least precise reading: 45 cm3 has two, 45.0 three; 20 degC is 293 K,
/// which has three. A level only corrects, and counts for nothing.
#[test]
fn figures_of_the_data() {
    for (cells, printed) in [
        ("45,20.0,100.90,5", "1.8"),
        ("45.0,20,100.90,5", "1.82"),
        ("45.00,20,100.90,5", "1.82"),
        ("45.00,20.00,100.90,5", "1.819"),
    ] {
        let table = format!("volume_cm3,temperature_c,pressure_kpa,inside_minus_outside_mm\n{cells}\n");
        let shown = text(&reduce(&["--figures", "data"], table.as_bytes()).stdout);
        assert!(shown.lines().any(|line| line.split_whitespace().eq(["1", printed])), "{printed}: {shown}");
    }
    let masses =
        file("masses.toml", "format = 1\npractical = \"gas_molar_mass\"\n[given]\npressure_kpa = 101.0\n");
    // 17.85 - 17.66 = 0.19 g: two figures, whatever the volume has.
    let table = "volume_cm3,temperature_c,mass_before_g,mass_after_g\n80.0,20.0,17.85,17.66\n";
    let options = ["--options", masses.to_str().unwrap(), "--figures", "data"];
    let shown = text(&reduce(&options, table.as_bytes()).stdout);
    assert!(shown.lines().any(|line| line.split_whitespace().eq(["1", "59", "3.2"])), "{shown}");
    let rows = file(
        "figures.toml",
        "format = 1\n[[rows]]\nvolume_cm3 = 45\ntemperature_c = 20\npressure_kpa = 101\n",
    );
    let output = overwater(&[rows.to_str().unwrap(), "--figures", "data"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stderr).contains("needs a table"), "{}", text(&output.stderr));
}

/// Half-way cases go to the even digit, as McPherson and Henderson 1906 print 728.5 mm as 728 and OpenStax, Chemistry 2e,
/// 740.5 torr as 740; a binary number that only looks half-way goes to where it is nearer.
#[test]
fn half_way_cases() {
    let options = file("half.toml", "format = 1\npractical = \"time_to_volume\"\n[given]\ntime_s = 1\n");
    for (volume, printed) in
        [("728.5", "728"), ("740.5", "740"), ("729.5", "730"), ("2.675", "2.67"), ("2.665", "2.67")]
    {
        let table = format!("volume_cm3\n{volume}\n");
        let shown = text(&reduce(&["--options", options.to_str().unwrap()], table.as_bytes()).stdout);
        let row = shown.lines().find(|line| line.starts_with("   1 ")).unwrap();
        assert_eq!(row.split_whitespace().nth(2), Some(printed), "{shown}");
    }
}

/// As much as a gigabyte is read row by row: what is held does not grow with it.
#[test]
#[cfg(target_os = "linux")]
fn memory_is_flat() {
    let (early, late) = support::peaks("reduce", &[], "volume_cm3,temperature_c,pressure_kpa\n", |row| {
        format!("{}.{},20.{},100.{}\n", 40 + row % 50, row % 10, row % 10, row % 7)
    });
    assert!(late <= early + 1024, "{early} kB after 3 MB, {late} kB after 24 MB");
}

#[test]
fn a_molar_volume_from_a_slope() {
    let options = format!("{}/hydrogen-molar-volume.toml", support::EXAMPLES);
    let options = std::fs::read_to_string(options)
        .unwrap()
        .replace("metal_and_acid", "molar_volume_from_slope")
        .replace("measured_molar_volume", "molar_volume_slope");
    let table = format!("{}/hydrogen-molar-volume.csv", support::EXAMPLES);
    let path = file("slope.toml", &options);
    let printed = text(&overwater(&[&table, "--options", path.to_str().unwrap()]).stdout);
    let cells = |line: &str| line.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
    let found = printed.lines().map(cells).find(|cells| cells.len() == 8 && cells[0].parse::<f64>().is_ok());
    let found = found.unwrap();
    // numpy.polyfit on the volumes and amounts of the rows: 24.288 ± 0.199, -0.3177 ± 0.3199; through the origin
    // 24.092 ± 0.0271; +0.78 and -0.03 % of 24.1.
    assert_eq!(found, ["24.3", "0.20", "-0.318", "0.32", "24.1", "0.027", "+0.8", "+0.0"], "{printed}");
    let nothing = file("no-reference.toml", "format = 1\npractical = \"molar_volume_from_slope\"\n");
    refused(
        &["--options", nothing.to_str().unwrap()],
        GOOD.as_bytes(),
        &["reference is missing", "[missing]"],
    );
    // One portion makes no slope, and equal portions none either.
    let lines: Vec<String> = std::fs::read_to_string(&table).unwrap().lines().map(str::to_owned).collect();
    let one = format!("{}\n{}\n", lines[2], lines[3]);
    refused(&["--options", path.to_str().unwrap()], one.as_bytes(), &["1 rows", "2 or more", "[missing]"]);
    let same = format!("{}\n{}\n{}\n", lines[2], lines[3], lines[3]);
    refused(&["--options", path.to_str().unwrap()], same.as_bytes(), &["in every row", "[contradiction]"]);
}

#[test]
fn a_gas_as_it_is() {
    let with = |make: &str, gas: &str| {
        file(&format!("real{make}{gas}.toml"), &format!("format = 1\ngas = \"{gas}\"\n{make}\n"))
    };
    let shown = |path: &PathBuf, more: &[&str]| {
        let mut arguments = vec!["--options", path.to_str().unwrap()];
        arguments.extend(more);
        text(&reduce(&arguments, GOOD.as_bytes()).stdout)
    };
    // Carbon dioxide at 98.6 kPa and 20 degC: Z = 0.9948, so that the ideal gas gives 0.5 % too little; by CoolProp
    // 8.0.0 the volume holds 1.82915 mmol.
    let usual = shown(&with("", "CO2"), &["--figures", "5"]);
    assert!(usual.contains("1.8197") && usual.contains("real gas (left out), n"), "{usual}");
    assert!(usual.lines().any(|line| line.split_whitespace().eq(["1", "+2.4", "-0.5", "+3.0"])), "{usual}");
    let made = shown(&with("make = [\"real_gas\"]", "CO2"), &["--figures", "5"]);
    assert!(made.contains("1.8292") && made.contains("carbon dioxide is taken as a real gas"), "{made}");
    let working = shown(&with("make = [\"real_gas\"]", "CO2"), &["--working"]);
    assert!(working.contains("= V / Vₘ(real)\n"), "{working}");
    for (name, options, words) in [
        ("both", "gas = \"O2\"\nmake = [\"real_gas\"]\nleave_out = [\"real_gas\"]", vec!["leave_out too"]),
        ("no gas", "make = [\"real_gas\"]", vec!["gas is missing"]),
        (
            "classroom",
            "gas = \"O2\"\nconstants = \"classroom\"\nmake = [\"real_gas\"]",
            vec!["exact constants"],
        ),
        ("none", "gas = \"NO2\"\nmake = [\"real_gas\"]", vec!["second virial coefficient"]),
    ] {
        let path = file(&format!("{name}.toml"), &format!("format = 1\n{options}\n"));
        refused(&["--options", path.to_str().unwrap()], GOOD.as_bytes(), &words);
    }
    let butane = with("make = [\"real_gas\"]", "C4H10");
    refused(
        &["--options", butane.to_str().unwrap()],
        GOOD.replace("20.0", "3.0").as_bytes(),
        &["column temperature_c", "leave out the correction real_gas", "[out_of_range]"],
    );
}

/// Readings whose vapour pressure is stated, so that n = (p - p(H2O)) V/(R T) by hand.
const STATED: &str = "volume_cm3,temperature_c,pressure_kpa,vapour_pressure_kpa\n45.0,20.0,100.9,2.34\n";

fn uncertain(name: &str, rules: &str, readings: &str, table: &str) -> serde_json::Value {
    let path =
        file(name, &format!("format = 1\n[uncertainty]\n{rules}\n[uncertainty.readings]\n{readings}\n"));
    let output = reduce(&["--options", path.to_str().unwrap(), "--json"], table.as_bytes());
    assert!(output.status.success(), "{}", text(&output.stderr));
    serde_json::from_slice::<serde_json::Value>(&output.stdout).unwrap()["rows"][0]["uncertainty"].clone()
}

#[test]
fn a_result_comes_with_its_uncertainty() {
    // (0.3/45)² + (0.5/293.15)² + (0.1/98.56)² = 4.4444e-5 + 2.909e-6 + 1.029e-6 = (0.0069557)² of n = 1.819655 mmol.
    let readings = "volume_cm3 = { standard_uncertainty = 0.3 }\ntemperature_c = { standard_uncertainty = 0.5 }\n\
                    pressure_kpa = { standard_uncertainty = 0.1 }";
    let gum = uncertain("gum.toml", "", readings, STATED);
    let of = |answer: &serde_json::Value, key: &str| answer[key].as_f64().unwrap();
    let u = (4.444_444e-5_f64 + 2.909_130e-6 + 1.029_427e-6).sqrt() * 1.819_655;
    assert!((of(&gum, "standard_uncertainty") / u - 1.0).abs() < 1e-5, "{gum}");
    assert!((of(&gum, "expanded_uncertainty") / u / 1.959_964 - 1.0).abs() < 1e-5);
    assert_eq!((gum["formula"].as_str(), gum["name"].as_str()), (Some("amount"), Some("amount_mmol")));
    let shares: Vec<f64> = gum["lines"].as_array().unwrap().iter().map(|line| of(line, "share")).collect();
    assert!((shares.iter().sum::<f64>() - 1.0).abs() < 1e-12);
    assert_eq!(gum["stated"]["value"], "1.820");
    assert_eq!(gum["stated"]["uncertainty"], "0.025");

    // School rules: 0.5/45 + 0.5/293.15 + 0.1/98.56 = 1.38313 % of 1.819655 is 0.025168, stated as 0.03.
    let halves = readings.replace("0.3 }", "0.5 }").replace("standard_uncertainty", "half_width");
    let school = uncertain("school.toml", "rules = \"school\"", &halves, STATED);
    assert!((of(&school, "half_width") - 0.025_168).abs() < 2e-6, "{school}");
    assert_eq!(
        (school["stated"]["value"].as_str(), school["stated"]["uncertainty"].as_str()),
        (Some("1.82"), Some("0.03"))
    );

    // Drawn: the relation is nearly straight, so that both rules of the GUM agree to what 100 000 draws can show.
    let drawn = uncertain("drawn.toml", "rules = \"monte_carlo\"", readings, STATED);
    assert!((of(&drawn, "standard_uncertainty") / u - 1.0).abs() < 0.01, "{drawn}");
    assert_eq!(drawn["drawn"]["draws"], 100_000.0);
    assert_eq!(drawn["drawn"]["behaviour"], "as_many");
    let again = uncertain("again.toml", "rules = \"monte_carlo\"\nseed = 2", readings, STATED);
    assert_ne!(drawn["drawn"]["shortest"], again["drawn"]["shortest"]);

    // What goes together: with r = 1 between pressure and vapour pressure, equally uncertain, the two cancel.
    let pair =
        "pressure_kpa = { standard_uncertainty = 0.1 }\nvapour_pressure_kpa = { standard_uncertainty = 0.1 }";
    let together = "[[uncertainty.correlations]]\nbetween = [\"pressure_mbar\", \"vapour_pressure_kpa\"]\ncoefficient = 1.0";
    let none = uncertain("together.toml", "", &format!("{pair}\n{together}"), STATED);
    assert!(of(&none, "standard_uncertainty") < 1e-9, "{none}");
}

#[test]
fn uncertainties_are_the_same_in_every_unit() {
    let kinds = ["standard_uncertainty", "half_width", "division", "last_digit"];
    for kind in kinds {
        let by = |scale: f64, pressure: &str, temperature: &str| {
            let readings = format!(
                "volume_{} = {{ {kind} = {} }}\npressure_{pressure} = {{ {kind} = {} }}\ntemperature_{temperature} = {{ {kind} = 0.5 }}",
                if scale == 1.0 { "cm3" } else { "dm3" },
                0.5 / scale,
                if pressure == "kpa" { 0.1 } else { 1.0 },
            );
            uncertain(&format!("units-{kind}-{scale}.toml"), "", &readings, STATED)["standard_uncertainty"]
                .as_f64()
                .unwrap()
        };
        let (one, other) = (by(1.0, "kpa", "c"), by(1000.0, "mbar", "k"));
        assert!((one / other - 1.0).abs() < 1e-12, "{kind}: {one} {other}");
    }
}

#[test]
fn the_result_that_is_asked_about_is_the_accepted_one_or_that_which_is_named() {
    let by_name = |head: &str, named: &str| {
        let options = format!(
            "format = 1\npractical = \"metal_and_acid\"\ngas = \"H2\"\nreagent = \"Mg\"\nreaction = \"Mg + HCl -> MgCl2 + H2\"\n\
             reference = {{ molar_volume_dm3_per_mol = 24.0 }}\n{head}\n[uncertainty]\n{named}\n[uncertainty.readings]\nmass_g = {{ half_width = 0.001 }}\n"
        );
        let path = file("named.toml", &options);
        let table = "mass_g,volume_cm3,temperature_c,pressure_kpa\n0.04,40.0,20.0,100.9\n";
        reduce(&["--options", path.to_str().unwrap(), "--json"], table.as_bytes())
    };
    let name = |output: &Output| {
        let answer: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
        answer["rows"][0]["uncertainty"]["name"].as_str().unwrap().to_owned()
    };
    assert_eq!(name(&by_name("", "")), "amount_mmol");
    assert_eq!(name(&by_name("accepted = { yield_percent = 100 }", "")), "yield_percent");
    assert_eq!(
        name(&by_name("accepted = { yield_percent = 100 }", "result = \"amount_mmol\"")),
        "amount_mmol"
    );
    let wrong = by_name("", "result = \"yeild\"");
    assert_eq!(wrong.status.code(), Some(2));
    let message = text(&wrong.stderr);
    assert!(message.contains("uncertainty.result") && message.contains("yield_percent"), "{message}");
}

#[test]
fn uncertainties_that_say_nothing_or_too_much_are_refused() {
    for (name, lines, words) in [
        (
            "value",
            "volume_cm3 = { value = 45.0, half_width = 0.1 }",
            vec!["volume_cm3", "[contradiction]", "those of the rows"],
        ),
        ("repeats", "volume_cm3 = { repeats = [45.0, 45.1] }", vec!["[contradiction]"]),
        ("empty", "volume_cm3 = {}", vec!["how far the reading may be off", "[missing]"]),
        ("none", "", vec!["uncertainty.readings", "[missing]"]),
        ("twice", "volume_cm3 = { half_width = 1 }\nvolume_ml = { half_width = 1 }", vec!["[given_twice]"]),
        ("unit", "volume = { half_width = 1 }", vec!["volume_cm3, volume_ml", "[ambiguous]"]),
        ("near", "volum_cm3 = { half_width = 1 }", vec!["did you mean volume_cm3?", "[unknown_name]"]),
        ("note", "weather = { half_width = 1 }", vec!["uncertainty.readings.weather", "[unknown_name]"]),
        ("absent", "titre_cm3 = { half_width = 0.1 }", vec!["titre_cm3", "[missing]"]),
        ("negative", "volume_cm3 = { half_width = -1 }", vec!["volume_cm3", "[out_of_range]"]),
    ] {
        let path = file(&format!("{name}.toml"), &format!("format = 1\n[uncertainty.readings]\n{lines}\n"));
        refused(&["--options", path.to_str().unwrap()], STATED.as_bytes(), &words);
    }
    let both = file(
        "school-seed.toml",
        "format = 1\n[uncertainty]\nrules = \"school\"\nseed = 1\n[uncertainty.readings]\nvolume_cm3 = { half_width = 1 }\n",
    );
    refused(&["--options", both.to_str().unwrap()], STATED.as_bytes(), &["not mixed", "[contradiction]"]);
}
