//! Columns of numbers in somebody else's memory: where they lie, and whether two of them get in each other's way.

use crate::error::Fault;
use crate::status::{OW_NULL, OW_OVERLAP, OW_OVERSIZE, OW_STRIDE};

/// Bytes of a number.
const WIDTH: isize = size_of::<f64>() as isize;

/// A column: the address of its first number, and how many bytes further the next one is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Column {
    pub(crate) start: *mut u8,
    pub(crate) stride: isize,
}

impl Column {
    pub(crate) fn input(start: *const f64, stride: isize) -> Column {
        Column { start: start.cast_mut().cast(), stride }
    }

    pub(crate) fn result(start: *mut f64, stride: isize) -> Column {
        Column { start: start.cast(), stride }
    }

    /// Whether it is an array of doubles as the compiler would have it.
    #[inline(always)]
    pub(crate) fn is_plain(&self) -> bool {
        self.stride == WIDTH && self.start.cast::<f64>().is_aligned()
    }

    /// The address of a row.
    #[inline(always)]
    pub(crate) fn row(&self, row: usize) -> *mut f64 {
        // Inside an extent that `extent` found to fit, so nothing is cut off.
        self.start.wrapping_offset((row as isize).wrapping_mul(self.stride)).cast()
    }

    /// Its first byte and the one behind its last, for `count` rows, at least one.
    fn extent(&self, count: usize) -> Option<(usize, usize)> {
        let reach = isize::try_from(count - 1).ok()?.checked_mul(self.stride)?;
        let first = self.start.addr();
        let last = first.checked_add_signed(reach)?;
        let (least, greatest) = (first.min(last), first.max(last));
        let end = greatest.checked_add(size_of::<f64>())?;
        isize::try_from(end - least).ok().map(|_| (least, end))
    }
}

/// The columns when they can be used together for `count` rows, at least one.
///
/// A stride does not matter when there is one row. An input with the stride 0 gives every row the same number.
pub(crate) fn checked<const IN: usize>(
    count: usize,
    inputs: [(&'static str, Column); IN],
    result: Column,
) -> Result<([Column; IN], Column), Fault> {
    let result = one("result", result, count, false)?;
    let mut columns = [result; IN];
    for (column, (name, input)) in columns.iter_mut().zip(inputs) {
        *column = one(name, input, count, true)?;
        if in_the_way(*column, result, count) {
            return Err(Fault::of_caller(
                OW_OVERLAP,
                name,
                format!(
                    "the result overlaps {name}; give the column itself, another field of the same structs, or memory \
                     of its own"
                ),
            ));
        }
    }
    Ok((columns, result))
}

/// A column on its own.
fn one(name: &str, column: Column, count: usize, may_repeat: bool) -> Result<Column, Fault> {
    if column.start.is_null() {
        return Err(Fault::of_caller(OW_NULL, name, format!("{name} is NULL; point it to {count} numbers")));
    }
    let column = if count == 1 { Column { stride: WIDTH, ..column } } else { column };
    let repeats = column.stride == 0 && may_repeat;
    if column.stride.unsigned_abs() < WIDTH.unsigned_abs() && !repeats {
        let allowed = if may_repeat { ", 0 for one number in every row" } else { "" };
        return Err(Fault::of_caller(
            OW_STRIDE,
            name,
            format!(
                "{name} has the stride {}; strides are in bytes: 8 for an array of doubles, the size of the struct for a \
                 field of it{allowed}",
                column.stride
            ),
        ));
    }
    if column.extent(count).is_none() {
        return Err(Fault::of_caller(
            OW_OVERSIZE,
            name,
            format!("{name} does not fit into memory with {count} rows of stride {}", column.stride),
        ));
    }
    Ok(column)
}

/// Whether writing `result` could change a row of `input` that is another row of it: neither apart, nor the same column, nor
/// two fields of the same structs.
fn in_the_way(input: Column, result: Column, count: usize) -> bool {
    if input == result {
        return false;
    }
    let (Some(a), Some(b)) = (input.extent(count), result.extent(count)) else { return true };
    if a.1 <= b.0 || b.1 <= a.0 {
        return false;
    }
    if input.stride != result.stride && input.stride != 0 {
        return true;
    }
    // Both extents overlap, so that the distance is one within memory.
    let distance = result.start.addr() as i128 - input.start.addr() as i128;
    let stride = i128::from(result.stride as i64);
    let width = i128::from(WIDTH as i64);
    // Rows of the two are `distance + k stride` apart, for every k from -(count - 1) to count - 1 (from 0 for the stride 0):
    // the nearest to 0 on either side decides.
    let last = count as i128 - 1;
    let first = if input.stride == 0 { 0 } else { -last };
    let nearest = (-distance).div_euclid(stride);
    [nearest, nearest + 1, nearest - 1]
        .into_iter()
        .any(|k| (first..=last).contains(&k) && (distance + k * stride).abs() < width)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::error::tests::with_error;
    use crate::guard::guard;
    use proptest::prelude::*;

    fn column(address: usize, stride: isize) -> Column {
        Column { start: std::ptr::without_provenance_mut(address), stride }
    }

    /// By going through all pairs of rows.
    fn in_the_way_by_hand(input: Column, result: Column, count: usize) -> bool {
        input != result
            && (0..count).any(|i| {
                (0..count).any(|j| input.row(i).addr().abs_diff(result.row(j).addr()) < size_of::<f64>())
            })
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(4000))]
        #[test]
        fn overlap_is_what_going_through_all_rows_finds(
            a in 5000..5200_usize, b in 5000..5200_usize, count in 1..12_usize,
            stride in prop_oneof![8..40_isize, -40..-7_isize], repeats: bool,
        ) {
            let input = column(a, if repeats { 0 } else { stride });
            let result = column(b, stride);
            prop_assert_eq!(in_the_way(input, result, count), in_the_way_by_hand(input, result, count));
        }

        #[test]
        fn with_two_strides_no_overlap_is_missed(
            a in 5000..5400_usize, b in 5000..5400_usize, count in 1..12_usize,
            s in prop_oneof![8..40_isize, -40..-7_isize], t in prop_oneof![8..40_isize, -40..-7_isize],
        ) {
            let (input, result) = (column(a, s), column(b, t));
            if in_the_way_by_hand(input, result, count) {
                prop_assert!(in_the_way(input, result, count));
            }
        }
    }

    #[test]
    fn columns_far_apart_with_two_strides_are_apart() {
        assert!(!in_the_way(column(5000, 8), column(5080, 24), 10));
        assert!(in_the_way(column(5000, 8), column(5079, 24), 10));
        assert!(!in_the_way(column(5320, -8), column(5000, 24), 10));
    }

    fn refusal(count: usize, input: Column, result: Column) -> (i32, String) {
        with_error(|error| {
            // SAFETY: the error struct lives during the call.
            unsafe { guard(error, || checked(count, [("volume_cm3", input)], result).map(|_| ())) }
        })
    }

    #[test]
    fn each_misuse_has_its_status_and_names_the_column() {
        let good = column(8000, 8);
        let far = column(16000, 8);
        let cases = [
            (2, column(0, 8), far, OW_NULL, "volume_cm3 is NULL"),
            (2, good, column(0, 8), OW_NULL, "result is NULL"),
            (2, column(8000, 7), far, OW_STRIDE, "8 for an array of doubles"),
            (2, column(8000, -1), far, OW_STRIDE, "volume_cm3 has the stride -1"),
            (2, good, column(16000, 0), OW_STRIDE, "result has the stride 0"),
            (2, good, column(8004, 8), OW_OVERLAP, "overlaps volume_cm3"),
            (usize::MAX, good, far, OW_OVERSIZE, "result does not fit"),
            (1 << 60, column(8000, 16), column(16000, 1), OW_STRIDE, "result"),
            (2000, column(8000, -8), column(90_000, 8), OW_OVERSIZE, "volume_cm3 does not fit"),
            (2, column(8000, isize::MAX), far, OW_OVERSIZE, "volume_cm3 does not fit"),
            (2, column(usize::MAX - 9, 8), far, OW_OVERSIZE, "volume_cm3 does not fit"),
        ];
        for (count, input, result, status, words) in cases {
            let (found, text) = refusal(count, input, result);
            assert_eq!(found, status, "{count} {input:?} {result:?}: {text}");
            assert!(text.contains(words), "{text}");
        }
    }

    #[test]
    fn one_row_needs_no_stride_and_a_repeated_number_no_room() {
        let taken = |count, input, result| checked(count, [("volume_cm3", input)], result).is_ok();
        assert!(taken(1, column(8000, 1), column(9000, isize::MIN)));
        assert!(taken(3, column(8000, 0), column(8008, 8)));
        assert!(!taken(3, column(8000, 0), column(7990, 8)));
        // The column itself, and another field of the same structs.
        assert!(taken(3, column(8000, 24), column(8000, 24)));
        assert!(taken(3, column(8000, 24), column(8016, 24)));
        assert!(!taken(3, column(8000, 24), column(8024, 24)));
    }
}
