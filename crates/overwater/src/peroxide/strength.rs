//! Strength of a peroxide solution in each of the scales in use.
//!
//! "Volume strength" is the volume of oxygen that one volume of solution gives when all of it decomposes,
//! 2 H2O2 = 2 H2O + O2, so that `c = 2 S / V_m`. The molar volume to put in depends on the conditions that the label
//! means, which labels do not say: the same "20 vol" is 1.61 to 1.79 mol/dm3.

use crate::bounds::{self, Bound};
use crate::gas::ideal;
use crate::reference::constants::{
    ICE_POINT_1954, MOLAR_GAS_2019, ROOM_MOLAR_VOLUME, STANDARD_ATMOSPHERE_1954, STANDARD_PRESSURE_1982,
};
use crate::reference::peroxide::MOLAR_MASS_2021;
use crate::scalar::{Formula, Scalar, Symbol};
use crate::symbols;
use crate::units::{
    CUBIC_DECIMETRE_PER_MOLE, Concentration, Dimensioned, MassDensity, MolarVolume, MolarWeight, Moles,
    Pressure, Temperature, Volume,
};
use crate::{Code, Error, Result};

/// The conditions at which a label's volumes of oxygen are measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum VolumeConvention {
    /// 0 degC and 1 atm, 22.414 dm3/mol: the older standard conditions, and the default here.
    ZeroDegreesOneAtmosphere,
    /// 0 degC and 100 kPa, 22.711 dm3/mol: the standard conditions of IUPAC since 1982.
    ZeroDegreesHundredKilopascal,
    /// 24.0 dm3/mol, as many school texts take for room conditions.
    RoomTwentyFour,
    /// 25 degC and 1 atm, 24.465 dm3/mol.
    TwentyFiveDegreesOneAtmosphere,
    /// 25 degC and 100 kPa, 24.790 dm3/mol.
    TwentyFiveDegreesHundredKilopascal,
    /// A molar volume that a text states, in dm3/mol.
    Stated {
        /// The molar volume in dm3/mol.
        molar_volume_dm3_per_mol: f64,
    },
}

impl VolumeConvention {
    /// The five conventions that have a name.
    pub const NAMED: [VolumeConvention; 5] = [
        VolumeConvention::ZeroDegreesOneAtmosphere,
        VolumeConvention::ZeroDegreesHundredKilopascal,
        VolumeConvention::RoomTwentyFour,
        VolumeConvention::TwentyFiveDegreesOneAtmosphere,
        VolumeConvention::TwentyFiveDegreesHundredKilopascal,
    ];

    /// In words, and as it is written in a lesson.
    #[must_use]
    pub fn words(&self) -> String {
        match self {
            VolumeConvention::ZeroDegreesOneAtmosphere => "0 degC and 1 atm".to_owned(),
            VolumeConvention::ZeroDegreesHundredKilopascal => "0 degC and 100 kPa".to_owned(),
            VolumeConvention::RoomTwentyFour => "24.0 dm3/mol".to_owned(),
            VolumeConvention::TwentyFiveDegreesOneAtmosphere => "25 degC and 1 atm".to_owned(),
            VolumeConvention::TwentyFiveDegreesHundredKilopascal => "25 degC and 100 kPa".to_owned(),
            VolumeConvention::Stated { molar_volume_dm3_per_mol } => {
                format!("{molar_volume_dm3_per_mol} dm3/mol")
            }
        }
    }

    /// Reads a convention as it is written in a lesson: one of the named ones, or a molar volume such as
    /// `22.4 dm3/mol`.
    ///
    /// ```
    /// use overwater::peroxide::strength::VolumeConvention;
    /// assert_eq!(
    ///     VolumeConvention::read("0 degC and 1 atm"),
    ///     Ok(VolumeConvention::ZeroDegreesOneAtmosphere)
    /// );
    /// // "STP" has meant two different things since 1982, so it is asked about rather than guessed.
    /// assert_eq!(VolumeConvention::read("STP").unwrap_err().code, overwater::Code::Ambiguous);
    /// ```
    ///
    /// # Errors
    /// `ambiguous` for abbreviations such as STP that mean several things, `unknown_name` for anything else that is
    /// not one of the conventions, and the bounds of a molar volume.
    pub fn read(text: &str) -> Result<VolumeConvention> {
        let wanted = text.trim();
        if let Some(found) = Self::NAMED.into_iter().find(|convention| convention.words() == wanted) {
            return Ok(found);
        }
        if let Some(number) = wanted.strip_suffix("dm3/mol")
            && let Ok(value) = number.trim().parse()
        {
            let molar_volume_dm3_per_mol = bounds::MOLAR_VOLUME_DM3_PER_MOL.check(value)?;
            return Ok(VolumeConvention::Stated { molar_volume_dm3_per_mol });
        }
        let names = Self::NAMED.map(|convention| format!("\"{}\"", convention.words())).join(", ");
        let allowed = format!("{names}, or a molar volume as in \"22.4 dm3/mol\"");
        let abbreviation = ["STP", "NTP", "SATP", "RTP", "STANDARD CONDITIONS", "ROOM CONDITIONS"]
            .contains(&wanted.to_uppercase().as_str());
        Err(if abbreviation {
            Error::new(Code::Ambiguous, "convention").value(wanted).allowed(allowed).advice(
                "the abbreviation means different temperatures and pressures in different books: say which",
            )
        } else {
            Error::new(Code::UnknownName, "convention").value(wanted).allowed(allowed)
        })
    }

    /// The molar volume that the convention goes by.
    #[must_use]
    pub fn molar_volume(&self) -> MolarVolume<f64> {
        let at = |celsius: f64, pressure: f64| {
            let temperature = Temperature::new(celsius + ICE_POINT_1954.si());
            ideal::molar_volume(Pressure::new(pressure), temperature, &MOLAR_GAS_2019)
        };
        match *self {
            VolumeConvention::ZeroDegreesOneAtmosphere => at(0.0, STANDARD_ATMOSPHERE_1954.si()),
            VolumeConvention::ZeroDegreesHundredKilopascal => at(0.0, STANDARD_PRESSURE_1982.si()),
            VolumeConvention::RoomTwentyFour => MolarVolume::new(ROOM_MOLAR_VOLUME.si()),
            VolumeConvention::TwentyFiveDegreesOneAtmosphere => at(25.0, STANDARD_ATMOSPHERE_1954.si()),
            VolumeConvention::TwentyFiveDegreesHundredKilopascal => at(25.0, STANDARD_PRESSURE_1982.si()),
            VolumeConvention::Stated { molar_volume_dm3_per_mol } => {
                MolarVolume::new(molar_volume_dm3_per_mol * CUBIC_DECIMETRE_PER_MOLE.si)
            }
        }
    }

    /// The volume strength of a concentration under this convention, in vol.
    #[must_use]
    pub fn volume_strength(&self, concentration: Concentration<f64>) -> f64 {
        volume_strength(concentration, self.molar_volume())
    }

    /// The concentration of a volume strength under this convention.
    #[must_use]
    pub fn concentration(&self, volume_strength: f64) -> Concentration<f64> {
        from_volume_strength(volume_strength, self.molar_volume())
    }
}

/// Moles of peroxide for each mole of oxygen.
pub const OXYGEN_RATIO: f64 = 2.0;

/// c = 2 S / V_m.
#[inline(always)]
pub fn from_volume_strength<S: Scalar>(strength: S, molar_volume: MolarVolume<S>) -> Concentration<S> {
    let strength = quantity::Dimensionless::new(strength);
    (strength * OXYGEN_RATIO / molar_volume).checkpoint(&symbols::CONCENTRATION)
}

/// S = c V_m / 2.
#[inline(always)]
pub fn volume_strength<S: Scalar>(concentration: Concentration<S>, molar_volume: MolarVolume<S>) -> S {
    (concentration * molar_volume / OXYGEN_RATIO).into_value().checkpoint(&symbols::VOLUME_STRENGTH)
}

/// c = (mass per volume) / M.
#[inline(always)]
pub fn from_mass_concentration<S: Scalar>(mass_concentration: MassDensity<S>) -> Concentration<S> {
    let molar_mass = MolarWeight::new(S::constant(&MOLAR_MASS_2021));
    (mass_concentration / molar_mass).checkpoint(&symbols::CONCENTRATION)
}

/// Mass of peroxide in a volume of solution.
#[inline(always)]
pub fn mass_concentration<S: Scalar>(concentration: Concentration<S>) -> MassDensity<S> {
    concentration * MolarWeight::new(S::constant(&MOLAR_MASS_2021))
}

/// Volume of solution whose decomposition gives an amount of oxygen: V = 2 n / c.
#[inline(always)]
pub fn solution_volume<S: Scalar>(oxygen: Moles<S>, concentration: Concentration<S>) -> Volume<S> {
    (oxygen * OXYGEN_RATIO / concentration).checkpoint(&symbols::SOLUTION_VOLUME)
}

/// `peroxide_concentration(volume_strength_vol, molar_volume_dm3_per_mol)` in mol/dm3.
///
/// ```
/// use overwater::peroxide::strength::ConcentrationFromVolumes;
/// use overwater::scalar::Formula;
/// // 20 vol at 0 degC and 1 atm: 40/22.414 = 1.785 mol/dm3; with 24.0 dm3/mol 1.667.
/// assert!((ConcentrationFromVolumes.number([20.0, 22.414])? - 1.784_60).abs() < 5e-6);
/// assert!((ConcentrationFromVolumes.number([20.0, 24.0])? - 1.666_67).abs() < 5e-6);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct ConcentrationFromVolumes;

impl Formula<2> for ConcentrationFromVolumes {
    const NAME: &'static str = "peroxide_concentration";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::VOLUME_STRENGTH_VOL, &bounds::MOLAR_VOLUME_DM3_PER_MOL]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::CONCENTRATION
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [strength, molar_volume]: [S; 2]) -> S {
        let strength = strength.enter(&symbols::VOLUME_STRENGTH);
        let molar_volume = MolarVolume::new(molar_volume.enter(&symbols::MOLAR_VOLUME));
        from_volume_strength(strength, molar_volume).leave(&symbols::CONCENTRATION)
    }
}

/// `volume_strength(concentration_mol_per_dm3, molar_volume_dm3_per_mol)` in volumes of oxygen for one of solution.
///
/// ```
/// use overwater::peroxide::strength::VolumesFromConcentration;
/// use overwater::scalar::Formula;
/// // 1.785 mol/dm3 are 20 vol at 0 degC and 1 atm, 21.4 vol with 24.0 dm3/mol.
/// assert!((VolumesFromConcentration.number([1.7846, 22.414])? - 20.0).abs() < 5e-5);
/// assert!((VolumesFromConcentration.number([1.7846, 24.0])? - 21.415).abs() < 5e-4);
/// # Ok::<(), overwater::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct VolumesFromConcentration;

impl Formula<2> for VolumesFromConcentration {
    const NAME: &'static str = "volume_strength";

    fn inputs(&self) -> [&'static Bound; 2] {
        [&bounds::CONCENTRATION_MOL_PER_DM3, &bounds::MOLAR_VOLUME_DM3_PER_MOL]
    }

    fn output(&self) -> &'static Symbol {
        &symbols::VOLUME_STRENGTH
    }

    #[inline(always)]
    fn evaluate<S: Scalar>(&self, [concentration, molar_volume]: [S; 2]) -> S {
        let concentration = Concentration::new(concentration.enter(&symbols::CONCENTRATION));
        let molar_volume = MolarVolume::new(molar_volume.enter(&symbols::MOLAR_VOLUME));
        volume_strength(concentration, molar_volume).leave(&symbols::VOLUME_STRENGTH)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::MOLE_PER_CUBIC_DECIMETRE;

    #[test]
    fn conventions_read_what_they_write() {
        let stated = VolumeConvention::Stated { molar_volume_dm3_per_mol: 22.4 };
        for convention in VolumeConvention::NAMED.into_iter().chain([stated]) {
            assert_eq!(VolumeConvention::read(&convention.words()), Ok(convention));
        }
        assert_eq!(VolumeConvention::read("stp").unwrap_err().code, Code::Ambiguous);
        assert_eq!(VolumeConvention::read("at home").unwrap_err().code, Code::UnknownName);
        assert_eq!(VolumeConvention::read("2 dm3/mol").unwrap_err().code, Code::OutOfRange);
    }

    #[test]
    fn molar_volumes_of_the_conventions() {
        // R T / p with the exact gas constant; the third is the school text's own figure.
        for (convention, expected) in
            VolumeConvention::NAMED.into_iter().zip([22.413_97, 22.710_95, 24.0, 24.465_40, 24.789_57])
        {
            let volume = convention.molar_volume().si() / CUBIC_DECIMETRE_PER_MOLE.si;
            assert!((volume - expected).abs() < 5e-6, "{convention:?}: {volume}");
        }
    }

    #[test]
    fn volume_strength_is_the_inverse_of_concentration() {
        for convention in VolumeConvention::NAMED {
            let back = convention.volume_strength(convention.concentration(20.0));
            assert!((back - 20.0).abs() < 1e-12);
        }
    }

    #[test]
    fn three_per_cent_by_volume_is_ten_volumes() {
        // 3 g in 100 cm3 is 9.9 vol at 0 degC and 1 atm (arithmetic with M = 34.014 g/mol).
        let concentration = from_mass_concentration(MassDensity::new(30.0));
        assert!((concentration.si() / MOLE_PER_CUBIC_DECIMETRE.si - 0.882_0).abs() < 5e-5);
        let volumes = VolumeConvention::ZeroDegreesOneAtmosphere.volume_strength(concentration);
        assert!((volumes - 9.884).abs() < 6e-4, "{volumes}");
        assert!((mass_concentration(concentration).si() - 30.0).abs() < 1e-12);
    }
}
