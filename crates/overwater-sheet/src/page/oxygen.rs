//! The figure: oxygen in the gas that leaves the flask, and the stretch of it that each vessel takes.

use overwater_exchange::answer::FillingAnswer;

use super::chart::{Axis, Chart, Legend, Level, Stretch};
use super::numbers::{dec, given};

/// The id of the table that holds the same data.
pub(super) const TABLE: &str = "filling-table";

pub(super) fn chart(filling: &FillingAnswer) -> Chart {
    let rejected = filling.rejected_cm3;
    Chart {
        id: "oxygen",
        title: "Oxygen in the gas that leaves the flask".to_owned(),
        finding: finding(filling),
        table: TABLE,
        x: Axis {
            title: "volume of gas passed / cm³".to_owned(),
            high: filling.curve.last().map_or(1.0, |point| point.passed_cm3),
        },
        y: Axis { title: "fraction of oxygen".to_owned(), high: 1.0 },
        curve: filling.curve.iter().map(|point| (point.passed_cm3, point.oxygen_fraction)).collect(),
        hatched: (rejected > 0.0).then(|| Stretch {
            label: format!("reject {} cm³", given(rejected, 3)),
            from: 0.0,
            to: rejected,
        }),
        levels: filling
            .vessels
            .iter()
            .map(|vessel| Level {
                label: vessel.name.clone(),
                from: vessel.from_cm3,
                to: vessel.to_cm3,
                reached: vessel.oxygen_fraction,
                wanted: vessel.wanted_fraction,
            })
            .collect(),
        legend: Legend {
            curve: "gas leaving",
            reached: "mean in the vessel",
            wanted: "wanted in the vessel",
            hatched: "rejected",
        },
    }
}

/// What the figure shows, in words.
fn finding(filling: &FillingAnswer) -> String {
    let mut sentences = Vec::new();
    if let (Some(first), Some(last)) = (filling.curve.first(), filling.curve.last()) {
        sentences.push(format!(
            "The fraction of oxygen in the gas that leaves the flask rises from {} to {} while {} cm³ of gas passes.",
            dec(first.oxygen_fraction, 2),
            dec(last.oxygen_fraction, 2),
            given(last.passed_cm3, 3),
        ));
    }
    sentences.push(if filling.rejected_cm3 > 0.0 {
        format!("The first {} cm³ is rejected.", given(filling.rejected_cm3, 3))
    } else {
        "None is rejected.".to_owned()
    });
    let short = filling.vessels.iter().filter(|vessel| !vessel.good_enough).count();
    let count = filling.vessels.len();
    sentences.push(match (short, count) {
        (0, _) => "Every vessel reaches the fraction wanted.".to_owned(),
        (short, count) if short == count => "No vessel reaches the fraction wanted.".to_owned(),
        (short, count) => format!("{short} of the {count} vessels do not reach the fraction wanted."),
    });
    let each: Vec<String> = filling
        .vessels
        .iter()
        .map(|vessel| {
            let reached = if vessel.good_enough { "reached" } else { "not reached" };
            let (mean, wanted) = (dec(vessel.oxygen_fraction, 3), dec(vessel.wanted_fraction, 3));
            format!("{} holds {mean} ({wanted} wanted, {reached})", vessel.name)
        })
        .collect();
    if !each.is_empty() {
        sentences.push(format!("{}.", each.join("; ")));
    }
    sentences.join(" ")
}
