//! How much gas: moist and dry volume and amount, for each vessel and in all.

use crate::gas::ideal;
use crate::plan::Place;
use crate::plan::filling::Wanted;
use crate::reference::constants::{ICE_POINT_1954, MOLAR_GAS_2019, STANDARD_ATMOSPHERE_1954};
use crate::units::{CUBIC_CENTIMETRE, Dimensioned, KILOPASCAL, MILLIMOLE, Pressure, Temperature, Volume};
use crate::water::vapour::saturation_pressure;

/// The gas in one vessel, or rejected.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct VesselGas {
    /// Volume of moist gas, as it stands in the vessel (cm3).
    pub moist_cm3: f64,
    /// Volume of the same gas dry, at 0 degC and 1 atm (cm3).
    pub dry_cm3: f64,
    /// Amount of dry gas (mmol).
    pub amount_mmol: f64,
}

/// The gas of one preparation.
#[derive(Debug, Clone, PartialEq)]
pub struct GasBudget {
    /// Vapour pressure of water at the trough's temperature (kPa).
    pub vapour_pressure_kpa: f64,
    /// Pressure of the dry gas, levels equal (kPa).
    pub dry_pressure_kpa: f64,
    /// Each vessel in order.
    pub vessels: Vec<VesselGas>,
    /// What is thrown away first.
    pub rejected: VesselGas,
    /// All together.
    pub total: VesselGas,
}

pub(super) fn budget(place: &Place, vessels: &[Wanted], rejected_cm3: f64) -> GasBudget {
    let vapour = saturation_pressure(place.temperature());
    let dry = place.pressure() - vapour;
    let gas = |moist_cm3: f64| -> VesselGas {
        let volume = Volume::new(moist_cm3 * CUBIC_CENTIMETRE.si);
        let amount = ideal::amount(dry, volume, place.temperature(), &MOLAR_GAS_2019);
        let at_reference = ideal::volume(
            amount,
            Pressure::new(STANDARD_ATMOSPHERE_1954.si()),
            Temperature::new(ICE_POINT_1954.si()),
            &MOLAR_GAS_2019,
        );
        VesselGas {
            moist_cm3,
            dry_cm3: at_reference.si() / CUBIC_CENTIMETRE.si,
            amount_mmol: amount.si() / MILLIMOLE.si,
        }
    };
    let total_cm3 = rejected_cm3 + vessels.iter().map(|vessel| vessel.volume_cm3).sum::<f64>();
    GasBudget {
        vapour_pressure_kpa: vapour.si() / KILOPASCAL.si,
        dry_pressure_kpa: dry.si() / KILOPASCAL.si,
        vessels: vessels.iter().map(|vessel| gas(vessel.volume_cm3)).collect(),
        rejected: gas(rejected_cm3),
        total: gas(total_cm3),
    }
}
