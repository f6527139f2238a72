//! A season on paper: one HTML file with nothing outside it and no script.
//! What growers wrote is escaped by the template.

use super::season::{self, Past};
use super::{plain, said};
use crate::error::AppError;
use crate::say::Arg;
use crate::season::Years;
use crate::words::{Units, crop};
use chrono::NaiveDate;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use plumule_journal::Journal;
use plumule_journal::content::Seeds;
use std::collections::BTreeMap;

const STYLE: &str = "
body { font: 11pt/1.4 Georgia, serif; color: #111; max-width: 60rem; margin: 2rem auto; padding: 0 1rem; }
table { border-collapse: collapse; width: 100%; margin-block: 1rem 2rem; }
th, td { border-bottom: 1px solid #999; padding: .25rem .5rem; text-align: left; vertical-align: top; }
td.n, th.n { text-align: right; font-variant-numeric: tabular-nums; }
tr { break-inside: avoid; }
@media print { body { margin: 0; max-width: none; } }
";

/// What a crop of a season came to.
#[derive(Default)]
struct Sum {
    sowings: u32,
    seeds: u32,
    up: u32,
    planted: u32,
    gone: u32,
}

pub(super) fn season(
    journal: &Journal,
    today: NaiveDate,
    units: Units,
) -> Result<Vec<u8>, AppError> {
    let all = season::sowings(journal)?;
    let years = Years::of(journal)?;
    let year = years.year_of(today);
    let of_year = |past: &&Past| years.year_of(past.sowing.opened_by.at.local.date()) == year;
    let sown: Vec<&Past> = all.iter().filter(of_year).collect();
    let title = format!("{} {}", plain("report-title", units), years.name(year));
    let page = html! {
        (DOCTYPE)
        html lang=(units.language.tag()) {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy"
                    content="default-src 'none'; style-src 'unsafe-inline'";
                title { (title) }
                style { (PreEscaped(STYLE)) }
            }
            body {
                h1 { (title) }
                p { (said(Arg::Day(today), units, NaiveDate::MIN)) }
                h2 { (plain("report-crops", units)) }
                (crops(&sown, units, today))
                h2 { (plain("report-sowings", units)) }
                (sowings(&sown, units, today))
            }
        }
    };
    Ok(page.into_string().into_bytes())
}

fn head(keys: &[&str], units: Units) -> Markup {
    html! { thead { tr { @for key in keys { th scope="col" { (plain(key, units)) } } } } }
}

fn crops(sown: &[&Past], units: Units, today: NaiveDate) -> Markup {
    let mut sums: BTreeMap<String, Sum> = BTreeMap::new();
    for past in sown {
        let sum = sums
            .entry(said(crop(&past.packet.described.crop), units, today))
            .or_default();
        let numbers = past.sowing.plants.numbers;
        sum.sowings += 1;
        sum.up += numbers.up;
        sum.planted += numbers.planted_out;
        sum.gone += numbers.sold + numbers.given_away;
        sum.seeds += match past.sowing.sown.seeds {
            Seeds::Exact(seeds) | Seeds::About(seeds) => seeds,
            Seeds::Pinch => 0,
        };
    }
    let keys = [
        "report-crop",
        "report-number",
        "report-seeds",
        "report-up",
        "report-planted",
        "report-gone",
    ];
    html! {
        table {
            (head(&keys, units))
            tbody {
                @for (name, sum) in &sums {
                    tr {
                        td { (name) }
                        @for number in [sum.sowings, sum.seeds, sum.up, sum.planted, sum.gone] {
                            td.n { (number) }
                        }
                    }
                }
            }
        }
    }
}

fn sowings(sown: &[&Past], units: Units, today: NaiveDate) -> Markup {
    let keys = [
        "report-sown",
        "report-crop",
        "report-variety",
        "report-tray",
        "report-place",
        "report-seeds",
        "report-up",
    ];
    html! {
        table {
            (head(&keys, units))
            tbody {
                @for past in sown {
                    @let it = &past.packet.described;
                    tr {
                        td { (said(Arg::Day(past.sowing.opened_by.at.local.date()), units, today)) }
                        td { (said(crop(&it.crop), units, today)) }
                        td { (it.variety) }
                        td { (past.tray) }
                        td { (past.place) }
                        td.n { (seeds(past.sowing.sown.seeds, units)) }
                        td.n { (past.sowing.plants.numbers.up) }
                    }
                }
            }
        }
    }
}

fn seeds(seeds: Seeds, units: Units) -> String {
    match seeds {
        Seeds::Exact(seeds) => seeds.to_string(),
        Seeds::About(seeds) => format!("~{seeds}"),
        Seeds::Pinch => plain("report-pinch", units),
    }
}
