//! The crop book as a page.

use plumule_agronomy::{
    Basis, Crop, CropBook, CropGroup, Hardiness, LightNeed, MaturityFrom, SowingCompost, Treatment,
};
use std::fmt::{Display, Write};

const HEAD: &str = "# The crop book

Made from `crops.toml` by `cargo run -p plumule-agronomy --example crops_page`; do not edit it here.

Temperatures are in °C, depths in mm. Days are to emergence at a constant temperature, for half of the seedlings that will come; – means that none comes up. A name with † has a curve built from four figures (below); the others have a published one.

A figure without a mark was read in its source. The marks of the others:

| mark | basis | what it means |
| --- | --- | --- |
| m | memory | recalled from the source, not seen again: check it before you rely on it |
| j | judgement | judged from the crops next to it, for want of a published figure |
| c | common practice | what growers do, without a source |

A plant without a caution is not thereby safe to eat. Treated seed, compost dust and heat in the damp have cautions of their own. Where a caution and your local rules differ, the rules hold.
";

const GROUPS: [(CropGroup, &str); 4] = [
    (CropGroup::Vegetable, "Vegetables"),
    (CropGroup::Herb, "Kitchen herbs"),
    (
        CropGroup::AnnualFlower,
        "Bedding and cutting flowers of one season",
    ),
    (
        CropGroup::PerennialFlower,
        "Perennials, and flowers of the second year",
    ),
];

const DAYS_AT_C: [f64; 4] = [10.0, 15.0, 20.0, 25.0];

/// The whole page.
pub fn page(book: &CropBook) -> String {
    let mut page = HEAD.to_owned();
    for (group, title) in GROUPS {
        let crops = || book.iter().filter(|crop| crop.group == group);
        heading(&mut page, 2, title);
        table(
            &mut page,
            "plant|sow at|10|15|20|25|light|before sowing|depth|compost",
            crops().map(sowing),
        );
        heading(&mut page, 3, &format!("{title}: afterwards"));
        table(
            &mut page,
            "plant|life, years|legal minimum, %|test, days|day|night|weeks to raise|hardiness|set out, weeks from last frost|days to harvest or flower|caution",
            crops().map(afterwards),
        );
    }
    heading(&mut page, 2, "What the built curves are built from");
    paragraph(
        &mut page,
        "The rate, 1/days, is 0 at the base, rises in a straight line to the cool end of the optimum, stays level to its warm end and falls in a straight line to 0 at the maximum. Each figure with the key of its source.",
    );
    let built = book.iter().filter(|crop| crop.built.is_some());
    table(
        &mut page,
        "plant|base|optimum|days at the optimum|maximum",
        built.map(cardinals),
    );
    heading(&mut page, 2, "Sources");
    table(
        &mut page,
        "key|figures read|from memory|judged|common practice|source",
        book.sources().map(|(key, citation)| {
            let count = |basis| {
                book.iter()
                    .flat_map(|crop| crop.provenance.values())
                    .filter(|from| from.source == key && from.basis == basis)
                    .count()
                    .to_string()
            };
            vec![
                format!("`{key}`"),
                count(Basis::Read),
                count(Basis::Memory),
                count(Basis::Judgement),
                count(Basis::CommonPractice),
                citation.to_owned(),
            ]
        }),
    );
    page
}

fn sowing(crop: &Crop) -> Vec<String> {
    let mut cells = vec![
        name(crop),
        marked(crop, "recommended_c", span(crop.recommended_c)),
    ];
    cells.extend(DAYS_AT_C.map(|temperature| {
        let rate = crop.curve.rate_per_day(temperature);
        if rate > 0.0 {
            format!("{:.0}", 1.0 / rate)
        } else {
            "–".to_owned()
        }
    }));
    let light = match crop.light {
        LightNeed::Needed => "needed",
        LightNeed::Indifferent => "",
        LightNeed::Dark => "dark",
    };
    let before: Vec<String> = crop.before_sowing.iter().map(treatment).collect();
    cells.extend([
        marked(crop, "light", light),
        marked(crop, "before_sowing", before.join(" or ")),
        marked(crop, "depth_mm", span(crop.depth_mm)),
        marked(
            crop,
            "compost",
            match crop.compost {
                SowingCompost::FineSeed => "fine seed",
                SowingCompost::Gritty => "gritty seed",
                SowingCompost::MultiPurpose => "multi-purpose",
            },
        ),
    ]);
    cells
}

fn afterwards(crop: &Crop) -> Vec<String> {
    let hardiness = match crop.hardiness {
        Hardiness::Hardy => "hardy",
        Hardiness::HalfHardy => "half-hardy",
        Hardiness::Tender => "tender",
    };
    let maturity = crop.maturity.map(|maturity| {
        let from = match maturity.from {
            MaturityFrom::Sowing => "sowing",
            MaturityFrom::PlantingOut => "planting out",
        };
        let late = if crop.ripens_after_equinox {
            ", after the equinox"
        } else {
            ""
        };
        format!("{} from {from}{late}", span(maturity.days))
    });
    let percent = |share: f64| format!("{:.0}", share * 100.0);
    vec![
        name(crop),
        marked(crop, "life_years", crop.life_years),
        marked(
            crop,
            "legal_minimum",
            crop.legal_minimum.map(percent).unwrap_or_default(),
        ),
        marked(
            crop,
            "test_days",
            crop.test_days
                .map(|(first, last)| format!("{first}, {last}"))
                .unwrap_or_default(),
        ),
        marked(crop, "growing_on_c", span(crop.growing_on_c.day)),
        marked(crop, "growing_on_c", span(crop.growing_on_c.night)),
        marked(
            crop,
            "weeks_to_raise",
            crop.weeks_to_raise.map(span).unwrap_or_default(),
        ),
        marked(crop, "hardiness", hardiness),
        marked(
            crop,
            "set_out_weeks",
            crop.set_out_weeks.map(span).unwrap_or_default(),
        ),
        marked(crop, "maturity", maturity.unwrap_or_default()),
        marked(
            crop,
            "caution",
            crop.caution
                .map(|caution| caution.key().replace('_', " "))
                .unwrap_or_default(),
        ),
    ]
}

fn cardinals(crop: &Crop) -> Vec<String> {
    let mut cells = vec![name(crop)];
    if let Some(built) = crop.built {
        for (figure, value) in [
            ("base_c", built.base_c.to_string()),
            ("optimum_c", span(built.optimum_c)),
            ("days_at_optimum", built.days_at_optimum.to_string()),
            ("maximum_c", crop.maximum_c.to_string()),
        ] {
            let source = crop.provenance.get(figure).map(|from| from.source.as_str());
            let source = source.unwrap_or_default();
            cells.push(format!("{} `{source}`", marked(crop, figure, value)));
        }
    }
    cells
}

fn treatment(treatment: &Treatment) -> String {
    match *treatment {
        Treatment::SoakHours(hours) => format!("soak {} h", span(hours)),
        Treatment::Chip => "chip".to_owned(),
        Treatment::ColdWeeks(weeks) => format!("cold {} weeks", span(weeks)),
    }
}

fn name(crop: &Crop) -> String {
    let built = if crop.built.is_some() { " †" } else { "" };
    let key = crop.key.replace('_', " ");
    format!("{key}{built} (*{}*)", crop.species)
}

fn span((low, high): (f64, f64)) -> String {
    if low == high {
        format!("{low}")
    } else {
        format!("{low} to {high}")
    }
}

/// A figure with the mark of its basis; nothing stays nothing.
fn marked(crop: &Crop, figure: &str, value: impl Display) -> String {
    let value = value.to_string();
    let mark = match crop.provenance.get(figure).map(|from| from.basis) {
        _ if value.is_empty() => "",
        None | Some(Basis::Read) => "",
        Some(Basis::Memory) => " m",
        Some(Basis::Judgement) => " j",
        Some(Basis::CommonPractice) => " c",
    };
    format!("{value}{mark}")
}

fn heading(page: &mut String, level: usize, title: &str) {
    paragraph(page, &format!("{} {title}", "#".repeat(level)));
}

fn paragraph(page: &mut String, text: &str) {
    let _ = write!(page, "\n{text}\n");
}

fn table(page: &mut String, head: &str, rows: impl Iterator<Item = Vec<String>>) {
    let columns: Vec<&str> = head.split('|').collect();
    let _ = write!(
        page,
        "\n| {} |\n|{}\n",
        columns.join(" | "),
        " --- |".repeat(columns.len())
    );
    for cells in rows {
        let _ = writeln!(page, "| {} |", cells.join(" | "));
    }
}
