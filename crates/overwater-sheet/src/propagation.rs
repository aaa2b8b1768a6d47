//! A result with its uncertainty budget as text.

use overwater::units::significant;
use overwater_exchange::propagation::answer::{Behaviour, LineAnswer, PropagationAnswer};

use crate::layout::Layout;

/// Figures of the numbers in the budget.
const FIGURES: usize = 3;
/// From here on degrees of freedom do not matter.
const MANY: f64 = 1000.0;

/// The result, how it is stated, and the budget, nothing wider than `width` columns.
#[must_use]
pub fn propagation(answer: &PropagationAnswer, width: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.title(&format!("{} by {}", answer.words, answer.formula), "");
    let unit = if answer.unit.is_empty() { String::new() } else { format!(" {}", answer.unit) };
    let mut pairs = vec![(
        "result",
        format!("{} = ({} ± {}){unit}", answer.symbol, answer.stated.value, answer.stated.uncertainty),
    )];
    if let Some(coverage) = answer.coverage {
        pairs.push(("coverage", format!("{} %", trimmed(100.0 * coverage, FIGURES))));
    }
    if let Some(u) = answer.standard_uncertainty {
        let relative = significant(100.0 * u / answer.value.abs(), 2);
        pairs.push(("standard", format!("u = {}{unit} ({relative} %)", significant(u, FIGURES))));
    }
    if let (Some(factor), Some(expanded)) = (answer.coverage_factor, answer.expanded_uncertainty) {
        let freedom = answer
            .degrees_of_freedom
            .filter(|nu| *nu < MANY)
            .map_or("very many".to_owned(), |nu| significant(nu, FIGURES));
        pairs.push((
            "expanded",
            format!(
                "U = {}{unit}, k = {} from {freedom} degrees of freedom",
                significant(expanded, FIGURES),
                significant(factor, FIGURES)
            ),
        ));
    }
    if let Some(half) = answer.half_width {
        let relative = significant(100.0 * half / answer.value.abs(), 2);
        pairs.push((
            "half-width",
            format!("{}{unit} ({relative} %), percentages added", significant(half, FIGURES)),
        ));
    }
    if let Some(drawn) = &answer.drawn {
        let range =
            |[low, high]: [f64; 2]| format!("{} to {}{unit}", significant(low, 5), significant(high, 5));
        pairs.push(("shortest", range(drawn.shortest)));
        pairs.push(("symmetric", range(drawn.symmetric)));
        let how = match drawn.behaviour {
            Behaviour::AsMany => "as many as asked for",
            Behaviour::Stable => "stable to two figures of u",
            Behaviour::NotStable => "NOT stable to two figures of u",
        };
        pairs.push((
            "draws",
            format!(
                "{} with seed {}, {how}; {} without a result",
                drawn.draws, drawn.seed, drawn.without_result
            ),
        ));
    }
    let named = answer.school_rules.as_ref().map(|name| format!(" {name}")).unwrap_or_default();
    pairs.push(("rules", format!("{}{named}: {}", answer.rules, answer.rules_source)));
    sheet.pairs(&pairs);
    sheet.heading("Budget");
    lines(&mut sheet, answer);
    sheet.finish()
}

/// The lines of the budget.
pub(crate) fn lines(sheet: &mut Layout, answer: &PropagationAnswer) {
    let rows = answer.lines.iter().map(|line| row(line, &answer.rules)).collect();
    let uncertainty = if answer.rules == "school" { "half-width" } else { "u" };
    sheet.columns(&["input", "value", uncertainty, "kind", "adds", "share / %"], rows, 1);
}

/// Significant figures without the zeros at the end that nothing vouches for.
pub(crate) fn trimmed(value: f64, figures: usize) -> String {
    let text = significant(value, figures);
    match text.contains('.') && !text.contains('e') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    }
}

fn row(line: &LineAnswer, rules: &str) -> Vec<String> {
    let kind = match (rules, line.degrees_of_freedom) {
        ("school", _) => String::new(),
        (_, Some(nu)) => format!("{} ({})", line.kind, significant(nu, 2)),
        _ => line.kind.clone(),
    };
    vec![
        if line.unit.is_empty() { line.words.clone() } else { format!("{} / {}", line.words, line.unit) },
        trimmed(line.value, 6),
        significant(line.uncertainty, FIGURES),
        kind,
        significant(line.contribution.abs(), FIGURES),
        format!("{:.1}", 100.0 * line.share),
    ]
}
