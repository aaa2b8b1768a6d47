//! Cautions, raised by the facts of a plan and worded by this project. They remind; they do not replace the employer's
//! risk assessment, local rules and licensed practice, which come first wherever they differ.

mod burning;
mod preparation;

use crate::plan::{Lesson, Plan};

/// Something to be careful of, and the fact that raised it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Caution {
    /// A stable name for programs.
    pub id: &'static str,
    /// What it is about.
    pub topic: &'static str,
    /// What to do.
    pub text: String,
    /// The fact in this plan that raised it.
    pub because: String,
}

/// Printed with every sheet.
pub const DEFERENCE: &str = "These are reminders raised by the figures of this plan, not a risk assessment. The employer's \
                             risk assessment, local rules and licensed practice come first wherever they differ. Try \
                             the preparation out beforehand with the same bottles.";

/// A rule looks at a plan and says what, if anything, there is to be careful of.
type Rule = fn(&Lesson, &Plan) -> Option<Caution>;

/// Every caution that the plan's facts raise, those of the preparation first.
pub(crate) fn raise(lesson: &Lesson, plan: &Plan) -> Vec<Caution> {
    let rules = preparation::RULES.iter().chain(&burning::RULES);
    rules.filter_map(|rule| rule(lesson, plan)).collect()
}

fn caution(id: &'static str, topic: &'static str, text: &str, because: String) -> Option<Caution> {
    Some(Caution { id, topic, text: text.to_owned(), because })
}
