//! Columns in NumPy's memory, block by block through the core, over the threads that are free.

use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::thread;

use overwater::catalogue::AnyFormula;

use super::MOST;
use super::overlap::{Columns, Overlap};

/// Rows worked on together: the columns of a block stay in the nearest cache.
const BLOCK: usize = 512;
/// Rows that a thread takes at a time, so that a slow one is not waited for.
const TAKEN: usize = 16 * BLOCK;
/// Rows that are worth a thread: it costs as much as some ten thousand values.
const WORTH_A_THREAD: usize = 64 * BLOCK;
/// More threads bring nothing: memory is the limit.
const MOST_THREADS: usize = 8;

/// Works out `rows` rows. True where a row has no result although each of its inputs is a number.
///
/// # Safety
/// The columns hold `rows` values each, which nobody else writes meanwhile, nor reads in the case of the output.
pub(super) unsafe fn sweep(formula: &dyn AnyFormula, columns: &Columns, rows: usize) -> bool {
    let inputs = columns.inputs.get(..columns.count).unwrap_or_default();
    let overlaps = inputs.iter().map(|input| input.overlap(&columns.output, rows));
    let mut apart = [true; MOST];
    for (apart, overlap) in apart.iter_mut().zip(overlaps) {
        match overlap {
            Overlap::Apart => {}
            Overlap::RowByRow => *apart = false,
            // SAFETY: as promised by the caller; one row after the other.
            Overlap::Tangled => {
                return (0..rows).fold(false, |invalid, row| {
                    // SAFETY: as above.
                    unsafe { part(formula, columns, [false; MOST], row, 1) || invalid }
                });
            }
        }
    }
    let helpers = (rows / WORTH_A_THREAD).min(processors()).saturating_sub(1);
    if helpers == 0 {
        // SAFETY: as promised by the caller.
        return unsafe { part(formula, columns, apart, 0, rows) };
    }
    let next = AtomicUsize::new(0);
    let invalid = AtomicBool::new(false);
    let work = || {
        loop {
            let start = next.fetch_add(TAKEN, Ordering::Relaxed);
            if start >= rows {
                return;
            }
            // SAFETY: as promised by the caller; no two threads take the same rows.
            if unsafe { part(formula, columns, apart, start, TAKEN.min(rows - start)) } {
                invalid.store(true, Ordering::Relaxed);
            }
        }
    };
    thread::scope(|scope| {
        for _ in 0..helpers {
            // Where no thread can be had, this one does it all.
            let _ = thread::Builder::new().spawn_scoped(scope, work);
        }
        work();
    });
    invalid.into_inner()
}

/// How many threads can run at once; asked once, because asking reads files.
fn processors() -> usize {
    static PROCESSORS: OnceLock<usize> = OnceLock::new();
    *PROCESSORS
        .get_or_init(|| thread::available_parallelism().map_or(1, |count| count.get().min(MOST_THREADS)))
}

/// Works out the rows from `start` on. Inputs that are not `apart` from the output are copied before it is written.
///
/// # Safety
/// As for [`sweep`].
unsafe fn part(
    formula: &dyn AnyFormula,
    columns: &Columns,
    apart: [bool; MOST],
    start: usize,
    rows: usize,
) -> bool {
    let inputs = columns.inputs.get(..columns.count).unwrap_or_default();
    let mut copies = [[0.0; BLOCK]; MOST];
    for (copy, input) in copies.iter_mut().zip(inputs) {
        if input.step == 0 {
            // SAFETY: a column holds at least one value when there are rows.
            copy.fill(unsafe { input.start.cast::<f64>().read_unaligned() });
        }
    }
    let mut scattered = [0.0; BLOCK];
    let mut invalid = false;
    let mut done = 0;
    while done < rows {
        let count = BLOCK.min(rows - done);
        let at = (start + done) as isize;
        let mut slices: [&[f64]; MOST] = [&[]; MOST];
        for (((slice, copy), input), apart) in slices.iter_mut().zip(&mut copies).zip(inputs).zip(apart) {
            // SAFETY: the rows from `at` on lie within the column.
            let first = unsafe { input.start.offset(at * input.step) };
            *slice = if apart && input.is_slice() {
                // SAFETY: `count` aligned values side by side, that nothing writes meanwhile.
                unsafe { std::slice::from_raw_parts(first.cast::<f64>(), count) }
            } else {
                if input.step != 0 {
                    for (row, value) in copy.iter_mut().take(count).enumerate() {
                        // SAFETY: as above, one value at a time.
                        *value =
                            unsafe { first.offset(row as isize * input.step).cast::<f64>().read_unaligned() };
                    }
                }
                copy.get(..count).unwrap_or_default()
            };
        }
        let slices = slices.get(..inputs.len()).unwrap_or_default();
        // SAFETY: the rows from `at` on lie within the column.
        let first = unsafe { columns.output.start.offset(at * columns.output.step) };
        let direct = columns.output.is_slice();
        let results: &mut [f64] = if direct {
            // SAFETY: `count` aligned values side by side that are ours to write; no slice of the inputs overlaps them.
            unsafe { std::slice::from_raw_parts_mut(first.cast::<f64>(), count) }
        } else {
            scattered.get_mut(..count).unwrap_or_default()
        };
        if formula.fill(slices, results).is_err() {
            results.fill(f64::NAN);
        }
        invalid = invalid || has_nan(results) && is_invalid(slices, results);
        if !direct {
            for (row, value) in results.iter().enumerate() {
                // SAFETY: as above, one value at a time.
                unsafe {
                    first.offset(row as isize * columns.output.step).cast::<f64>().write_unaligned(*value)
                };
            }
        }
        done += count;
    }
    invalid
}

/// Whether a NaN may be among the values.
fn has_nan(values: &[f64]) -> bool {
    struct Sum<'a>(&'a [f64]);
    impl pulp::WithSimd for Sum<'_> {
        type Output = bool;
        #[inline(always)]
        fn with_simd<S: pulp::Simd>(self, _: S) -> bool {
            // Zero times a number is zero, unless it is no finite number.
            let (chunks, rest) = self.0.as_chunks::<32>();
            let mut sums = [0.0; 32];
            for chunk in chunks {
                for (sum, value) in sums.iter_mut().zip(chunk) {
                    *sum += value * 0.0;
                }
            }
            sums.iter().sum::<f64>().is_nan() || rest.iter().any(|value| value.is_nan())
        }
    }
    pulp::Arch::new().dispatch(Sum(values))
}

/// Whether some row has no result although each of its inputs is a number.
fn is_invalid(columns: &[&[f64]], results: &[f64]) -> bool {
    results.iter().enumerate().any(|(row, result)| {
        result.is_nan() && columns.iter().all(|column| column.get(row).is_some_and(|value| !value.is_nan()))
    })
}
