//! Reading a bottle's label.

use crate::bounds;
use crate::peroxide::density::PeroxideDensity;
use crate::peroxide::strength::{VolumeConvention, from_mass_concentration};
use crate::scalar::Formula;
use crate::units::{
    Concentration, DEGREE_CELSIUS, Dimensioned, GRAM_PER_CUBIC_CENTIMETRE, MOLE_PER_CUBIC_DECIMETRE,
    MassDensity, PERCENT, Temperature,
};
use crate::{Code, Error, Result};

/// What a label says, in the scale that it uses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Label {
    /// Volumes of oxygen, as in `20 vol`.
    Volumes {
        /// The number on the label.
        volume_strength_vol: f64,
    },
    /// Amount concentration, as in `1.78 mol/dm3`.
    Concentration {
        /// In mol/dm3.
        concentration_mol_per_dm3: f64,
    },
    /// Grams in 100 cm3, as in `6 % w/v`.
    PercentByVolume {
        /// In g per 100 cm3.
        percent_w_v: f64,
    },
    /// Grams in 100 g, as in `30 % w/w`; the density, where it is not given, is computed.
    PercentByMass {
        /// In g per 100 g.
        percent_w_w: f64,
    },
}

const FORMS: &str = "\"20 vol\", \"1.78 mol/dm3\", \"6 % w/v\" or \"30 % w/w\"";

impl Label {
    /// Reads a strength as it stands on a label.
    ///
    /// ```
    /// use overwater::peroxide::label::Label;
    /// assert_eq!(Label::read("20 vol"), Ok(Label::Volumes { volume_strength_vol: 20.0 }));
    /// // Per cent of what? 30 % w/w is about 33 % w/v, so it is asked about.
    /// assert_eq!(Label::read("30 %").unwrap_err().code, overwater::Code::Ambiguous);
    /// ```
    ///
    /// # Errors
    /// `missing` for a number without a unit, `ambiguous` for a bare per cent, `unknown_name` for another unit,
    /// `syntax` where no number stands at the beginning, and the bounds of the scale.
    pub fn read(text: &str) -> Result<Label> {
        let text = text.trim();
        let end =
            text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | '-' | '+'))).unwrap_or(text.len());
        let (number, unit) = text.split_at(end);
        let refused = |code| Error::new(code, "strength").value(text).allowed(FORMS);
        let value: f64 = number.parse().map_err(|_| {
            refused(Code::Syntax).advice("write a number with a decimal point and then its unit")
        })?;
        match unit.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase().as_str() {
            "vol" | "volume" | "volumes" => Ok(Label::Volumes {
                volume_strength_vol: bounds::VOLUME_STRENGTH_VOL.check(value)?,
            }),
            "mol/dm3" | "mol/l" | "mol dm-3" | "m" => Ok(Label::Concentration {
                concentration_mol_per_dm3: bounds::CONCENTRATION_MOL_PER_DM3.check(value)?,
            }),
            "% w/v" | "%w/v" => {
                Ok(Label::PercentByVolume { percent_w_v: bounds::PERCENT_W_V.check(value)? })
            }
            "% w/w" | "%w/w" => Ok(Label::PercentByMass { percent_w_w: bounds::PERCENT_W_W.check(value)? }),
            "" => Err(refused(Code::Missing).advice("a number without a unit is not a strength: add the unit")),
            "%" | "percent" | "per cent" => Err(refused(Code::Ambiguous).advice(
                "is that grams in 100 cm3 (w/v) or grams in 100 g (w/w)? the label or the safety data sheet says",
            )),
            _ => Err(refused(Code::UnknownName).advice("use one of these scales")),
        }
    }

    /// The concentration that the label stands for, at the temperature of the solution.
    ///
    /// Only a per cent by mass needs the density: a given one is taken, else it is computed
    /// ([`peroxide::density`](crate::peroxide::density)), and the answer says so.
    ///
    /// ```
    /// use overwater::peroxide::label::Label;
    /// use overwater::peroxide::strength::VolumeConvention;
    /// use overwater::units::Temperature;
    /// let label = Label::read("30 % w/w")?;
    /// let twenty = Temperature::new(293.15);
    /// let read = label.concentration(VolumeConvention::ZeroDegreesOneAtmosphere, None, twenty)?;
    /// // 1.1126 g/cm3 at 20 degC (Laliberte 2009).
    /// assert!((read.computed_density_g_per_cm3.unwrap() - 1.1126).abs() < 5e-5);
    /// # Ok::<(), overwater::Error>(())
    /// ```
    ///
    /// # Errors
    /// The bounds of the density that is given, and those of the temperature where the density is computed.
    pub fn concentration(
        &self,
        convention: VolumeConvention,
        density_g_per_cm3: Option<f64>,
        temperature: Temperature<f64>,
    ) -> Result<LabelConcentration> {
        let known =
            |concentration| Ok(LabelConcentration { concentration, computed_density_g_per_cm3: None });
        match *self {
            Label::Volumes { volume_strength_vol } => known(convention.concentration(volume_strength_vol)),
            Label::Concentration { concentration_mol_per_dm3 } => {
                known(Concentration::new(concentration_mol_per_dm3 * MOLE_PER_CUBIC_DECIMETRE.si))
            }
            Label::PercentByVolume { percent_w_v } => {
                let grams_per_cm3 = percent_w_v * PERCENT.si;
                known(from_mass_concentration(MassDensity::new(grams_per_cm3 * GRAM_PER_CUBIC_CENTIMETRE.si)))
            }
            Label::PercentByMass { percent_w_w } => {
                let given = density_g_per_cm3.map(|density| bounds::DENSITY_G_PER_CM3.check(density));
                let (density, computed) = match given.transpose()? {
                    Some(density) => (density, None),
                    None => {
                        let celsius = DEGREE_CELSIUS.from_si(temperature.si());
                        let density = PeroxideDensity.number([percent_w_w, celsius])?;
                        (density, Some(density))
                    }
                };
                let grams_per_cm3 = percent_w_w * PERCENT.si * density;
                let mass_concentration = MassDensity::new(grams_per_cm3 * GRAM_PER_CUBIC_CENTIMETRE.si);
                Ok(LabelConcentration {
                    concentration: from_mass_concentration(mass_concentration),
                    computed_density_g_per_cm3: computed,
                })
            }
        }
    }
}

/// What a label stands for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LabelConcentration {
    /// The amount concentration.
    pub concentration: Concentration<f64>,
    /// The density (g/cm3), where it had to be computed.
    pub computed_density_g_per_cm3: Option<f64>,
}

#[cfg(test)]
mod tests {
    use super::*;

    const CONVENTION: VolumeConvention = VolumeConvention::ZeroDegreesOneAtmosphere;

    fn twenty() -> Temperature<f64> {
        Temperature::new(293.15)
    }

    fn mol_per_dm3(text: &str, density: Option<f64>) -> f64 {
        let label = Label::read(text).unwrap();
        let read = label.concentration(CONVENTION, density, twenty()).unwrap();
        assert_eq!(read.computed_density_g_per_cm3, None, "{text}");
        read.concentration.si() / MOLE_PER_CUBIC_DECIMETRE.si
    }

    #[test]
    fn each_scale_gives_its_concentration() {
        // By hand: 20/11.207; 6 g in 100 cm3 over 34.014 g/mol; 30 % of 1.11 g/cm3 over 34.014 g/mol.
        assert!((mol_per_dm3("20 vol", None) - 1.784_6).abs() < 5e-5);
        assert!((mol_per_dm3("1.78 mol/dm3", None) - 1.78).abs() < 1e-12);
        assert!((mol_per_dm3("6 % w/v", None) - 1.764).abs() < 5e-4);
        assert!((mol_per_dm3("30% w/w", Some(1.11)) - 9.790).abs() < 5e-4);
    }

    #[test]
    fn labels_that_do_not_say_enough_are_refused() {
        for (text, code) in [
            ("30 %", Code::Ambiguous),
            ("30", Code::Missing),
            ("twenty vol", Code::Syntax),
            ("", Code::Syntax),
            ("20 proof", Code::UnknownName),
            ("0 vol", Code::OutOfRange),
            ("-6 % w/v", Code::OutOfRange),
            ("1e308 vol", Code::UnknownName),
            ("400 vol", Code::OutOfRange),
        ] {
            assert_eq!(Label::read(text).unwrap_err().code, code, "{text}");
        }
    }

    #[test]
    fn a_per_cent_by_mass_without_a_density_is_taken_with_a_computed_one() {
        let label = Label::read("30 % w/w").unwrap();
        let read = label.concentration(CONVENTION, None, twenty()).unwrap();
        // Laliberte 2009, 30 % at 20 degC: 1.1126 g/cm3; 0.3 x 1112.6/34.014 = 9.813 mol/dm3.
        assert!((read.computed_density_g_per_cm3.unwrap() - 1.112_6).abs() < 5e-5);
        assert!((read.concentration.si() / MOLE_PER_CUBIC_DECIMETRE.si - 9.813).abs() < 5e-4);
        let warm = label.concentration(CONVENTION, None, Temperature::new(313.15)).unwrap();
        assert!((warm.computed_density_g_per_cm3.unwrap() - 1.100_0).abs() < 5e-5);

        let error = label.concentration(CONVENTION, Some(1.3), twenty()).unwrap_err();
        assert_eq!((error.code, error.parameter.as_ref()), (Code::OutOfRange, "density_g_per_cm3"));
        let error = label.concentration(CONVENTION, None, Temperature::new(263.15)).unwrap_err();
        assert_eq!((error.code, error.parameter.as_ref()), (Code::OutOfRange, "temperature_c"));
        // The other scales do not ask for the temperature at all.
        let volumes = Label::read("20 vol").unwrap();
        assert!(volumes.concentration(CONVENTION, None, Temperature::new(263.15)).is_ok());
    }
}
