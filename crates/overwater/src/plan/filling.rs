//! What to reject, and the oxygen that each vessel will hold.

use crate::apparatus::purity::{leaving_fraction, mean_fraction, passed_for_fraction};
use crate::bounds;
use crate::burn::Sample;
use crate::plan::defaults;
use crate::plan::flow::Train;
use crate::plan::given::{Given, check};
use crate::plan::lesson::{Kind, Lesson, Vessel};
use crate::reference::burns::SPLINT_FRACTION;
use crate::reference::constants::AIR_NOT_OXYGEN;
use crate::units::{CUBIC_CENTIMETRE, Dimensioned, Volume};
use crate::{Code, Error, Result};

/// A vessel with everything decided.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Wanted {
    pub(super) name: String,
    pub(super) kind: Kind,
    pub(super) volume_cm3: f64,
    pub(super) sample: Option<Sample>,
    pub(super) sample_g: Option<f64>,
    pub(super) fraction: f64,
}

/// How one vessel is filled.
#[derive(Debug, Clone, PartialEq)]
pub struct VesselFilling {
    /// Its name.
    pub name: String,
    /// Jar or tube.
    pub kind: Kind,
    /// Gas that has passed when it begins to fill (cm3).
    pub from_cm3: f64,
    /// Gas that has passed when it is full (cm3).
    pub to_cm3: f64,
    /// Mean fraction of oxygen, by amount of dry gas.
    pub oxygen_fraction: f64,
    /// The fraction wanted.
    pub wanted_fraction: f64,
    /// What is burned in it, by name; nothing for a splint.
    pub burn: Option<&'static str>,
    /// The burns that its gas is good enough for, and the splint.
    pub suits: Vec<&'static str>,
}

impl VesselFilling {
    /// Whether it holds the fraction wanted.
    #[must_use]
    pub fn is_good_enough(&self) -> bool {
        self.oxygen_fraction >= self.wanted_fraction
    }
}

/// Where the oxygen of one preparation goes, in volumes of moist gas at the trough's temperature and pressure (cm3).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OxygenBalance {
    /// Oxygen made, without what is lost.
    pub made_cm3: f64,
    /// Oxygen of the air that was in flask and tube at the start.
    pub from_air_cm3: f64,
    /// Oxygen in the vessels.
    pub in_vessels_cm3: f64,
    /// Oxygen in what was rejected.
    pub in_rejected_cm3: f64,
    /// Oxygen left in flask and tube.
    pub left_in_flask_cm3: f64,
}

/// What to reject and what each vessel holds.
#[derive(Debug, Clone, PartialEq)]
pub struct Filling {
    /// Free volume of flask and tube (cm3).
    pub free_volume_cm3: f64,
    /// What to throw away first (cm3).
    pub rejected_cm3: f64,
    /// Whether the lesson said how much to throw away.
    pub rejected_was_given: bool,
    /// The least that reaches every fraction wanted (cm3).
    pub least_rejected_cm3: f64,
    /// Each vessel in order.
    pub vessels: Vec<VesselFilling>,
    /// Fraction of oxygen in the gas that leaves, against the volume that has passed (cm3).
    pub curve: Vec<(f64, f64)>,
    /// Where the oxygen goes.
    pub oxygen: OxygenBalance,
}

pub(super) fn vessels(lesson: &Lesson, given: &mut Given) -> Result<Vec<Wanted>> {
    if lesson.vessels.is_empty() {
        return Err(Error::new(Code::Missing, "vessels")
            .allowed("at least one vessel, for example [[vessels]] with burn = \"sulfur\"")
            .advice("say what is to be filled"));
    }
    if lesson.vessels.len() > MOST_VESSELS {
        return Err(Error::new(Code::OutOfRange, "vessels")
            .value(lesson.vessels.len().to_string())
            .allowed(format!("1 to {MOST_VESSELS}"))
            .advice("plan several preparations"));
    }
    let mut numbers = (0, 0);
    lesson
        .vessels
        .iter()
        .enumerate()
        .map(|(index, vessel)| {
            let number = match vessel.kind {
                Kind::Jar => &mut numbers.0,
                Kind::Tube => &mut numbers.1,
            };
            *number += 1;
            let number = *number;
            one_vessel(lesson, vessel, number, given).map_err(|error| {
                if error.parameter.contains('.') { error } else { error.within(&format!("vessels[{index}]")) }
            })
        })
        .collect()
}

/// More vessels than anyone fills from one flask.
const MOST_VESSELS: usize = 60;

fn one_vessel(lesson: &Lesson, vessel: &Vessel, number: u32, given: &mut Given) -> Result<Wanted> {
    let apparatus = &lesson.apparatus;
    let volume_cm3 = match (vessel.volume_cm3, vessel.kind) {
        (Some(volume), _) => bounds::VOLUME_CM3.check(volume)?,
        (None, Kind::Jar) => given.number(apparatus.jar_cm3, &defaults::JAR, &bounds::VOLUME_CM3)?,
        (None, Kind::Tube) => given.number(apparatus.tube_cm3, &defaults::TUBE, &bounds::VOLUME_CM3)?,
    };
    let sample = vessel.burn.as_deref().map(Sample::find).transpose()?;
    let name = vessel.name.clone().unwrap_or_else(|| format!("{} {number}", vessel.kind.words()));
    let fraction = match vessel.wanted_oxygen_fraction {
        Some(wanted) => check(&bounds::OXYGEN_FRACTION, wanted, "wanted_oxygen_fraction")?,
        None => {
            let (wanted, for_what) = match &sample {
                Some(sample) => (sample.burn.wanted_fraction, sample.name()),
                None => (SPLINT_FRACTION, "glowing splint"),
            };
            given.assume(
                "vessels.wanted_oxygen_fraction",
                format!("{wanted} for {for_what}"),
                "common practice for a burn worth seeing",
            );
            wanted
        }
    };
    let sample_g = match (&sample, vessel.sample_g) {
        (None, None) => None,
        (None, Some(mass)) => {
            return Err(Error::new(Code::Contradiction, "sample_g")
                .value(format!("{mass} g"))
                .allowed("a mass together with what is burned")
                .advice("add burn = \"...\", or leave the mass out"));
        }
        (Some(_), Some(mass)) => Some(check(&bounds::MASS_G, mass, "sample_g")?),
        (Some(sample), None) => {
            let usual = sample.burn.usual_mass_g * (volume_cm3 / defaults::JAR.value).min(1.0);
            given.assume(
                "vessels.sample_g",
                format!("{usual} g of {}", sample.name()),
                "the mass usually taken for a jar of 250 cm3, less for a smaller one",
            );
            Some(usual)
        }
    };
    Ok(Wanted { name, kind: vessel.kind, volume_cm3, sample, sample_g, fraction })
}

fn litres(volume_cm3: f64) -> Volume<f64> {
    Volume::new(volume_cm3 * CUBIC_CENTIMETRE.si)
}

/// What is thrown away is measured in a vessel or by counting bubbles: no finer than this (cm3).
const REJECTION_STEP_CM3: f64 = 10.0;
/// Points of the curve, enough for a smooth line on paper.
const CURVE_POINTS: u32 = 80;

pub(super) fn fill(lesson: &Lesson, vessels: &[Wanted], train: &Train) -> Result<Filling> {
    let free = litres(train.free_volume_cm3);
    // At least one free volume is thrown away in any case: the first gas over is air.
    let mut least_rejected_cm3 = train.free_volume_cm3;
    let mut filled_before = 0.0;
    for vessel in vessels {
        let passed = passed_for_fraction(vessel.fraction, litres(vessel.volume_cm3), free);
        least_rejected_cm3 = least_rejected_cm3.max(passed.si() / CUBIC_CENTIMETRE.si - filled_before);
        filled_before += vessel.volume_cm3;
    }
    let rejected_cm3 = match lesson.run.rejected_cm3 {
        Some(rejected) => check(&bounds::REJECTED_CM3, rejected, "run.rejected_cm3")?,
        None => (least_rejected_cm3 / REJECTION_STEP_CM3).ceil() * REJECTION_STEP_CM3,
    };

    let mut passed = rejected_cm3;
    let mut in_vessels_cm3 = 0.0;
    let vessels: Vec<VesselFilling> = vessels
        .iter()
        .map(|vessel| {
            let oxygen_fraction = mean_fraction(litres(passed), litres(vessel.volume_cm3), free);
            let from_cm3 = passed;
            passed += vessel.volume_cm3;
            in_vessels_cm3 += oxygen_fraction * vessel.volume_cm3;
            VesselFilling {
                name: vessel.name.clone(),
                kind: vessel.kind,
                from_cm3,
                to_cm3: passed,
                oxygen_fraction,
                wanted_fraction: vessel.fraction,
                burn: vessel.sample.as_ref().map(Sample::name),
                suits: suits(oxygen_fraction),
            }
        })
        .collect();
    let in_rejected_cm3 = if rejected_cm3 > 0.0 {
        rejected_cm3 * mean_fraction(litres(0.0), litres(rejected_cm3), free)
    } else {
        0.0
    };
    let curve = (0..=CURVE_POINTS)
        .map(|point| {
            let volume = passed * f64::from(point) / f64::from(CURVE_POINTS);
            (volume, leaving_fraction(litres(volume), free))
        })
        .collect();
    Ok(Filling {
        free_volume_cm3: train.free_volume_cm3,
        rejected_cm3,
        rejected_was_given: lesson.run.rejected_cm3.is_some(),
        least_rejected_cm3,
        vessels,
        curve,
        oxygen: OxygenBalance {
            made_cm3: passed,
            from_air_cm3: train.free_volume_cm3 * (1.0 - AIR_NOT_OXYGEN.value),
            in_vessels_cm3,
            in_rejected_cm3,
            left_in_flask_cm3: train.free_volume_cm3 * leaving_fraction(litres(passed), free),
        },
    })
}

fn suits(oxygen_fraction: f64) -> Vec<&'static str> {
    let splint = (SPLINT_FRACTION, "glowing splint");
    let burns = crate::reference::burns::BURNS
        .iter()
        .map(|burn| (burn.wanted_fraction, burn.names.first().copied().unwrap_or(burn.formula)));
    std::iter::once(splint)
        .chain(burns)
        .filter(|(wanted, _)| oxygen_fraction >= *wanted)
        .map(|(_, name)| name)
        .collect()
}
