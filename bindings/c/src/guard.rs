//! The door that no panic leaves by.

use std::any::Any;
use std::panic::{AssertUnwindSafe, catch_unwind};

use crate::error::{Fault, ow_error, report};
use crate::status;

/// Runs what a function of the interface does, and turns its outcome into a status with details in `error`.
///
/// # Safety
/// `error` is NULL or points to an `ow_error` that the caller lets us write to.
#[inline(always)]
pub(crate) unsafe fn guard(error: *mut ow_error, work: impl FnOnce() -> Result<(), Fault>) -> i32 {
    // SAFETY: passed on from the caller.
    if let Err(refusal) = unsafe { ow_error::check(error) } {
        return refusal;
    }
    // The closures hold numbers and pointers only: nothing that a panic could leave half done for somebody else.
    match catch_unwind(AssertUnwindSafe(work)) {
        Ok(Ok(())) => status::OW_OK,
        // SAFETY: checked above.
        Ok(Err(fault)) => unsafe { report(error, &fault) },
        // SAFETY: checked above.
        Err(panic) => unsafe { report(error, &internal(panic)) },
    }
}

#[cold]
fn internal(panic: Box<dyn Any + Send>) -> Fault {
    let text = panic
        .downcast_ref::<&str>()
        .map(|text| (*text).to_owned())
        .or_else(|| panic.downcast_ref::<String>().cloned())
        .unwrap_or_default();
    // What was thrown may itself panic when it is dropped.
    std::mem::forget(panic);
    Fault::of_caller(status::OW_INTERNAL, "", format!("a fault of this library, please report it: {text}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::error::tests::with_error;

    #[test]
    fn a_panic_is_a_status_and_a_message() {
        let (status, text) = with_error(|error| {
            // SAFETY: the error struct lives during the call.
            unsafe { guard(error, || panic!("the reading {} was not met", 7)) }
        });
        assert_eq!(status, status::OW_INTERNAL);
        assert!(text.ends_with("the reading 7 was not met"), "{text}");
    }

    #[test]
    fn what_was_thrown_is_not_dropped() {
        struct Worse;
        impl Drop for Worse {
            fn drop(&mut self) {
                panic!("dropped");
            }
        }
        // SAFETY: NULL is allowed.
        let status = unsafe { guard(std::ptr::null_mut(), || std::panic::panic_any(Worse)) };
        assert_eq!(status, status::OW_INTERNAL);
    }
}
