//! `overwater weigh` and `overwater balance`.

use overwater::units::significant;
use overwater_exchange::chemistry::{BalanceRequest, FormulaRequest, WeightsRequest, balance, formula};
use overwater_exchange::{FORMAT, Refusal};

use crate::files::{self, Message};

/// The molar mass of a formula, with what it is made of.
pub(crate) fn weigh(text: &str, weights: WeightsRequest, json: bool) -> Result<(), Message> {
    let request = FormulaRequest { format: FORMAT, formula: text.to_owned(), weights };
    let answer = formula(&request).map_err(|refusal| refused(&refusal, "formula", text))?;
    if json {
        return files::print_json(&answer);
    }
    let mut lines = format!(
        "{}  {} g/mol, standard uncertainty {} g/mol\n",
        answer.formula_unicode,
        significant(answer.molar_mass_g_per_mol, 8),
        significant(answer.standard_uncertainty_g_per_mol, 2)
    );
    for atom in &answer.atoms {
        lines.push_str(&format!(
            "  {:<2} x {:<6} {:>6} % by mass  ({})\n",
            atom.symbol,
            atom.count,
            significant(100.0 * atom.mass_fraction, 4),
            atom.name
        ));
    }
    files::print(&lines)
}

/// An equation with its smallest whole numbers.
pub(crate) fn balance_equation(text: &str, json: bool) -> Result<(), Message> {
    let request = BalanceRequest { format: FORMAT, equation: text.to_owned() };
    let answer = balance(&request).map_err(|refusal| refused(&refusal, "equation", text))?;
    if json { files::print_json(&answer) } else { files::print(&(answer.equation_unicode + "\n")) }
}

fn refused(refusal: &Refusal, what: &str, text: &str) -> Message {
    refusal.show(what, text)
}
