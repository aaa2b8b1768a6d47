//! `overwater run` and `overwater calibrate`.

// A test may stop at the first thing that is not as it should be.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod support;

use support::{EXAMPLES, overwater, piped, refused, text};

#[test]
fn the_examples_give_what_lies_beside_them() {
    let pairs = [
        ("run", "all-at-once", include_str!("../../../examples/all-at-once.txt")),
        ("calibrate", "trial", include_str!("../../../examples/trial.txt")),
    ];
    for (command, name, kept) in pairs {
        let output = overwater(command, &[&format!("{EXAMPLES}/{name}.toml")]);
        assert!(output.status.success(), "{}", text(&output.stderr));
        assert_eq!(text(&output.stdout), kept, "{name}");
        assert!(kept.lines().all(|line| line.chars().count() <= 80));
    }
}

#[test]
fn the_table_the_answer_and_the_page_hold_the_same_states() {
    let example = format!("{EXAMPLES}/all-at-once.toml");
    let page = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("all-at-once.html");
    let json = text(&overwater("run", &[&example, "--json", "--html", page.to_str().unwrap()]).stdout);
    let answer: serde_json::Value = serde_json::from_str(&json).unwrap();
    let curve = answer["curve"].as_array().unwrap();
    let table = text(&overwater("run", &[&example, "--csv"]).stdout);
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let header = reader.headers().unwrap().clone();
    let mut seen = 0;
    for (row, point) in reader.records().zip(curve) {
        let row = row.unwrap();
        for (name, cell) in header.iter().zip(&row) {
            assert_eq!(cell.parse::<f64>().unwrap(), point[name].as_f64().unwrap(), "{name}");
            seen += 1;
        }
    }
    assert_eq!(seen, curve.len() * 18);
    let page = std::fs::read_to_string(page).unwrap();
    assert!(page.contains("<svg") && page.contains("liquid is pushed out of the funnel"));
}

#[test]
fn json_is_read_too() {
    let path = support::file(
        "run",
        "small.json",
        r#"{"format": 1, "end_s": 60, "additions": [{"time_s": 0, "volume_cm3": 5, "strength": "20 vol"}]}"#,
    );
    let output = overwater("run", &[path.to_str().unwrap()]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(text(&output.stdout).contains("Nothing goes wrong"));
}

#[test]
fn bad_input_is_refused_with_its_place() {
    let addition = "additions = [{ time_s = 0, volume_cm3 = 500, strength = \"20 vol\" }]\n";
    refused(
        "run",
        &[],
        format!("format = 1\n{addition}").as_bytes(),
        &["additions[0].volume_cm3", "98 % of the flask", "larger flask", "-:2:"],
    );
    refused(
        "run",
        &[],
        b"format = 1\ntube_bore_mm = 0.0\n",
        &["tube_bore_mm = 0 mm is out of range", "0.2 to 30 mm"],
    );
    refused("run", &[], b"format = 1\nstem_length_cm = -2\n", &["stem_length_cm = -2 cm is out of range"]);
    refused(
        "run",
        &[],
        b"format = 1\nkinetics = { k_at_20 = 0 }\n",
        &["kinetics.k_at_20 = 0 is out of range"],
    );
    let trial = "format = 1\ncatalyst_g = 0.4\nliquid_cm3 = 30\ntemperature_c = 20\n";
    let readings = |third: &str| {
        format!(
            "{trial}readings = [{{ time_s = 1, volume_cm3 = 1 }}, {{ time_s = 2, volume_cm3 = 2 }}, {third}, \
             {{ time_s = 8, volume_cm3 = 3 }}, {{ time_s = 9, volume_cm3 = 4 }}]\n"
        )
    };
    refused(
        "calibrate",
        &[],
        readings("{ time_s = 3, volume_cm3 = nan }").as_bytes(),
        &["readings[2].volume_cm3", "not a finite number"],
    );
    refused(
        "calibrate",
        &[],
        readings("{ time_s = 2, volume_cm3 = 3 }").as_bytes(),
        &["readings[2].time_s", "later than 2 s"],
    );
    refused(
        "calibrate",
        &[],
        format!("{trial}readings = []\n").as_bytes(),
        &["readings", "5 readings or more"],
    );
}

#[test]
fn a_hundred_volumes_at_once_boil_and_say_so() {
    let text_in = b"format = 1\nadditions = [{ time_s = 0, volume_cm3 = 100, strength = \"100 vol\" }]\n";
    let output = piped("run", &[], text_in);
    assert!(output.status.success());
    let printed = text(&output.stdout);
    assert!(printed.contains("the flask boils") && printed.contains("add it in portions"), "{printed}");
}

#[test]
fn a_schedule_as_json_is_the_one_of_the_plan() {
    let lesson = format!("{EXAMPLES}/class-of-eight.toml");
    let read = |command: &str| -> serde_json::Value {
        serde_json::from_str(&text(&overwater(command, &[&lesson, "--json"]).stdout)).unwrap()
    };
    let (schedule, plan) = (read("schedule"), read("plan"));
    assert_eq!(schedule, plan["schedule"]);
    assert_eq!(schedule["found"]["portion_cm3"], plan["additions"]["portion_cm3"]);
}
