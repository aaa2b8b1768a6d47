//! The floating-point flags of the processor, by which NumPy learns of invalid values.

use std::ffi::c_int;
use std::hint::black_box;

#[cfg_attr(unix, link(name = "m"))]
unsafe extern "C" {
    fn fetestexcept(which: c_int) -> c_int;
    fn feclearexcept(which: c_int) -> c_int;
    fn feraiseexcept(which: c_int) -> c_int;
}

/// Every flag; bits that a platform does not have are ignored by it.
const EVERY: c_int = 0x3f;

/// Runs `work`, and leaves the flags as they were, but for the invalid flag where `work` says so. What the arithmetic
/// inside did to the flags is forgotten: values out of range go through it before they become NaN.
pub(super) fn only_told(work: impl FnOnce() -> bool) {
    // SAFETY: functions of the C standard library without preconditions.
    let before = unsafe { fetestexcept(EVERY) };
    let invalid = work();
    // SAFETY: as above.
    unsafe {
        feclearexcept(EVERY);
        if before != 0 {
            feraiseexcept(before);
        }
    }
    if invalid {
        black_box(black_box(f64::INFINITY) * black_box(0.0));
    }
}
