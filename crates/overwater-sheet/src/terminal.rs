//! The sheet as text.

use overwater_exchange::answer::PlanAnswer;

/// The preparation sheet as text, at most `width` columns wide.
#[must_use]
pub fn terminal(plan: &PlanAnswer, width: usize) -> String {
    format!("{:.width$}", plan.deference)
}
