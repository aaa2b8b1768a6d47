//! A short, ever the same walk through what the fuzzer walks through at length (`tests/fuzz`): the seeds as they are, then
//! with bytes changed, left out, doubled, and put in from another seed.

#[path = "../fuzz/doors.rs"]
mod doors;

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Longer than any input may take, in a build that is not optimised, on a machine with other work to do.
const LONGEST: Duration = Duration::from_secs(20);

fn seeds(folder: &str, ends: &str) -> Vec<Vec<u8>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let mut files: Vec<PathBuf> = std::fs::read_dir(&folder)
        .unwrap()
        .map(|file| file.unwrap().path())
        .filter(|path| path.is_file() && path.to_str().unwrap().ends_with(ends))
        .collect();
    files.sort();
    assert!(!files.is_empty(), "{}", folder.display());
    files.into_iter().map(|path| std::fs::read(path).unwrap()).collect()
}

/// Pieces that readers trip over.
const PIECES: [&[u8]; 22] = [
    b"\0",
    b"\xff",
    b"\xef\xbb\xbf",
    b"\"",
    b"\\",
    b"[",
    b"]",
    b"{",
    b"}",
    b",",
    b";",
    b"\n",
    b"\r",
    b"-",
    b"e999",
    b"1e308",
    b"5e-324",
    b"NaN",
    b"99999999999999999999",
    b"-0",
    "²".as_bytes(),
    "·".as_bytes(),
];

fn mutated(random: &mut ChaCha8Rng, seed: &[u8], other: &[u8]) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..random.random_range(1..=4) {
        let at = random.random_range(0..=bytes.len());
        let to = (at + random.random_range(0..=16)).min(bytes.len());
        match random.random_range(0..6) {
            0 if at < bytes.len() => bytes[at] ^= 1 << random.random_range(0..8),
            1 => drop(bytes.drain(at..to)),
            2 => {
                let piece = bytes[at..to].to_vec();
                bytes.splice(at..at, piece);
            }
            3 => {
                let from = random.random_range(0..=other.len());
                let until = (from + random.random_range(0..=32)).min(other.len());
                bytes.splice(at..to, other[from..until].iter().copied());
            }
            _ => {
                let piece = PIECES[random.random_range(0..PIECES.len())];
                bytes.splice(at..to, piece.iter().copied());
            }
        }
    }
    bytes
}

/// Seeds as they are, then `rounds` of them changed, the same ones for the same start.
fn walk(door: fn(&[u8]), seeds: &[Vec<u8>], start: u64, rounds: impl IntoIterator) {
    for seed in seeds {
        go_through(door, seed);
    }
    let mut random = ChaCha8Rng::seed_from_u64(start);
    for _ in rounds {
        let [one, other] = [(); 2].map(|()| &seeds[random.random_range(0..seeds.len())]);
        go_through(door, &mutated(&mut random, one, other));
    }
}

fn go_through(door: fn(&[u8]), input: &[u8]) {
    let start = Instant::now();
    if let Err(panic) = std::panic::catch_unwind(|| door(input)) {
        eprintln!("{:?}", String::from_utf8_lossy(input));
        std::panic::resume_unwind(panic);
    }
    let taken = start.elapsed();
    assert!(taken < LONGEST, "{taken:?} for {:?}", String::from_utf8_lossy(input));
}

/// Requests that are answered quickly: what takes long is left to the fuzzer.
fn short_requests() -> Vec<Vec<u8>> {
    let all = seeds("vectors", ".request.json");
    let short: Vec<Vec<u8>> = all.into_iter().filter(|seed| seed.len() < 2_000).collect();
    assert!(short.len() > 60);
    short
}

const START: u64 = 20_261_128;

#[test]
fn requests() {
    walk(doors::exchange, &short_requests(), START, 0..1_000);
}

#[test]
fn formulas_and_equations() {
    walk(doors::formula, &seeds("fuzz/seeds/formula", ""), START, 0..20_000);
}

#[test]
fn lessons() {
    walk(doors::lesson, &seeds("../examples", ".toml"), START, 0..250);
}

#[test]
fn tables() {
    walk(doors::table, &seeds("../examples", ".csv"), START, 0..120);
}

/// The same walks for as long, and from as many starts, as is asked for; for a machine without a fuzzer.
#[test]
#[ignore = "as long as WALK_SECONDS says, through the door that WALK_DOOR says, from WALK_START"]
fn at_length() {
    let number = |name: &str| std::env::var(name).ok().and_then(|text| text.parse::<u64>().ok());
    let end = Instant::now() + Duration::from_secs(number("WALK_SECONDS").expect("WALK_SECONDS is a number"));
    let name = std::env::var("WALK_DOOR").expect("WALK_DOOR is exchange, formula, lesson or table");
    let (door, seeds): (fn(&[u8]), _) = match name.as_str() {
        "exchange" => (doors::exchange, short_requests()),
        "formula" => (doors::formula, seeds("fuzz/seeds/formula", "")),
        "lesson" => (doors::lesson, seeds("../examples", ".toml")),
        "table" => (doors::table, seeds("../examples", ".csv")),
        other => panic!("no door {other}"),
    };
    let mut rounds = 0_u64;
    let in_time = std::iter::repeat_with(|| rounds += 1).take_while(|()| Instant::now() < end);
    walk(door, &seeds, number("WALK_START").unwrap_or(START), in_time);
    println!("{name}: {rounds} inputs");
}

/// What the fuzzer found, each with what must come of it instead.
mod findings {
    use overwater::Code;
    use overwater::chem::{Formula, MAX_FORMULA_BYTES};
    use overwater_exchange::reduction::reduce_table;
    use overwater_exchange::reduction::request::ReductionRequest;
    use overwater_exchange::{FORMAT, propagation_from_toml};

    #[test]
    fn a_temperature_beyond_every_double_is_a_bad_row() {
        let request = ReductionRequest { format: FORMAT, ..ReductionRequest::default() };
        let table = "volume_cm3,temperature_c,pressure_kpa\n41.2,20.0,100\n41.2,20.e999,100\n";
        let answer = reduce_table(&request, table.as_bytes(), None).unwrap();
        assert_eq!((answer.rows_read, answer.rows_good), (2, 1));
        let bad = answer.bad_rows.first().unwrap();
        assert_eq!((bad.row, bad.column.as_str(), bad.code.as_str()), (2, "temperature_c", "not_a_number"));
    }

    /// A subscript takes three bytes, so that a formula within the limit may be printed beyond it.
    #[test]
    fn a_formula_that_is_printed_longer_than_it_may_be_read_is_refused_by_its_length() {
        let formula = "H2".repeat(MAX_FORMULA_BYTES / 2);
        let printed = Formula::parse(&formula).unwrap().unicode();
        assert!(printed.len() > MAX_FORMULA_BYTES);
        let error = Formula::parse(&printed).unwrap_err();
        assert_eq!(error.code, Code::TooLarge);
        super::doors::formula(formula.as_bytes());
    }

    #[test]
    fn a_refusal_before_a_character_of_several_bytes_is_shown() {
        let text = "x = { repeats ²11.0, 13.0] }\n";
        let shown = propagation_from_toml(text).unwrap_err().show("options.toml", text);
        assert!(shown.contains("options.toml:1:15"), "{shown}");
    }
}
