//! The stored words are those of the serialised types.

use crate::words::*;
use std::str::FromStr;

fn check<T>(all: &[T], as_str: impl Fn(T) -> &'static str)
where
    T: Copy + PartialEq + std::fmt::Debug + FromStr + serde::Serialize,
{
    for word in all {
        let stored = serde_json::to_value(word).unwrap();
        assert_eq!(stored, as_str(*word));
        assert_eq!(T::from_str(as_str(*word)).ok(), Some(*word));
    }
    assert!(T::from_str("no such word").is_err());
}

#[test]
fn words_read_back() {
    check(PlaceKind::ALL, PlaceKind::as_str);
    check(Light::ALL, Light::as_str);
    check(Container::ALL, Container::as_str);
    check(Compost::ALL, Compost::as_str);
    check(Storage::ALL, Storage::as_str);
    check(Feel::ALL, Feel::as_str);
    check(Watering::ALL, Watering::as_str);
    check(Medium::ALL, Medium::as_str);
    check(Step::ALL, Step::as_str);
    check(LossCause::ALL, LossCause::as_str);
    check(Origin::ALL, Origin::as_str);
    check(Blame::ALL, Blame::as_str);
    check(Sight::ALL, Sight::as_str);
    check(Stock::ALL, Stock::as_str);
    check(Standing::ALL, Standing::as_str);
    assert_eq!(PlaceKind::HeatedPropagator.as_str(), "heated_propagator");
}
