//! The C interface of overwater.
//!
//! `include/overwater.h` is written from this crate and is its documentation for C. A function here coerces, calls the core or
//! the exchange, and converts; no physics lives here. What all functions share:
//!
//! * Status codes as `int32_t` ([`status`]), details in a struct that the caller owns ([`error`]).
//! * No state: every function may be called from any thread at any time.
//! * No panic leaves: it is caught and reported as [`OW_INTERNAL`](status::OW_INTERNAL) (`guard`).
//! * Signatures use `double`, `int32_t`, `size_t`, `ptrdiff_t` and pointers, nothing else.

pub mod about;
mod array;
mod column;
pub mod elementwise;
pub mod error;
pub mod gas;
mod guard;
pub mod respond;
mod scalar;
pub mod status;
