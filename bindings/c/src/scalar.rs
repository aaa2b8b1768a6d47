//! One set of numbers.

use overwater::scalar::Formula;

use crate::error::{Fault, ow_error};
use crate::gas;
use crate::guard::guard;
use crate::status::OW_NULL;

/// The number of a formula into `result`; NaN there when it refuses.
///
/// # Safety
/// `result` is NULL or may be written to; `error` as for [`guard`].
#[inline(always)]
pub(crate) unsafe fn scalar<F: Formula<IN>, const IN: usize>(
    formula: &F,
    inputs: [f64; IN],
    result: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe { guard(error, || number(formula, inputs, result)) }
}

/// The same for the formula of a gas.
///
/// # Safety
/// As for [`scalar`].
#[inline(always)]
pub(crate) unsafe fn scalar_of_gas<F: Formula<IN>, const IN: usize>(
    of: impl FnOnce(gas::Gas) -> overwater::Result<F>,
    gas: i32,
    inputs: [f64; IN],
    result: *mut f64,
    error: *mut ow_error,
) -> i32 {
    // SAFETY: passed on.
    unsafe {
        guard(error, || {
            let formula = gas::formula(of, gas).inspect_err(|_| nothing(result))?;
            number(&formula, inputs, result)
        })
    }
}

/// # Safety
/// `result` is NULL or may be written to.
unsafe fn nothing(result: *mut f64) {
    if !result.is_null() {
        // SAFETY: not NULL, and writable by the contract.
        unsafe { result.write_unaligned(f64::NAN) };
    }
}

/// # Safety
/// `result` is NULL or may be written to.
#[inline(always)]
unsafe fn number<F: Formula<IN>, const IN: usize>(
    formula: &F,
    inputs: [f64; IN],
    result: *mut f64,
) -> Result<(), Fault> {
    if result.is_null() {
        return Err(Fault::of_caller(OW_NULL, "result", "result is NULL; point it to a double"));
    }
    match formula.number(inputs) {
        Ok(value) => {
            // SAFETY: not NULL, and writable by the contract.
            unsafe { result.write_unaligned(value) };
            Ok(())
        }
        Err(refusal) => {
            let bounds = formula.inputs();
            let about = bounds.iter().zip(inputs).find(|(bound, _)| bound.name == refusal.parameter);
            let value = about.map_or(f64::NAN, |(_, value)| value);
            // SAFETY: passed on.
            unsafe { nothing(result) };
            Err(Fault::of_core(&refusal, value))
        }
    }
}
