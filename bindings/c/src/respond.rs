//! Everything that is not one formula: a request in JSON, an answer in JSON.

use std::ffi::c_char;
use std::slice;

use crate::error::{Fault, ow_error};
use crate::guard::guard;
use crate::status::{OW_BUFFER_TOO_SMALL, OW_NULL, OW_OK, OW_OVERSIZE, OW_REFUSED};

/// Answers a request in JSON with JSON, both UTF-8.
///
/// request: `length` bytes, no final NUL needed; bytes that are no JSON are refused like any other request.
/// buffer: room for `capacity` bytes; the answer with a final NUL is written there, or nothing when it is too small. May be
///   NULL with the capacity 0, to ask for the length only; it must not overlap the request.
/// needed: how many bytes the answer takes, its final NUL included; 0 when there is none.
///
/// OW_OK: the answer is in the buffer. OW_REFUSED: an error in JSON is in the buffer. OW_BUFFER_TOO_SMALL: call again with
/// `needed` bytes; the same request gives the same bytes. Other statuses: there is no answer, see `error`.
/// Since 0.1.0.
///
/// # Safety
/// The rules for pointers at the top of the header.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ow_respond(
    request: *const c_char,
    length: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut ow_error,
) -> i32 {
    let mut answered = true;
    // SAFETY: passed on.
    let status = unsafe {
        guard(error, || {
            let null =
                |name, what| Fault::of_caller(OW_NULL, name, format!("{name} is NULL; point it to {what}"));
            if needed.is_null() {
                return Err(null("needed", "a size_t"));
            }
            needed.write_unaligned(0);
            if request.is_null() && length > 0 {
                return Err(null("request", "the bytes of the request"));
            }
            if buffer.is_null() && capacity > 0 {
                return Err(null("buffer", "as many bytes as capacity says, or give the capacity 0"));
            }
            for (name, start, bytes) in
                [("request", request.addr(), length), ("buffer", buffer.addr(), capacity)]
            {
                if isize::try_from(bytes).is_err() || start.checked_add(bytes).is_none() {
                    let message = format!("{name} cannot hold {bytes} bytes");
                    return Err(Fault::of_caller(OW_OVERSIZE, name, message));
                }
            }
            let request: &[u8] =
                if request.is_null() { &[] } else { slice::from_raw_parts(request.cast(), length) };
            let (answer, is_answer) = overwater_exchange::respond_with_status(request);
            needed.write_unaligned(answer.len() + 1);
            if capacity <= answer.len() {
                let message =
                    format!("the answer takes {} bytes, the buffer has {capacity}", answer.len() + 1);
                return Err(Fault::of_caller(OW_BUFFER_TOO_SMALL, "buffer", message));
            }
            buffer.cast::<u8>().copy_from_nonoverlapping(answer.as_ptr(), answer.len());
            buffer.add(answer.len()).write(0);
            answered = is_answer;
            Ok(())
        })
    };
    if status == OW_OK && !answered { OW_REFUSED } else { status }
}
