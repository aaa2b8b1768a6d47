//! The rules of the house that no compiler checks: who may depend on whom, and how long a file may be.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Which crates of the workspace each of them may use: bindings use the sheet, the sheet the exchange, the exchange the
/// core, the core nobody. A new crate needs a line.
const MAY_USE: [(&str, &[&str]); 9] = [
    ("overwater", &[]),
    ("overwater-exchange", &["overwater"]),
    ("overwater-sheet", &["overwater", "overwater-exchange"]),
    ("overwater-cli", &["overwater", "overwater-exchange", "overwater-sheet"]),
    ("overwater-c", &["overwater", "overwater-exchange"]),
    ("overwater-python", &["overwater", "overwater-exchange", "overwater-sheet", "overwater-cli"]),
    ("overwater-testkit", &["overwater"]),
    (
        "overwater-tests",
        &["overwater", "overwater-exchange", "overwater-sheet", "overwater-cli", "overwater-testkit"],
    ),
    ("overwater-benches", &["overwater", "overwater-exchange", "overwater-sheet", "overwater-testkit"]),
];

/// For tests only, every crate may use the testkit, except the core, which the testkit itself stands on.
const FOR_TESTS: &str = "overwater-testkit";

/// What the core must not stand on: serialisation belongs to the exchange, Python to its binding, the operating system
/// to nobody.
const NOT_IN_THE_CORE: [&str; 5] = ["serde", "serde_core", "serde_json", "pyo3", "libc"];

const LONGEST_FILE: usize = 1000;

struct Dependency {
    name: String,
    /// Part of the crate that is delivered: neither for tests nor for building.
    delivered: bool,
    for_tests: bool,
}

struct Member {
    name: String,
    dependencies: Vec<Dependency>,
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_owned()
}

fn cargo(arguments: &[&str]) -> String {
    let output = Command::new(env!("CARGO")).args(arguments).current_dir(root()).output().unwrap();
    assert!(output.status.success(), "cargo {arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

fn members() -> Vec<Member> {
    let text = cargo(&["metadata", "--format-version", "1", "--no-deps", "--locked"]);
    let metadata: serde_json::Value = serde_json::from_str(&text).unwrap();
    let packages = metadata["packages"].as_array().unwrap();
    packages
        .iter()
        .map(|package| Member {
            name: package["name"].as_str().unwrap().to_owned(),
            dependencies: package["dependencies"]
                .as_array()
                .unwrap()
                .iter()
                .map(|dependency| Dependency {
                    name: dependency["name"].as_str().unwrap().to_owned(),
                    delivered: dependency["kind"].is_null(),
                    for_tests: dependency["kind"].as_str() == Some("dev"),
                })
                .collect(),
        })
        .collect()
}

/// What is wrong with the dependencies of a crate, one line each.
fn complaints(member: &Member) -> Vec<String> {
    let Some((_, allowed)) = MAY_USE.iter().find(|(name, _)| *name == member.name) else {
        return vec![format!("{} is not in the table of crates", member.name)];
    };
    let ours = |name: &str| name == "overwater" || name.starts_with("overwater-");
    let mut found = Vec::new();
    for dependency in member.dependencies.iter().filter(|dependency| ours(&dependency.name)) {
        let test_only = dependency.for_tests && dependency.name == FOR_TESTS && member.name != "overwater";
        if !test_only && !allowed.contains(&dependency.name.as_str()) {
            found.push(format!("{} may not use {}", member.name, dependency.name));
        }
    }
    if member.name == "overwater" {
        for dependency in member.dependencies.iter().filter(|dependency| dependency.delivered) {
            if NOT_IN_THE_CORE.contains(&dependency.name.as_str()) {
                found.push(format!("the core stands on {}", dependency.name));
            }
        }
    }
    found
}

#[test]
fn dependencies_point_one_way() {
    let members = members();
    for needed in ["overwater", "overwater-testkit", "overwater-tests", "overwater-benches"] {
        assert!(members.iter().any(|member| member.name == needed), "{needed} is missing");
    }
    let core = members.iter().find(|member| member.name == "overwater").unwrap();
    assert!(core.dependencies.iter().any(|dependency| dependency.name == "pulp" && dependency.delivered));
    let found: Vec<String> = members.iter().flat_map(complaints).collect();
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn what_is_forbidden_is_found() {
    let member = |name: &str, dependencies: &[(&str, bool)]| Member {
        name: name.to_owned(),
        dependencies: dependencies
            .iter()
            .map(|(name, for_tests)| Dependency {
                name: (*name).to_owned(),
                delivered: !for_tests,
                for_tests: *for_tests,
            })
            .collect(),
    };
    assert_eq!(complaints(&member("overwater", &[("serde", false)])), ["the core stands on serde"]);
    assert!(complaints(&member("overwater", &[("serde", true)])).is_empty());
    assert_eq!(
        complaints(&member("overwater", &[("overwater-testkit", true)])),
        ["overwater may not use overwater-testkit"]
    );
    assert_eq!(
        complaints(&member("overwater-exchange", &[("overwater-sheet", false), ("serde", false)])),
        ["overwater-exchange may not use overwater-sheet"]
    );
    assert!(
        complaints(&member("overwater-sheet", &[("overwater-testkit", true), ("overwater", false)]))
            .is_empty()
    );
    assert_eq!(
        complaints(&member("overwater-sheet", &[("overwater-testkit", false)])),
        ["overwater-sheet may not use overwater-testkit"]
    );
    assert_eq!(
        complaints(&member("overwater-extra", &[])),
        ["overwater-extra is not in the table of crates"]
    );
}

/// Through others, too, nothing of that list comes into the core, on any platform.
#[test]
fn the_core_stands_on_nothing_heavy_through_others() {
    let arguments = [
        "tree",
        "--package",
        "overwater",
        "--edges",
        "normal",
        "--prefix",
        "none",
        "--target",
        "all",
        "--locked",
    ];
    let tree = cargo(&arguments);
    let names: BTreeSet<&str> = tree.lines().filter_map(|line| line.split_whitespace().next()).collect();
    assert!(names.contains("pulp") && names.contains("num-dual"), "the tree was not read: {names:?}");
    let heavy: Vec<&&str> = names.iter().filter(|name| NOT_IN_THE_CORE.contains(*name)).collect();
    assert!(heavy.is_empty(), "the core stands on {heavy:?}");
}

/// Every Rust file under `directory`, at any depth.
fn rust_files(directory: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(directory).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            rust_files(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

/// Tables of published data may be as long as they are.
fn is_a_table(path: &Path) -> bool {
    path.components().any(|part| part.as_os_str() == "reference")
}

#[test]
fn no_file_is_longer_than_a_thousand_lines() {
    let mut files = Vec::new();
    for house in
        ["crates", "bindings"].map(|house| root().join(house)).into_iter().filter(|house| house.is_dir())
    {
        for room in fs::read_dir(house).unwrap() {
            let source = room.unwrap().path().join("src");
            if source.is_dir() {
                rust_files(&source, &mut files);
            }
        }
    }
    assert!(files.iter().any(|file| file.ends_with("crates/overwater/src/scalar/working.rs")), "{files:?}");
    let too_long: Vec<String> = files
        .iter()
        .filter(|file| !is_a_table(file))
        .map(|file| (file, fs::read_to_string(file).unwrap().lines().count()))
        .filter(|(_, lines)| *lines > LONGEST_FILE)
        .map(|(file, lines)| format!("{}: {lines} lines", file.display()))
        .collect();
    assert!(too_long.is_empty(), "{}", too_long.join("\n"));
}

#[test]
fn only_the_reference_room_holds_tables() {
    assert!(is_a_table(Path::new("crates/overwater/src/reference/elements.rs")));
    assert!(!is_a_table(Path::new("crates/overwater/src/water/vapour.rs")));
}
