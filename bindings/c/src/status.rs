//! What a function says of itself: 0 when it did what it was asked.

use overwater::Code;

/// Done.
pub const OW_OK: i32 = 0;
/// A number is NaN or infinite.
pub const OW_NOT_A_NUMBER: i32 = 1;
/// A number lies outside the range that is accepted.
pub const OW_OUT_OF_RANGE: i32 = 2;
/// Values that are each allowed do not go together.
pub const OW_CONTRADICTION: i32 = 3;
/// Something needed was not given.
pub const OW_MISSING: i32 = 4;
/// The same thing was given twice.
pub const OW_GIVEN_TWICE: i32 = 5;
/// A text has more than one reading.
pub const OW_AMBIGUOUS: i32 = 6;
/// A name, or the number of a gas, is not known.
pub const OW_UNKNOWN_NAME: i32 = 7;
/// A text does not follow its grammar.
pub const OW_SYNTAX: i32 = 8;
/// A chemical equation cannot be balanced.
pub const OW_NO_BALANCE: i32 = 9;
/// A chemical equation can be balanced in several independent ways.
pub const OW_MANY_BALANCES: i32 = 10;
/// A whole number is larger than can be held.
pub const OW_TOO_LARGE: i32 = 11;
/// The request is understood but cannot be met.
pub const OW_CANNOT_BE_MET: i32 = 12;
/// A refusal that this list does not have yet, named by `code` in `ow_error`; from `ow_respond`: the answer is an error.
pub const OW_REFUSED: i32 = 99;
/// A pointer that must not be NULL is NULL.
pub const OW_NULL: i32 = 100;
/// A struct does not stand at an address that is a multiple of its alignment. Numbers may stand anywhere.
pub const OW_MISALIGNED: i32 = 101;
/// A stride (in bytes) is shorter than a number, or 0 for a result of several rows.
pub const OW_STRIDE: i32 = 102;
/// The result overlaps an input and is neither that input nor another field of the same structs.
pub const OW_OVERLAP: i32 = 103;
/// A count, a stride or a length reaches beyond what an address space can hold.
pub const OW_OVERSIZE: i32 = 104;
/// `size` in a struct is not its size in this library.
pub const OW_STRUCT_SIZE: i32 = 105;
/// The buffer is too small; nothing was written to it, and `needed` says how many bytes it takes.
pub const OW_BUFFER_TOO_SMALL: i32 = 106;
/// A fault of this library; please report it.
pub const OW_INTERNAL: i32 = 199;

/// The status of a refusal of the core.
pub(crate) fn of(code: Code) -> i32 {
    match code {
        Code::NotANumber => OW_NOT_A_NUMBER,
        Code::OutOfRange => OW_OUT_OF_RANGE,
        Code::Contradiction => OW_CONTRADICTION,
        Code::Missing => OW_MISSING,
        Code::GivenTwice => OW_GIVEN_TWICE,
        Code::Ambiguous => OW_AMBIGUOUS,
        Code::UnknownName => OW_UNKNOWN_NAME,
        Code::Syntax => OW_SYNTAX,
        Code::NoBalance => OW_NO_BALANCE,
        Code::ManyBalances => OW_MANY_BALANCES,
        Code::TooLarge => OW_TOO_LARGE,
        Code::CannotBeMet => OW_CANNOT_BE_MET,
        _ => OW_REFUSED,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_of_the_core_has_a_status_of_its_own() {
        let mut seen: Vec<i32> = Code::ALL.into_iter().map(of).collect();
        seen.sort_unstable();
        assert_eq!(seen, (1..=12).collect::<Vec<i32>>());
    }
}
