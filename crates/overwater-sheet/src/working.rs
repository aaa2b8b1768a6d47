//! A worked solution as text, Markdown, LaTeX or HTML.
//!
//! The HTML holds each step as MathML, which browsers show without anything loaded, with its LaTeX source as annotation.

use overwater_exchange::calculation::StepAnswer;
use overwater_exchange::reduction::answer::ConstantAnswer;
use pulldown_latex::config::{DisplayMode, RenderConfig};
use pulldown_latex::{Parser, Storage, push_mathml};

/// How a worked solution is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WorkingFormat {
    /// Plain text.
    Text,
    /// Markdown, with the mathematics between dollar signs.
    Markdown,
    /// A piece of a LaTeX document; needs the package `amsmath`.
    Latex,
    /// A piece of an HTML page.
    Html,
}

/// Equals signs below each other, fractions at full height, and a bar to scroll by under what is wider than the page. Each
/// element has its own style: a sheet of styles would reach out into the page that the piece is put into.
const STYLES: [(&str, &str); 4] = [
    ("<math display=\"block\">", "<math display=\"block\" style=\"display:inline math\">"),
    ("<mtable class=\"menv-alignlike menv-align\">", "<mtable style=\"math-style:normal\">"),
    ("<mtr><mtd>", "<mtr><mtd style=\"text-align:right;padding:0.25em 0.1em\">"),
    ("<mtd>", "<mtd style=\"text-align:left;padding:0.25em 0.1em\">"),
];

/// Writes a worked solution: for each step what it is, the relation, the numbers put in, the value and the relation's
/// source; then the constants with theirs.
#[must_use]
pub fn working(steps: &[StepAnswer], constants: &[ConstantAnswer], format: WorkingFormat) -> String {
    let mut text = String::new();
    for step in steps {
        text.push_str(&match format {
            WorkingFormat::Text => as_text(step),
            WorkingFormat::Markdown => {
                format!("**{}**{}\n\n$$ {} $$\n\n", step.words, source(&step.source, " (", ")"), step.latex)
            }
            WorkingFormat::Latex => format!(
                "\\paragraph{{{}}}{}\n\\begin{{equation*}}\n{}\n\\end{{equation*}}\n",
                latex(&step.words),
                source(&latex(&step.source), " ", ""),
                step.latex
            ),
            WorkingFormat::Html => as_html(step),
        });
    }
    let constants: Vec<(String, &str)> = constants
        .iter()
        .map(|constant| {
            let unit = if constant.unit.is_empty() { String::new() } else { format!(" {}", constant.unit) };
            (format!("{} = {}{unit}, {}", constant.symbol, constant.value, constant.words), &*constant.source)
        })
        .collect();
    if constants.is_empty() {
        return text;
    }
    let (head, foot) = match format {
        WorkingFormat::Text => ("constants\n", ""),
        WorkingFormat::Markdown => ("**constants**\n\n", ""),
        WorkingFormat::Latex => ("\\paragraph{constants}\n\\begin{itemize}\n", "\\end{itemize}\n"),
        WorkingFormat::Html => ("<h3>constants</h3>\n<ul>\n", "</ul>\n"),
    };
    text.push_str(head);
    for (constant, from) in constants {
        text.push_str(&match format {
            WorkingFormat::Text => format!("  {constant}\n{}", source(from, "    [", "]\n")),
            WorkingFormat::Markdown => format!("- {constant}{}\n", source(from, " (", ")")),
            WorkingFormat::Latex => {
                format!("\\item {}{}\n", latex(&constant), source(&latex(from), " (", ")"))
            }
            WorkingFormat::Html => {
                format!("<li>{}{}</li>\n", html(&constant), source(&html(from), " <small>", "</small>"))
            }
        });
    }
    text.push_str(foot);
    text
}

fn as_text(step: &StepAnswer) -> String {
    format!(
        "{} ({})\n  = {}\n  = {}\n  = {}\n{}",
        step.symbol,
        step.words,
        step.relation,
        step.numbers,
        step.result,
        source(&step.source, "    [", "]\n")
    )
}

fn as_html(step: &StepAnswer) -> String {
    format!(
        "<section>\n<h3>{}</h3>\n{}\n{}</section>\n",
        html(&step.words),
        mathml(step),
        source(&html(&step.source), "<p><small>", "</small></p>\n")
    )
}

/// The step as MathML; as text where the converter does not know a command of its LaTeX.
fn mathml(step: &StepAnswer) -> String {
    let storage = Storage::new();
    // The annotation is written as it is.
    let annotation = html(&step.latex);
    let config =
        RenderConfig { display_mode: DisplayMode::Block, ..RenderConfig::with_annotation(&annotation) };
    let mut written = String::new();
    let events: Result<Vec<_>, _> = Parser::new(&step.latex, &storage).collect();
    let done = events.map(|events| {
        let events = events.into_iter().map(Ok::<_, std::convert::Infallible>);
        push_mathml(&mut written, events, config)
    });
    match done {
        Ok(Ok(())) => {
            let styled = STYLES.iter().fold(written, |text, (plain, styled)| text.replace(plain, styled));
            format!("<div style=\"overflow:auto hidden;padding:0.2em 0\">{styled}</div>")
        }
        _ => format!(
            "<p>{} = {}<br>= {}<br>= <strong>{}</strong></p>",
            html(&step.symbol),
            html(&step.relation),
            html(&step.numbers),
            html(&step.result)
        ),
    }
}

fn source(text: &str, before: &str, after: &str) -> String {
    if text.is_empty() { String::new() } else { format!("{before}{text}{after}") }
}

fn html(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

/// Text for LaTeX: its special characters escaped, the few signs that our symbols use put as mathematics.
fn latex(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '%' | '&' | '#' | '_' | '$' | '{' | '}' => out.extend(['\\', letter]),
            '^' => out.push_str(r"\textasciicircum{}"),
            '₀'..='₉' => {
                let digit = u32::from(letter) - u32::from('₀');
                out.push_str(&format!("$_{digit}$"));
            }
            'ρ' => out.push_str(r"$\rho$"),
            '°' => out.push_str(r"$^\circ$"),
            other => out.push(other),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use overwater_exchange::calculation::{CalculationRequest, calculate};

    use super::*;

    fn step() -> StepAnswer {
        StepAnswer {
            symbol: "p(dry)".to_owned(),
            words: "pressure of the dry gas".to_owned(),
            relation: "p - p(H₂O)".to_owned(),
            numbers: "100 kPa - 2 kPa".to_owned(),
            result: "98 kPa".to_owned(),
            latex: r"\begin{aligned} p_\mathrm{dry} &= p \end{aligned}".to_owned(),
            source: "Dalton & others".to_owned(),
        }
    }

    #[test]
    fn each_format_holds_relation_numbers_value_and_source() {
        let constant = ConstantAnswer {
            symbol: "M(H₂O)".to_owned(),
            words: "molar mass of water".to_owned(),
            value: 18.015,
            unit: "g/mol".to_owned(),
            source: "IUPAC 50 %".to_owned(),
        };
        let write = |format| working(&[step()], std::slice::from_ref(&constant), format);
        let text = write(WorkingFormat::Text);
        assert_eq!(
            text,
            "p(dry) (pressure of the dry gas)\n  = p - p(H₂O)\n  = 100 kPa - 2 kPa\n  = 98 kPa\n    [Dalton & others]\n\
             constants\n  M(H₂O) = 18.015 g/mol, molar mass of water\n    [IUPAC 50 %]\n"
        );
        let set = r"\begin{aligned} p_\mathrm{dry} &= p \end{aligned}";
        assert!(write(WorkingFormat::Markdown).contains(&format!("$$ {set} $$\n")));
        let latex = write(WorkingFormat::Latex);
        assert!(latex.contains(&format!("\\begin{{equation*}}\n{set}\n\\end{{equation*}}")), "{latex}");
        assert!(latex.contains("Dalton \\& others") && latex.contains("M(H$_2$O) = 18.015"), "{latex}");
        let html = write(WorkingFormat::Html);
        assert!(html.contains("<small>Dalton &amp; others</small>"), "{html}");
        assert!(html.starts_with("<section>\n<h3>pressure of the dry gas</h3>\n<div style="), "{html}");
    }

    /// Every formula that has a result where all of its inputs stand at the same share of their ranges.
    fn every_step() -> Vec<StepAnswer> {
        let mut steps = Vec::new();
        let mut without = Vec::new();
        for formula in overwater::catalogue::all() {
            let found = [0.5, 0.1, 0.9, 0.01, 0.99].into_iter().find_map(|share| {
                let inputs = formula.inputs().into_iter().map(|bound| {
                    (bound.name.to_owned(), bound.least + share * (bound.greatest - bound.least))
                });
                let request = CalculationRequest {
                    format: 1,
                    formula: formula.name().to_owned(),
                    inputs: inputs.collect(),
                };
                calculate(&request).ok()
            });
            match found {
                Some(answer) => steps.extend(answer.steps),
                None => without.push(formula.name().to_owned()),
            }
        }
        assert!(without.len() < 10, "{without:?}");
        steps
    }

    #[test]
    fn every_step_of_every_formula_is_set_as_mathematics() {
        let steps = every_step();
        assert!(steps.len() > 300, "{}", steps.len());
        for step in steps {
            let written = mathml(&step);
            let page =
                roxmltree::Document::parse(&written).unwrap_or_else(|error| panic!("{error}: {written}"));
            let elements = |name| page.descendants().filter(move |element| element.has_tag_name(name));
            assert_eq!(elements("math").count(), 1, "{}", step.latex);
            // A line for the relation, one for its numbers and one for the result.
            assert_eq!(elements("mtr").count(), 3, "{}", step.latex);
            for (tag, style) in [("math", "display:"), ("mtable", "math-style:"), ("mtd", "text-align:")] {
                assert!(
                    elements(tag)
                        .all(|element| element.attribute("style").is_some_and(|own| own.starts_with(style))),
                    "{tag} in {written}"
                );
            }
            assert_eq!(elements("annotation").next().and_then(|source| source.text()), Some(&*step.latex));
        }
    }

    #[test]
    fn a_step_that_cannot_be_set_is_shown_as_text() {
        let unknown = StepAnswer { latex: r"\nosuchcommand".to_owned(), ..step() };
        assert_eq!(
            mathml(&unknown),
            "<p>p(dry) = p - p(H₂O)<br>= 100 kPa - 2 kPa<br>= <strong>98 kPa</strong></p>"
        );
    }
}
