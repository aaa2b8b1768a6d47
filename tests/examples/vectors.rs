//! Writes the answers of all conversation vectors anew, after a change that is meant: `cargo run -p overwater-tests
//! --example vectors`, then look at the difference before it is kept.

use overwater_exchange::respond;
use overwater_testkit::vectors;

fn main() {
    let mut changed = 0;
    let all = vectors::all();
    for vector in &all {
        let answer = respond(&vector.request);
        if answer != vector.answer {
            std::fs::write(&vector.answer_file, answer + "\n").expect("the answer can be written");
            println!("{}", vector.name);
            changed += 1;
        }
    }
    println!("{changed} of {} answers written", all.len());
}
