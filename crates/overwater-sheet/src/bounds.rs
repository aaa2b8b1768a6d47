//! The bounds table as text.

use overwater_exchange::bounds::BoundsAnswer;

use crate::layout::Layout;

/// What is accepted for each quantity and why, one below the other, none wider than `width` columns.
#[must_use]
pub fn bounds(answer: &BoundsAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.heading(&format!("What is accepted ({})", answer.bounds.len()));
    for row in &answer.bounds {
        let space = if row.unit.is_empty() { "" } else { " " };
        sheet.item(
            "-",
            &format!(
                "{}: {}, {} to {}{space}{} ({})",
                row.name, row.quantity, row.least, row.greatest, row.unit, row.why
            ),
        );
    }
    sheet.finish()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_says_everything() {
        let text = bounds(&overwater_exchange::bounds::bounds("altitude_m"), 200);
        assert!(
            text.contains(
                "- altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live)"
            ),
            "{text}"
        );
        let whole = bounds(&overwater_exchange::bounds::bounds(""), 80);
        assert!(whole.lines().all(|line| line.chars().count() <= 80));
    }
}
