//! Every key that the core makes has words.

use plumule_agronomy::crops;
use plumule_app::words::{key, known};
use plumule_journal::ALL_CODES;
use plumule_journal::words as sets;
use std::fs;
use std::path::Path;

#[test]
fn every_code_of_the_journal() {
    for (set, codes) in ALL_CODES {
        for code in *codes {
            assert!(known(&key(set, code)), "{set} {code}");
        }
    }
}

#[test]
fn every_crop_of_the_book() {
    for crop in crops().iter() {
        assert!(known(&key("crop", &crop.key)), "{}", crop.key);
        if let Some(caution) = crop.caution {
            assert!(known(&key("caution", caution.key())), "{}", caution.key());
        }
    }
}

#[test]
fn every_word_of_every_set() {
    fn all(set: &str, words: impl Iterator<Item = &'static str>) {
        for word in words {
            assert!(known(&key(set, word)), "{set} {word}");
        }
    }
    all(
        "place-kind",
        sets::PlaceKind::ALL.iter().map(|it| it.as_str()),
    );
    all("light", sets::Light::ALL.iter().map(|it| it.as_str()));
    all(
        "container",
        sets::Container::ALL.iter().map(|it| it.as_str()),
    );
    all("compost", sets::Compost::ALL.iter().map(|it| it.as_str()));
    all("storage", sets::Storage::ALL.iter().map(|it| it.as_str()));
    all("feel", sets::Feel::ALL.iter().map(|it| it.as_str()));
    all("watering", sets::Watering::ALL.iter().map(|it| it.as_str()));
    all("medium", sets::Medium::ALL.iter().map(|it| it.as_str()));
    all("step", sets::Step::ALL.iter().map(|it| it.as_str()));
    all("cause", sets::LossCause::ALL.iter().map(|it| it.as_str()));
    all(
        "reason-cause",
        sets::Blame::ALL.iter().map(|it| it.as_str()),
    );
    all(
        "line-noticed",
        sets::Sight::ALL.iter().map(|it| it.as_str()),
    );
    all(
        "line-sheltered",
        sets::Shelter::ALL.iter().map(|it| it.as_str()),
    );
    all("origin", sets::Origin::ALL.iter().map(|it| it.as_str()));
    all("line-went-on", sets::Step::ALL.iter().map(|it| it.as_str()));
    all("line-stock", sets::Stock::ALL.iter().map(|it| it.as_str()));
    all(
        "line-to-buy",
        sets::Standing::ALL.iter().map(|it| it.as_str()),
    );
    all(
        "line-started",
        sets::Origin::ALL.iter().map(|it| it.as_str()),
    );
}

/// By the names that stay the same between versions (agronomy's `CauseKind::key`).
#[test]
fn every_cause_has_its_name_and_its_remedy() {
    use plumule_agronomy::CauseKind::*;
    for cause in [
        TooCold,
        TooHot,
        OldSeed,
        TooDeep,
        TooShallow,
        BuriedFromLight,
        DriedOut,
        WetAndCool,
        WrongCompost,
        WashedOut,
        Eaten,
        DampedOff,
        Frosted,
        Baked,
        WantOfLight,
        LongInTheHeat,
    ] {
        assert!(known(&key("reason-cause", cause.key())), "{cause:?}");
        assert!(known(&key("remedy", cause.key())), "{cause:?}");
    }
    for odds in ["under", "1", "2", "3", "4", "5", "6", "7", "8", "9", "over"] {
        assert!(known(&key("odds", odds)), "{odds}");
    }
}

/// The families of keys that Rust makes.
const FAMILIES: &[&str] = &[
    "why-",
    "line-",
    "refused-",
    "asks-",
    "error-",
    "notice-",
    "outlook-",
    "forecast-",
    "bench-",
    "next-",
    "felt-",
    "caution-",
    "light-need-",
    "treatment-",
    "treated-",
    "season-",
    "sitter-",
    "frost-",
    "problem-",
    "verdict-",
    "choice-",
    "reason-",
    "gives-",
    "find-",
    "learnt-",
    "way-",
    "now-",
    "stock-",
    "buy-",
    "test-",
    "saved-",
    "saving-",
    "import-",
    "plan-",
    "windows-",
];

#[test]
fn every_key_in_the_sources() {
    let mut found = 0;
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut words = String::new();
    let files = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../ui/src/text/en-GB");
    sources(&files, &mut |_, text| words.push_str(text));
    sources(&src, &mut |path, text| {
        for literal in text.split('"').skip(1).step_by(2) {
            let of_a_family = FAMILIES
                .iter()
                .any(|family| literal.len() > family.len() && literal.starts_with(family));
            let plain = |it: char| it.is_ascii_lowercase() || it == '-';
            if !of_a_family || !literal.chars().all(plain) {
                continue;
            }
            found += 1;
            // Some are the beginning of keys whose end is a word of a set.
            let begins = words
                .lines()
                .any(|line| line.starts_with(&format!("{literal}-")));
            assert!(known(literal) || begins, "{}: {literal}", path.display());
        }
    });
    assert!(found > 60, "only {found} keys were found");
}

fn sources(folder: &Path, each: &mut impl FnMut(&Path, &str)) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, each);
        } else {
            each(&path, &fs::read_to_string(&path).unwrap());
        }
    }
}
