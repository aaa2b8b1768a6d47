//! Which memory of a loop overlaps which.

use super::MOST;

/// A column in memory: its first value and the bytes from one value to the next.
#[derive(Clone, Copy)]
pub(super) struct Column {
    pub(super) start: *mut u8,
    pub(super) step: isize,
}

/// How an input lies to the output.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Overlap {
    /// Nowhere.
    Apart,
    /// Each value on the result of its own row, as in `f(x, out=x)`.
    RowByRow,
    /// Otherwise, as when NumPy reduces: a row depends on the one before.
    Tangled,
}

impl Column {
    /// First and last byte, over `rows` values.
    fn extent(&self, rows: usize) -> (isize, isize) {
        let start = self.start as isize;
        let last = start.wrapping_add(self.step.wrapping_mul(rows.saturating_sub(1) as isize));
        (start.min(last), start.max(last).wrapping_add(7))
    }

    /// Whether the values lie side by side, as in a slice.
    pub(super) fn is_slice(&self) -> bool {
        self.step == 8 && (self.start as usize).is_multiple_of(align_of::<f64>())
    }

    /// How this input lies to `output`, over `rows` rows.
    pub(super) fn overlap(&self, output: &Column, rows: usize) -> Overlap {
        let ((first, last), (from, to)) = (self.extent(rows), output.extent(rows));
        if last < from || to < first {
            Overlap::Apart
        } else if self.start == output.start && self.step == output.step && self.step != 0 {
            Overlap::RowByRow
        } else {
            Overlap::Tangled
        }
    }
}

/// The columns of one loop.
#[derive(Clone, Copy)]
pub(super) struct Columns {
    pub(super) inputs: [Column; MOST],
    pub(super) count: usize,
    pub(super) output: Column,
}

// SAFETY: only `sweep` follows the pointers, and it gives each row to one thread.
unsafe impl Send for Columns {}
// SAFETY: as above.
unsafe impl Sync for Columns {}
