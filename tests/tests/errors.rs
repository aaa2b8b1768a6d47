//! Every kind of refusal is raised by something a user can do, and says what it must.

use overwater::chem::{Formula as Chemical, Reaction};
use overwater::gas::collected::DryAmount;
use overwater::peroxide::dilution::StockVolume;
use overwater::peroxide::label::Label;
use overwater::scalar::Formula;
use overwater::{Code, Error, bounds};

fn raised(code: Code) -> Error {
    match code {
        Code::Ambiguous => Label::read("30 %").unwrap_err(),
        Code::CannotBeMet => StockVolume.number([1.0, 2.0, 100.0]).unwrap_err(),
        Code::Contradiction => DryAmount::default().number([50.0, 99.0, 90.0, 0.0]).unwrap_err(),
        Code::GivenTwice => Reaction::parse("H2 + H2 + O2 -> H2O").and_then(|r| r.balance()).unwrap_err(),
        Code::ManyBalances => Reaction::parse("H2O2 + KMnO4 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2")
            .and_then(|reaction| reaction.balance())
            .unwrap_err(),
        Code::Missing => Label::read("30").unwrap_err(),
        Code::NoBalance => Reaction::parse("Fe -> Fe2O3").and_then(|r| r.balance()).unwrap_err(),
        Code::NotANumber => bounds::TEMPERATURE_C.check(f64::NAN).unwrap_err(),
        Code::OutOfRange => bounds::TEMPERATURE_C.check(150.0).unwrap_err(),
        Code::Syntax => Chemical::parse("H2(O").unwrap_err(),
        Code::TooLarge => Chemical::parse(&"H".repeat(10_000)).unwrap_err(),
        Code::UnknownName => Chemical::parse("NaXl").unwrap_err(),
        other => panic!("nothing raises {}", other.name()),
    }
}

#[test]
fn each_code_is_raised_and_names_its_parameter() {
    for code in Code::ALL {
        let error = raised(code);
        assert_eq!(error.code, code, "{error}");
        assert!(!error.parameter.is_empty(), "{error}");
        assert!(!error.allowed.is_empty() || !error.advice.is_empty(), "{error} says nothing to do");
        let text = error.to_string();
        assert!(text.starts_with(error.parameter.as_ref()), "{text}");
        assert!(text.contains(&*error.value) && text.contains(&*error.allowed), "{text}");
    }
}

#[test]
fn names_of_codes_are_unique_and_in_order() {
    let names: Vec<&str> = Code::ALL.iter().map(|code| code.name()).collect();
    assert!(names.is_sorted_by(|a, b| a < b), "{names:?}");
    assert!(names.iter().all(|name| name.chars().all(|c| c.is_ascii_lowercase() || c == '_')));
}
