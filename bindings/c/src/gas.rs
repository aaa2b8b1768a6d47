//! Which gas is meant, as a number that never changes its meaning.

pub(crate) use overwater::gas::species::Gas;

use crate::error::Fault;
use crate::status::OW_UNKNOWN_NAME;

/// Oxygen, O2.
pub const OW_GAS_OXYGEN: i32 = 1;
/// Nitrogen, N2.
pub const OW_GAS_NITROGEN: i32 = 2;
/// Air, dry.
pub const OW_GAS_AIR: i32 = 3;
/// Hydrogen, H2.
pub const OW_GAS_HYDROGEN: i32 = 4;
/// Carbon dioxide, CO2.
pub const OW_GAS_CARBON_DIOXIDE: i32 = 5;
/// Carbon monoxide, CO.
pub const OW_GAS_CARBON_MONOXIDE: i32 = 6;
/// Methane, CH4.
pub const OW_GAS_METHANE: i32 = 7;
/// Ethane, C2H6.
pub const OW_GAS_ETHANE: i32 = 8;
/// Ethene, C2H4.
pub const OW_GAS_ETHENE: i32 = 9;
/// Ethyne, C2H2.
pub const OW_GAS_ETHYNE: i32 = 10;
/// Propane, C3H8.
pub const OW_GAS_PROPANE: i32 = 11;
/// Butane, C4H10.
pub const OW_GAS_BUTANE: i32 = 12;
/// Dinitrogen oxide, N2O.
pub const OW_GAS_DINITROGEN_OXIDE: i32 = 13;
/// Nitrogen monoxide, NO.
pub const OW_GAS_NITROGEN_MONOXIDE: i32 = 14;
/// Nitrogen dioxide, NO2.
pub const OW_GAS_NITROGEN_DIOXIDE: i32 = 15;
/// Sulfur dioxide, SO2.
pub const OW_GAS_SULFUR_DIOXIDE: i32 = 16;
/// Hydrogen sulfide, H2S.
pub const OW_GAS_HYDROGEN_SULFIDE: i32 = 17;
/// Hydrogen chloride, HCl.
pub const OW_GAS_HYDROGEN_CHLORIDE: i32 = 18;
/// Ammonia, NH3.
pub const OW_GAS_AMMONIA: i32 = 19;
/// Chlorine, Cl2.
pub const OW_GAS_CHLORINE: i32 = 20;
/// Ozone, O3.
pub const OW_GAS_OZONE: i32 = 21;
/// Helium, He.
pub const OW_GAS_HELIUM: i32 = 22;
/// Neon, Ne.
pub const OW_GAS_NEON: i32 = 23;
/// Argon, Ar.
pub const OW_GAS_ARGON: i32 = 24;
/// Krypton, Kr.
pub const OW_GAS_KRYPTON: i32 = 25;
/// Xenon, Xe.
pub const OW_GAS_XENON: i32 = 26;
/// Sulfur hexafluoride, SF6.
pub const OW_GAS_SULFUR_HEXAFLUORIDE: i32 = 27;

/// Every number with its gas.
pub const GASES: [(i32, Gas); 27] = [
    (OW_GAS_OXYGEN, Gas::Oxygen),
    (OW_GAS_NITROGEN, Gas::Nitrogen),
    (OW_GAS_AIR, Gas::Air),
    (OW_GAS_HYDROGEN, Gas::Hydrogen),
    (OW_GAS_CARBON_DIOXIDE, Gas::CarbonDioxide),
    (OW_GAS_CARBON_MONOXIDE, Gas::CarbonMonoxide),
    (OW_GAS_METHANE, Gas::Methane),
    (OW_GAS_ETHANE, Gas::Ethane),
    (OW_GAS_ETHENE, Gas::Ethene),
    (OW_GAS_ETHYNE, Gas::Ethyne),
    (OW_GAS_PROPANE, Gas::Propane),
    (OW_GAS_BUTANE, Gas::Butane),
    (OW_GAS_DINITROGEN_OXIDE, Gas::DinitrogenOxide),
    (OW_GAS_NITROGEN_MONOXIDE, Gas::NitrogenMonoxide),
    (OW_GAS_NITROGEN_DIOXIDE, Gas::NitrogenDioxide),
    (OW_GAS_SULFUR_DIOXIDE, Gas::SulfurDioxide),
    (OW_GAS_HYDROGEN_SULFIDE, Gas::HydrogenSulfide),
    (OW_GAS_HYDROGEN_CHLORIDE, Gas::HydrogenChloride),
    (OW_GAS_AMMONIA, Gas::Ammonia),
    (OW_GAS_CHLORINE, Gas::Chlorine),
    (OW_GAS_OZONE, Gas::Ozone),
    (OW_GAS_HELIUM, Gas::Helium),
    (OW_GAS_NEON, Gas::Neon),
    (OW_GAS_ARGON, Gas::Argon),
    (OW_GAS_KRYPTON, Gas::Krypton),
    (OW_GAS_XENON, Gas::Xenon),
    (OW_GAS_SULFUR_HEXAFLUORIDE, Gas::SulfurHexafluoride),
];

/// The formula of the gas with this number.
#[inline(always)]
pub(crate) fn formula<F>(of: impl FnOnce(Gas) -> overwater::Result<F>, number: i32) -> Result<F, Fault> {
    let row = usize::try_from(number).ok().and_then(|place| GASES.get(place.wrapping_sub(1)));
    let Some((_, gas)) = row else {
        let message = format!("no gas has the number {number}; take one of OW_GAS_...");
        return Err(Fault::of_caller(OW_UNKNOWN_NAME, "gas", message));
    };
    of(*gas).map_err(|refusal| Fault::of_core(&refusal, f64::NAN))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_gas_has_one_number_and_is_found_by_it() {
        assert_eq!(Gas::all().count(), GASES.len());
        for (place, (number, gas)) in GASES.into_iter().enumerate() {
            assert_eq!(usize::try_from(number).unwrap(), place + 1);
            assert!(matches!(formula(Ok, number), Ok(found) if found == gas));
            assert!(Gas::all().any(|known| known == gas));
        }
        for number in [0, -1, 28, i32::MIN, i32::MAX] {
            assert!(formula(Ok, number).is_err(), "{number}");
        }
    }
}
