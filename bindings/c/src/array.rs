//! Whole columns, wherever they lie.

use std::collections::BTreeMap;
use std::slice;
use std::sync::OnceLock;

use overwater::catalogue::{self, AnyFormula};
use overwater::{Code, Error};

use crate::column::{self, Column};
use crate::error::{Fault, ow_error};
use crate::gas;
use crate::guard::guard;

/// Rows that are gathered at a time when the columns are not plain arrays: small enough to stay in the nearest cache.
const BLOCK: usize = 256;

/// A formula of the catalogue over `count` rows. A row out of range gives NaN, and so does one without a result.
///
/// The loops over rows are those of the core, found by name: compiled once more here, for three instruction sets, they would
/// be most of the library.
///
/// # Safety
/// For `count` rows the inputs may be read and the result written to, unless NULL; nobody else writes to the inputs or touches
/// the result meanwhile. `error` as for [`guard`].
pub(crate) unsafe fn array<const IN: usize>(
    name: &str,
    count: usize,
    inputs: [(*const f64, isize); IN],
    result: (*mut f64, isize),
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { guard(error, || rows(named(name)?, count, inputs, result)) }
}

/// The same for the formula of a gas; `of` refuses a gas that has none.
///
/// # Safety
/// As for [`array`].
pub(crate) unsafe fn array_of_gas<F, const IN: usize>(
    of: impl FnOnce(gas::Gas) -> overwater::Result<F>,
    family: &str,
    gas: i32,
    count: usize,
    inputs: [(*const f64, isize); IN],
    result: (*mut f64, isize),
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        guard(error, || {
            let mut gas_name = "";
            gas::formula(
                |gas| {
                    gas_name = gas.name();
                    of(gas)
                },
                gas,
            )?;
            rows(named(&catalogue::of_gas(family, gas_name))?, count, inputs, result)
        })
    }
}

/// A formula by its name; they are made at the first call and never change.
fn named(name: &str) -> Result<&'static dyn AnyFormula, Fault> {
    static FORMULAS: OnceLock<BTreeMap<String, Box<dyn AnyFormula>>> = OnceLock::new();
    let formulas = FORMULAS.get_or_init(|| {
        catalogue::all().into_iter().map(|formula| (formula.name().to_owned(), formula)).collect()
    });
    formulas.get(name).map(AsRef::as_ref).ok_or_else(|| {
        let error = Error::new(Code::UnknownName, "formula").value(name.to_owned());
        Fault::of_core(&error, f64::NAN)
    })
}

/// # Safety
/// As for [`array`].
unsafe fn rows<const IN: usize>(
    formula: &dyn AnyFormula,
    count: usize,
    inputs: [(*const f64, isize); IN],
    result: (*mut f64, isize),
) -> Result<(), Fault> {
    if count == 0 {
        return Ok(());
    }
    let mut named = inputs.map(|(start, stride)| ("", Column::input(start, stride)));
    for ((name, _), bound) in named.iter_mut().zip(formula.inputs()) {
        *name = bound.name;
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

fn fill<const IN: usize>(
    formula: &dyn AnyFormula,
    columns: [&[f64]; IN],
    results: &mut [f64],
) -> Result<(), Fault> {
    formula.fill(&columns, results).map_err(|refusal| Fault::of_core(&refusal, f64::NAN))
}
