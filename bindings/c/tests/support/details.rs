//! Why a call refused.

use std::ffi::{CStr, c_char};

use overwater_c::error::{OW_CODE_BYTES, OW_PARAMETER_BYTES, ow_error};

/// What an error struct says after a call.
#[derive(Debug)]
#[allow(dead_code)] // Not every test reads all of it.
pub(crate) struct Details {
    pub(crate) status: i32,
    pub(crate) value: f64,
    pub(crate) code: String,
    pub(crate) parameter: String,
    pub(crate) message: String,
}

/// Calls with an error struct and gives what it says, when the call refuses.
pub(crate) fn details(call: impl FnOnce(*mut ow_error) -> i32) -> Option<Details> {
    let mut buffer = [1 as c_char; 4096];
    let mut error = ow_error {
        size: size_of::<ow_error>(),
        status: 0,
        reserved: 0,
        value: 0.0,
        code: [0; OW_CODE_BYTES],
        parameter: [0; OW_PARAMETER_BYTES],
        message: buffer.as_mut_ptr(),
        message_capacity: buffer.len(),
        message_needed: 0,
    };
    let status = call(&raw mut error);
    assert_eq!(status, error.status, "written when, and only when, it refuses");
    let text = |start: *const c_char| unsafe { CStr::from_ptr(start) }.to_str().unwrap().to_owned();
    (status != 0).then(|| Details {
        status,
        value: error.value,
        code: text(error.code.as_ptr()),
        parameter: text(error.parameter.as_ptr()),
        message: text(buffer.as_ptr()),
    })
}
