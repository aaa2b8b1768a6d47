//! Which library this is.

use std::ffi::c_char;

/// Raised by every change that a program built against the header before would notice. Functions are only added otherwise.
pub const OW_ABI_VERSION: i32 = 1;

/// The OW_ABI_VERSION that the library was built with: compare it with that of your header. Since 0.1.0.
#[unsafe(no_mangle)]
pub extern "C" fn ow_abi_version() -> i32 {
    OW_ABI_VERSION
}

/// The version of the library, as in "0.1.0"; lives as long as the library is loaded. Since 0.1.0.
#[unsafe(no_mangle)]
pub extern "C" fn ow_version() -> *const c_char {
    concat!(env!("CARGO_PKG_VERSION"), "\0").as_ptr().cast()
}

/// Version, target, width of a pointer and kind of build in one line; lives as long as the library is loaded. Since 0.1.0.
#[unsafe(no_mangle)]
pub extern "C" fn ow_build_info() -> *const c_char {
    BUILD.as_ptr().cast()
}

const BUILD: &str = concat!(
    "overwater ",
    env!("CARGO_PKG_VERSION"),
    ", C interface 1, target ",
    env!("OVERWATER_TARGET"),
    ", profile ",
    env!("OVERWATER_PROFILE"),
    "\0"
);

#[cfg(test)]
mod tests {
    use super::*;
    use std::ffi::CStr;

    #[test]
    fn the_texts_end_with_nul_and_say_the_version() {
        // SAFETY: both end with NUL.
        let (version, build) = unsafe { (CStr::from_ptr(ow_version()), CStr::from_ptr(ow_build_info())) };
        assert_eq!(version.to_str(), Ok(env!("CARGO_PKG_VERSION")));
        let build = build.to_str().unwrap();
        assert!(build.starts_with(&format!("overwater {}, ", env!("CARGO_PKG_VERSION"))), "{build}");
        assert!(build.contains(&format!("C interface {OW_ABI_VERSION}, ")), "{build}");
        assert!(build.contains(std::env::consts::ARCH), "{build}");
    }
}
