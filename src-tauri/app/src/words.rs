//! Words said here: for notices, and to hold the messages against the keys
//! that the core makes. The UI renders the same files.

use crate::say::{Arg, Say};
use crate::view::DeviceForm;
use chrono::{Datelike, NaiveDate};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use plumule_agronomy::crops;
use std::sync::OnceLock;

/// The message files, all of them; a test holds the list against the folder.
const FILES: &[&str] = &[
    include_str!("../../../ui/src/text/en-GB/core.ftl"),
    include_str!("../../../ui/src/text/en-GB/screens.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/archive.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/keep.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/judgement.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/labels.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/lines.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/refused.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/tray.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/trays.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/photos.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/bench.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/report.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/notices.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/paper.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/season.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/box.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/seed.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/settings.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/sow.ftl"),
    include_str!("../../../ui/src/text/en-GB/later/year.ftl"),
];

/// The units a grower reads.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Units {
    /// °F, else °C.
    pub fahrenheit: bool,
    /// Inches, else mm.
    pub inches: bool,
}

impl Units {
    /// By the habits of a device.
    #[must_use]
    pub fn of(device: &DeviceForm) -> Self {
        Self {
            fahrenheit: device.temperature == "fahrenheit",
            inches: device.length == "inch",
        }
    }
}

fn bundle() -> &'static FluentBundle<FluentResource> {
    static BUNDLE: OnceLock<FluentBundle<FluentResource>> = OnceLock::new();
    BUNDLE.get_or_init(|| {
        let language = "en-GB".parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        bundle.set_use_isolating(false);
        for file in FILES {
            // A line that cannot be read is left out; the tests read them all.
            let read = FluentResource::try_new((*file).to_owned()).unwrap_or_else(|(it, _)| it);
            bundle.add_resource_overriding(read);
        }
        bundle
    })
}

/// A crop by its name: from the message files if it is in the crop book, else
/// the grower's own word.
#[must_use]
pub fn crop(key: &str) -> Arg {
    if crops().get(key).is_some() {
        word("crop", key)
    } else {
        Arg::Text(key.to_owned())
    }
}

/// A variety after its crop, in quotes and with its own leading blank; empty
/// if there is none.
#[must_use]
pub fn variety(name: &str) -> Arg {
    let name = name.trim();
    Arg::Text(if name.is_empty() {
        String::new()
    } else {
        format!(" ‘{name}’")
    })
}

/// A word of a closed set.
#[must_use]
pub fn word(set: &str, word: &str) -> Arg {
    Arg::Word(key(set, word))
}

/// The key of a word or code: a dash for every underscore.
#[must_use]
pub fn key(set: &str, word: &str) -> String {
    format!("{set}-{}", word.replace('_', "-"))
}

/// A message that nothing fills.
#[must_use]
pub fn plain_text(key: &str) -> String {
    format(key, &FluentArgs::new()).unwrap_or_else(|| key.to_owned())
}

/// Whether there is a message of this key.
#[must_use]
pub fn known(key: &str) -> bool {
    bundle()
        .get_message(key)
        .is_some_and(|message| message.value().is_some())
}

/// A message in words. `today` tells whether a day needs its year. A key
/// without a message is said as it is.
#[must_use]
pub fn render(say: &Say, units: Units, today: NaiveDate) -> String {
    let mut args = FluentArgs::new();
    for (name, arg) in &say.args {
        match arg {
            Arg::Number(number) => {
                args.set(name.clone(), (number * 100.0).round() / 100.0);
            }
            other => args.set(name.clone(), text(other, units, today)),
        }
    }
    format(&say.key, &args).unwrap_or_else(|| say.key.clone())
}

fn format(key: &str, args: &FluentArgs<'_>) -> Option<String> {
    let pattern = bundle().get_message(key)?.value()?;
    let mut errors = Vec::new();
    let said = bundle().format_pattern(pattern, Some(args), &mut errors);
    Some(said.into_owned())
}

fn text(arg: &Arg, units: Units, today: NaiveDate) -> String {
    match arg {
        Arg::Text(text) => text.clone(),
        Arg::Number(number) => plain(*number, 2),
        Arg::Celsius(celsius) if units.fahrenheit => {
            format!("{} °F", plain(celsius * 1.8 + 32.0, 0))
        }
        Arg::Celsius(celsius) => format!("{} °C", plain(*celsius, 1)),
        Arg::Millimetres(mm) if units.inches => format!("{} in", plain(mm / 25.4, 2)),
        Arg::Millimetres(mm) => format!("{} mm", plain(*mm, 1)),
        Arg::Share(share) => format!("{} %", plain(share * 100.0, 0)),
        Arg::Day(day) => date(*day, today),
        Arg::Moment(at) => format!("{}, {}", date(at.date(), today), at.format("%H:%M")),
        Arg::Word(key) => plain_text(key),
        Arg::List(args) => list(args, units, today),
    }
}

fn list(args: &[Arg], units: Units, today: NaiveDate) -> String {
    let words: Vec<String> = args.iter().map(|arg| text(arg, units, today)).collect();
    match words.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => {
            let mut both = FluentArgs::new();
            both.set("rest", FluentValue::from(rest.join(", ")));
            both.set("last", FluentValue::from(last.clone()));
            format("list-last", &both).unwrap_or_default()
        }
    }
}

fn date(day: NaiveDate, today: NaiveDate) -> String {
    if day.year() == today.year() {
        day.format("%A %-d %B").to_string()
    } else {
        day.format("%A %-d %B %Y").to_string()
    }
}

/// With at most so many decimals, and none that are 0.
fn plain(number: f64, decimals: usize) -> String {
    let fixed = format!("{number:.decimals$}");
    let short = if fixed.contains('.') {
        fixed.trim_end_matches('0').trim_end_matches('.')
    } else {
        &fixed
    };
    if short == "-0" { "0" } else { short }.to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeMap;
    use std::path::Path;

    #[test]
    fn the_files_can_be_read_and_name_nothing_twice() {
        let mut bundle = FluentBundle::new_concurrent(vec!["en-GB".parse().unwrap()]);
        for file in FILES {
            let read = FluentResource::try_new((*file).to_owned());
            let read = read.map_err(|(_, errors)| errors).unwrap();
            assert_eq!(bundle.add_resource(read), Ok(()));
        }
    }

    #[test]
    fn every_file_of_the_folder_is_read() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../ui/src/text/en-GB");
        for folder in [folder.join("later"), folder] {
            for entry in std::fs::read_dir(folder).unwrap() {
                let path = entry.unwrap().path();
                if path.extension().is_some_and(|it| it == "ftl") {
                    let text = std::fs::read_to_string(&path).unwrap();
                    assert!(FILES.contains(&text.as_str()), "{}", path.display());
                }
            }
        }
    }

    fn said(key: &str, args: &[(&str, Arg)], units: Units) -> String {
        let args: BTreeMap<String, Arg> = args
            .iter()
            .map(|(name, arg)| ((*name).to_owned(), arg.clone()))
            .collect();
        let today = NaiveDate::from_ymd_opt(2026, 4, 20).unwrap();
        let key = key.to_owned();
        render(&Say { key, args }, units, today)
    }

    #[test]
    fn typed_arguments_are_said_in_the_growers_units() {
        let args = [
            ("place", Arg::Text("Shed".to_owned())),
            ("low", Arg::Celsius(4.5)),
            ("high", Arg::Celsius(11.0)),
            ("of", word("medium", "air")),
        ];
        let celsius = said("line-reading", &args, Units::default());
        assert_eq!(celsius, "Shed: 4.5 °C to 11 °C (air)");
        let units = Units {
            fahrenheit: true,
            inches: true,
        };
        assert_eq!(
            said("line-reading", &args, units),
            "Shed: 40 °F to 52 °F (air)"
        );
    }

    #[test]
    fn plurals_lists_days_and_own_words() {
        let trays = |number| {
            said(
                "line-felt-many",
                &[
                    ("trays", Arg::Number(number)),
                    ("feel", word("feel", "moist")),
                ],
                Units::default(),
            )
        };
        assert_eq!(trays(1.0), "1 tray felt moist");
        assert_eq!(trays(5.0), "5 trays felt moist");
        let text = |it: &str| Arg::Text(it.to_owned());
        let pricked = said(
            "line-went-on-pricked-out",
            &[
                ("tray", text("K1")),
                ("number", Arg::Number(24.0)),
                ("crop", crop("Cosmos")),
                ("variety", variety("Evening Haze")),
                ("into", Arg::List(vec![text("K2"), text("K3"), text("K4")])),
            ],
            Units::default(),
        );
        assert_eq!(
            pricked,
            "Pricked out from K1: 24 Cosmos ‘Evening Haze’ into K2, K3 and K4"
        );
        let day = |year, month, day| Arg::Day(NaiveDate::from_ymd_opt(year, month, day).unwrap());
        let away = [("from", day(2026, 5, 14)), ("to", day(2027, 1, 2))];
        assert_eq!(
            said("line-away", &away, Units::default()),
            "Away from Thursday 14 May to Saturday 2 January 2027"
        );
    }
}
