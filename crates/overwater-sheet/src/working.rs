//! A worked solution as text, Markdown, LaTeX or HTML.
//!
//! The HTML holds each step as text, for every reader, and its LaTeX source in a `code` element, for whoever sets it.

use overwater_exchange::calculation::StepAnswer;
use overwater_exchange::reduction::answer::ConstantAnswer;

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
        "<section>\n<h3>{}</h3>\n<p>{} = {}<br>= {}<br>= <strong>{}</strong></p>\n<code>{}</code>\n{}</section>\n",
        html(&step.words),
        html(&step.symbol),
        html(&step.relation),
        html(&step.numbers),
        html(&step.result),
        html(&step.latex),
        source(&html(&step.source), "<p><small>", "</small></p>\n")
    )
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
    use super::*;

    fn step() -> StepAnswer {
        StepAnswer {
            symbol: "p(dry)".to_owned(),
            words: "pressure of the dry gas".to_owned(),
            relation: "p - p(H₂O)".to_owned(),
            numbers: "100 kPa - 2 kPa".to_owned(),
            result: "98 kPa".to_owned(),
            latex: r"p_\mathrm{dry} = p".to_owned(),
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
        assert!(write(WorkingFormat::Markdown).contains("$$ p_\\mathrm{dry} = p $$\n"));
        let latex = write(WorkingFormat::Latex);
        assert!(latex.contains("\\begin{equation*}\np_\\mathrm{dry} = p\n\\end{equation*}"), "{latex}");
        assert!(latex.contains("Dalton \\& others") && latex.contains("M(H$_2$O) = 18.015"), "{latex}");
        let html = write(WorkingFormat::Html);
        assert!(html.contains("<small>Dalton &amp; others</small>"), "{html}");
        assert!(html.contains("= <strong>98 kPa</strong>"), "{html}");
    }
}
