//! Why a function refused, in memory that the caller owns.

use std::ffi::c_char;

use overwater::Error;

use crate::status;

/// Room for the name of a code, its final NUL included.
pub const OW_CODE_BYTES: usize = 32;
/// Room for the name of a parameter, its final NUL included.
pub const OW_PARAMETER_BYTES: usize = 64;

/// Why a function refused. The caller owns it and the buffer that `message` points to; nothing needs to be freed.
///
/// Before the first call set `size` to `sizeof(ow_error)`, `message` and `message_capacity` to a buffer or to NULL and 0, the
/// rest to 0 (`ow_error error = {sizeof(ow_error)};` does). It is written only where the status is not OW_OK. One for each
/// thread. All texts are UTF-8 and end with NUL; one that does not fit is cut between two characters.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types)]
pub struct ow_error {
    /// `sizeof(ow_error)`, set by the caller.
    pub size: usize,
    /// The status that was returned.
    pub status: i32,
    /// 0.
    pub reserved: i32,
    /// The number that was refused; NaN where it was none.
    pub value: f64,
    /// The stable name of the refusal, as in `out_of_range`.
    pub code: [c_char; OW_CODE_BYTES],
    /// The parameter that it is about, as in `temperature_c`; empty where it is about none.
    pub parameter: [c_char; OW_PARAMETER_BYTES],
    /// The caller's buffer for a sentence: the value with its unit, what is allowed, what to do instead. May be NULL.
    pub message: *mut c_char,
    /// How many bytes `message` has room for.
    pub message_capacity: usize,
    /// How many bytes the whole message takes, its final NUL included.
    pub message_needed: usize,
}

impl ow_error {
    /// Whether it can be written to: NULL (no details wanted), or aligned and of the right size.
    ///
    /// # Safety
    /// `error` is NULL or points to readable memory of at least a `size_t`.
    #[inline(always)]
    pub(crate) unsafe fn check(error: *const ow_error) -> Result<(), i32> {
        if error.is_null() {
            return Ok(());
        }
        if !error.is_aligned() {
            return Err(status::OW_MISALIGNED);
        }
        // SAFETY: not NULL, aligned, and readable by the contract. Only the first field is read.
        let size = unsafe { (&raw const (*error).size).read() };
        if size == size_of::<ow_error>() { Ok(()) } else { Err(status::OW_STRUCT_SIZE) }
    }
}

/// A refusal on its way out.
pub(crate) struct Fault {
    status: i32,
    code: &'static str,
    parameter: String,
    value: f64,
    message: String,
}

impl Fault {
    /// A refusal of the core; `value` is the number that it is about, where there is one.
    #[cold]
    pub(crate) fn of_core(error: &Error, value: f64) -> Fault {
        Fault {
            status: status::of(error.code),
            code: error.code.name(),
            parameter: error.parameter.clone().into_owned(),
            value,
            message: error.to_string(),
        }
    }

    /// A mistake in how a function was called, or a fault of ours.
    #[cold]
    pub(crate) fn of_caller(status: i32, parameter: &str, message: impl Into<String>) -> Fault {
        let code = match status {
            status::OW_UNKNOWN_NAME => "unknown_name",
            status::OW_NULL => "null",
            status::OW_STRIDE => "stride",
            status::OW_OVERLAP => "overlap",
            status::OW_OVERSIZE => "oversize",
            status::OW_BUFFER_TOO_SMALL => "buffer_too_small",
            _ => "internal",
        };
        Fault { status, code, parameter: parameter.to_owned(), value: f64::NAN, message: message.into() }
    }
}

/// Copies the beginning of `text` that fits, cut between two characters, and a final NUL.
///
/// # Safety
/// `capacity` bytes from `target` on may be written; `target` may be NULL when `capacity` is 0.
unsafe fn copy(text: &str, target: *mut c_char, capacity: usize) {
    let Some(room) = capacity.checked_sub(1) else { return };
    let most = room.min(text.len());
    let length = (0..=most).rev().find(|length| text.is_char_boundary(*length)).unwrap_or(0);
    // SAFETY: length + 1 bytes fit.
    unsafe {
        target.cast::<u8>().copy_from(text.as_ptr(), length);
        target.add(length).write(0);
    }
}

/// Writes a refusal down and gives its status.
///
/// # Safety
/// `error` is NULL or has passed [`ow_error::check`] and may be written to, and so may its message buffer.
#[cold]
pub(crate) unsafe fn report(error: *mut ow_error, fault: &Fault) -> i32 {
    // SAFETY: NULL or valid by the contract.
    if let Some(error) = unsafe { error.as_mut() } {
        error.status = fault.status;
        error.reserved = 0;
        error.value = fault.value;
        error.message_needed = fault.message.len() + 1;
        let capacity = if error.message.is_null() { 0 } else { error.message_capacity };
        // SAFETY: the arrays have these lengths; the buffer has its length by the contract.
        unsafe {
            copy(fault.code, error.code.as_mut_ptr(), OW_CODE_BYTES);
            copy(&fault.parameter, error.parameter.as_mut_ptr(), OW_PARAMETER_BYTES);
            copy(&fault.message, error.message, capacity);
        }
    }
    fault.status
}

/// `sizeof(ow_error)` in this library, for callers without the header. Since 0.1.0.
#[unsafe(no_mangle)]
pub extern "C" fn ow_error_size() -> usize {
    size_of::<ow_error>()
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use std::ffi::CStr;

    fn empty() -> ow_error {
        ow_error {
            size: size_of::<ow_error>(),
            status: -1,
            reserved: -1,
            value: 0.0,
            code: [1; OW_CODE_BYTES],
            parameter: [1; OW_PARAMETER_BYTES],
            message: std::ptr::null_mut(),
            message_capacity: 0,
            message_needed: 0,
        }
    }

    /// Calls with an error struct that has a buffer; the status and the message.
    pub(crate) fn with_error(call: impl FnOnce(*mut ow_error) -> i32) -> (i32, String) {
        let mut buffer = [1 as c_char; 512];
        let mut error = empty();
        error.message = buffer.as_mut_ptr();
        error.message_capacity = buffer.len();
        let status = call(&raw mut error);
        assert_eq!(status, error.status);
        // SAFETY: the buffer ends with NUL after a refusal, which the status says it was.
        let text = unsafe { CStr::from_ptr(buffer.as_ptr()) }.to_str().unwrap().to_owned();
        assert_eq!(error.message_needed, text.len() + 1);
        (status, text)
    }

    #[test]
    fn a_text_is_cut_between_characters_and_ends_with_nul() {
        for (capacity, expected) in [(1, ""), (2, "a"), (3, "a"), (4, "a°"), (5, "a°C"), (9, "a°C")] {
            let mut buffer = [7 as c_char; 10];
            // SAFETY: the buffer is longer than every capacity.
            unsafe { copy("a°C", buffer.as_mut_ptr(), capacity) };
            // SAFETY: ends with NUL.
            let text = unsafe { CStr::from_ptr(buffer.as_ptr()) };
            assert_eq!(text.to_str().unwrap(), expected, "{capacity}");
            assert!(buffer[expected.len() + 1..].iter().all(|byte| *byte == 7), "{capacity}: written beyond");
        }
        // SAFETY: nothing is written.
        unsafe { copy("a", std::ptr::null_mut(), 0) };
    }

    #[test]
    fn a_message_is_measured_even_where_there_is_no_buffer() {
        let fault = Fault::of_caller(status::OW_NULL, &"x".repeat(100), "eleven long");
        let mut error = empty();
        // A capacity without a buffer counts as none.
        error.message_capacity = 40;
        // SAFETY: the struct lives during the call.
        let status = unsafe { report(&raw mut error, &fault) };
        assert_eq!((status, error.status, error.message_needed), (100, 100, 12));
        assert!(error.value.is_nan() && error.reserved == 0);
        // SAFETY: both end with NUL.
        let (code, parameter) =
            unsafe { (CStr::from_ptr(error.code.as_ptr()), CStr::from_ptr(error.parameter.as_ptr())) };
        assert_eq!(code.to_str(), Ok("null"));
        assert_eq!(parameter.to_bytes().len(), OW_PARAMETER_BYTES - 1);
    }

    #[test]
    fn a_struct_of_another_size_or_at_an_odd_address_is_refused() {
        let mut error = empty();
        let here: *mut ow_error = &raw mut error;
        // SAFETY: the struct lives; a misaligned address is not read.
        unsafe {
            assert_eq!(ow_error::check(here), Ok(()));
            assert_eq!(ow_error::check(here.cast::<u8>().wrapping_add(1).cast()), Err(status::OW_MISALIGNED));
            (*here).size -= 1;
            assert_eq!(ow_error::check(here), Err(status::OW_STRUCT_SIZE));
            (*here).size += 2;
            assert_eq!(ow_error::check(here), Err(status::OW_STRUCT_SIZE));
            assert_eq!(ow_error::check(std::ptr::null()), Ok(()));
        }
    }
}
