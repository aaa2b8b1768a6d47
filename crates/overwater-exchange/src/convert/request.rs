//! From a request to the core's lesson: texts are read, one of several unit styles is chosen, nothing is guessed.

use jiff::civil::Date;
use overwater::peroxide::label::Label;
use overwater::peroxide::strength::VolumeConvention;
use overwater::plan::lesson::{
    Apparatus, Assay, Barometer, Catalyst, Funnel, Kind, Lesson, Room, Run, Stock, Vessel,
};
use overwater::units::{HECTOPASCAL, KILOPASCAL, MILLIMETRE_OF_MERCURY, Unit};
use overwater::{Code, Error};

use crate::request::{
    ApparatusRequest, AssayRequest, BarometerRequest, FunnelRequest, KindRequest, LessonRequest,
    StockRequest, VesselRequest,
};

/// The core's lesson for a request.
pub(crate) fn lesson(request: &LessonRequest) -> Result<Lesson, Error> {
    let LessonRequest { format: _, title, date, room, barometer, stock, run, catalyst, apparatus, vessels } =
        request;
    let run_strength = run.strength.as_deref().map(Label::read).transpose();
    Ok(Lesson {
        title: title.clone(),
        date: date.as_deref().map(|text| read_date(text, "date")).transpose()?,
        room: Room {
            temperature_c: room.temperature_c,
            volume_m3: room.volume_m3,
            air_changes_per_hour: room.air_changes_per_hour,
        },
        barometer: barometer
            .as_ref()
            .map(read_barometer)
            .transpose()
            .map_err(|error| error.within("barometer"))?,
        stock: Some(read_stock(stock).map_err(|error| error.within("stock"))?),
        run: Run {
            strength: run_strength.map_err(|error| error.within("run"))?,
            collection_efficiency_fraction: run.collection_efficiency_fraction,
            rejected_cm3: run.rejected_cm3,
            groups: run.groups,
            spare_sets: run.spare_sets,
            spare_jars: run.spare_jars,
        },
        catalyst: Catalyst { substance: catalyst.substance.clone(), mass_g: catalyst.mass_g },
        apparatus: apparatus.into(),
        vessels: vessels.iter().map(Into::into).collect(),
    })
}

fn read_date(text: &str, key: &'static str) -> Result<Date, Error> {
    text.parse().map_err(|_| {
        Error::new(Code::Syntax, key)
            .value(format!("\"{text}\""))
            .allowed("a date as in \"2026-12-03\"")
            .advice("write year, month and day")
    })
}

fn read_stock(stock: &StockRequest) -> Result<Stock, Error> {
    Ok(Stock {
        label: Label::read(&stock.strength)?,
        convention: stock.convention.as_deref().map(VolumeConvention::read).transpose()?,
        density_g_per_cm3: stock.density_g_per_cm3,
        opened: stock.opened.as_deref().map(|text| read_date(text, "opened")).transpose()?,
        assay: stock.assay.as_ref().map(Into::into),
    })
}

fn read_barometer(request: &BarometerRequest) -> Result<Barometer, Error> {
    let pressures: [(&'static str, Option<f64>, &Unit, bool); 5] = [
        ("station_pressure_kpa", request.station_pressure_kpa, &KILOPASCAL, true),
        ("station_pressure_hpa", request.station_pressure_hpa, &HECTOPASCAL, true),
        ("station_pressure_mmhg", request.station_pressure_mmhg, &MILLIMETRE_OF_MERCURY, true),
        ("sea_level_pressure_kpa", request.sea_level_pressure_kpa, &KILOPASCAL, false),
        ("sea_level_pressure_hpa", request.sea_level_pressure_hpa, &HECTOPASCAL, false),
    ];
    let names = pressures.map(|(name, ..)| name).join(", ");
    let given: Vec<_> = pressures
        .iter()
        .filter_map(|&(name, value, unit, at_place)| Some((name, value?, unit, at_place)))
        .collect();
    let (name, value, unit, at_place) = match given.as_slice() {
        [one] => *one,
        [] => {
            return Err(Error::new(Code::Missing, "station_pressure_kpa")
                .allowed(format!("one of {names}"))
                .advice("give a pressure, or leave out [barometer] for the standard atmosphere"));
        }
        [first, second, ..] => {
            return Err(Error::new(Code::GivenTwice, second.0)
                .allowed(format!("one of {names}"))
                .advice(format!("{} was given as well: keep the one that was read", first.0)));
        }
    };
    let kilopascal = |bound: &'static overwater::bounds::Bound| -> Result<f64, Error> {
        let value_kpa = if unit == &KILOPASCAL { value } else { KILOPASCAL.from_si(unit.to_si(value)) };
        bound.check(value_kpa).map_err(|error| {
            let number = format!("{value} {}", unit.text);
            let allowed = [bound.least, bound.greatest].map(|limit| unit.from_si(KILOPASCAL.to_si(limit)));
            let [least, greatest] = allowed;
            Error {
                parameter: name.into(),
                value: number.into(),
                // Rounded inwards, so that what is printed is accepted.
                allowed: format!("{} to {} {}", least.ceil(), greatest.floor(), unit.text).into(),
                ..error
            }
        })
    };
    match (at_place, request.altitude_m) {
        (true, None) => {
            Ok(Barometer::Station { pressure_kpa: kilopascal(&overwater::bounds::PRESSURE_KPA)? })
        }
        (true, Some(altitude)) => Err(Error::new(Code::Contradiction, "altitude_m")
            .value(format!("{altitude} m"))
            .allowed("an altitude together with a sea-level pressure")
            .advice(
                "a pressure read at the place needs no altitude; if it was reduced to sea level, name it so",
            )),
        (false, Some(altitude_m)) => Ok(Barometer::SeaLevel {
            pressure_kpa: kilopascal(&overwater::bounds::SEA_LEVEL_PRESSURE_KPA)?,
            altitude_m,
        }),
        (false, None) => Err(Error::new(Code::Missing, "altitude_m")
            .allowed(overwater::bounds::ALTITUDE_M.range())
            .advice(
                "a sea-level pressure needs the height of the place: each 100 m takes off about 1.2 kPa",
            )),
    }
}

impl From<&AssayRequest> for Assay {
    fn from(assay: &AssayRequest) -> Self {
        Assay {
            titre_cm3: assay.titre_cm3,
            permanganate_mol_per_dm3: assay.permanganate_mol_per_dm3,
            sample_cm3: assay.sample_cm3,
            made_up_to_cm3: assay.made_up_to_cm3,
            aliquot_cm3: assay.aliquot_cm3,
        }
    }
}

impl From<&ApparatusRequest> for Apparatus {
    fn from(request: &ApparatusRequest) -> Self {
        Apparatus {
            flask_cm3: request.flask_cm3,
            heel_cm3: request.heel_cm3,
            free_volume_cm3: request.free_volume_cm3,
            funnel: request.funnel.map(|funnel| match funnel {
                FunnelRequest::Open => Funnel::Open,
                FunnelRequest::Tap => Funnel::Tap,
            }),
            stem_length_cm: request.stem_length_cm,
            tube_bore_mm: request.tube_bore_mm,
            tube_length_cm: request.tube_length_cm,
            outlet_depth_cm: request.outlet_depth_cm,
            flow_cm3_per_s: request.flow_cm3_per_s,
            jar_cm3: request.jar_cm3,
            tube_cm3: request.tube_cm3,
        }
    }
}

impl From<&VesselRequest> for Vessel {
    fn from(request: &VesselRequest) -> Self {
        Vessel {
            name: request.name.clone(),
            kind: match request.kind {
                KindRequest::Jar => Kind::Jar,
                KindRequest::Tube => Kind::Tube,
            },
            volume_cm3: request.volume_cm3,
            burn: request.burn.clone(),
            sample_g: request.sample_g,
            wanted_oxygen_fraction: request.wanted_oxygen_fraction,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn barometer(change: impl Fn(&mut BarometerRequest)) -> Result<Barometer, Error> {
        let mut request = BarometerRequest::default();
        change(&mut request);
        read_barometer(&request)
    }

    #[test]
    fn a_pressure_is_read_in_each_of_its_units() {
        let kpa = |found: Barometer| match found {
            Barometer::Station { pressure_kpa } | Barometer::SeaLevel { pressure_kpa, .. } => pressure_kpa,
        };
        assert_eq!(kpa(barometer(|b| b.station_pressure_kpa = Some(100.2)).unwrap()), 100.2);
        assert!((kpa(barometer(|b| b.station_pressure_hpa = Some(1002.0)).unwrap()) - 100.2).abs() < 1e-12);
        // 760 mm of mercury are 101.325 kPa to a part in ten million.
        let mercury = kpa(barometer(|b| b.station_pressure_mmhg = Some(760.0)).unwrap());
        assert!((mercury - 101.325).abs() < 2e-5);
        let sea = barometer(|b| {
            b.sea_level_pressure_hpa = Some(1021.0);
            b.altitude_m = Some(145.0);
        });
        let Ok(Barometer::SeaLevel { pressure_kpa, altitude_m: 145.0 }) = sea else {
            panic!("{sea:?}");
        };
        assert!((pressure_kpa - 102.1).abs() < 1e-12);
    }

    #[test]
    fn a_pressure_must_be_given_once_and_with_what_it_needs() {
        let refused = |change: &dyn Fn(&mut BarometerRequest)| barometer(change).unwrap_err();
        assert_eq!(refused(&|_| ()).code, Code::Missing);
        let twice = refused(&|b| {
            b.station_pressure_kpa = Some(100.2);
            b.station_pressure_hpa = Some(1002.0);
        });
        assert_eq!((twice.code, twice.parameter.as_ref()), (Code::GivenTwice, "station_pressure_hpa"));
        let no_altitude = refused(&|b| b.sea_level_pressure_hpa = Some(1021.0));
        assert_eq!((no_altitude.code, no_altitude.parameter.as_ref()), (Code::Missing, "altitude_m"));
        let needless = refused(&|b| {
            b.station_pressure_kpa = Some(100.2);
            b.altitude_m = Some(10.0);
        });
        assert_eq!(needless.code, Code::Contradiction);
        // A pressure in hPa under the key of kPa, and the other way round.
        let too_high = refused(&|b| b.station_pressure_kpa = Some(1002.0));
        assert_eq!((too_high.code, &*too_high.value), (Code::OutOfRange, "1002 kPa"));
        let too_low = refused(&|b| b.station_pressure_hpa = Some(100.2));
        assert_eq!((&*too_low.value, &*too_low.allowed), ("100.2 hPa", "400 to 1200 hPa"));
        assert_eq!(refused(&|b| b.station_pressure_kpa = Some(f64::NAN)).code, Code::NotANumber);
    }

    #[test]
    fn dates_are_year_month_day() {
        assert_eq!(read_date("2026-12-03", "date").unwrap().to_string(), "2026-12-03");
        for text in ["3.12.2026", "2026-02-30", "tomorrow"] {
            let error = read_date(text, "date").unwrap_err();
            assert_eq!((error.code, error.parameter.as_ref()), (Code::Syntax, "date"), "{text}");
        }
    }
}
