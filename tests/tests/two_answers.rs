//! The page on the two answers says what the example lesson gives.

use overwater::units::{decimals, significant};
use overwater_exchange::answer::PlanAnswer;
use overwater_exchange::plan_toml;

const PAGE: &str = include_str!("../../examples/two-answers-on-the-sheet.md");
const LESSON: &str = include_str!("../../examples/oxygen-lesson.toml");

/// The cells of a row of the section.
fn row(section: &str, name: &str) -> Vec<String> {
    let (_, rest) = PAGE.split_once(&format!("\n## {section}")).unwrap();
    let rest = rest.split("\n## ").next().unwrap();
    let line = rest.lines().find(|line| line.starts_with(&format!("| {name} |"))).unwrap();
    line.split('|').map(str::trim).skip(2).filter(|cell| !cell.is_empty()).map(str::to_owned).collect()
}

fn cells(plan: &PlanAnswer, burn: usize, of: impl Fn(usize) -> String) -> Vec<String> {
    (0..plan.burns[burn].answers.len()).map(of).collect()
}

#[test]
fn the_numbers_of_the_page_are_those_of_the_lesson() {
    let plan = plan_toml(LESSON).unwrap();
    for (section, burn) in [("Sodium", 2), ("Iron", 3)] {
        let (burns, after) = (&plan.burns[burn].answers, &plan.after[burn].answers);
        let page = |name: &str| row(section, name);
        assert_eq!(page("equation"), cells(&plan, burn, |i| burns[i].equation_unicode.clone()));
        assert_eq!(
            page("product"),
            cells(&plan, burn, |i| format!(
                "{} g of {}",
                significant(after[i].product_g, 3),
                after[i].product_unicode
            ))
        );
        let used = |i: usize| format!("{} mmol", significant(burns[i].oxygen_used_mmol, 3));
        assert_eq!(page("oxygen used"), cells(&plan, burn, used));
        assert_eq!(page("heat"), cells(&plan, burn, |i| format!("{} kJ", significant(after[i].heat_kj, 2))));
    }
    let (burns, after) = (&plan.burns[2].answers, &plan.after[2].answers);
    assert_eq!(
        row("Sodium", "most that the jar burns"),
        cells(&plan, 2, |i| format!("{} g", significant(burns[i].greatest_sample_g, 3)))
    );
    assert_eq!(
        row("Sodium", "level rises, opened under water"),
        cells(&plan, 2, |i| format!("{} cm³", significant(after[i].water_rise_cm3, 2)))
    );
    let [peroxide, oxide] = [0, 1].map(|i| after[i].in_water.as_ref().unwrap());
    let gone = decimals(peroxide.ph_without_peroxide.unwrap(), 1);
    let fresh = decimals(peroxide.ph, 1);
    assert_eq!(
        row("Sodium", "pH in 20 cm³ of water"),
        [format!("{fresh}, then {gone} when the peroxide has gone"), decimals(oxide.ph, 1)]
    );
    let (iron, oxygen) = (55.845, 15.999);
    let share = |irons: f64, oxygens: f64| 100.0 * irons * iron / (irons * iron + oxygens * oxygen);
    assert_eq!(
        row("Iron", "iron in the product"),
        [format!("{} %", decimals(share(3.0, 4.0), 1)), format!("{} %", decimals(share(2.0, 3.0), 1))]
    );
    let apart = plan.after[3].answers[1].product_g - plan.after[3].answers[0].product_g;
    assert!(PAGE.contains(&format!("only to {} g", significant(apart, 2))), "{apart}");
}
