//! What a dot between two digits means: the rule in the documentation of `Formula`.

/// The meaning of a dot that has digits on both sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Dot {
    /// A decimal point inside a subscript.
    Decimal,
    /// A dot between the parts of an adduct.
    Adduct,
    /// Both are possible.
    Either,
}

/// Molecules that are written behind a dot so often that the digits before them are taken as a coefficient.
const PARTNERS: [&[u8]; 7] = [b"H2O", b"D2O", b"T2O", b"H2O2", b"NH3", b"CH3OH", b"C2H5OH"];

/// `before`: the digits before the dot; `behind`: the text behind it, which begins with a digit.
pub(super) fn meaning(before: &[u8], behind: &[u8]) -> Dot {
    if before == b"0" {
        return Dot::Decimal;
    }
    let (digits, rest) = split_digits(behind);
    if let [b'.', more @ ..] = rest {
        let (second, rest) = split_digits(more);
        if !second.is_empty() && begins_formula(rest) {
            // 4.0.5H2O: nobody writes a subscript 4.0, so the coefficient is 0.5; 3.1.5H2O has two readings.
            return if digits == b"0" && begins_with_partner(rest) { Dot::Adduct } else { Dot::Either };
        }
        return Dot::Decimal;
    }
    if digits.first() == Some(&b'0') || !begins_formula(rest) {
        Dot::Decimal
    } else if begins_with_partner(rest) {
        Dot::Adduct
    } else {
        Dot::Either
    }
}

fn split_digits(text: &[u8]) -> (&[u8], &[u8]) {
    let end = text.iter().position(|byte| !byte.is_ascii_digit()).unwrap_or(text.len());
    text.split_at_checked(end).unwrap_or((text, &[]))
}

fn begins_formula(text: &[u8]) -> bool {
    match text {
        [b'(', ..] => super::parse::state_at(text).is_none(),
        [first, ..] => first.is_ascii_uppercase() || *first == b'[',
        [] => false,
    }
}

fn begins_with_partner(text: &[u8]) -> bool {
    PARTNERS.iter().any(|partner| text.strip_prefix(*partner).is_some_and(ends_part))
}

/// Whether a part of an adduct can end before this text.
fn ends_part(text: &[u8]) -> bool {
    match text {
        [] | [b'.' | b' ' | b'+' | b'-' | b'^' | b')' | b']', ..] => true,
        [b'(', ..] => super::parse::state_at(text).is_some(),
        _ => text.starts_with("·".as_bytes()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_rule_has_its_cases() {
        let cases = [
            // A leading zero is a decimal, whatever follows.
            ("0", "95O", Dot::Decimal),
            ("0", "5H2O", Dot::Decimal),
            // No formula behind the digits, or digits that are no coefficient.
            ("6", "9", Dot::Decimal),
            ("6", "9(s)", Dot::Decimal),
            ("6", "9)", Dot::Decimal),
            ("6", "9^2-", Dot::Decimal),
            ("6", "9.", Dot::Decimal),
            ("6", "9.5", Dot::Decimal),
            ("6", "9·2H2O", Dot::Decimal),
            ("1", "05O", Dot::Decimal),
            ("2", "0O", Dot::Decimal),
            // Water and the other partners as the whole of the next part.
            ("4", "5H2O", Dot::Adduct),
            ("4", "5H2O(s)", Dot::Adduct),
            ("4", "5H2O.2NH3", Dot::Adduct),
            ("4", "5H2O·2NH3", Dot::Adduct),
            ("4", "5H2O ", Dot::Adduct),
            ("4", "5H2O)2", Dot::Adduct),
            ("4", "5H2O]", Dot::Adduct),
            ("4", "5H2O^+", Dot::Adduct),
            ("4", "5H2O+", Dot::Adduct),
            ("4", "5H2O-", Dot::Adduct),
            ("4", "5D2O", Dot::Adduct),
            ("4", "5T2O", Dot::Adduct),
            ("3", "3H2O2", Dot::Adduct),
            ("2", "6NH3", Dot::Adduct),
            ("2", "4CH3OH", Dot::Adduct),
            ("2", "3C2H5OH", Dot::Adduct),
            ("4", "0.5H2O", Dot::Adduct),
            // Two readings.
            ("4", "5H2O3", Dot::Either),
            ("4", "5H2OH", Dot::Either),
            ("4", "5H2O(OH)", Dot::Either),
            ("1", "85Sr0.15CuO4", Dot::Either),
            ("3", "2SiO2", Dot::Either),
            ("3", "2(NH4)2O", Dot::Either),
            ("3", "2[Fe]", Dot::Either),
            ("3", "1.5H2O2", Dot::Either),
            ("4", "0.5SiO2", Dot::Either),
        ];
        for (before, behind, dot) in cases {
            assert_eq!(meaning(before.as_bytes(), behind.as_bytes()), dot, "{before}.{behind}");
        }
    }
}
