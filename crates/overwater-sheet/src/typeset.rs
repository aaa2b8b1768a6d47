//! Units and formulas as they are printed where superscripts and subscripts are at hand.

/// Replaces units and formulas that stand as words of their own: cm3 by cm³, degC by °C, H2O2 by H₂O₂.
///
/// ```
/// // Keys keep their spelling.
/// assert_eq!(overwater_sheet::typeset("volume_cm3 = 250 cm3 at 20 degC"), "volume_cm3 = 250 cm³ at 20 °C");
/// ```
#[must_use]
pub fn typeset(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut word = String::new();
    for letter in text.chars().chain(['\n']) {
        if letter.is_alphanumeric() || letter == '_' {
            word.push(letter);
            continue;
        }
        out.push_str(match word.as_str() {
            "cm3" => "cm³",
            "dm3" => "dm³",
            "m3" => "m³",
            "degC" => "°C",
            "s2" => "s²",
            "H2O2" => "H₂O₂",
            "H2O" => "H₂O",
            "O2" => "O₂",
            "KMnO4" => "KMnO₄",
            other => other,
        });
        word.clear();
        out.push(letter);
    }
    out.pop();
    out
}

#[cfg(test)]
mod tests {
    use super::typeset;

    #[test]
    fn only_whole_words_are_units() {
        assert_eq!(typeset("mol/dm3, cm3/s; m3"), "mol/dm³, cm³/s; m³");
        assert_eq!(typeset("cm30 xcm3 apparatus.jar_cm3"), "cm30 xcm3 apparatus.jar_cm3");
        assert_eq!(typeset("J/(mol K), m/s2, 2 H2O2 = 2 H2O + O2"), "J/(mol K), m/s², 2 H₂O₂ = 2 H₂O + O₂");
        assert_eq!(typeset(""), "");
        assert_eq!(typeset("25 degC and 1 atm\n"), "25 °C and 1 atm\n");
    }
}
