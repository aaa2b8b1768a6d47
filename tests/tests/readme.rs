//! What the README says is still so.

const README: &str = include_str!("../../README.md");

/// The first fenced block in the language, without its fences.
fn block(language: &str) -> &'static str {
    let start = format!("```{language}\n");
    let (_, rest) = README.split_once(&start).unwrap_or_else(|| panic!("no {language} block"));
    rest.split_once("```").unwrap().0
}

#[test]
fn the_short_lesson_is_a_lesson() {
    let answer = overwater_exchange::plan_toml(block("toml")).unwrap();
    assert_eq!(answer.filling.vessels.len(), 3);
    assert_eq!(block("toml").lines().count(), 3);
}

#[test]
fn the_commands_and_the_picture_are_there() {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/..");
    for line in block("sh").lines() {
        let command = line.split('#').next().unwrap().trim();
        let known = match command {
            "cargo run --release -- plan examples/oxygen-lesson.toml" => "examples/oxygen-lesson.toml",
            "tests/run" => "tests/run",
            other => panic!("nothing checks the command {other:?}"),
        };
        assert!(std::path::Path::new(root).join(known).exists(), "{known}");
    }
    let (_, picture) = README.split_once("](examples/").unwrap();
    let name = picture.split(')').next().unwrap();
    assert!(std::path::Path::new(root).join("examples").join(name).exists(), "{name}");
}

#[test]
fn paths_that_the_developers_page_names_exist() {
    let root = std::path::Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/.."));
    let page = include_str!("../../DEVELOPERS.md");
    let mut named = 0;
    for word in page.split('`').skip(1).step_by(2) {
        let is_path = word.contains('/') && !word.contains(' ') && !word.contains("::");
        if !is_path {
            continue;
        }
        let inside = ["", "crates/overwater/src"].iter().any(|place| root.join(place).join(word).exists());
        assert!(inside, "{word} is not there");
        named += 1;
    }
    assert!(named > 10, "only {named} paths were found");
}

/// The text of a section, from its heading to the next.
fn section(heading: &str) -> &'static str {
    let (_, rest) = README.split_once(&format!("\n## {heading}\n")).unwrap();
    rest.split("\n## ").next().unwrap()
}

#[test]
fn the_worked_solution_is_what_it_prints() {
    let working = include_str!("../../examples/hydrogen-molar-volume-working.txt");
    let shown = section("A worked solution").split_once("```text\n").unwrap().1.split_once("```").unwrap().0;
    // Steps that stand apart in the whole solution; each whole, from its symbol to its source, and in the same order.
    let mut from = 0;
    let mut steps = 0;
    for step in shown.split_inclusive("]\n") {
        let found =
            working[from..].find(step).unwrap_or_else(|| panic!("not printed, or not in this place: {step}"));
        from += found + step.len();
        steps += 1;
    }
    assert_eq!(steps, 5);
    let named = section("A worked solution").split('`').filter(|text| text.starts_with("overwater "));
    for command in named {
        let files = command.split_whitespace().filter(|word| word.starts_with("examples/"));
        for name in files {
            let root = concat!(env!("CARGO_MANIFEST_DIR"), "/..");
            assert!(std::path::Path::new(root).join(name).exists(), "{name}");
        }
    }
    let sheet = include_str!("../../examples/rate-at-five-temperatures.txt");
    let energy = section("A worked solution").split("activation energy of ").nth(1).unwrap();
    let energy = energy.trim_end().trim_end_matches('.');
    assert!(sheet.contains(&format!("activation energy: {energy}\n")), "{energy}");
}

#[test]
fn what_it_says_of_the_wrong_preparation_is_what_it_prints() {
    let sheet = include_str!("../../examples/goes-wrong.txt");
    for line in block("text").lines() {
        assert!(sheet.contains(line), "{line}");
    }
}

#[test]
fn the_request_in_json_has_the_answer_that_is_shown() {
    let mut blocks =
        section("In JSON").split("```json\n").skip(1).map(|rest| rest.split_once("```").unwrap().0.trim());
    let (request, answer) = (blocks.next().unwrap(), blocks.next().unwrap());
    assert_eq!(overwater_exchange::respond(request.as_bytes()), answer);
    assert!(blocks.next().is_none());
    let inline = section("In JSON").split('`').find(|text| text.starts_with("{\"format\"")).unwrap();
    assert!(overwater_exchange::respond_with_status(inline.as_bytes()).1, "{inline}");
}
