//! A formula as text: plain, Unicode, LaTeX, HTML.

use std::fmt::{self, Write};

use super::{Bracket, Formula, Item, plain_sign_is_clear};
use crate::chem::Count;

#[derive(Clone, Copy, PartialEq)]
enum Style {
    Plain,
    Unicode,
    Latex,
    Html,
}

/// The canonical text: it reads back as an equal formula.
///
/// Adducts have a middle dot, a decimal subscript above one has an underscore before it, and a charge has `^`
/// where a plain sign could be misread.
impl fmt::Display for Formula {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut text = String::with_capacity(16);
        self.write(&mut text, Style::Plain)?;
        f.pad(&text)
    }
}

impl Formula {
    /// With Unicode subscripts and superscripts; it reads back as an equal formula.
    ///
    /// ```
    /// use overwater::chem::Formula;
    /// assert_eq!(Formula::parse("SO4^2-(aq)")?.unicode(), "SO₄²⁻(aq)");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn unicode(&self) -> String {
        self.styled(Style::Unicode)
    }

    /// For LaTeX, in or out of mathematics.
    ///
    /// ```
    /// use overwater::chem::Formula;
    /// assert_eq!(Formula::parse("SO4^2-")?.latex(), r"\ensuremath{\mathrm{SO_{4}^{2-}}}");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn latex(&self) -> String {
        format!(r"\ensuremath{{\mathrm{{{}}}}}", self.styled(Style::Latex))
    }

    /// For HTML, with `sub` and `sup`. A formula has no character that needs escaping.
    ///
    /// ```
    /// use overwater::chem::Formula;
    /// assert_eq!(Formula::parse("H2O")?.html(), "H<sub>2</sub>O");
    /// # Ok::<(), overwater::Error>(())
    /// ```
    #[must_use]
    pub fn html(&self) -> String {
        self.styled(Style::Html)
    }

    fn styled(&self, style: Style) -> String {
        let mut text = String::with_capacity(32);
        // Writing to a String does not fail.
        let _ = self.write(&mut text, style);
        text
    }

    fn write(&self, out: &mut String, style: Style) -> fmt::Result {
        write_coefficient(out, self.first)?;
        for item in &self.items {
            match item {
                Item::Atoms(atom, count) => {
                    out.push_str(atom.symbol());
                    write_subscript(out, *count, style)?;
                }
                Item::Open(Bracket::Round) => out.push('('),
                Item::Open(Bracket::Square) => out.push('['),
                Item::Close(bracket, count) => {
                    out.push(if *bracket == Bracket::Round { ')' } else { ']' });
                    write_subscript(out, *count, style)?;
                }
                Item::Dot(count) => {
                    out.push_str(if style == Style::Latex { r"\cdot " } else { "·" });
                    write_coefficient(out, *count)?;
                }
            }
        }
        if self.is_electron() {
            out.push('e');
        }
        self.write_charge(out, style)?;
        out.push_str(self.state.map_or("", |state| state.symbol()));
        Ok(())
    }

    fn write_charge(&self, out: &mut String, style: Style) -> fmt::Result {
        let sign = match self.charge {
            0 => return Ok(()),
            1.. => '+',
            _ => '-',
        };
        let number = match self.charge.unsigned_abs() {
            1 => String::new(),
            number => number.to_string(),
        };
        match style {
            Style::Plain if number.is_empty() && plain_sign_is_clear(self.last_part()) => out.push(sign),
            Style::Plain => write!(out, "^{number}{sign}")?,
            Style::Unicode => {
                out.extend(number.bytes().map(superscript));
                out.push(if sign == '+' { '⁺' } else { '⁻' });
            }
            Style::Latex => write!(out, "^{{{number}{sign}}}")?,
            Style::Html => {
                let sign = if sign == '+' { '+' } else { '−' };
                write!(out, "<sup>{number}{sign}</sup>")?;
            }
        }
        Ok(())
    }
}

fn write_coefficient(out: &mut String, count: Count) -> fmt::Result {
    if count == Count::ONE { Ok(()) } else { write!(out, "{count}") }
}

fn write_subscript(out: &mut String, count: Count, style: Style) -> fmt::Result {
    if count == Count::ONE {
        return Ok(());
    }
    match style {
        Style::Plain => {
            // 0.95 can only be a decimal; 1.85 before a symbol could be a dot and a coefficient.
            let underscore = count.decimals() > 0 && count.to_f64() >= 1.0;
            write!(out, "{}{count}", if underscore { "_" } else { "" })
        }
        Style::Unicode => {
            out.extend(count.to_string().bytes().map(subscript));
            Ok(())
        }
        Style::Latex => write!(out, "_{{{count}}}"),
        Style::Html => write!(out, "<sub>{count}</sub>"),
    }
}

/// The subscript of a digit; the decimal point stays.
fn subscript(byte: u8) -> char {
    match byte {
        b'0'..=b'9' => char::from_u32(u32::from('₀') + u32::from(byte - b'0')).unwrap_or('?'),
        _ => char::from(byte),
    }
}

fn superscript(byte: u8) -> char {
    match byte {
        b'1' => '¹',
        b'2' => '²',
        b'3' => '³',
        _ => char::from_u32(u32::from('⁰') + u32::from(byte.saturating_sub(b'0'))).unwrap_or('?'),
    }
}

#[cfg(test)]
mod tests {
    use crate::chem::Formula;

    fn all(text: &str) -> [String; 4] {
        let formula = Formula::parse(text).unwrap();
        [formula.to_string(), formula.unicode(), formula.latex(), formula.html()]
    }

    #[test]
    fn adducts_brackets_and_states_in_every_style() {
        assert_eq!(
            all("3CdSO4.8H2O(s)"),
            [
                "3CdSO4·8H2O(s)",
                "3CdSO₄·8H₂O(s)",
                r"\ensuremath{\mathrm{3CdSO_{4}\cdot 8H_{2}O(s)}}",
                "3CdSO<sub>4</sub>·8H<sub>2</sub>O(s)"
            ]
        );
        assert_eq!(
            all("[Cr(NH3)6]^3+"),
            [
                "[Cr(NH3)6]^3+",
                "[Cr(NH₃)₆]³⁺",
                r"\ensuremath{\mathrm{[Cr(NH_{3})_{6}]^{3+}}}",
                "[Cr(NH<sub>3</sub>)<sub>6</sub>]<sup>3+</sup>"
            ]
        );
    }

    #[test]
    fn charges_take_a_caret_only_where_needed() {
        for (text, plain) in [
            ("Na^+", "Na+"),
            ("OH^-", "OH-"),
            ("MnO4^-", "MnO4-"),
            ("[Ag(NH3)2]^+", "[Ag(NH3)2]+"),
            ("I3^-", "I3^-"),
            ("Hg2^2+", "Hg2^2+"),
            ("B12H11^-", "B12H11^-"),
            ("C60^-", "C60-"),
            ("[Fe]3^-", "[Fe]3^-"),
            ("Fe0.5^+", "Fe0.5+"),
            ("e^-", "e-"),
            ("MnO4-·2H2O", ""),
        ] {
            match Formula::parse(text) {
                Ok(formula) => assert_eq!(formula.to_string(), plain),
                Err(_) => assert_eq!(plain, "", "{text}"),
            }
        }
        assert_eq!(all("e-")[1..], ["e⁻", r"\ensuremath{\mathrm{e^{-}}}", "e<sup>−</sup>"]);
        assert_eq!(all("Tc^14+")[1], "Tc¹⁴⁺");
        assert_eq!(all("Tc^203-")[1], "Tc²⁰³⁻");
    }

    #[test]
    fn decimals_print_so_that_they_read_back() {
        assert_eq!(all("Fe0.95O")[..2], ["Fe0.95O", "Fe₀.₉₅O"]);
        assert_eq!(all("La_1.85Sr0.15CuO4")[..2], ["La_1.85Sr0.15CuO4", "La₁.₈₅Sr₀.₁₅CuO₄"]);
        assert_eq!(all("CaSO4.0.5H2O")[..2], ["CaSO4·0.5H2O", "CaSO₄·0.5H₂O"]);
    }

    #[test]
    fn widths_are_kept() {
        assert_eq!(
            format!("{:>6}|{:<5}|", Formula::parse("H2O").unwrap(), Formula::parse("O2").unwrap()),
            "   H2O|O2   |"
        );
    }
}
