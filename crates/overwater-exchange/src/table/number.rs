//! Numbers in the cells of a table.

use overwater::{Code, Error};

use crate::reduction::request::DecimalRequest;

/// A number as written, with the decimal sign that is known so far.
///
/// # Errors
/// `missing` for a blank cell, `ambiguous` for a comma that may stand for thousands, `not_a_number` for NaN and
/// infinities, `syntax` for everything else.
pub(crate) fn number(text: &str, decimal: Option<DecimalRequest>) -> Result<f64, Error> {
    let text = text.trim();
    if let Ok(value) = text.parse::<f64>()
        && decimal != Some(DecimalRequest::Comma)
    {
        return finite(text, value);
    }
    let wrong = |code, advice: &str| Err(Error::new(code, "").value(format!("{text:?}")).advice(advice));
    if text.is_empty() {
        return Err(Error::new(Code::Missing, "").advice("the cell is blank"));
    }
    if text.contains(',') {
        if text.contains('.') || text.matches(',').count() > 1 {
            return wrong(Code::Ambiguous, "write the number with one decimal sign and no thousands");
        }
        match decimal {
            Some(DecimalRequest::Point) => {
                return wrong(Code::Syntax, "commas are not read where decimals have a point");
            }
            None if !shows_comma(text) => {
                return wrong(
                    Code::Ambiguous,
                    "does the comma stand for thousands? say decimal = \"comma\" or \"point\" in the options",
                );
            }
            _ => {}
        }
        if let Ok(value) = text.replace(',', ".").parse::<f64>() {
            return finite(text, value);
        }
    }
    match text.parse::<f64>() {
        Ok(value) if !text.contains('.') => finite(text, value),
        Ok(_) => wrong(Code::Ambiguous, "other cells have decimal commas: write all with one decimal sign"),
        Err(_) => wrong(Code::Syntax, "write a number, with its unit in the name of the column"),
    }
}

fn finite(text: &str, value: f64) -> Result<f64, Error> {
    if value.is_finite() {
        return Ok(value);
    }
    Err(Error::new(Code::NotANumber, "")
        .value(text)
        .advice("leave the row out, or give the number that was read"))
}

/// A plain decimal, as in `-20.5`, of at most 15 digits; nothing for everything else. Its digits as a whole number and the
/// power of ten are both held exactly, so that the one division rounds correctly and gives what a full parser gives.
pub(crate) fn plain(text: &[u8]) -> Option<f64> {
    const TENS: [f64; 16] =
        [1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];
    let (negative, digits) = match text.strip_prefix(b"-") {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let (mut whole, mut places, mut point, mut count) = (0_u64, 0_usize, false, 0_u32);
    for byte in digits {
        match byte {
            b'0'..=b'9' if count < 15 => {
                whole = whole * 10 + u64::from(byte - b'0');
                count += 1;
                places += usize::from(point);
            }
            b'.' if !point => point = true,
            _ => return None,
        }
    }
    if count == 0 {
        return None;
    }
    let value = whole as f64 / TENS.get(places)?;
    Some(if negative { -value } else { value })
}

/// How many significant figures and how many decimal places a number is written with: zeros in front do not count, all
/// others do, also those before a decimal sign that is not there.
pub(crate) fn written(text: &[u8]) -> (u32, u32) {
    let digits = text.split(|byte| matches!(byte, b'e' | b'E')).next().unwrap_or_default();
    let (mut figures, mut places, mut after) = (0, 0, false);
    for byte in digits {
        match byte {
            b'0' if figures == 0 => places += u32::from(after),
            b'0'..=b'9' => {
                figures += 1;
                places += u32::from(after);
            }
            b'.' | b',' => after = true,
            _ => {}
        }
    }
    (figures, places)
}

/// Whether the comma in a text can only be a decimal sign: not one to three digits, a comma, and three digits.
pub(crate) fn shows_comma(text: &str) -> bool {
    let text = text.trim().trim_start_matches(['-', '+']);
    let Some((whole, part)) = text.split_once(',') else {
        return false;
    };
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    digits(whole) && digits(part) && !(part.len() == 3 && whole.len() <= 3 && whole != "0")
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_plain_decimal_is_what_the_full_parser_makes_of_it(text in "-?[0-9]{0,9}[.]?[0-9]{0,9}") {
            if let Some(value) = plain(text.as_bytes()) {
                prop_assert_eq!(value.to_bits(), text.parse::<f64>().unwrap().to_bits(), "{}", text);
            } else {
                let digits = text.bytes().filter(u8::is_ascii_digit).count();
                prop_assert!(digits == 0 || digits > 15, "{}", text);
            }
        }
    }

    #[test]
    fn figures_are_counted_as_written() {
        for (text, figures, places) in [
            ("45.0", 3, 1),
            ("0.050", 2, 3),
            ("120", 3, 0),
            ("-0,25", 2, 2),
            ("1.60e-3", 3, 2),
            ("0", 0, 0),
            ("0.0", 0, 1),
            (" 100.05 ", 5, 2),
        ] {
            assert_eq!(written(text.as_bytes()), (figures, places), "{text}");
        }
    }

    #[test]
    fn what_is_no_plain_decimal_is_left_to_the_full_parser() {
        assert_eq!(plain(b"-20.5"), Some(-20.5));
        for text in ["", "-", ".", "1e3", " 1", "+1", "nan", "1,5", "1.2.3"] {
            assert_eq!(plain(text.as_bytes()), None, "{text}");
        }
    }

    #[test]
    fn a_decimal_comma_is_read_where_it_can_be_nothing_else() {
        assert_eq!(number("20,5", None), Ok(20.5));
        assert_eq!(number("0,125", None), Ok(0.125));
        assert_eq!(number("1,013", None).unwrap_err().code, Code::Ambiguous);
        assert_eq!(number("1,013", Some(DecimalRequest::Comma)), Ok(1.013));
        assert_eq!(number("20,5", Some(DecimalRequest::Point)).unwrap_err().code, Code::Syntax);
        assert_eq!(number("1.013,25", None).unwrap_err().code, Code::Ambiguous);
        assert_eq!(number("20.5", Some(DecimalRequest::Comma)).unwrap_err().code, Code::Ambiguous);
        assert_eq!(number("20", Some(DecimalRequest::Comma)), Ok(20.0));
        assert_eq!(number(" 20.5 ", None), Ok(20.5));
        assert_eq!(number("", None).unwrap_err().code, Code::Missing);
        assert_eq!(number("nan", None).unwrap_err().code, Code::NotANumber);
        assert_eq!(number("20 cm3", None).unwrap_err().code, Code::Syntax);
    }
}
