//! The program as a person meets it: what it prints, what it refuses, and what it leaves alone.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

const EXAMPLE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples/oxygen-lesson.toml");
const SHEET: &str = include_str!("../../../examples/oxygen-lesson.txt");
const PAGE: &str = include_str!("../../../examples/oxygen-lesson.html");

fn overwater(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_overwater")).args(arguments).output().unwrap()
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// A folder of its own for each test, under the build folder.
fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

/// What is printed is what lies in the examples; a difference is shown by its first line.
fn assert_same_lines(printed: &str, kept: &str, name: &str) {
    let difference = printed.lines().zip(kept.lines()).find(|(new, old)| new != old);
    assert_eq!(difference, None, "{name} is stale: write what the program prints into it");
    assert_eq!(printed.len(), kept.len(), "{name} is stale: write what the program prints into it");
}

/// Plans `lesson`, asking for a page as well, and asserts that it is refused with exit code 2, that nothing was printed
/// or written, and that the message holds every one of `words`.
fn assert_refused(name: &str, lesson: &[u8], words: &[&str]) {
    let folder = folder(name);
    let file = folder.join("lesson.toml");
    let page = folder.join("sheet.html");
    std::fs::write(&file, lesson).unwrap();
    let output = overwater(&["plan", file.to_str().unwrap(), "--html", page.to_str().unwrap()]);
    let message = text(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{message}");
    assert!(output.stdout.is_empty(), "{}", text(&output.stdout));
    assert!(!page.exists());
    assert!(message.contains("lesson.toml"), "{message}");
    for word in words {
        assert!(message.contains(word), "{word:?} is not in: {message}");
    }
}

const LESSON: &str = "format = 1\n[stock]\nstrength = \"20 vol\"\n[[vessels]]\nburn = \"sulfur\"\n";

#[test]
fn the_example_gives_the_sheet_that_lies_beside_it() {
    let output = overwater(&["plan", EXAMPLE]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert_same_lines(&text(&output.stdout), SHEET, "examples/oxygen-lesson.txt");
}

#[test]
fn the_other_examples_give_their_timelines() {
    let wrong = include_str!("../../../examples/goes-wrong.txt");
    assert!(wrong.contains("NO schedule"), "{wrong}");
    for (name, timeline) in
        [("goes-wrong", wrong), ("class-of-eight", include_str!("../../../examples/class-of-eight.txt"))]
    {
        let file = format!("{}/../../examples/{name}.toml", env!("CARGO_MANIFEST_DIR"));
        let output = overwater(&["schedule", &file]);
        assert!(output.status.success(), "{}", text(&output.stderr));
        assert_same_lines(&text(&output.stdout), timeline, &format!("examples/{name}.txt"));
    }
}

#[test]
fn the_page_is_written_and_the_sheet_still_printed() {
    let page = folder("page").join("sheet.html");
    let output = overwater(&["plan", EXAMPLE, "--html", page.to_str().unwrap()]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert_same_lines(&text(&output.stdout), SHEET, "examples/oxygen-lesson.txt");
    let html = std::fs::read_to_string(page).unwrap();
    assert_same_lines(&html, PAGE, "examples/oxygen-lesson.html");
}

#[test]
fn json_is_the_whole_answer() {
    let output = overwater(&["plan", EXAMPLE, "--json"]);
    let answer: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(answer["format"], 1);
    assert_eq!(answer["filling"]["vessels"].as_array().unwrap().len(), 5);
    let total = answer["gas"]["total"]["moist_cm3"].as_f64().unwrap();
    assert_eq!(total, 560.0 + 55.0 + 4.0 * 250.0);
}

#[test]
fn the_template_is_a_lesson_and_standard_input_is_read() {
    let template = overwater(&["template"]);
    assert!(template.status.success());
    let mut child = Command::new(env!("CARGO_BIN_EXE_overwater"))
        .args(["plan", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(&template.stdout).unwrap();
    let output = child.wait_with_output().unwrap();
    assert!(output.status.success());
    assert!(text(&output.stdout).starts_with("Oxygen: four burns"));
}

#[test]
fn a_lesson_may_be_json() {
    let file = folder("json").join("lesson.json");
    std::fs::write(&file, r#"{"format": 1, "stock": {"strength": "20 vol"}, "vessels": [{"burn": "S"}]}"#)
        .unwrap();
    let output = overwater(&["plan", file.to_str().unwrap()]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(text(&output.stdout).contains("S + O₂ → SO₂"));
}

#[test]
fn numbers_that_cannot_be_are_refused_by_key() {
    let with = |line: &str| format!("{LESSON}{line}\n").into_bytes();
    for (name, line, words) in [
        (
            "zero",
            "volume_cm3 = 0",
            ["vessels[0].volume_cm3 = 0 cm3", "0.01 to 1000000 cm3", "lesson.toml:6:14"],
        ),
        ("negative", "volume_cm3 = -250.0", ["vessels[0].volume_cm3 = -250 cm3", "out of range", "^^^^"]),
        (
            "nan",
            "volume_cm3 = nan",
            ["vessels[0].volume_cm3 = NaN cm3", "not a finite number", "[not_a_number]"],
        ),
        ("infinite", "volume_cm3 = inf", ["vessels[0].volume_cm3 = inf cm3", "not a finite number", "^^^"]),
        (
            "huge",
            "volume_cm3 = 1e308",
            ["vessels[0].volume_cm3 = 1e308 cm3", "out of range", "[out_of_range]"],
        ),
        ("mass", "sample_g = 0.0", ["vessels[0].sample_g = 0 g", "0.0001 to 1000 g", "out of range"]),
        (
            "fraction",
            "wanted_oxygen_fraction = 95",
            ["wanted_oxygen_fraction = 95", "0.21 to 0.9999", "out of range"],
        ),
    ] {
        assert_refused(&format!("number-{name}"), &with(line), &words);
    }
    let hot = format!("{LESSON}[room]\ntemperature_c = 99.0\n");
    assert_refused(
        "hot",
        hot.as_bytes(),
        &["room.temperature_c = 99 degC", "0 to 45 degC", "lesson.toml:7:17"],
    );
    let free = format!("{LESSON}[apparatus]\nheel_cm3 = 300.0\n");
    assert_refused(
        "heel",
        free.as_bytes(),
        &["apparatus.heel_cm3 = 300 cm3", "less than the flask, 250 cm3"],
    );
}

#[test]
fn strengths_that_do_not_say_enough_are_asked_about() {
    let labelled = |label: &str| LESSON.replace("20 vol", label).into_bytes();
    assert_refused("percent", &labelled("30 %"), &["stock.strength = 30 %", "w/v", "w/w", "[ambiguous]"]);
    assert_refused("bare", &labelled("20"), &["stock.strength = 20", "unit", "[missing]"]);
    assert_refused("words", &labelled("strong"), &["stock.strength = strong", "[syntax]"]);
    let stp = LESSON.replace("[[vessels]]", "convention = \"STP\"\n[[vessels]]");
    assert_refused("stp", stp.as_bytes(), &["stock.convention = STP", "0 degC and 1 atm", "[ambiguous]"]);
    let stronger = LESSON.replace("[[vessels]]", "[run]\nstrength = \"30 vol\"\n[[vessels]]");
    assert_refused(
        "stronger",
        stronger.as_bytes(),
        &["run.strength = 30.0 vol", "at most the stock's 20.0 vol"],
    );
}

#[test]
fn names_that_are_not_known_come_with_the_nearest() {
    let with = |line: &str| format!("{LESSON}{line}\n").into_bytes();
    assert_refused(
        "key",
        &with("sampel_g = 0.1"),
        &["vessels[0].sampel_g", "did you mean sample_g?", "lesson.toml:6:1"],
    );
    let burn = LESSON.replace("sulfur", "magnesum");
    assert_refused("burn", burn.as_bytes(), &["vessels[0].burn = magnesum", "did you mean magnesium?"]);
    assert_refused("kind", &with("kind = \"jarr\""), &["vessels[0].kind", "did you mean jar?"]);
    let section = LESSON.replace("[stock]", "[stok]");
    assert_refused("section", section.as_bytes(), &["stok", "did you mean stock?", "[unknown_name]"]);
}

#[test]
fn a_pressure_in_two_unit_styles_is_refused() {
    let twice = format!("{LESSON}[barometer]\nstation_pressure_kpa = 100.2\nstation_pressure_hpa = 1002.0\n");
    assert_refused(
        "twice",
        twice.as_bytes(),
        &["barometer.station_pressure_hpa", "more than one way", "[given_twice]"],
    );
    let sea = format!("{LESSON}[barometer]\nsea_level_pressure_hpa = 1018.0\n");
    assert_refused("sea", sea.as_bytes(), &["barometer.altitude_m is missing", "height of the place"]);
}

#[test]
fn texts_that_are_no_lesson_are_refused() {
    assert_refused("empty", b"", &["format is missing"]);
    assert_refused("toml", b"format = 1\n[stock\n", &["lesson.toml:2", "[syntax]"]);
    assert_refused("utf8", b"format = 1\ntitle = \"\xff\xfe\"\n", &["not UTF-8", "byte 20"]);
    assert_refused("long", &vec![b'#'; 10_000_000], &["longer than 8388608 bytes", "[too_large]"]);
    assert_refused(
        "vessels",
        b"format = 1\nstock.strength = \"20 vol\"\nvessels = []\n",
        &["vessels is missing"],
    );
    assert_refused("format", LESSON.replace("= 1", "= 2").as_bytes(), &["format = 2", "allowed: 1"]);
}

#[test]
fn a_file_that_is_not_there_or_cannot_be_written_is_named() {
    let missing = overwater(&["plan", "no-such-lesson.toml"]);
    assert_eq!(missing.status.code(), Some(2));
    assert!(
        text(&missing.stderr).contains("no-such-lesson.toml: cannot be read"),
        "{}",
        text(&missing.stderr)
    );
    let page = folder("unwritable").join("no-such-folder").join("sheet.html");
    let output = overwater(&["plan", EXAMPLE, "--html", page.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(2));
    assert!(output.stdout.is_empty());
    assert!(text(&output.stderr).contains("cannot be written"), "{}", text(&output.stderr));
}

#[test]
fn a_refusal_is_json_as_well_where_json_was_asked_for() {
    let file = folder("refusal").join("lesson.toml");
    std::fs::write(&file, format!("{LESSON}volume_cm3 = 0\n")).unwrap();
    let output = overwater(&["plan", file.to_str().unwrap(), "--json"]);
    assert_eq!(output.status.code(), Some(2));
    let refusal: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(refusal["code"], "out_of_range");
    assert_eq!(refusal["path"], "vessels[0].volume_cm3");
    assert_eq!(refusal["value"], "0 cm3");
    assert_eq!(refusal["place"], serde_json::json!({"line": 6, "column": 14}));
}
