//! Atomic weights against the published tables as a text, and molar masses added up by hand.

use overwater::chem::{Formula, Weights};
use overwater::reference::elements::{StandardWeight, by_number, by_symbol};
use overwater_testkit::data::Table;
use overwater_testkit::notation::{concise, millionths};

fn table(name: &str) -> Table {
    Table::read(format!("{}/data/{name}", env!("CARGO_MANIFEST_DIR")))
}

#[test]
fn every_element_is_as_published() {
    let table = table("ciaaw_abridged_2021.csv");
    assert_eq!(table.len(), 118);
    for (index, row) in table.rows().enumerate() {
        let [number, symbol, name, standard, abridged, conventional] =
            ["number", "symbol", "name", "standard", "abridged", "conventional"]
                .map(|column| row.text(column));
        let element = by_symbol(symbol).unwrap_or_else(|| panic!("{symbol} is not found"));
        assert_eq!(element.number.to_string(), number);
        assert_eq!(usize::from(element.number), index + 1);
        assert_eq!(by_number(element.number), Some(element));
        assert_eq!(element.name, name);
        let expected = match standard.strip_prefix('[').and_then(|text| text.strip_suffix(']')) {
            None => {
                let (value, uncertainty) = concise(standard);
                StandardWeight::Value { value, uncertainty }
            }
            Some(inside) => match inside.split_once(';') {
                Some((low, high)) => {
                    StandardWeight::Interval { low: low.parse().unwrap(), high: high.parse().unwrap() }
                }
                None => StandardWeight::NoStable { mass_number: inside.parse().unwrap() },
            },
        };
        assert_eq!(element.standard, expected, "{symbol}");
        let found = element.abridged.map(|weight| (weight.value, weight.uncertainty));
        assert_eq!(found, (!abridged.is_empty()).then(|| concise(abridged)), "{symbol}");
        assert_eq!(element.conventional, conventional.parse().ok(), "{symbol}");
        assert_eq!(conventional.is_empty(), abridged.is_empty(), "{symbol}");
    }
}

#[test]
fn molar_masses_are_the_sums_made_by_hand() {
    let table = table("molar_masses_by_hand.csv");
    assert!(table.len() >= 30, "{} compounds", table.len());
    for row in table.rows() {
        let [name, formula, sum, expected] =
            ["name", "formula", "sum", "g_per_mol"].map(|column| row.text(column));
        // The written sum first: number x weight, both with their decimals, in whole numbers.
        let added: i128 = sum
            .split(" + ")
            .map(|product| {
                let (number, weight) = product.split_once(" x ").expect("a product");
                millionths(number) * millionths(weight)
            })
            .sum();
        assert_eq!(added, millionths(expected) * 1_000_000, "{name}: {sum}");
        let mass = Formula::parse(formula).and_then(|f| f.molar_mass(Weights::Abridged)).unwrap();
        let expected: f64 = expected.parse().unwrap();
        // A few roundings of a double each.
        let difference = (mass.value_g_per_mol - expected).abs();
        assert!(difference <= 1e-14 * expected * 8.0, "{name}: {} is not {expected}", mass.value_g_per_mol);
    }
}

#[test]
fn the_standard_uncertainty_comes_from_the_printed_digits() {
    for row in table("ciaaw_abridged_2021.csv").rows() {
        let [symbol, standard, abridged] = ["symbol", "standard", "abridged"].map(|column| row.text(column));
        if abridged.is_empty() {
            assert!(Formula::parse(symbol).unwrap().molar_mass(Weights::Exact).is_err(), "{symbol}");
            continue;
        }
        let uncertainty = |weights| {
            Formula::parse(symbol).unwrap().molar_mass(weights).unwrap().standard_uncertainty_g_per_mol
        };
        let half_width = match standard.trim_matches(['[', ']']).split_once(';') {
            Some((low, high)) => (high.parse::<f64>().unwrap() - low.parse::<f64>().unwrap()) / 2.0,
            None => concise(standard).1,
        };
        for (found, half_width) in
            [(uncertainty(Weights::Exact), half_width), (uncertainty(Weights::Abridged), concise(abridged).1)]
        {
            let expected = half_width / 3.0_f64.sqrt();
            assert!((found - expected).abs() <= 1e-14 * expected, "{symbol}: {found} is not {expected}");
        }
    }
}
