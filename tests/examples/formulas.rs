//! Every formula of the catalogue over a grid, as bits: what `tests/c/values.c` must print.

use overwater::catalogue;

const ROWS: u32 = 50;

fn main() {
    // The C list has the formulas of a gas together, this one by name.
    for formula in catalogue::all() {
        for row in 0..ROWS {
            let values: Vec<f64> = (0_u32..)
                .zip(formula.inputs())
                .map(|(input, bound)| {
                    let fraction = f64::from((row * (7 + 2 * input)) % ROWS) / f64::from(ROWS - 1);
                    bound.least + (bound.greatest - bound.least) * fraction
                })
                .collect();
            let bits = formula.number(&values).map_or(0x7ff8_0000_0000_0000, f64::to_bits);
            println!("{} {row} {bits:016x}", formula.name());
        }
    }
}
