//! The page as a whole. What a figure should read is taken from the answer, or written out where the test says so.

use std::collections::HashSet;
use std::sync::LazyLock;

use overwater::units::{decimals, significant};
use overwater_exchange::answer::PlanAnswer;
use overwater_exchange::plan_toml;
use overwater_exchange::request::FunnelRequest;
use overwater_exchange::schedule::ScheduleStep;
use proptest::prelude::*;
use roxmltree::{Document, Node, ParsingOptions};

use super::page;

/// Planned once: its schedule is simulated.
fn example() -> PlanAnswer {
    static PLANNED: LazyLock<PlanAnswer> =
        LazyLock::new(|| plan_toml(include_str!("../../../../examples/oxygen-lesson.toml")).unwrap());
    PLANNED.clone()
}

fn lesson(flask_cm3: u32, vessels: &str) -> PlanAnswer {
    plan_toml(&format!(
        "format = 1\nstock.strength = \"100 vol\"\napparatus.flask_cm3 = {flask_cm3}\n{vessels}"
    ))
    .unwrap()
}

fn jars(count: usize) -> String {
    (1..=count).map(|i| format!("[[vessels]]\nname = \"jar no. {i}\"\nburn = \"sulfur\"\n")).collect()
}

fn parse(page: &str) -> Document<'_> {
    Document::parse_with_options(page, ParsingOptions { allow_dtd: true, ..ParsingOptions::default() })
        .unwrap_or_else(|error| panic!("{error} in\n{page}"))
}

fn text(node: Node<'_, '_>) -> String {
    let whole: String = node.descendants().filter(Node::is_text).filter_map(|part| part.text()).collect();
    whole
        .split(|c: char| c.is_whitespace() || c == '\u{a0}')
        .filter(|word| !word.is_empty())
        .collect::<Vec<_>>()
        .join(" ")
}

fn by_id<'a, 'i>(document: &'a Document<'i>, id: &str) -> Node<'a, 'i> {
    document
        .descendants()
        .find(|node| node.attribute("id") == Some(id))
        .unwrap_or_else(|| panic!("nothing has the id {id}"))
}

fn rows(document: &Document<'_>, table: &str) -> Vec<Vec<String>> {
    let cells = |row: Node<'_, '_>| row.children().filter(Node::is_element).map(text).collect();
    by_id(document, table).descendants().filter(|node| node.has_tag_name("tr")).map(cells).collect()
}

/// The page keeps to what every page has to keep to.
fn sound(page: &str) {
    assert!(!page.contains("could not be written"), "{page}");
    let document = parse(page);
    let root = document.root_element();
    assert!(root.has_tag_name("html") && root.attribute("lang") == Some("en"));
    let named = |name: &'static str| document.descendants().filter(move |node| node.has_tag_name(name));
    assert_eq!(named("meta").filter(|node| node.attribute("charset") == Some("utf-8")).count(), 1);
    assert!(named("meta").any(|node| node.attribute("name") == Some("viewport")));
    let title = root.descendants().find(|node| node.has_tag_name("title")).unwrap();
    assert!(text(title).ends_with(": preparation sheet"));

    // No script, nothing fetched, no handler.
    for name in ["script", "link", "img", "iframe", "object", "embed", "base", "form"] {
        assert_eq!(named(name).count(), 0, "{name}");
    }
    for node in document.descendants().filter(Node::is_element) {
        for attribute in node.attributes() {
            let (name, value) = (attribute.name(), attribute.value());
            assert!(!name.starts_with("on") && name != "src" && name != "style", "{name}");
            assert!(name != "href" || value.starts_with('#'), "{value}");
        }
    }
    let style = text(named("style").next().unwrap());
    assert!(!style.contains("@import") && !style.contains("url(") && !style.contains("@font-face"));

    let ids: Vec<&str> = document.descendants().filter_map(|node| node.attribute("id")).collect();
    let unique: HashSet<&str> = ids.iter().copied().collect();
    assert_eq!(unique.len(), ids.len(), "{ids:?}");
    for node in document.descendants() {
        for name in ["href", "aria-labelledby", "aria-describedby"] {
            for id in node.attribute(name).unwrap_or_default().split_whitespace() {
                assert!(unique.contains(id.trim_start_matches('#')), "{name} = {id}");
            }
        }
    }

    assert!(named("table").count() >= 9);
    for table in named("table") {
        assert!(table.attribute("id").is_some());
        let first = table.first_element_child().unwrap();
        assert!(first.has_tag_name("caption") && !text(first).is_empty());
        let headers: Vec<_> = table.descendants().filter(|node| node.has_tag_name("th")).collect();
        assert!(headers.iter().any(|th| th.attribute("scope") == Some("col")));
        for th in headers {
            assert!(matches!(th.attribute("scope"), Some("col" | "row" | "rowgroup")), "{}", text(th));
            assert!(!text(th).is_empty());
        }
        let columns = table.descendants().find(|node| node.has_tag_name("thead")).unwrap();
        let columns = columns.descendants().filter(|node| node.has_tag_name("th")).count();
        let mut hanging = 0;
        for row in table.descendants().filter(|node| node.has_tag_name("tr")) {
            let cells = || row.children().filter(Node::is_element);
            let number =
                |cell: &Node<'_, '_>, name| cell.attribute(name).map_or(1_usize, |n| n.parse().unwrap());
            let width: usize = cells().map(|cell| number(&cell, "colspan")).sum();
            assert_eq!(width + usize::from(hanging > 0), columns, "{}", text(row));
            hanging =
                cells().map(|cell| number(&cell, "rowspan") - 1).max().unwrap_or(0).max(hanging.max(1) - 1);
        }
    }

    let levels: Vec<u8> = document
        .descendants()
        .filter_map(|node| match node.tag_name().name() {
            "h1" => Some(1),
            "h2" => Some(2),
            "h3" => Some(3),
            _ => None,
        })
        .collect();
    assert_eq!(levels.first(), Some(&1));
    assert_eq!(levels.iter().filter(|level| **level == 1).count(), 1);
    assert!(levels.windows(2).all(|pair| pair[1] <= pair[0] + 1), "{levels:?}");
    assert_eq!(levels.iter().filter(|level| **level == 2).count(), 8);

    let figure = named("svg").next().unwrap();
    assert_eq!(figure.attribute("role"), Some("img"));
    assert_eq!(figure.attribute("aria-describedby"), Some("filling-table"));
    assert!(!page.contains("NaN") && !page.contains("not known"), "{page}");
}

#[test]
fn the_example_is_sound_and_needs_no_network() {
    let page = page(&example());
    sound(&page);
    for word in ["http", "src=", "<script", "url(data", "//"] {
        assert!(!page.contains(word), "{word}");
    }
}

#[test]
fn what_the_example_has_to_fetch_is_said_with_its_unit() {
    // Written out: the figures of examples/oxygen-lesson.toml, printed by hand from its answer.
    let page = page(&example());
    let document = parse(&page);
    let fetch = rows(&document, "fetch-table");
    for (item, amount) in [
        ("peroxide from stock counted on as 96.0 vol", "20.8 cm³"),
        ("purified water make up to this", "100 cm³"),
        ("peroxide to issue, 20.0 vol 90 cm³ a set", "90 cm³"),
        ("manganese(IV) oxide, granules 1.0 g a set", "1.0 g"),
        ("gas jars with the spare ones", "5"),
        ("covers for the jars", "5"),
        ("boiling tubes", "1"),
        ("bungs for the tubes", "1"),
        ("deflagrating spoons", "2"),
        ("tongs", "2"),
        ("splints", "1"),
        ("sulfur powdered roll sulfur", "1 × 0.10 g"),
        ("sodium a piece like a rice grain, oil removed", "1 × 0.050 g"),
        ("indicator", "4.0 cm³"),
        ("water for testing products part 2 says where none goes in before the burn", "80 cm³"),
    ] {
        let row = fetch.iter().find(|row| row[1] == item).unwrap_or_else(|| panic!("{item} in {fetch:?}"));
        assert_eq!(row[2], amount, "{item}");
    }
    let boxes =
        by_id(&document, "fetch-table").descendants().filter(|node| node.attribute("class") == Some("box"));
    assert_eq!(boxes.count(), fetch.len() - 1, "a box beside each thing to fetch");
    let work = text(by_id(&document, "work"));
    for step in [
        "Measure 20.8 cm³ of stock, pour it into purified water, and make it up to 100 cm³",
        "hydrogen peroxide, 20.0 vol, 1.78 mol/dm³",
        "90 cm³ of it, and weigh 1.0 g of manganese(IV) oxide, granules",
        "Add peroxide by the stop-watch: 15 portions of 5 cm³, one every 35 s",
        "Throw away the first 560 cm³ of gas",
        "2. jar 1: sulfur, 0.10 g 3. jar 2: magnesium, 0.10 g",
        "Prepared by",
    ] {
        assert!(work.contains(step), "{step} in {work}");
    }
}

#[test]
fn every_figure_of_the_answer_is_on_the_page_with_its_unit() {
    let plan = example();
    let page = page(&plan);
    let document = parse(&page);
    let has = |table: &str, row: &str, expected: &[String]| {
        let rows = rows(&document, table);
        let found = rows.iter().find(|cells| cells.iter().any(|cell| cell == row));
        let found = found.unwrap_or_else(|| panic!("{row} in {table}: {rows:?}"));
        let after: Vec<&String> = found.iter().skip_while(|cell| *cell != row).skip(1).collect();
        assert_eq!(after, expected.iter().collect::<Vec<_>>(), "{row} in {table}");
    };
    let sig = |value: f64, figures: usize, unit: &str| {
        format!("{} {unit}", significant(value, figures)).trim().to_owned()
    };
    let dec = |value: f64, places: usize, unit: &str| {
        format!("{} {unit}", decimals(value, places)).trim().to_owned()
    };

    let need = &plan.requisition;
    has("need-table", "by theory, one preparation", &[sig(need.theory_cm3, 3, "cm³")]);
    has("need-table", "if 85 % of the gas is caught", &[sig(need.with_efficiency_cm3, 3, "cm³")]);
    has("need-table", "rounded up, to issue", &["90 cm³".into()]);
    has("need-table", "for 1 set", &["90 cm³".into()]);
    let stock = &plan.stock;
    for (row, strength) in
        [("by the label", stock.label), ("counted on", stock.strength), ("to run at", stock.run)]
    {
        let figures =
            [strength.volume_strength_vol, strength.concentration_mol_per_dm3, strength.percent_w_v];
        has("strength-table", row, &figures.map(|figure| significant(figure, 3)));
    }
    assert_eq!(rows(&document, "strength-table")[0], ["Solution", "vol", "mol/dm³", "% w/v"]);
    assert_eq!(stock.readings.len(), 5);
    for reading in &stock.readings {
        let used = if reading.convention == stock.convention { " (used here)" } else { "" };
        let row = reading.convention.replace("degC", "°C").replace("dm3", "dm³") + used;
        has("reading-table", &row, &[significant(reading.concentration_mol_per_dm3, 3)]);
    }
    let assay = stock.assay_design.unwrap();
    has("assay-table", "stock to pipette", &["2.00 cm³".into()]);
    has("assay-table", "made up to", &["250 cm³".into()]);
    has("assay-table", "of that, titrate", &["20.0 cm³".into()]);
    has("assay-table", "permanganate", &["0.0200 mol/dm³".into()]);
    has("assay-table", "titre if the label is true", &[sig(assay.expected_titre_cm3, 3, "cm³")]);
    has("assay-table", "tolerances of the glassware, added", &[sig(assay.glassware_percent, 2, "%")]);

    let gas = &plan.gas;
    assert_eq!(rows(&document, "gas-table")[0], ["Gas", "Moist / cm³", "Dry / cm³", "Amount / mmol"]);
    has(
        "gas-table",
        "rejected",
        &["560".into(), sig(gas.rejected.dry_cm3, 3, ""), sig(gas.rejected.amount_mmol, 3, "")],
    );
    has(
        "gas-table",
        "in all",
        &["1615".into(), sig(gas.total.dry_cm3, 4, ""), sig(gas.total.amount_mmol, 3, "")],
    );
    assert_eq!(gas.vessels.len(), 5);
    for (vessel, gas) in plan.filling.vessels.iter().zip(&gas.vessels) {
        has(
            "gas-table",
            &vessel.name,
            &[sig(gas.moist_cm3, 3, ""), sig(gas.dry_cm3, 3, ""), sig(gas.amount_mmol, 3, "")],
        );
        let (from, to) = (vessel.from_cm3.to_string(), vessel.to_cm3.to_string());
        let (mean, wanted) = (decimals(vessel.oxygen_fraction, 3), decimals(vessel.wanted_fraction, 2));
        let burn = vessel.burn.clone().unwrap_or_else(|| "glowing splint".to_owned());
        has(
            "filling-table",
            &vessel.name,
            &[from, to, mean, wanted, "reached".into(), burn, vessel.suits.join(", ")],
        );
    }

    let heat = plan.additions;
    has(
        "heat-table",
        "rise, onto 40 cm³ of water",
        &[sig(heat.rise_at_once_k, 2, "K"), sig(heat.rise_per_portion_k, 2, "K")],
    );
    has("heat-table", "steam in the gas that leaves", &["11 %".into(), "3.1 %".into()]);
    has("heat-table", "rise of the solution by itself", &["40 K, whatever its volume".into()]);
    has("heat-table", "moist gas", &["1615 cm³".into(), sig(heat.gas_per_portion_cm3, 2, "cm³")]);
    let back = plan.back_pressure;
    for (row, figure) in [
        ("water over the outlet", back.depth_kpa),
        ("friction in the tube", back.friction_kpa),
        ("in a bubble", back.bubble_kpa),
        ("in all", back.total_kpa),
    ] {
        has("pressure-table", row, &[dec(figure, 3, "kPa")]);
    }
    has("pressure-table", "rise in the funnel stem", &[dec(back.stem_rise_cm, 1, "cm")]);
    has("pressure-table", "margin before gas escapes", &[dec(back.margin_cm, 1, "cm")]);
    let train = text(by_id(&document, "train"));
    for words in [
        "come to 48 °C; water boils at 99.8 °C",
        "18.4 cm of the stem is left before gas escapes",
        "draws in 79 cm³ of water; the tube holds 16 cm³",
        "The water reaches the flask",
    ] {
        assert!(train.contains(words), "{words} in {train}");
    }

    let burns = text(by_id(&document, "burn-table"));
    let mut answers = 0;
    for answer in plan.burns.iter().flat_map(|burn| &burn.answers) {
        answers += 1;
        let row =
            rows(&document, "burn-table").into_iter().find(|row| row.contains(&answer.equation_unicode));
        assert!(row.unwrap().contains(&answer.role));
        has(
            "burn-table",
            &answer.equation_unicode,
            &[
                significant(answer.oxygen_used_mmol, 3),
                significant(answer.share_of_oxygen * 100.0, 2),
                format!("{} {}", answer.product_unicode, significant(answer.product_g, 3)),
                significant(answer.greatest_sample_g, 2),
            ],
        );
    }
    assert_eq!(answers, 6);
    assert!(
        burns.contains("jar 3: sodium (Na), 0.050 g") && burns.contains("9.50 mmol of oxygen"),
        "{burns}"
    );

    for caution in &plan.cautions {
        let row = rows(&document, "caution-table").into_iter().find(|row| row[0] == caution.topic).unwrap();
        assert_eq!(row[1], caution.text.replace("degC", "°C"));
        assert_eq!(row[2], caution.because.replace("degC", "°C").replace("cm3", "cm³"));
    }
    assert!(text(by_id(&document, "deference")).contains(&plan.deference));
    assert_eq!(rows(&document, "caution-table").len(), plan.cautions.len() + 1);
    assert_eq!(rows(&document, "assumption-table").len(), plan.assumptions.len() + 1);
    assert_eq!(rows(&document, "constant-table").len(), plan.constants.len() + 1);
    assert_eq!(rows(&document, "relation-table").len(), plan.relations.len() + 1);
    has(
        "constant-table",
        "molar gas constant, R",
        &[
            "8.31446261815324 J/(mol K), exact".into(),
            "BIPM, The International System of Units, 9th edition: defining constants".into(),
            "2019".into(),
        ],
    );
    has(
        "constant-table",
        "viscosity of oxygen at 20 °C, μ",
        &["2.03 × 10⁻⁵ Pa s".into(), "handbook value, from memory".into(), "–".into()],
    );
}

#[test]
fn the_figure_says_its_finding_in_words_and_labels_every_vessel() {
    let page = page(&example());
    let document = parse(&page);
    assert_eq!(
        text(by_id(&document, "oxygen-finding")),
        "The fraction of oxygen in the gas that leaves the flask rises from 0.21 to 0.97 while 1615 cm³ of gas passes. \
         The first 560 cm³ is rejected. Every vessel reaches the fraction wanted. \
         splint tube holds 0.770 (0.500 wanted, reached); jar 1 holds 0.831 (0.800 wanted, reached); \
         jar 2 holds 0.900 (0.900 wanted, reached); jar 3 holds 0.941 (0.900 wanted, reached); \
         jar 4 holds 0.965 (0.950 wanted, reached)."
    );
    assert_eq!(
        labels(&document),
        [
            "0",
            "500",
            "1000",
            "1500",
            "0",
            "0.2",
            "0.4",
            "0.6",
            "0.8",
            "1",
            "volume of gas passed / cm³",
            "fraction of oxygen",
            "reject 560 cm³",
            "splint tube",
            "jar 1",
            "jar 2",
            "jar 3",
            "jar 4",
            "gas leaving",
            "mean in the vessel",
            "wanted in the vessel",
            "rejected",
        ]
    );
    let figure = document.descendants().find(|node| node.has_tag_name("svg")).unwrap();
    for node in figure.descendants().filter(Node::is_element) {
        for name in ["fill", "stroke"] {
            let value = node.attribute(name).unwrap_or("none");
            assert!(["none", "currentColor", "url(#oxygen-hatch)"].contains(&value), "{value}");
        }
    }
    let level = |figure: &Node<'_, '_>| {
        figure.descendants().filter(|node| node.attribute("stroke-width") == Some("3.2")).count()
    };
    assert_eq!(level(&figure), 5 + 1, "each vessel and the legend");
}

fn labels(document: &Document<'_>) -> Vec<String> {
    let figure = document.descendants().find(|node| node.has_tag_name("svg")).unwrap();
    figure.descendants().filter(|node| node.has_tag_name("text")).map(text).collect()
}

#[test]
fn one_vessel_twelve_and_thirty_make_a_sound_page() {
    for count in [1, 12, 30] {
        let plan = lesson(if count > 12 { 3000 } else { 500 }, &jars(count));
        let page = page(&plan);
        sound(&page);
        let document = parse(&page);
        assert_eq!(rows(&document, "filling-table").len(), count + 2);
        assert_eq!(rows(&document, "gas-table").len(), count + 3);
        let labels = labels(&document);
        let names = labels.iter().filter(|label| label.starts_with("jar no. ")).count();
        let numbered = page.contains("are those of its first column");
        match count {
            30 => {
                assert!(numbered && names == 0);
                for number in 1..=30 {
                    assert!(labels.contains(&number.to_string()), "{number} in {labels:?}");
                }
            }
            _ => assert!(!numbered && names == count, "{labels:?}"),
        }
    }
}

#[test]
fn a_vessel_that_falls_short_is_said_to_in_words() {
    let plan = lesson(500, &format!("run.rejected_cm3 = 0\n{}", jars(2)));
    assert!(plan.filling.vessels.iter().all(|vessel| !vessel.good_enough));
    let page = page(&plan);
    sound(&page);
    let document = parse(&page);
    let table = rows(&document, "filling-table");
    assert_eq!(table.len(), 4);
    for (row, vessel) in table.iter().skip(2).zip(&plan.filling.vessels) {
        let short = significant(vessel.wanted_fraction - vessel.oxygen_fraction, 2);
        assert_eq!(row[6], format!("not reached, {short} short"));
    }
    let finding = text(by_id(&document, "oxygen-finding"));
    assert!(finding.contains("None is rejected. No vessel reaches the fraction wanted."), "{finding}");
    assert!(!labels(&document).iter().any(|label| label.contains("reject")));
    assert_eq!(text(by_id(&document, "work")).matches("(oxygen not reached)").count(), 2);
}

#[test]
fn every_turn_of_the_answer_is_worded() {
    let mut plan = example();
    plan.requisition.dilution = None;
    plan.requisition.sets = 3;
    plan.stock.fraction_of_label = None;
    plan.stock.readings.clear();
    plan.stock.convention_was_given = false;
    plan.additions.boils = true;
    plan.back_pressure.margin_cm = -3.44;
    plan.suck_back.funnel = FunnelRequest::Tap;
    plan.suck_back.reaches_flask = false;
    plan.burns[0].answers[0].share_of_oxygen = 1.25;
    plan.place.sea_level_pressure_kpa = None;
    let whole = page(&plan);
    sound(&whole);
    let words = text(parse(&whole).root_element());
    for expected in [
        "No diluting: the stock is run as it is, at 20.0 vol",
        "To fetch, for all 3 sets",
        "counted on as 96.0 vol, as nobody has titrated it. To check it, titrate as in part 3: 28.6 cm³",
        "which was assumed",
        "The label is in another scale",
        "All at once the flask would boil; water boils at 99.8 °C",
        "the stem is 3.4 cm too short, and gas escapes through it",
        "funnel with a tap",
        "does not reach the flask",
        "125, more sample than burns",
        "pressure here 100.78 kPa. Room",
    ] {
        assert!(words.contains(expected), "{expected} in {words}");
    }
    plan.burns.clear();
    plan.cautions.clear();
    plan.assumptions.clear();
    plan.stock.assay_design = None;
    plan.title = None;
    plan.date = None;
    let bare = page(&plan);
    sound(&bare);
    let words = text(parse(&bare).root_element());
    for expected in [
        "Oxygen collected over water: preparation sheet",
        "Nothing is burned but the splint.",
        "raise no caution of their own",
        "Nothing had to be assumed.",
    ] {
        assert!(words.contains(expected), "{expected} in {words}");
    }
    assert!(!words.contains("for the lesson on"));
}

/// Every text in an answer that a person may have written.
fn named(text: &str) -> PlanAnswer {
    let mut plan = example();
    plan.title = Some(text.to_owned());
    plan.date = Some(text.to_owned());
    plan.requisition.catalyst = text.to_owned();
    for vessel in &mut plan.filling.vessels {
        vessel.name = text.to_owned();
    }
    for burn in &mut plan.burns {
        burn.vessel = text.to_owned();
    }
    if let Some(found) = &mut plan.schedule.found {
        for vessel in &mut found.vessels {
            vessel.name = text.to_owned();
        }
        for step in &mut found.steps {
            if let ScheduleStep::Fill { vessel, .. } = step {
                *vessel = text.to_owned();
            }
        }
    }
    for caution in &mut plan.cautions {
        caution.because = text.to_owned();
    }
    plan
}

#[test]
fn the_timeline_and_its_figure_say_the_same() {
    let plan = example();
    let page = page(&plan);
    let document = parse(&page);
    let found = plan.schedule.found.unwrap();
    let lines = rows(&document, "timeline-table");
    assert_eq!(lines[1][1], "0:00");
    assert_eq!(lines.last().unwrap()[2], "all full: TUBE OUT of the water");
    let fills = lines.iter().filter(|row| row[2].ends_with("over the outlet")).count();
    assert_eq!(fills, found.vessels.len());
    let figure = document
        .descendants()
        .find(|node| node.attribute("aria-describedby") == Some("timeline-table"))
        .unwrap();
    assert_eq!(figure.descendants().filter(|node| node.has_tag_name("polyline")).count(), 3);
    assert_eq!(figure.descendants().filter(|node| node.has_tag_name("rect")).count(), found.vessels.len());
    let triangles = figure.descendants().filter(|node| node.attribute("fill") == Some("currentColor"));
    assert_eq!(triangles.count(), found.portions as usize + 1, "one for each portion, and one in the legend");
    let finding = text(by_id(&document, "course-finding"));
    assert!(finding.contains("splint tube fills from 3:3"), "{finding}");
    assert!(finding.contains(&format!("no more than {} cm³/s", decimals(found.top_flow_cm3_per_s, 1))));
}

#[test]
fn a_lesson_without_a_schedule_says_so_in_both_places() {
    let plan = plan_toml(include_str!("../../../../examples/goes-wrong.toml")).unwrap();
    let page = page(&plan);
    sound(&page);
    let document = parse(&page);
    assert!(text(by_id(&document, "work")).contains("Do not begin yet"));
    let train = text(by_id(&document, "train"));
    assert!(
        train.contains("No schedule of portions keeps the limits") && train.contains("longer stem"),
        "{train}"
    );
    assert!(!train.contains("Timeline"));
}

#[test]
fn the_page_of_a_run_is_sound_too() {
    let text_of = include_str!("../../../../examples/all-at-once.toml");
    let answer = overwater_exchange::run::run(&overwater_exchange::run_from_toml(text_of).unwrap()).unwrap();
    let page = super::run_page(&answer);
    let document = parse(&page);
    assert!(!page.contains("could not be written") && !page.contains("NaN"), "{page}");
    let found = rows(&document, "finding-table");
    assert_eq!(found.len(), answer.findings.len() + 1);
    assert_eq!(rows(&document, "event-table").len(), answer.events.len() + 1);
    assert_eq!(by_id(&document, "course-title").parent().unwrap().attribute("role"), Some("img"));
    for table in document.descendants().filter(|node| node.has_tag_name("table")) {
        assert!(table.first_element_child().unwrap().has_tag_name("caption"));
    }
}

#[test]
fn hostile_names_stay_text() {
    let long = "a very long name ".repeat(60);
    for name in [
        "<script>alert(1)</script>",
        "\"quoted\" & 'quoted' onload=x",
        "]]> --> </style></title><svg onload=1>",
        "{{ 7 * 7 }}{% raw %}",
        "🔥🧪 Ω \u{202e}reversed",
        long.trim(),
    ] {
        let page = page(&named(name));
        sound(&page);
        assert!(!page.contains("<script"));
        let document = parse(&page);
        let heading = document.descendants().find(|node| node.has_tag_name("h1")).unwrap();
        assert_eq!(text(heading), name);
        let fill = rows(&document, "filling-table");
        assert!(fill[2][1].starts_with(name), "{:?}", fill[2]);
        assert!(text(by_id(&document, "oxygen-finding")).contains(name));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]
    #[test]
    fn any_text_leaves_the_page_sound(name in any::<String>()) {
        let page = page(&named(&name));
        prop_assert!(!page.contains("could not be written"));
        let document = parse(&page);
        prop_assert_eq!(document.descendants().filter(|node| node.has_tag_name("script")).count(), 0);
    }
}
