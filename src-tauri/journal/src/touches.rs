//! Which subjects an entry touches: a pure function of its content.

use crate::content::{Content, Wares};
use crate::subject::Subject;
use std::collections::BTreeMap;

/// The subjects a content is about, each with whether its state depends on it
/// (else it is only in its timeline). An amendment touches what its root and
/// its own content touch, which the store puts together.
pub(crate) fn touches(content: &Content) -> BTreeMap<Subject, bool> {
    use Content as C;
    let one = |subject: Subject, weighs: bool| BTreeMap::from([(subject, weighs)]);
    match content {
        C::GardenDescribed(_) | C::Away(_) | C::CameBack(_) | C::FrostReckoned(_) => {
            one(Subject::Garden, true)
        }
        C::NightForecast(what) => {
            let place = what.place.map(|place| (Subject::Place(place), false));
            std::iter::once((Subject::Garden, true))
                .chain(place)
                .collect()
        }
        C::PlaceDescribed(what) => one(Subject::Place(what.place), true),
        C::HeatOff(what) => one(Subject::Place(what.place), true),
        C::HeatBack(what) => one(Subject::Place(what.place), true),
        C::Aired(what) => one(Subject::Place(what.place), true),
        C::ReadingTaken(what) => one(Subject::Place(what.place), false),
        C::PacketDescribed(what) => one(Subject::Packet(what.packet), true),
        C::SeedsCounted(what) => one(Subject::Packet(what.packet), true),
        C::StockTaken(what) => one(Subject::Packet(what.packet), true),
        C::TestStarted(what) => BTreeMap::from([
            (Subject::Test(what.test), true),
            (Subject::Packet(what.packet), true),
        ]),
        C::TestCounted(what) => one(Subject::Test(what.test), true),
        C::TestClosed(what) => BTreeMap::from([
            (Subject::Test(what.test), true),
            (Subject::Packet(what.packet), true),
        ]),
        C::ToBuy(what) => one(Subject::Item(what.item), true),
        C::PlanDescribed(what) => one(Subject::Plan(what.plan), true),
        C::Reserved(what) => {
            let plants = match what.of {
                Wares::Plants { of } => Some((of.into(), false)),
                Wares::Crop { .. } => None,
            };
            std::iter::once((Subject::Reservation(what.reservation), true))
                .chain(plants)
                .collect()
        }
        C::TrayDescribed(what) => one(Subject::Tray(what.tray), true),
        C::TrayMoved(what) => BTreeMap::from([
            (Subject::Tray(what.tray), true),
            (Subject::Place(what.place), false),
        ]),
        C::CoverChanged(what) => one(Subject::Tray(what.tray), true),
        C::Sheltered(what) => one(Subject::Tray(what.tray), true),
        C::Felt(what) => one(Subject::Tray(what.tray), true),
        C::TrayEmptied(what) | C::Fed(what) | C::HardenedOff(what) => {
            one(Subject::Tray(what.tray), true)
        }
        C::Sown(what) => {
            // What it repeats has it in its timeline.
            let again = what.again_of.map(|of| (Subject::Sowing(of), false));
            let own = [
                (Subject::Sowing(what.sowing), true),
                (Subject::Packet(what.packet), true),
                (Subject::Tray(what.tray), true),
            ];
            let plan = what.plan.map(|plan| (Subject::Plan(plan), true));
            again.into_iter().chain(plan).chain(own).collect()
        }
        C::BatchStarted(what) => BTreeMap::from([
            (Subject::Batch(what.batch), true),
            (Subject::Tray(what.tray), true),
        ]),
        C::Counted(what) => one(what.of.into(), true),
        C::WentOn(what) => {
            let mut all = one(what.of.into(), true);
            for part in &what.parts {
                all.insert(Subject::Batch(part.batch), true);
                all.insert(Subject::Tray(part.tray), true);
            }
            all
        }
        C::Left(what) => {
            let kept = what.reservation.map(|id| (Subject::Reservation(id), true));
            std::iter::once((what.of.into(), true))
                .chain(kept)
                .collect()
        }
        C::Ready(what) | C::Finished(what) => one(what.of.into(), true),
        C::DugUp(what) => one(Subject::Sowing(what.sowing), true),
        C::SeedsLost(what) => one(Subject::Sowing(what.sowing), true),
        C::NothingCameUp(what) => one(Subject::Sowing(what.sowing), true),
        C::Explained(what) => one(Subject::Sowing(what.sowing), true),
        C::Noticed(what) => one(what.of.into(), true),
        C::Noted(what) => one(what.about, false),
        C::PhotoTaken(what) => one(what.about.unwrap_or(Subject::Garden), false),
        // The garden's too: those that are still to be named are found there.
        C::PhotoNamed(what) => BTreeMap::from([(what.about, false), (Subject::Garden, false)]),
        C::JobPutOff(what) => one(what.job.subject, false),
        C::JobDismissed(what) => one(what.job.subject, false),
        C::Amended(_) => BTreeMap::new(),
    }
}

/// The subjects a content brings into being.
pub(crate) fn opens(content: &Content) -> Vec<Subject> {
    match content {
        Content::PlaceDescribed(what) => vec![Subject::Place(what.place)],
        Content::PacketDescribed(what) => vec![Subject::Packet(what.packet)],
        Content::TestStarted(what) => vec![Subject::Test(what.test)],
        Content::ToBuy(what) => vec![Subject::Item(what.item)],
        Content::TrayDescribed(what) => vec![Subject::Tray(what.tray)],
        Content::Sown(what) => vec![Subject::Sowing(what.sowing)],
        Content::BatchStarted(what) => vec![Subject::Batch(what.batch)],
        Content::WentOn(what) => what
            .parts
            .iter()
            .map(|part| Subject::Batch(part.batch))
            .collect(),
        _ => Vec::new(),
    }
}
