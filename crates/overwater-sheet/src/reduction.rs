//! Results of readings as text for a terminal.

use overwater::units::significant;
use overwater_exchange::propagation::answer::PropagationAnswer;
use overwater_exchange::reduction::answer::{ReductionAnswer, RowAnswer};

use crate::layout::Layout;
use crate::propagation;
use crate::rate::{intercept_words, lines_cells, lines_header};

/// Rows that are printed one by one; of more only the summary is.
const PRINTED_ROWS: usize = 60;

/// How many significant figures results are printed to. A result exactly half-way goes to the even digit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figures {
    /// So many.
    Number(usize),
    /// As many as the least precise reading of the row has; of means, as many as the least precise of all.
    Data,
}

/// Figures where the data give none.
const USUAL: usize = 3;

impl Figures {
    fn of(self, rows: &[RowAnswer]) -> usize {
        match self {
            Figures::Number(figures) => figures,
            Figures::Data => {
                rows.iter().filter_map(|row| row.data_figures).min().map_or(USUAL, |figures| figures as usize)
            }
        }
    }
}

/// The results as text, at most `width` columns wide (40 at least).
#[must_use]
pub fn results(answer: &ReductionAnswer, width: usize, figures: Figures) -> String {
    let mut sheet = Layout::new(width);
    sheet.title(
        answer.title.as_deref().unwrap_or("Readings to results"),
        &format!("{} of {} row(s)", answer.rows_good, answer.rows_read),
    );
    sheet.paragraph(&format!("practical: {}; collector: {}", answer.practical, answer.collector));
    for note in &answer.notes {
        sheet.item("-", note);
    }
    if answer.rows_read <= PRINTED_ROWS as u64 && !answer.rows.is_empty() {
        rows(&mut sheet, answer, figures);
        uncertainty(&mut sheet, answer);
        corrections(&mut sheet, answer);
    }
    summary(&mut sheet, answer, figures.of(&answer.rows));
    slope(&mut sheet, answer, figures.of(&answer.rows));
    if !answer.bad_rows.is_empty() {
        sheet.heading("Rows without a result");
        for bad in answer.bad_rows.iter().take(PRINTED_ROWS) {
            sheet.item("-", &format!("{} [{}]", bad.message, bad.code));
        }
    }
    sheet.finish()
}

fn name(row: &RowAnswer) -> String {
    row.label.clone().filter(|label| !label.is_empty()).unwrap_or_else(|| row.row.to_string())
}

fn signed(percent: f64) -> String {
    // A plus sign says that leaving it out makes the figure too high.
    let text = format!("{percent:+.1}");
    if text == "-0.0" { "+0.0".to_owned() } else { text }
}

/// Everything that any row has, in the order of first appearance: rows need not all have the same.
fn each<'a, T>(
    rows: &'a [RowAnswer],
    parts: impl Fn(&'a RowAnswer) -> &'a [T],
    name: impl Fn(&T) -> &str,
) -> Vec<&'a T> {
    let mut found: Vec<&T> = Vec::new();
    for part in rows.iter().flat_map(parts) {
        if !found.iter().any(|own| name(own) == name(part)) {
            found.push(part);
        }
    }
    found
}

fn rows(sheet: &mut Layout, answer: &ReductionAnswer, figures: Figures) {
    sheet.heading("Results");
    let each = each(&answer.rows, |row| row.results.as_slice(), |result| result.name.as_str());
    let with_formula = answer.rows.iter().any(|row| row.formula.is_some());
    let with_error = answer.rows.iter().any(|row| row.percent_error.is_some());
    let mut header = vec!["row".to_owned()];
    header.extend(each.iter().map(|result| match result.unit.as_str() {
        "" => result.symbol.clone(),
        unit => format!("{} / {unit}", result.symbol),
    }));
    if with_error {
        header.push("error / %".to_owned());
    }
    if with_formula {
        header.push("formula".to_owned());
    }
    let table = answer
        .rows
        .iter()
        .map(|row| {
            let mut cells = vec![name(row)];
            let figures = figures.of(std::slice::from_ref(row));
            cells.extend(each.iter().map(|wanted| {
                let own = row.results.iter().find(|result| result.name == wanted.name);
                own.map(|result| significant(result.value, figures)).unwrap_or_default()
            }));
            if with_error {
                cells.push(row.percent_error.map(signed).unwrap_or_default());
            }
            if with_formula {
                cells.push(row.formula.clone().unwrap_or_default());
            }
            cells
        })
        .collect();
    let header: Vec<&str> = header.iter().map(String::as_str).collect();
    sheet.columns(&header, table, 1);
    let pairs: Vec<(&str, String)> =
        each.iter().map(|result| (result.symbol.as_str(), result.words.clone())).collect();
    sheet.paragraph("");
    sheet.pairs(&pairs);
}

/// Each row's result with its uncertainty, what that rests on, and the budget of the row with the widest interval.
fn uncertainty(sheet: &mut Layout, answer: &ReductionAnswer) {
    let known: Vec<_> =
        answer.rows.iter().filter_map(|row| row.uncertainty.as_ref().map(|own| (row, own))).collect();
    let Some((_, first)) = known.first() else { return };
    sheet.heading(&format!("How uncertain is the {}?", first.words));
    let unit = if first.unit.is_empty() { String::new() } else { format!(" / {}", first.unit) };
    let what = match (first.coverage, first.rules.as_str()) {
        (Some(coverage), "gum") => format!("± U, {} %", propagation::trimmed(100.0 * coverage, 3)),
        (Some(coverage), _) => format!("shortest, {} %", propagation::trimmed(100.0 * coverage, 3)),
        (None, _) => "± half-width".to_owned(),
    };
    let table = known
        .iter()
        .map(|(row, own)| {
            let share = own.lines.iter().max_by(|one, other| one.share.total_cmp(&other.share));
            let interval = match &own.drawn {
                Some(drawn) => {
                    let [low, high] = drawn.shortest.map(|end| significant(end, 4));
                    format!("{low} to {high}")
                }
                None => format!("± {}", own.stated.uncertainty),
            };
            vec![
                name(row),
                own.stated.value.clone(),
                interval,
                share.map(|line| line.words.clone()).unwrap_or_default(),
                share.map(|line| format!("{:.0}", 100.0 * line.share)).unwrap_or_default(),
            ]
        })
        .collect();
    let head = ["row", &format!("{}{unit}", first.symbol), &what, "most by", "share / %"];
    sheet.columns(&head, table, 1);
    let rules = first.school_rules.as_ref().map_or(String::new(), |rules| format!(" ({rules})"));
    sheet.paragraph(&format!("rules: {}{rules}: {}", first.rules, first.rules_source));
    let widest = known.iter().max_by(|(_, one), (_, other)| spread(one).total_cmp(&spread(other)));
    if let Some((row, own)) = widest {
        sheet.heading(&format!("Budget of row {}, the least certain", name(row)));
        propagation::lines(sheet, own);
    }
}

/// An uncertainty that can be compared from row to row.
fn spread(answer: &PropagationAnswer) -> f64 {
    answer.standard_uncertainty.or(answer.half_width).unwrap_or(0.0)
}

fn corrections(sheet: &mut Layout, answer: &ReductionAnswer) {
    let each = each(&answer.rows, |row| row.corrections.as_slice(), |correction| correction.name.as_str());
    let Some(result) = answer.rows.first().and_then(|row| row.results.first()) else {
        return;
    };
    if each.is_empty() {
        return;
    }
    // Where the first result is not the amount itself, its own change is the one that is asked for.
    let own = result.name != "amount_mmol";
    sheet.heading("What leaving out each correction would change, in per cent");
    let mut header = vec!["row".to_owned()];
    for correction in &each {
        let words = correction.name.replace('_', " ");
        let mark = if correction.made { "" } else { " (left out)" };
        if correction.amount_percent.is_some() {
            header.push(format!("{words}{mark}, n"));
        }
        if own || correction.amount_percent.is_none() {
            header.push(format!("{words}{mark}, {}", result.symbol));
        }
    }
    let table = answer
        .rows
        .iter()
        .map(|row| {
            let mut cells = vec![name(row)];
            for wanted in &each {
                let found = row.corrections.iter().find(|correction| correction.name == wanted.name);
                if wanted.amount_percent.is_some() {
                    cells.push(found.and_then(|found| found.amount_percent).map(signed).unwrap_or_default());
                }
                if own || wanted.amount_percent.is_none() {
                    cells.push(found.map(|found| signed(found.result_percent)).unwrap_or_default());
                }
            }
            cells
        })
        .collect();
    let header: Vec<&str> = header.iter().map(String::as_str).collect();
    sheet.columns(&header, table, 1);
    sheet.paragraph("+ means: without the correction the figure would be too high.");
}

fn summary(sheet: &mut Layout, answer: &ReductionAnswer, figures: usize) {
    if answer.summary.iter().all(|row| row.count < 2) && answer.rows_read <= PRINTED_ROWS as u64 {
        return;
    }
    sheet.heading("Over all rows");
    let with_error = answer.summary.iter().any(|row| row.percent_error.is_some());
    let mut header = vec!["", "mean", "s", "least", "greatest", "rows"];
    if with_error {
        header.push("error / %");
    }
    let table = answer
        .summary
        .iter()
        .map(|row| {
            let unit = if row.unit.is_empty() { String::new() } else { format!(" / {}", row.unit) };
            let mut cells = vec![
                format!("{}{unit}", row.symbol),
                significant(row.mean, figures),
                row.standard_deviation.map(|value| significant(value, 2)).unwrap_or_default(),
                significant(row.least, figures),
                significant(row.greatest, figures),
                row.count.to_string(),
            ];
            if with_error {
                cells.push(row.percent_error.map(signed).unwrap_or_default());
            }
            cells
        })
        .collect();
    sheet.columns(&header, table, 1);
    sheet.paragraph("s: standard deviation of one row");
}

fn slope(sheet: &mut Layout, answer: &ReductionAnswer, figures: usize) {
    let Some(slope) = &answer.slope else { return };
    let lines = &slope.lines;
    sheet.heading("Molar volume from the slope, with and without intercept");
    let mut header = lines_header(lines);
    let mut cells = lines_cells(lines, figures);
    if let (Some(with), Some(without)) = (slope.percent_error, slope.percent_error_through_origin) {
        header.extend(["error / %".to_owned(), "through 0: error / %".to_owned()]);
        cells.extend([signed(with), signed(without)]);
    }
    let header: Vec<&str> = header.iter().map(String::as_str).collect();
    sheet.columns(&header, vec![cells], 0);
    sheet.paragraph(&format!("{} against {}, {} points", lines.y, lines.x, lines.points));
    if let Some(words) = intercept_words(lines) {
        sheet.item("-", &words);
    }
}
