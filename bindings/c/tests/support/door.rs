//! A formula behind its two functions, whatever the number of its inputs.

use std::ffi::{CStr, c_char};

use overwater_c::error::{OW_CODE_BYTES, OW_PARAMETER_BYTES, ow_error};

type Number = Box<dyn Fn(&[f64], *mut f64, *mut ow_error) -> i32 + Sync>;
type Columns = Box<dyn Fn(usize, &[(*const f64, isize)], *mut f64, isize, *mut ow_error) -> i32 + Sync>;

/// A formula of the catalogue as C sees it.
pub struct Door {
    /// Its name in the catalogue.
    pub name: &'static str,
    /// One set of numbers.
    pub number: Number,
    /// Columns.
    pub columns: Columns,
}

macro_rules! door {
    ($plain:ident, $gas:ident, $($place:literal),*) => {
        macro_rules! $plain {
            ($name:ident, $room:path, $array:path) => {
                Door {
                    name: stringify!($name),
                    number: Box::new(|v, result, error| unsafe { $room($(v[$place],)* result, error) }),
                    columns: Box::new(|count, c, result, stride, error| unsafe {
                        $array(count, $(c[$place].0, c[$place].1,)* result, stride, error)
                    }),
                }
            };
        }
        macro_rules! $gas {
            ($name:ident, $number:literal, $room:path, $array:path) => {
                Door {
                    name: stringify!($name),
                    number: Box::new(|v, result, error| unsafe {
                        $room($number, $(v[$place],)* result, error)
                    }),
                    columns: Box::new(|count, c, result, stride, error| unsafe {
                        $array($number, count, $(c[$place].0, c[$place].1,)* result, stride, error)
                    }),
                }
            };
        }
        #[allow(unused_imports)]
        pub(crate) use {$plain, $gas};
    };
}

door!(plain1, gas1, 0);
door!(plain2, gas2, 0, 1);
door!(plain3, gas3, 0, 1, 2);
door!(plain4, gas4, 0, 1, 2, 3);
door!(plain5, gas5, 0, 1, 2, 3, 4);

/// What an error struct says after a call.
#[allow(dead_code)]
#[derive(Debug)]
pub struct Details {
    pub status: i32,
    pub value: f64,
    pub code: String,
    pub parameter: String,
    pub message: String,
}

/// Calls with an error struct and gives what it says, when the call refuses.
#[allow(dead_code)]
pub fn details(call: impl FnOnce(*mut ow_error) -> i32) -> Option<Details> {
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
