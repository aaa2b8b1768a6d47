//! Numbers in the cells of a table.

use overwater::{Code, Error};

use super::request::DecimalRequest;

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
