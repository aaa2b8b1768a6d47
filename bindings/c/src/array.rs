//! Whole columns, wherever they lie.

use std::slice;

use overwater::scalar::Formula;

use crate::column::{self, Column};
use crate::error::{Fault, ow_error};
use crate::gas;
use crate::guard::guard;

/// Rows that are gathered at a time when the columns are not plain arrays: small enough to stay in the nearest cache.
const BLOCK: usize = 256;

/// A formula over `count` rows. A row out of range gives NaN, and so does one without a result.
///
/// # Safety
/// For `count` rows the inputs may be read and the result written to, unless NULL; nobody else writes to the inputs or touches
/// the result meanwhile. `error` as for [`guard`].
#[inline(always)]
pub(crate) unsafe fn array<F: Formula<IN>, const IN: usize>(
    formula: &F,
    count: usize,
    inputs: [(*const f64, isize); IN],
    result: (*mut f64, isize),
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { guard(error, || rows(formula, count, inputs, result)) }
}

/// The same for the formula of a gas.
///
/// # Safety
/// As for [`array`].
#[inline(always)]
pub(crate) unsafe fn array_of_gas<F: Formula<IN>, const IN: usize>(
    of: impl FnOnce(gas::Gas) -> overwater::Result<F>,
    gas: i32,
    count: usize,
    inputs: [(*const f64, isize); IN],
    result: (*mut f64, isize),
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { guard(error, || rows(&gas::formula(of, gas)?, count, inputs, result)) }
}

/// # Safety
/// As for [`array`].
unsafe fn rows<F: Formula<IN>, const IN: usize>(
    formula: &F,
    count: usize,
    inputs: [(*const f64, isize); IN],
    result: (*mut f64, isize),
) -> Result<(), Fault> {
    if count == 0 {
        return Ok(());
    }
    let mut named = formula.inputs().map(|bound| (bound.name, Column::input(std::ptr::null(), 0)));
    for ((_, column), (start, stride)) in named.iter_mut().zip(inputs) {
        *column = Column::input(start, stride);
    }
    let (columns, result) = column::checked(count, named, Column::result(result.0, result.1))?;

    // The result may be written in place only where nothing is read from there.
    let apart = columns.iter().all(|column| *column != result);
    let all_plain = columns.iter().all(Column::is_plain) && result.is_plain() && apart;
    let step = if all_plain { count } else { BLOCK };
    let mut gathered = [[0.0; BLOCK]; IN];
    let mut computed = [0.0; BLOCK];
    let mut done = 0;
    while done < count {
        let length = step.min(count - done);
        if !all_plain {
            for (buffer, column) in gathered.iter_mut().zip(columns).filter(|(_, column)| !column.is_plain())
            {
                for (place, number) in buffer.iter_mut().take(length).enumerate() {
                    // SAFETY: a row of an input, readable by the contract, at any address.
                    *number = unsafe { column.row(done + place).read_unaligned() };
                }
            }
        }
        let mut slices: [&[f64]; IN] = [&[]; IN];
        for ((slice, buffer), column) in slices.iter_mut().zip(&gathered).zip(columns) {
            *slice = if column.is_plain() {
                // SAFETY: an aligned array that nobody writes to while this slice lives: `result` is either elsewhere or
                // written through the buffer.
                unsafe { slice::from_raw_parts(column.row(done), length) }
            } else {
                buffer.get(..length).unwrap_or_default()
            };
        }
        if result.is_plain() && apart {
            // SAFETY: an aligned array, writable by the contract, that lies apart from every input.
            let results = unsafe { slice::from_raw_parts_mut(result.row(done), length) };
            fill(formula, slices, results)?;
        } else {
            let results = computed.get_mut(..length).unwrap_or_default();
            fill(formula, slices, results)?;
            for (place, number) in results.iter().enumerate() {
                // SAFETY: a row of the result, writable by the contract, at any address.
                unsafe { result.row(done + place).write_unaligned(*number) };
            }
        }
        done += length;
    }
    Ok(())
}

fn fill<F: Formula<IN>, const IN: usize>(
    formula: &F,
    columns: [&[f64]; IN],
    results: &mut [f64],
) -> Result<(), Fault> {
    formula.fill(columns, results).map_err(|refusal| Fault::of_core(&refusal, f64::NAN))
}
