//! Some works of the app and the seconds they take, for holding one build
//! against another.

use super::opening::open;
use super::{Outcome, median, search, taking_in};
use crate::world::World;
use std::collections::BTreeMap;
use std::path::Path;

/// Times each work is done, of which the median counts.
const TIMES: usize = 5;

pub fn seconds(worlds: &Path) -> Outcome<BTreeMap<&'static str, f64>> {
    let times = |work: &mut dyn FnMut() -> Outcome<f64>| {
        let took = (0..TIMES).map(|_| work()).collect::<Outcome<_>>()?;
        Outcome::Ok(median(took))
    };
    let world = World::of(50, 200).kept_in(worlds)?;
    let searching = search::Searching::of(worlds)?;
    let taking = taking_in::Taking::of(&world, taking_in::ENTRIES)?;
    Ok(BTreeMap::from([
        ("opening and round", times(&mut || open(&world))?),
        (
            "searching",
            times(&mut || Ok(searching.all()?.iter().sum()))?,
        ),
        ("taking in", times(&mut || taking.ours())?),
    ]))
}
