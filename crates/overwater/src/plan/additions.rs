//! Heat and steam, and how much peroxide to add at a time.

use crate::apparatus::suck_back::steam_share;
use crate::peroxide::heat::adiabatic_rise;
use crate::plan::flow::Train;
use crate::plan::{Place, StockReport, defaults};
use crate::units::{CUBIC_CENTIMETRE, Concentration, DEGREE_CELSIUS, Dimensioned, Temperature, Volume};
use crate::water::vapour::saturation_temperature;
use crate::{Code, Error, Result};

/// Heat, steam and portions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Additions {
    /// Peroxide that is added in one preparation (cm3).
    pub peroxide_cm3: f64,
    /// Water in the flask at the start (cm3).
    pub heel_cm3: f64,
    /// Rise if the solution decomposes all at once by itself, no heat lost (K).
    pub rise_by_itself_k: f64,
    /// Rise if all of it is added at once to the water in the flask, no heat lost (K).
    pub rise_at_once_k: f64,
    /// Temperature that this would lead to (degC); above the boiling point it boils instead.
    pub end_temperature_c: f64,
    /// Temperature at which water boils at the place (degC).
    pub boiling_point_c: f64,
    /// Whether it would boil.
    pub boils: bool,
    /// Share of steam in the gas that leaves at the end temperature; 1 where it boils.
    pub steam_share_at_once: f64,
    /// Portion (cm3): the largest that warms the water in the flask by no more than is usual, or that of a schedule.
    pub portion_cm3: f64,
    /// Portions.
    pub portions: u32,
    /// Rise with the first portion, no heat lost (K).
    pub rise_per_portion_k: f64,
    /// Share of steam in the gas that leaves after the first portion.
    pub steam_share_per_portion: f64,
    /// Moist gas from one portion (cm3).
    pub gas_per_portion_cm3: f64,
    /// Share of the flask that is filled with liquid at the end.
    pub flask_filled_fraction: f64,
}

impl Additions {
    /// Says of portions of a schedule what it said of its own.
    pub(super) fn take_portions(
        &mut self,
        place: &Place,
        concentration: Concentration<f64>,
        portion_cm3: f64,
        portions: u32,
    ) {
        self.gas_per_portion_cm3 *= portion_cm3 / self.portion_cm3;
        self.rise_per_portion_k =
            adiabatic_rise(concentration, volume(portion_cm3), volume(self.heel_cm3)).si();
        self.steam_share_per_portion =
            steam(place.temperature_c + self.rise_per_portion_k, place, self.boiling_point_c);
        self.portion_cm3 = portion_cm3;
        self.portions = portions;
    }
}

/// Share of steam in the gas over the liquid; 1 where it boils.
fn steam(celsius: f64, place: &Place, boiling_point_c: f64) -> f64 {
    if celsius >= boiling_point_c {
        1.0
    } else {
        steam_share(Temperature::new(DEGREE_CELSIUS.to_si(celsius)), place.pressure())
    }
}

fn volume(cm3: f64) -> Volume<f64> {
    Volume::new(cm3 * CUBIC_CENTIMETRE.si)
}

pub(super) fn additions(
    place: &Place,
    stock: &StockReport,
    train: &Train,
    peroxide_cm3: f64,
    gas_cm3: f64,
) -> Result<Additions> {
    let concentration = stock.run.concentration();
    let rise = |solution: f64, heel: f64| adiabatic_rise(concentration, volume(solution), volume(heel)).si();
    let flask_filled_fraction = (peroxide_cm3 + train.heel_cm3) / train.flask_cm3;
    if flask_filled_fraction > 1.0 {
        return Err(Error::new(Code::CannotBeMet, "apparatus.flask_cm3")
            .value(format!("{} cm3", train.flask_cm3))
            .allowed(format!("more than the {:.0} cm3 of water and peroxide", peroxide_cm3 + train.heel_cm3))
            .advice("take a larger flask, a stronger solution, or fill fewer vessels from one flask"));
    }
    let boiling_point_c = DEGREE_CELSIUS.from_si(saturation_temperature(place.pressure()).si());
    let steam = |celsius: f64| steam(celsius, place, boiling_point_c);
    let portion_cm3 = defaults::PORTION_STEPS_CM3
        .into_iter()
        .find(|portion| rise(*portion, train.heel_cm3) <= defaults::PORTION_RISE_K)
        .unwrap_or(SMALLEST_PORTION_CM3);
    let rise_at_once_k = rise(peroxide_cm3, train.heel_cm3);
    let rise_per_portion_k = rise(portion_cm3, train.heel_cm3);
    let end_temperature_c = place.temperature_c + rise_at_once_k;
    Ok(Additions {
        peroxide_cm3,
        heel_cm3: train.heel_cm3,
        rise_by_itself_k: rise(peroxide_cm3, 0.0),
        rise_at_once_k,
        end_temperature_c,
        boiling_point_c,
        boils: end_temperature_c >= boiling_point_c,
        steam_share_at_once: steam(end_temperature_c),
        portion_cm3,
        portions: (peroxide_cm3 / portion_cm3).ceil() as u32,
        rise_per_portion_k,
        steam_share_per_portion: steam(place.temperature_c + rise_per_portion_k),
        gas_per_portion_cm3: gas_cm3 * portion_cm3 / peroxide_cm3,
        flask_filled_fraction,
    })
}

const SMALLEST_PORTION_CM3: f64 = 1.0;
