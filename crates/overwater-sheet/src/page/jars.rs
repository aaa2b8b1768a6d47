//! What each jar holds before and after its burn, as stacked bars. They have no colours of their own: parts are told apart
//! by pattern, and each bar has its figures written under it.

use std::fmt::Write;

use overwater_exchange::after::answer::AfterBurnAnswer;

use super::numbers::{escape, sig};

const WIDTH: f64 = 300.0;
const LEFT: f64 = 82.0;
const ROW: f64 = 42.0;
const BAR: f64 = 18.0;
const LETTER: f64 = 12.0;
/// Figures of an amount.
const FIGURES: usize = 3;

/// One part of a bar.
struct Part {
    name: String,
    mmol: f64,
    pattern: &'static str,
}

/// One bar.
struct Bar {
    name: String,
    parts: Vec<Part>,
}

fn part(name: &str, mmol: f64, pattern: &'static str) -> Part {
    Part { name: name.to_owned(), mmol, pattern }
}

/// Before, and after by each of the answers.
fn bars(burn: &AfterBurnAnswer, sample: &str, sample_g: f64) -> Vec<Bar> {
    let mut bars = vec![Bar {
        name: "before".to_owned(),
        parts: vec![
            part("O₂", burn.oxygen_mmol, "none"),
            part("other gas", burn.nitrogen_mmol, "dots"),
            part(sample, burn.sample_mmol, "solid"),
        ],
    }];
    for answer in &burn.answers {
        bars.push(Bar {
            name: format!("after, {}", answer.product_unicode),
            parts: vec![
                part("O₂", answer.oxygen_mmol, "none"),
                part("other gas", burn.nitrogen_mmol, "dots"),
                part(sample, burn.sample_mmol * answer.left_g / sample_g, "solid"),
                part(&answer.product_unicode, answer.product_mmol, "hatch"),
            ],
        });
    }
    for bar in &mut bars {
        bar.parts.retain(|part| part.mmol > 0.0);
    }
    bars
}

fn figures(bar: &Bar) -> String {
    let parts: Vec<String> =
        bar.parts.iter().map(|part| format!("{} {}", part.name, sig(part.mmol, FIGURES))).collect();
    format!("{} mmol", parts.join(", "))
}

/// The figure of one jar; `number` makes its ids its own.
pub(super) fn draw(burn: &AfterBurnAnswer, sample: &str, sample_g: f64, number: usize) -> String {
    let mut svg = String::new();
    // Writing into a text does not fail.
    let _ = write(burn, sample, sample_g, number, &mut svg);
    svg
}

fn write(
    burn: &AfterBurnAnswer,
    sample: &str,
    sample_g: f64,
    number: usize,
    svg: &mut String,
) -> std::fmt::Result {
    let bars = bars(burn, sample, sample_g);
    let whole = |bar: &Bar| bar.parts.iter().map(|part| part.mmol).sum::<f64>();
    let longest = bars.iter().map(whole).fold(f64::MIN_POSITIVE, f64::max);
    let id = format!("jar-{number}");
    let height = ROW * bars.len() as f64 + 4.0;
    writeln!(
        svg,
        r#"<svg role="img" viewBox="0 0 {WIDTH} {height}" aria-labelledby="{id}-title {id}-finding" fill="none" stroke="currentColor" font-size="{LETTER}">"#
    )?;
    writeln!(svg, r#"<title id="{id}-title">{}: before and after the burn</title>"#, escape(&burn.vessel))?;
    let said: Vec<String> = bars.iter().map(|bar| format!("{}: {}.", bar.name, figures(bar))).collect();
    writeln!(svg, r#"<desc id="{id}-finding">{}</desc>"#, escape(&said.join(" ")))?;
    writeln!(
        svg,
        r#"<defs><pattern id="{id}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V6" stroke-width="1.6"/></pattern><pattern id="{id}-dots" width="5" height="5" patternUnits="userSpaceOnUse"><path d="M2 2h1" stroke-width="1"/></pattern></defs>"#
    )?;
    for (row, bar) in bars.iter().enumerate() {
        let top = ROW * row as f64 + 3.0;
        let foot = top + BAR - 5.0;
        writeln!(svg, r#"<text x="0" y="{foot:.1}">{}</text>"#, escape(&bar.name))?;
        let mut left = LEFT;
        for part in &bar.parts {
            let width = (WIDTH - LEFT - 2.0) * part.mmol / longest;
            let fill = match part.pattern {
                "none" => "none".to_owned(),
                "solid" => "currentColor".to_owned(),
                pattern => format!("url(#{id}-{pattern})"),
            };
            writeln!(
                svg,
                r#"<rect x="{left:.1}" y="{top:.1}" width="{width:.1}" height="{BAR}" fill="{fill}" stroke-width="1"/>"#
            )?;
            left += width;
        }
        let foot = top + BAR + LETTER + 1.0;
        writeln!(svg, r#"<text x="24" y="{foot:.1}" font-size="10.5">{}</text>"#, escape(&figures(bar)))?;
    }
    writeln!(svg, "</svg>")
}
