//! Rates as tables and sentences: composed once, printed on a terminal or on a page.

use overwater::units::significant;
use overwater_exchange::lines::LinesAnswer;
use overwater_exchange::rate::answer::{CurveAnswer, MeasureAnswer, RateAnswer, RunAnswer};

use crate::layout::Layout;

/// Runs of which half-lives, lines and orders are printed one by one.
const PRINTED_RUNS: usize = 40;
/// No value is printed with more figures than this to show its error.
const MOST_FIGURES: f64 = 9.0;
/// Figures of a standard error.
const ERROR_FIGURES: usize = 2;

/// Keeps two words on one line.
const STAY: char = '\u{a0}';

/// A part of the sheet.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
pub(crate) struct Part {
    /// For links.
    pub(crate) id: &'static str,
    pub(crate) heading: String,
    /// Each with its header; columns after the first stand to the right.
    pub(crate) tables: Vec<Tabled>,
    /// Sentences under the tables.
    pub(crate) words: Vec<String>,
}

/// A table.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
pub(crate) struct Tabled {
    pub(crate) header: Vec<String>,
    pub(crate) rows: Vec<Vec<String>>,
}

/// The rates as text, at most `width` columns wide (40 at least), to `figures` significant figures.
#[must_use]
pub fn rates(answer: &RateAnswer, width: usize, figures: usize) -> String {
    let mut sheet = Layout::new(width);
    sheet.title(&title(answer), &format!("{} of {} row(s)", answer.rows_good, answer.rows_read));
    sheet.paragraph(&subtitle(answer));
    for note in &answer.notes {
        sheet.item("-", note);
    }
    for part in parts(answer, figures) {
        sheet.heading(&part.heading);
        for table in part.tables {
            let header: Vec<&str> = table.header.iter().map(String::as_str).collect();
            sheet.columns(&header, table.rows, 1);
        }
        for words in part.words {
            sheet.item("-", &words);
        }
    }
    sheet.finish().replace(STAY, " ")
}

pub(crate) fn title(answer: &RateAnswer) -> String {
    answer.title.clone().unwrap_or_else(|| "Readings to rates".to_owned())
}

/// What was followed, in how many runs.
pub(crate) fn subtitle(answer: &RateAnswer) -> String {
    let what = answer.reading.replace('_', " ");
    match answer.runs.len() {
        0 => format!("a table of {what}s"),
        1 => format!("{what} against time, one run"),
        runs => format!("{what} against time, {runs} runs"),
    }
}

/// Every part that has something to say.
pub(crate) fn parts(answer: &RateAnswer, figures: usize) -> Vec<Part> {
    let runs = answer.runs.get(..PRINTED_RUNS.min(answer.runs.len())).unwrap_or_default();
    let mut parts = Vec::new();
    if !runs.is_empty() {
        parts.extend([
            initial_rates(runs, figures),
            curves(runs, figures),
            half_lives(runs, figures),
            curve_orders(runs, figures),
            first_lines(runs, figures),
        ]);
        parts.extend(amounts(runs, figures));
    }
    parts.extend(order(answer, figures));
    parts.extend(saturation(answer, figures));
    parts.extend(arrhenius(answer, figures));
    parts.extend(minded(answer, runs));
    parts.extend(not_used(answer));
    parts
}

/// A value and its standard error.
fn plus_minus(measure: &MeasureAnswer, figures: usize) -> String {
    let value = significant(measure.value, figures);
    match measure.standard_error {
        Some(error) => format!("{value}{STAY}±{STAY}{}", significant(error, ERROR_FIGURES)),
        None => value,
    }
}

/// The two in cells of their own.
fn pair(measure: &MeasureAnswer, figures: usize) -> [String; 2] {
    let error = measure.standard_error.map_or_else(String::new, |error| significant(error, ERROR_FIGURES));
    [significant(measure.value, figures), error]
}

/// The same with figures enough to show the error: of a mass of 183 g it is the last that count.
fn pair_to_the_error(measure: &MeasureAnswer, figures: usize) -> [String; 2] {
    let place = |value: f64| value.abs().log10().floor();
    let enough = match measure.standard_error {
        Some(error) if error > 0.0 && measure.value != 0.0 => place(measure.value) - place(error) + 2.0,
        _ => 0.0,
    };
    pair(measure, figures.max(enough.clamp(0.0, MOST_FIGURES) as usize))
}

fn between(measure: &MeasureAnswer, figures: usize) -> String {
    measure.interval.map_or_else(String::new, |[low, high]| {
        format!("{}{STAY}to{STAY}{}", significant(low, figures), significant(high, figures))
    })
}

fn percent(value: Option<f64>) -> String {
    value.map_or_else(String::new, |value| {
        let text = format!("{value:+.1}");
        if text == "-0.0" { "+0.0".to_owned() } else { text }
    })
}

fn in_unit(words: &str, unit: &str) -> String {
    if unit.is_empty() { words.to_owned() } else { format!("{words} / {unit}") }
}

fn texts(header: &[&str]) -> Vec<String> {
    header.iter().map(|text| (*text).to_owned()).collect()
}

/// What a run was done at, for the first table.
fn done_at(runs: &[RunAnswer]) -> Option<(String, Vec<String>)> {
    if runs.iter().all(|run| run.temperature_k.is_some()) {
        let cells = runs.iter().map(|run| run.temperature_k.map_or_else(String::new, |t| format!("{t:.2}")));
        return Some(("T / K".to_owned(), cells.collect()));
    }
    let first = runs.first()?.initial_concentration.as_ref()?;
    let cells = runs
        .iter()
        .map(|run| run.initial_concentration.as_ref().map_or_else(String::new, |c| significant(c.value, 3)));
    Some((in_unit("c", &first.unit), cells.collect()))
}

fn initial_rates(runs: &[RunAnswer], figures: usize) -> Part {
    let unit = runs
        .first()
        .and_then(|run| run.initial_rates.first())
        .map(|rate| rate.rate.unit.as_str())
        .unwrap_or_default();
    let mut words = Vec::new();
    let (mut rates, mut worth) = (Vec::new(), Vec::new());
    for run in runs {
        let of = |way: &str| run.initial_rates.iter().find(|rate| rate.way == way);
        let value = |way: &str| of(way).map_or_else(Default::default, |rate| pair(&rate.rate, figures));
        let mut cells = vec![run.run.clone()];
        cells.extend(value("tangent"));
        cells.extend(value("whole_curve"));
        cells.push(of("whole_curve").map_or_else(String::new, |rate| between(&rate.rate, figures)));
        cells.extend(value("first_two").into_iter().next());
        rates.push(cells);
        let mut cells = vec![run.run.clone()];
        for way in ["tangent", "first_two"] {
            let Some(rate) = of(way) else { continue };
            if way == "tangent" {
                cells.push(rate.readings.to_string());
            }
            cells.push(rate.conversion_percent.map_or_else(String::new, |share| significant(share, 2)));
            cells.push(percent(rate.bias_percent));
        }
        worth.push(cells);
        if runs.len() == 1 {
            words.extend(
                run.initial_rates
                    .iter()
                    .map(|rate| format!("{}: {}", rate.way.replace('_', " "), rate.worth)),
            );
        }
    }
    words.push(
        "±: one standard error, by the scatter; interval: by refitting readings drawn from the readings. Reached: the share of \
         all that is to come by the last reading that the way uses. Off: what the way itself does to a curve of the first \
         order; - reads low."
            .to_owned(),
    );
    let mut header = vec!["run".to_owned(), in_unit("tangent", unit)];
    header.extend(texts(&["±", "whole curve", "±", "interval", "first two"]));
    let worth_header =
        texts(&["run", "tangent: rows", "reached / %", "off / %", "first two: reached / %", "off / %"]);
    Part {
        id: "rate",
        heading: "Initial rate, three ways".to_owned(),
        tables: vec![Tabled { header, rows: rates }, Tabled { header: worth_header, rows: worth }],
        words,
    }
}

fn curves(runs: &[RunAnswer], figures: usize) -> Part {
    let fitted: Vec<(&RunAnswer, &CurveAnswer)> =
        runs.iter().filter_map(|run| run.curve.as_ref().map(|curve| (run, curve))).collect();
    let mut words: Vec<String> = Vec::new();
    let mut tables = Vec::new();
    if let Some((run, first)) = fitted.first() {
        let at = done_at(runs);
        let mut header = vec!["run".to_owned()];
        header.extend(at.iter().map(|(name, _)| name.clone()));
        header.extend([
            in_unit("k", &first.rate_constant.unit),
            "±".to_owned(),
            "interval".to_owned(),
            in_unit("half-life", &first.half_life.unit),
            "±".to_owned(),
        ]);
        let at = |index: usize| at.as_ref().and_then(|(_, cells)| cells.get(index).cloned());
        let rows = runs.iter().enumerate().filter_map(|(index, run)| {
            let curve = run.curve.as_ref()?;
            let mut cells = vec![run.run.clone()];
            cells.extend(at(index));
            cells.extend(pair(&curve.rate_constant, figures));
            cells.push(between(&curve.rate_constant, figures));
            cells.extend(pair(&curve.half_life, figures));
            Some(cells)
        });
        tables.push(Tabled { header, rows: rows.collect() });
        let growth = first.kind == "growth";
        let edge = if growth { in_unit("t0", &run.time_unit) } else { in_unit("y(0)", &run.reading_unit) };
        let header = vec![
            "run".to_owned(),
            in_unit("end", &first.final_value.unit),
            "±".to_owned(),
            "interval".to_owned(),
            edge,
            "±".to_owned(),
            in_unit("s", &run.reading_unit),
        ];
        let known = |[value, error]: [String; 2], fitted: bool| {
            if fitted { [value, error] } else { [value, "known".to_owned()] }
        };
        let rows = fitted.iter().map(|(run, curve)| {
            let mut cells = vec![run.run.clone()];
            cells.extend(known(pair_to_the_error(&curve.final_value, figures), curve.final_value_fitted));
            let [shown, _] = pair_to_the_error(&curve.final_value, figures);
            let as_many = shown.bytes().filter(u8::is_ascii_digit).count().max(figures);
            cells.push(between(&curve.final_value, as_many));
            let fitted = curve.start_fitted || curve.first_value.is_some();
            let edge = curve.start.as_ref().or(curve.first_value.as_ref());
            cells
                .extend(edge.map(|edge| known(pair_to_the_error(edge, figures), fitted)).unwrap_or_default());
            cells.push(curve.residual_standard_deviation.map_or_else(String::new, |s| significant(s, 2)));
            cells
        });
        tables.push(Tabled { header, rows: rows.collect() });
        words.push(
            if first.kind == "growth" {
                "V = V(end) (1 - exp(-k (t - t0))); s: standard deviation of the residuals"
            } else {
                "y = y(end) + (y(0) - y(end)) exp(-k t); s: standard deviation of the residuals"
            }
            .to_owned(),
        );
    }
    words.extend(
        runs.iter()
            .filter_map(|run| run.no_curve.as_ref().map(|why| format!("run {}, no curve: {why}", run.run))),
    );
    Part { id: "curve", heading: "Curve of the first order through all readings".to_owned(), tables, words }
}

fn half_lives(runs: &[RunAnswer], figures: usize) -> Part {
    let unit = runs.first().map(|run| run.time_unit.as_str()).unwrap_or_default();
    let mut words = Vec::new();
    let mut rows = Vec::new();
    for run in runs {
        let Some(found) = &run.half_lives else { continue };
        let each: Vec<String> = found.half_lives.iter().map(|one| significant(one.length, figures)).collect();
        rows.push(vec![
            run.run.clone(),
            each.join(", "),
            significant(found.mean, figures),
            significant(found.spread, 3),
            match found.constant {
                Some(true) => "constant",
                Some(false) => "not constant",
                None => "only one",
            }
            .to_owned(),
        ]);
    }
    if let Some(found) = runs.iter().find_map(|run| run.half_lives.as_ref()) {
        words.push(format!(
            "read from what is still to come, down to three times the scatter; constant: the longest exceeds the shortest by \
             no more than {} %",
            // 8 %, not 8.00 %, and not what is left over from turning a share into it.
            (found.constant_within_percent * 1e6).round() / 1e6
        ));
    }
    for run in runs {
        if let Some(why) = &run.no_half_lives {
            words.push(format!("run {}, none: {why}", run.run));
        }
    }
    let header = vec![
        "run".to_owned(),
        in_unit("one after the other", unit),
        "mean".to_owned(),
        "longest/shortest".to_owned(),
        String::new(),
    ];
    let tables = if rows.is_empty() { Vec::new() } else { vec![Tabled { header, rows }] };
    Part { id: "half-life", heading: "Half-lives".to_owned(), tables, words }
}

fn curve_orders(runs: &[RunAnswer], figures: usize) -> Part {
    let mut words = Vec::new();
    let mut rows = Vec::new();
    let unit = runs.first().map(|run| run.reading_unit.as_str()).unwrap_or_default();
    for run in runs {
        let Some(found) = &run.order else { continue };
        let mut cells = vec![run.run.clone()];
        cells.extend(found.fitted.as_ref().map(|order| pair(order, figures)).unwrap_or_default());
        cells.push(found.best.map_or_else(String::new, |best| best.to_string()));
        cells.extend(
            found.tried.iter().map(|tried| {
                tried.residual_standard_deviation.map_or_else(String::new, |s| significant(s, 2))
            }),
        );
        cells.extend(
            found.tried.iter().map(|tried| tried.r_squared.map_or_else(String::new, |r| format!("{r:.4}"))),
        );
        rows.push(cells);
    }
    if !rows.is_empty() {
        words.push(
            "s 0, s 1, s 2: what is left of the readings by curves of these orders, fitted to the readings themselves, so that \
             they compare; R² of c, ln c and 1/c against t are three quantities and do not"
                .to_owned(),
        );
    }
    let reasons: Vec<&String> = runs.iter().filter_map(|run| run.no_order.as_ref()).collect();
    match reasons.split_first() {
        Some((first, rest)) if rest.iter().all(|why| why == first) && reasons.len() == runs.len() => {
            words.push(format!("none: {first}"));
        }
        _ => {
            for run in runs {
                if let Some(why) = &run.no_order {
                    words.push(format!("run {}, none: {why}", run.run));
                }
            }
        }
    }
    let header = vec![
        "run".to_owned(),
        "order fitted".to_owned(),
        "±".to_owned(),
        "least s".to_owned(),
        in_unit("s 0", unit),
        "s 1".to_owned(),
        "s 2".to_owned(),
        "R²: c".to_owned(),
        "ln c".to_owned(),
        "1/c".to_owned(),
    ];
    let tables = if rows.is_empty() { Vec::new() } else { vec![Tabled { header, rows }] };
    Part { id: "curve-order", heading: "Order from one curve".to_owned(), tables, words }
}

/// The header of both lines side by side.
pub(crate) fn lines_header(lines: &LinesAnswer) -> Vec<String> {
    vec![
        in_unit("slope", &lines.slope_unit),
        "±".to_owned(),
        in_unit("intercept", &lines.intercept_unit),
        "±".to_owned(),
        in_unit("slope through 0", &lines.slope_unit),
        "±".to_owned(),
    ]
}

/// Both lines side by side.
pub(crate) fn lines_cells(lines: &LinesAnswer, figures: usize) -> Vec<String> {
    let (with, through) = (&lines.with_intercept, &lines.through_origin);
    [
        (with.slope, with.slope_standard_error),
        (with.intercept, with.intercept_standard_error),
        (through.slope, through.slope_standard_error),
    ]
    .into_iter()
    .flat_map(|(value, standard_error)| {
        pair(&MeasureAnswer { value, unit: String::new(), standard_error, interval: None }, figures)
    })
    .collect()
}

/// What an intercept may mean.
pub(crate) fn intercept_words(lines: &LinesAnswer) -> Option<String> {
    let warning = lines.warning.as_ref()?;
    let mean = if warning.may_mean.is_empty() {
        String::new()
    } else {
        format!(" It may mean: {}.", warning.may_mean.join("; "))
    };
    Some(format!(
        "the intercept is not zero (probability {} by chance): the line through the origin does not hold.{mean}",
        significant(warning.probability, 1)
    ))
}

fn first_lines(runs: &[RunAnswer], figures: usize) -> Part {
    let mut header = texts(&["run", "rows"]);
    header.extend(runs.first().map(|run| lines_header(&run.lines)).unwrap_or_default());
    let rows = runs.iter().map(|run| {
        let mut cells = vec![run.run.clone(), run.lines.points.to_string()];
        cells.extend(lines_cells(&run.lines, figures));
        cells
    });
    let words = runs
        .iter()
        .filter_map(|run| intercept_words(&run.lines).map(|words| format!("run {}: {words}", run.run)))
        .collect();
    Part {
        id: "lines",
        heading: "Straight lines through the first readings, with and without intercept".to_owned(),
        tables: vec![Tabled { header, rows: rows.collect() }],
        words,
    }
}

fn amounts(runs: &[RunAnswer], figures: usize) -> Option<Part> {
    let first = runs.iter().find_map(|run| run.gas.as_ref())?;
    let mut header = vec![
        "run".to_owned(),
        in_unit("initial rate, dry gas", &first.initial_rate.unit),
        "±".to_owned(),
        format!("dry gas in 1 {} / mmol", runs.first().map_or("", |run| run.reading_unit.as_str())),
    ];
    let names =
        first.corrections.iter().map(|correction| format!("{} / %", correction.name.replace('_', " ")));
    header.extend(names);
    let rows = runs.iter().filter_map(|run| {
        let gas = run.gas.as_ref()?;
        let mut cells = vec![run.run.clone()];
        cells.extend(pair(&gas.initial_rate, figures));
        cells.push(significant(gas.amount_mmol_per_unit, figures.max(4)));
        cells.extend(gas.corrections.iter().map(|correction| percent(correction.amount_percent)));
        Some(cells)
    });
    Some(Part {
        id: "amount",
        heading: "As amounts of dry gas".to_owned(),
        tables: vec![Tabled { header, rows: rows.collect() }],
        words: vec![
            "%: the change if the correction is left out; + means the amount would be too high".to_owned(),
        ],
    })
}

fn order(answer: &RateAnswer, figures: usize) -> Option<Part> {
    let found = answer.order.as_ref()?;
    let mut words = vec![
        format!(
            "order {}, from ln rate against ln concentration ({} rates)",
            plus_minus(&found.order, figures),
            found.from.replace('_', " ")
        ),
        format!(
            "rate = {} c^{} (rate in {}, c in {})",
            significant(found.rate_constant, figures),
            significant(found.order.value, figures),
            found.rate_unit,
            found.concentration_unit
        ),
    ];
    words.extend(intercept_words(&found.lines).map(|text| format!("rate against concentration: {text}")));
    let header = vec![
        "run".to_owned(),
        in_unit("c", &found.concentration_unit),
        in_unit("rate", &found.rate_unit),
        "ln c".to_owned(),
        "ln rate".to_owned(),
        "line".to_owned(),
    ];
    let rows = found.points.iter().map(|point| {
        vec![
            point.run.clone(),
            significant(point.x, figures),
            significant(point.y, figures),
            format!("{:.3}", point.plotted_x),
            format!("{:.3}", point.plotted_y),
            format!("{:.3}", point.fitted),
        ]
    });
    let both = Tabled { header: lines_header(&found.lines), rows: vec![lines_cells(&found.lines, figures)] };
    Some(Part {
        id: "order",
        heading: "Order from the rates at several concentrations".to_owned(),
        tables: vec![Tabled { header, rows: rows.collect() }, both],
        words,
    })
}

fn saturation(answer: &RateAnswer, figures: usize) -> Option<Part> {
    let found = answer.saturation.as_ref()?;
    let header = vec![
        String::new(),
        in_unit("greatest rate", &found.greatest_rate.unit),
        in_unit("half-rate concentration", &found.half_rate_concentration.unit),
    ];
    let rows = vec![
        vec![
            "fit to the rates".to_owned(),
            plus_minus(&found.greatest_rate, figures),
            plus_minus(&found.half_rate_concentration, figures),
        ],
        vec![
            "interval".to_owned(),
            between(&found.greatest_rate, figures),
            between(&found.half_rate_concentration, figures),
        ],
        vec![
            "double reciprocals".to_owned(),
            significant(found.double_reciprocal_greatest_rate, figures),
            significant(found.double_reciprocal_half_rate_concentration, figures),
        ],
    ];
    Some(Part {
        id: "enzyme",
        heading: "Enzyme, by Michaelis and Menten".to_owned(),
        tables: vec![Tabled { header, rows }],
        words: vec![
            "double reciprocals are for comparison only: they give the smallest, least certain rates the most to say"
                .to_owned(),
        ],
    })
}

fn arrhenius(answer: &RateAnswer, figures: usize) -> Option<Part> {
    let found = answer.arrhenius.as_ref()?;
    let energy = &found.activation_energy;
    let mut words = vec![format!("activation energy: {} kJ/mol", plus_minus(energy, figures))];
    if energy.interval.is_some() {
        words.push(format!("by refitting: {} kJ/mol", between(energy, figures)));
    }
    if let Some([least, greatest]) = found.worst_lines {
        words.push(format!(
            "worst lines, through {}: {} to {} kJ/mol",
            found.worst_lines_through,
            significant(least, figures),
            significant(greatest, figures)
        ));
    }
    let a = found.pre_exponential.map_or_else(String::new, |a| {
        format!("; A = {} {}", significant(a, figures.min(2)), found.pre_exponential_unit)
    });
    words.push(format!("ln A: {}{a}", plus_minus(&found.ln_pre_exponential, figures)));
    if let (Some(covariance), Some(correlation)) = (found.covariance, found.correlation) {
        words.push(format!(
            "covariance of activation energy and ln A: {} kJ/mol; correlation {correlation:.4}: the two are uncertain together",
            significant(covariance, ERROR_FIGURES)
        ));
    }
    words.push(format!(
        "slope {} K, R = {} J/(mol K)",
        plus_minus(
            &MeasureAnswer {
                value: found.line.slope,
                unit: String::new(),
                standard_error: found.line.slope_standard_error,
                interval: None
            },
            figures
        ),
        significant(found.gas_constant, 6)
    ));
    let y = if found.from == "rate_constant" { "k" } else { "rate" };
    let header = vec![
        "run".to_owned(),
        "T / K".to_owned(),
        in_unit(y, &found.pre_exponential_unit),
        "1000 K/T".to_owned(),
        format!("ln {y}"),
        "line".to_owned(),
    ];
    let rows = found.points.iter().map(|point| {
        vec![
            point.run.clone(),
            format!("{:.2}", point.x),
            significant(point.y, figures),
            format!("{:.4}", 1e3 * point.plotted_x),
            format!("{:.3}", point.plotted_y),
            format!("{:.3}", point.fitted),
        ]
    });
    Some(Part {
        id: "arrhenius",
        heading: "Activation energy".to_owned(),
        tables: vec![Tabled { header, rows: rows.collect() }],
        words,
    })
}

fn minded(answer: &RateAnswer, runs: &[RunAnswer]) -> Option<Part> {
    let mut words: Vec<String> = answer.warnings.clone();
    for run in runs {
        words.extend(run.warnings.iter().map(|warning| format!("run {}: {warning}", run.run)));
    }
    (!words.is_empty()).then(|| Part {
        id: "minded",
        heading: "To be minded".to_owned(),
        tables: Vec::new(),
        words,
    })
}

fn not_used(answer: &RateAnswer) -> Option<Part> {
    let mut words: Vec<String> =
        answer.bad_rows.iter().map(|bad| format!("{} [{}]", bad.message, bad.code)).collect();
    words.extend(answer.bad_runs.iter().map(|bad| format!("{} [{}]", bad.message, bad.code)));
    (!words.is_empty()).then(|| Part {
        id: "not-used",
        heading: "Rows and runs that were not used".to_owned(),
        tables: Vec::new(),
        words,
    })
}
