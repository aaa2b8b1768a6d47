//! Nothing that goes wrong inside leaves the door as a panic.

use std::panic::{AssertUnwindSafe, catch_unwind};

use super::envelope::internal;
use crate::Refusal;

/// What `work` gives; a panic is a refusal with the code `internal`.
pub(super) fn guarded<T>(work: impl FnOnce() -> Result<T, Box<Refusal>>) -> Result<T, Box<Refusal>> {
    // What a panic leaves half-done is dropped: the request is only read, and nothing outlives the call.
    catch_unwind(AssertUnwindSafe(work))
        .unwrap_or_else(|_| Err(internal("the library failed on this request")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_becomes_a_refusal() {
        let refusal = guarded::<()>(|| panic!("broken on purpose")).unwrap_err();
        assert_eq!(refusal.code, "internal");
        assert_eq!(guarded(|| Ok(3)), Ok(3));
    }
}
