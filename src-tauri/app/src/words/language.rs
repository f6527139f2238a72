//! The languages the app speaks, and their message files. The UI reads the
//! same files.

use super::dates;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentResource, FluentValue};
use serde::{Deserialize, Serialize};
use std::sync::OnceLock;

/// Message files of a language.
macro_rules! files {
    ($language:literal: $($file:literal),+ $(,)?) => {
        &[$(include_str!(concat!("../../../../ui/src/text/", $language, "/", $file))),+]
    };
}

/// The message files of a language that has all of them; a test holds the list
/// against the folders.
macro_rules! all_files {
    ($language:literal) => {
        files!(
            $language:
            "core.ftl",
            "screens.ftl",
            "later/archive.ftl",
            "later/keep.ftl",
            "later/judgement.ftl",
            "later/labels.ftl",
            "later/lines.ftl",
            "later/refused.ftl",
            "later/tray.ftl",
            "tour.ftl",
            "later/trays.ftl",
            "later/photos.ftl",
            "later/bench.ftl",
            "later/report.ftl",
            "later/notices.ftl",
            "later/paper.ftl",
            "later/plans.ftl",
            "later/season.ftl",
            "later/search.ftl",
            "later/box.ftl",
            "later/seed.ftl",
            "later/demo.ftl",
            "later/settings.ftl",
            "later/sow.ftl",
            "later/year.ftl",
        )
    };
}

/// A language the app speaks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Language {
    /// British English: what the others lack is said in it.
    #[default]
    #[serde(rename = "en-GB")]
    EnGb,
    /// American English: where its words differ.
    #[serde(rename = "en-US")]
    EnUs,
    /// German.
    #[serde(rename = "de")]
    De,
}

impl Language {
    /// All of them.
    pub const ALL: &'static [Self] = &[Self::EnGb, Self::EnUs, Self::De];

    /// Its tag (BCP 47).
    #[must_use]
    pub fn tag(self) -> &'static str {
        match self {
            Self::EnGb => "en-GB",
            Self::EnUs => "en-US",
            Self::De => "de",
        }
    }

    /// The one of this very tag.
    #[must_use]
    pub fn of_tag(tag: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|it| it.tag() == tag)
    }

    /// The one that suits what a system calls its language: `de_AT.UTF-8`,
    /// `en-US`. British English where none does.
    #[must_use]
    pub fn suiting(system: &str) -> Self {
        let tag = system.split('.').next().unwrap_or_default();
        let mut parts = tag.split(['-', '_']);
        let language = parts.next().unwrap_or_default().to_ascii_lowercase();
        let american = parts.any(|part| part.eq_ignore_ascii_case("us"));
        match language.as_str() {
            "de" => Self::De,
            "en" if american => Self::EnUs,
            _ => Self::EnGb,
        }
    }

    /// Its message files.
    pub(super) fn files(self) -> &'static [&'static str] {
        match self {
            Self::EnGb => all_files!("en-GB"),
            Self::EnUs => files!(
                "en-US":
                "core.ftl",
                "later/bench.ftl",
                "later/box.ftl",
                "later/judgement.ftl",
                "later/keep.ftl",
                "later/lines.ftl",
                "later/notices.ftl",
                "later/paper.ftl",
                "later/photos.ftl",
                "later/plans.ftl",
                "later/refused.ftl",
                "later/search.ftl",
                "later/season.ftl",
                "later/seed.ftl",
                "later/settings.ftl",
                "later/sow.ftl",
                "tour.ftl",
                "later/tray.ftl",
                "later/year.ftl",
                "screens.ftl",
            ),
            Self::De => all_files!("de"),
        }
    }

    /// Its messages alone, without what it lacks.
    pub(super) fn bundle(self) -> &'static FluentBundle<FluentResource> {
        static EN_GB: OnceLock<FluentBundle<FluentResource>> = OnceLock::new();
        static EN_US: OnceLock<FluentBundle<FluentResource>> = OnceLock::new();
        static DE: OnceLock<FluentBundle<FluentResource>> = OnceLock::new();
        let made = match self {
            Self::EnGb => &EN_GB,
            Self::EnUs => &EN_US,
            Self::De => &DE,
        };
        made.get_or_init(|| {
            let tag = self.tag().parse().unwrap_or_default();
            let mut bundle = FluentBundle::new_concurrent(vec![tag]);
            bundle.set_use_isolating(false);
            bundle.set_formatter(Some(match self {
                Self::EnGb | Self::EnUs => english,
                Self::De => german,
            }));
            for file in self.files() {
                // A line that cannot be read is left out; the tests read them all.
                let read = FluentResource::try_new((*file).to_owned()).unwrap_or_else(|(it, _)| it);
                bundle.add_resource_overriding(read);
            }
            bundle
        })
    }
}

fn english<M>(value: &FluentValue<'_>, _: &M) -> Option<String> {
    number(value, Language::EnGb)
}

fn german<M>(value: &FluentValue<'_>, _: &M) -> Option<String> {
    number(value, Language::De)
}

fn number(value: &FluentValue<'_>, language: Language) -> Option<String> {
    match value {
        FluentValue::Number(number) => Some(dates::number(number.value, 2, language)),
        _ => None,
    }
}
