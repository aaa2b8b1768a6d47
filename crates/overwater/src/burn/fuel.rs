//! What burns: any element or compound of the thermochemical tables, found by its name or formula.

use crate::burn::Combustion;
use crate::chem::{Atom, Formula, State};
use crate::reference::nasa9::Species;
use crate::reference::oxides::{FUEL_NAMES, LIQUID_FUELS_298, OXIDES, Oxides};
use crate::reference::thermochemistry::{Phase, STANDARD_STATES_298, StandardState};
use crate::scalar::Source;
use crate::{Code, Error, Result, nearest};

/// Why pupils must not burn it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Restriction {
    /// An alkali metal beyond sodium.
    AlkaliMetal,
    /// White phosphorus.
    WhitePhosphorus,
    /// A gas or a vapour that explodes when it is mixed with oxygen.
    FlammableVapour,
}

impl Restriction {
    /// The caution, in our own words.
    #[must_use]
    pub const fn caution(self) -> &'static str {
        match self {
            Restriction::AlkaliMetal => {
                "Not for pupils, and not in a jar of oxygen: the alkali metals beyond sodium burn violently, spit, and \
                 what they leave may explode with what is left of the metal or its oil. No sample is advised. What may be \
                 shown at all, the employer's risk assessment says."
            }
            Restriction::WhitePhosphorus => {
                "Not for schools: white phosphorus takes fire by itself in air, its burns are deep, and it is very \
                 poisonous. No sample is advised."
            }
            Restriction::FlammableVapour => {
                "Not in a closed jar: this gas or vapour explodes when it is mixed with oxygen and lit, and glass flies. \
                 No sample is advised. What may be shown in the open, the employer's risk assessment says."
            }
        }
    }
}

/// Something that burns, in its state at 298.15 K and 100 kPa.
#[derive(Debug, Clone, PartialEq)]
pub struct Fuel {
    /// Its name in the tables.
    pub name: &'static str,
    /// Its formula, without a state.
    pub formula: Formula,
    /// Its phase.
    pub phase: Phase,
    /// Enthalpy of formation at 298.15 K, in kJ/mol.
    pub formation_kj_per_mol: f64,
    /// Heat capacity at 298.15 K, in J/(mol K), where the tables have it.
    pub heat_capacity_j_per_mol_k: Option<f64>,
    /// Where the enthalpy of formation comes from.
    pub source: &'static Source,
    /// Why pupils must not burn it, where they must not.
    pub restriction: Option<Restriction>,
}

impl Fuel {
    /// Finds what burns by its name (in any case) or its formula; a state picks the phase, as in `C2H5OH(g)`, else the
    /// phase that is stable at 298.15 K is meant.
    ///
    /// ```
    /// use overwater::burn::Fuel;
    /// assert_eq!(Fuel::find("octane")?.formula.to_string(), "C8H18");
    /// assert_eq!(Fuel::find("Steel wool")?.formula.to_string(), "Fe");
    /// // Red and white phosphorus are not the same fuel: 17.46 kJ/mol between them (NIST-JANAF).
    /// assert_eq!(Fuel::find("P")?.formation_kj_per_mol, -17.46);
    /// assert_eq!(Fuel::find("P4")?.formation_kj_per_mol, 0.0);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// `unknown_name`, with the nearest name; those of [`Formula::parse`]; `cannot_be_met` for what does not burn.
    pub fn find(text: &str) -> Result<Fuel> {
        let wanted = text.trim();
        let fuel = by_name(wanted).map_or_else(|| by_formula(wanted), Ok)?;
        fuel.refuse_what_does_not_burn(wanted)?;
        Ok(fuel)
    }

    /// The oxides of its elements but for oxygen, in the order of the table.
    ///
    /// # Errors
    /// `cannot_be_met` for an element that makes no oxide by burning.
    pub(super) fn oxides(&self) -> Result<Vec<&'static Oxides>> {
        let holds =
            |symbol: &str| Atom::from_symbol(symbol).is_some_and(|atom| self.formula.count(atom).is_some());
        let stranger = self
            .formula
            .composition()
            .iter()
            .map(|(atom, _)| *atom)
            .find(|atom| atom.symbol() != "O" && !OXIDES.iter().any(|row| row.element == atom.symbol()));
        if let Some(atom) = stranger {
            let elements: Vec<&str> = OXIDES.iter().map(|row| row.element).collect();
            return Err(Error::new(Code::CannotBeMet, "sample")
                .value(format!("{} with {}", self.formula, atom.name()))
                .allowed(format!("compounds of {} and O", elements.join(", ")))
                .advice(format!("it is not known here what {} makes when it burns", atom.name())));
        }
        Ok(OXIDES.iter().filter(|row| holds(row.element)).collect())
    }

    fn refuse_what_does_not_burn(&self, wanted: &str) -> Result<()> {
        let mut needed = 0.0;
        for row in self.oxides()? {
            let (element, oxide) = (Atom::from_symbol(row.element), Formula::parse(row.favoured)?);
            let count = |formula: &Formula, atom: Option<Atom>| {
                atom.and_then(|atom| formula.count(atom)).map_or(0.0, |count| count.to_f64())
            };
            let oxygen = Atom::from_symbol("O");
            needed += count(&self.formula, element) * count(&oxide, oxygen) / count(&oxide, element);
        }
        let held = Atom::from_symbol("O").and_then(|oxygen| self.formula.count(oxygen));
        let oxides: Vec<&str> = self.oxides()?.iter().map(|row| row.favoured).collect();
        if needed > held.map_or(0.0, |count| count.to_f64()) {
            // What takes up oxygen only when it is heated all the time does not burn either.
            if Combustion::to(self, &oxides)?.heat_kj_per_mol > 0.0 {
                return Ok(());
            }
            return Err(Error::new(Code::CannotBeMet, "sample")
                .value(wanted)
                .allowed("something that gives out heat when it takes up oxygen")
                .advice(format!(
                    "{} does not burn: it would take heat to make {}",
                    self.name,
                    oxides.join(" and ")
                )));
        }
        Err(Error::new(Code::CannotBeMet, "sample")
            .value(wanted)
            .allowed("something that takes up oxygen")
            .advice(format!("{} does not burn: it holds all the oxygen that its elements take", self.name)))
    }

    /// Its enthalpy at a temperature: that of formation, and what takes it there from 298.15 K; in J/mol.
    ///
    /// By the NASA Glenn equations where they have the phase at that temperature, else with the heat capacity at
    /// 298.15 K, which is good for some tens of kelvin.
    #[must_use]
    pub fn enthalpy_j_per_mol(&self, temperature_k: f64) -> f64 {
        let formula = self.formula.to_string();
        let warming = Species::find(&formula, self.phase, temperature_k)
            .and_then(|hot| Some((hot, Species::find(&formula, self.phase, AT_K)?)))
            .and_then(|(hot, cold)| {
                let [_, warm, _] = hot.properties(temperature_k).ok()?;
                let [_, cool, _] = cold.properties(AT_K).ok()?;
                Some((warm - cool) * 1000.0)
            })
            .unwrap_or_else(|| self.heat_capacity_j_per_mol_k.unwrap_or(0.0) * (temperature_k - AT_K));
        self.formation_kj_per_mol * 1000.0 + warming
    }
}

/// Where the tables stand, in K.
const AT_K: f64 = 298.15;

fn fuel(
    name: &'static str,
    formula: &str,
    phase: Phase,
    formation_kj_per_mol: f64,
    heat_capacity_j_per_mol_k: Option<f64>,
    source: &'static Source,
) -> Result<Fuel> {
    let restriction = match (formula, phase) {
        ("K", _) => Some(Restriction::AlkaliMetal),
        _ if name == "phosphorus white" => Some(Restriction::WhitePhosphorus),
        (_, Phase::Gas | Phase::Liquid) => Some(Restriction::FlammableVapour),
        _ => None,
    };
    let formula = Formula::parse(formula)?;
    Ok(Fuel { name, formula, phase, formation_kj_per_mol, heat_capacity_j_per_mol_k, source, restriction })
}

impl TryFrom<&StandardState> for Fuel {
    type Error = Error;

    fn try_from(row: &StandardState) -> Result<Fuel> {
        fuel(
            row.name,
            row.formula,
            row.phase,
            row.formation_kj_per_mol,
            row.heat_capacity_j_per_mol_k,
            row.source,
        )
    }
}

fn by_name(wanted: &str) -> Option<Fuel> {
    let lower = wanted.to_lowercase();
    let alias = FUEL_NAMES.iter().find(|(other, _)| *other == wanted || *other == lower);
    let name = alias.map_or(lower.as_str(), |(_, name)| *name);
    let row = STANDARD_STATES_298
        .iter()
        .find(|row| row.phase != Phase::Aqueous && row.name.eq_ignore_ascii_case(name));
    let liquid = || LIQUID_FUELS_298.iter().find(|row| row.name == name);
    row.and_then(|row| Fuel::try_from(row).ok()).or_else(|| {
        let row = liquid()?;
        let capacity = Some(row.heat_capacity_j_per_mol_k);
        fuel(row.name, row.formula, row.phase, row.formation_kj_per_mol, capacity, row.source).ok()
    })
}

/// The standard state of a formula in the phase that is stable at 298.15 K, or in the one that is asked for.
pub(super) fn standard_state(formula: &Formula, phase: Option<Phase>) -> Option<&'static StandardState> {
    let gibbs = |row: &StandardState| row.formation_kj_per_mol - AT_K * row.entropy_j_per_mol_k / 1000.0;
    let stable = |is_it: &dyn Fn(&str) -> bool| {
        STANDARD_STATES_298
            .iter()
            .filter(|row| row.phase != Phase::Aqueous && phase.is_none_or(|phase| phase == row.phase))
            .filter(|row| is_it(row.formula))
            .min_by(|a, b| gibbs(a).total_cmp(&gibbs(b)))
    };
    // Most formulas are written as the table writes them; only the others are read one by one.
    let written = formula.to_string();
    stable(&|known| known == written).or_else(|| {
        stable(&|known| Formula::parse(known).is_ok_and(|known| known.equal_but_for_state(formula)))
    })
}

fn by_formula(wanted: &str) -> Result<Fuel> {
    let unknown = || {
        let names = STANDARD_STATES_298
            .iter()
            .map(|row| row.name)
            .chain(LIQUID_FUELS_298.iter().map(|row| row.name))
            .chain(FUEL_NAMES.iter().map(|(other, _)| *other));
        let error = Error::new(Code::UnknownName, "sample").value(wanted).allowed(
            "a name or a formula of the thermochemical tables, for example sulfur, Mg, CH4, ethanol",
        );
        match nearest(&wanted.to_lowercase(), names) {
            Some(name) => error.advice(format!("did you mean {name}?")),
            None => error.advice("the enthalpy of formation of this substance is not in the tables"),
        }
    };
    let formula = Formula::parse(wanted).map_err(|_| unknown())?;
    let phase = match formula.state() {
        None => None,
        Some(State::Solid) => Some(Phase::Crystal),
        Some(State::Liquid) => Some(Phase::Liquid),
        Some(State::Gas) => Some(Phase::Gas),
        Some(State::Aqueous) => return Err(unknown()),
    };
    let bare = formula.without_state();
    if let Some(row) = standard_state(&bare, phase) {
        return Fuel::try_from(row);
    }
    let liquid = LIQUID_FUELS_298.iter().find(|row| {
        phase.is_none_or(|phase| phase == row.phase)
            && Formula::parse(row.formula).is_ok_and(|known| known.equal_but_for_state(&bare))
    });
    liquid.and_then(|row| by_name(row.name)).ok_or_else(unknown)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stable_phase_is_meant_unless_a_state_is_written() {
        for (text, name) in [
            ("H2", "hydrogen"),
            ("C2H5OH", "ethanol"),
            ("C2H5OH(g)", "ethanol vapour"),
            ("CH3CH2OH", "ethanol"),
            ("P", "phosphorus red (V)"),
            ("white phosphorus", "phosphorus white"),
            ("S8", "sulfur (rhombic)"),
            (" Charcoal ", "carbon (graphite)"),
            ("CO", "carbon monoxide"),
            ("C3H6O", "propanone"),
            ("CH3COCH3", "propanone"),
            ("C5H12(l)", "pentane"),
        ] {
            assert_eq!(Fuel::find(text).unwrap().name, name, "{text}");
        }
    }

    #[test]
    fn every_other_name_leads_to_a_fuel() {
        for (other, name) in FUEL_NAMES {
            assert_eq!(Fuel::find(other).unwrap().name, name, "{other}");
        }
        for row in &LIQUID_FUELS_298 {
            assert_eq!(Fuel::find(row.formula).unwrap().name, row.name);
        }
    }

    #[test]
    fn what_does_not_burn_is_refused() {
        for text in ["CO2", "H2O", "MgO", "SO3", "O2", "N2", "Ca(OH)2", "Fe2O3", "NaOH"] {
            let error = Fuel::find(text).unwrap_err();
            assert_eq!(error.code, Code::CannotBeMet, "{text}: {error}");
            assert!(error.advice.contains("does not burn"), "{error}");
        }
        let error = Fuel::find("Cl2").unwrap_err();
        assert_eq!(error.code, Code::CannotBeMet);
        assert!(error.to_string().contains("chlorine"), "{error}");
    }

    #[test]
    fn unknown_samples_get_the_nearest_name() {
        let error = Fuel::find("magnesum").unwrap_err();
        assert_eq!(error.code, Code::UnknownName);
        assert!(error.to_string().contains("did you mean magnesium?"), "{error}");
        assert_eq!(Fuel::find("C9H20").unwrap_err().code, Code::UnknownName);
        assert_eq!(Fuel::find("C5H12(g)").unwrap_err().code, Code::UnknownName);
    }

    #[test]
    fn what_pupils_must_not_burn() {
        for (text, restriction) in [
            ("K", Some(Restriction::AlkaliMetal)),
            ("P4", Some(Restriction::WhitePhosphorus)),
            ("H2", Some(Restriction::FlammableVapour)),
            ("CH4", Some(Restriction::FlammableVapour)),
            ("octane", Some(Restriction::FlammableVapour)),
            ("ethanol", Some(Restriction::FlammableVapour)),
            ("CO", Some(Restriction::FlammableVapour)),
            ("Na", None),
            ("P", None),
            ("S", None),
            ("Mg", None),
            ("Fe", None),
            ("C", None),
            ("Zn", None),
        ] {
            assert_eq!(Fuel::find(text).unwrap().restriction, restriction, "{text}");
        }
    }

    /// Cp of methane, 35.7 J/(mol K), takes it 10 K up; octane by the handbook's 254.6 J/(mol K).
    #[test]
    fn warming_goes_by_the_equations_or_by_the_heat_capacity() {
        let methane = Fuel::find("CH4").unwrap();
        assert!((methane.enthalpy_j_per_mol(298.15) + 74_600.0).abs() < 1e-6);
        let warming = methane.enthalpy_j_per_mol(308.15) - methane.enthalpy_j_per_mol(298.15);
        assert!((warming - 358.5).abs() < 1.5, "{warming}");
        let octane = Fuel::find("octane").unwrap();
        assert!((octane.enthalpy_j_per_mol(293.15) + 250_100.0 + 5.0 * 254.6).abs() < 1e-6);
    }
}
