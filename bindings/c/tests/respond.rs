//! The one door for everything that is not one formula.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // A test fails by panicking.
#![allow(clippy::undocumented_unsafe_blocks)] // What is pointed to lives in the same function.

mod support {
    pub(crate) mod details;
}

use std::ffi::{CStr, c_char};
use std::ptr::{null, null_mut};

use overwater_c::respond::ow_respond;
use overwater_c::status::*;
use support::details::details;

const REQUEST: &str = r#"{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}"#;

/// Calls with a buffer of `capacity` bytes between two guards; status, needed, and the answer where one was written.
fn call(request: &[u8], capacity: usize) -> (i32, usize, Option<String>) {
    let mut buffer: Vec<c_char> = vec![7; capacity + 16];
    let mut needed = usize::MAX;
    let status = unsafe {
        let start = buffer.as_mut_ptr().add(8);
        ow_respond(request.as_ptr().cast(), request.len(), start, capacity, &raw mut needed, null_mut())
    };
    let untouched = buffer.iter().take(8).chain(buffer.iter().skip(8 + capacity)).all(|byte| *byte == 7);
    assert!(untouched, "written beside the buffer");
    let written = buffer[8..8 + capacity].iter().any(|byte| *byte != 7);
    let text = written.then(|| {
        assert_eq!(buffer[8 + needed - 1], 0);
        unsafe { CStr::from_ptr(buffer.as_ptr().add(8)) }.to_str().unwrap().to_owned()
    });
    (status, needed, text)
}

#[test]
fn the_answer_is_that_of_the_exchange_in_any_buffer_that_is_large_enough() {
    let expected = overwater_exchange::respond(REQUEST.as_bytes());
    // Conventional atomic weights: 2 x 1.008 + 2 x 15.999.
    assert!(expected.contains("34.014"), "{expected}");
    let needed = expected.len() + 1;
    for capacity in [needed, needed + 1, needed + 1000] {
        assert_eq!(call(REQUEST.as_bytes(), capacity), (OW_OK, needed, Some(expected.clone())));
    }
    for capacity in [0, 1, needed - 1] {
        assert_eq!(call(REQUEST.as_bytes(), capacity), (OW_BUFFER_TOO_SMALL, needed, None));
    }
}

#[test]
fn whatever_the_bytes_are_there_is_an_answer() {
    let deep = "[".repeat(10_000);
    let long = vec![b' '; 100_000_000];
    for request in [&b""[..], b"\0", b"{\"format\": 1,\n nonsense}", b"\xff\xfe", deep.as_bytes(), &long] {
        let (status, needed, text) = call(request, 100_000);
        assert_eq!(status, OW_REFUSED, "{text:?}");
        let text = text.unwrap();
        assert_eq!((needed, &*text), (text.len() + 1, &*overwater_exchange::respond(request)));
        assert!(text.contains("\"error\""), "{text}");
    }
}

#[test]
fn misuse_is_told() {
    let mut needed = 1;
    let mut buffer = [0 as c_char; 8];
    let request = REQUEST.as_ptr().cast();
    let all = REQUEST.len();
    let here: *mut c_char = buffer.as_mut_ptr();
    let counted = &raw mut needed;
    let told = |request, length, buffer, capacity, needed| {
        let told = details(|error| unsafe { ow_respond(request, length, buffer, capacity, needed, error) });
        told.map(|told| (told.status, told.parameter)).unwrap()
    };
    assert_eq!(told(null(), 1, here, 8, counted), (OW_NULL, "request".to_owned()));
    assert_eq!(told(request, all, null_mut(), 8, counted), (OW_NULL, "buffer".to_owned()));
    assert_eq!(told(request, all, here, 8, null_mut()), (OW_NULL, "needed".to_owned()));
    assert_eq!(told(request, usize::MAX, here, 8, counted), (OW_OVERSIZE, "request".to_owned()));
    assert_eq!(told(request, all, here, usize::MAX, counted), (OW_OVERSIZE, "buffer".to_owned()));
    assert_eq!(unsafe { *counted }, 0);
    assert_eq!(told(request, all, here, 8, counted), (OW_BUFFER_TOO_SMALL, "buffer".to_owned()));
    assert!(unsafe { *counted } > 8 && buffer == [0; 8]);
    // Nothing is a request too, and is answered.
    assert_eq!(told(null(), 0, null_mut(), 0, counted), (OW_BUFFER_TOO_SMALL, "buffer".to_owned()));
}
