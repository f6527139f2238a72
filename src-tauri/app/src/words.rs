//! Words said here: for notices, and to hold the messages against the keys
//! that the core makes. The UI renders the same files.

use crate::say::{Arg, Say};
use crate::view::DeviceForm;
use chrono::{Datelike, NaiveDate};
use fluent_bundle::{FluentArgs, FluentValue};
use plumule_agronomy::crops;

mod dates;
mod language;

pub(crate) use dates::months;
pub use language::Language;

/// How a grower is spoken to on a device: units, clock and language.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Units {
    /// °F, else °C.
    pub fahrenheit: bool,
    /// Inches, else mm.
    pub inches: bool,
    /// A clock of twelve hours, else of 24.
    pub h12: bool,
    /// In which words.
    pub language: Language,
}

impl Units {
    /// By the habits of a device; the system's language is British English
    /// here, unless it was put in before.
    #[must_use]
    pub fn of(device: &DeviceForm) -> Self {
        Self {
            fahrenheit: device.temperature == "fahrenheit",
            inches: device.length == "inch",
            h12: device.clock == "h12",
            language: Language::of_tag(&device.language).unwrap_or_default(),
        }
    }
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

/// A variety after its crop.
#[must_use]
pub fn variety(name: &str) -> Arg {
    Arg::Variety(name.trim().to_owned())
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
pub fn plain_text(key: &str, language: Language) -> String {
    format(key, &FluentArgs::new(), language).unwrap_or_else(|| key.to_owned())
}

/// A message that nothing fills, in every language.
pub(crate) fn in_all_languages(key: &str) -> Vec<String> {
    let languages = Language::ALL.iter();
    languages.map(|it| plain_text(key, *it)).collect()
}

/// Whether there is a message of this key.
#[must_use]
pub fn known(key: &str) -> bool {
    Language::EnGb
        .bundle()
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
    format(&say.key, &args, units.language).unwrap_or_else(|| say.key.clone())
}

/// In the language, else in British English.
fn format(key: &str, args: &FluentArgs<'_>, language: Language) -> Option<String> {
    [language, Language::EnGb].into_iter().find_map(|language| {
        let bundle = language.bundle();
        let pattern = bundle.get_message(key)?.value()?;
        let mut errors = Vec::new();
        let said = bundle.format_pattern(pattern, Some(args), &mut errors);
        Some(said.into_owned())
    })
}

/// A day short, with its year: for what outlives it.
#[must_use]
pub fn short_day(day: NaiveDate, language: Language) -> String {
    dates::short(day, language)
}

fn text(arg: &Arg, units: Units, today: NaiveDate) -> String {
    let plain = |number, decimals| dates::number(number, decimals, units.language);
    let date = |day: NaiveDate| dates::long(day, day.year() != today.year(), units.language);
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
        Arg::Day(day) => date(*day),
        Arg::Moment(at) => {
            let time = dates::time(at.time(), units.h12, units.language);
            format!("{}, {time}", date(at.date()))
        }
        Arg::Word(key) => plain_text(key, units.language),
        Arg::Variety(name) if name.is_empty() => String::new(),
        Arg::Variety(name) => {
            let mut quoted = FluentArgs::new();
            quoted.set("name", name.clone());
            let quoted = format("variety", &quoted, units.language);
            format!(" {}", quoted.unwrap_or_else(|| name.clone()))
        }
        Arg::List(args) => list(args, units, today),
    }
}

fn list(args: &[Arg], units: Units, today: NaiveDate) -> String {
    let words: Vec<String> = args.iter().map(|arg| text(arg, units, today)).collect();
    match words.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => {
            let key = if rest.len() == 1 {
                "list-two"
            } else {
                "list-last"
            };
            let mut both = FluentArgs::new();
            both.set("rest", FluentValue::from(rest.join(", ")));
            both.set("last", FluentValue::from(last.clone()));
            format(key, &both, units.language).unwrap_or_default()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use fluent_bundle::FluentResource;
    use fluent_bundle::concurrent::FluentBundle;
    use std::collections::BTreeMap;
    use std::path::Path;

    #[test]
    fn the_files_can_be_read_and_name_nothing_twice() {
        for language in Language::ALL {
            let mut bundle = FluentBundle::new_concurrent(vec![language.tag().parse().unwrap()]);
            for file in language.files() {
                let read = FluentResource::try_new((*file).to_owned());
                let read = read.map_err(|(_, errors)| errors).unwrap();
                assert_eq!(bundle.add_resource(read), Ok(()), "{language:?}");
            }
        }
    }

    #[test]
    fn every_file_of_the_folders_is_read() {
        let text = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../ui/src/text");
        for language in Language::ALL {
            let mut there = 0;
            let folder = text.join(language.tag());
            for folder in [folder.join("later"), folder] {
                for entry in std::fs::read_dir(folder).into_iter().flatten() {
                    let path = entry.unwrap().path();
                    if path.extension().is_some_and(|it| it == "ftl") {
                        there += 1;
                        let text = std::fs::read_to_string(&path).unwrap();
                        let read = language.files().contains(&text.as_str());
                        assert!(read, "{}", path.display());
                    }
                }
            }
            assert_eq!(there, language.files().len(), "{language:?}");
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
            ..Units::default()
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
    #[test]
    fn each_language_has_its_own_words_numbers_and_lists() {
        let text = |it: &str| Arg::Text(it.to_owned());
        let list = |language, names: &[&str]| {
            let units = Units {
                language,
                ..Units::default()
            };
            let names = names.iter().map(|it| text(it)).collect();
            said("export-as-it-is", &[("text", Arg::List(names))], units)
        };
        // CLDR 46, listPattern-type-standard of en-GB, en and de, from memory.
        for (language, two, three) in [
            (Language::EnGb, "K1 and K2", "K1, K2 and K3"),
            (Language::EnUs, "K1 and K2", "K1, K2, and K3"),
            (Language::De, "K1 und K2", "K1, K2 und K3"),
        ] {
            assert_eq!(list(language, &["K1", "K2"]), two);
            assert_eq!(list(language, &["K1", "K2", "K3"]), three);
        }
        let at = NaiveDate::from_ymd_opt(2026, 4, 20).unwrap();
        let at = Arg::Moment(at.and_hms_opt(18, 5, 0).unwrap());
        let units = Units {
            fahrenheit: true,
            h12: true,
            language: Language::De,
            ..Units::default()
        };
        assert_eq!(
            said("export-as-it-is", &[("text", at)], units),
            "Montag, 20. April, 6:05\u{202f}PM"
        );
        // A fifth of 1,234.5 mm is 246.9 mm.
        let long = Arg::Millimetres(246.9);
        let german = said("export-as-it-is", &[("text", long)], units);
        assert_eq!(german, "246,9 mm");
        let name = variety("Evening Haze");
        let german = said("export-as-it-is", &[("text", name)], units);
        assert_eq!(german, " ‚Evening Haze‘");
    }

    #[test]
    fn the_language_that_suits_a_system() {
        for (system, language) in [
            ("de_AT.UTF-8", Language::De),
            ("de", Language::De),
            ("en_US.UTF-8", Language::EnUs),
            ("en-Latn-US", Language::EnUs),
            ("en_GB", Language::EnGb),
            ("en", Language::EnGb),
            ("fr-FR", Language::EnGb),
            ("C", Language::EnGb),
            ("", Language::EnGb),
        ] {
            assert_eq!(Language::suiting(system), language, "{system}");
        }
    }
}
