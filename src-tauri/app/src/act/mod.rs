//! What a grower says, turned into what the journal is asked to hold.

mod care;
mod describe;
mod grow;
mod jobs;
mod parse;
mod plan;
mod room;
mod season;
mod seed;
mod seen;

pub(crate) use grow::{seeds, up, way_of_leaving};
pub(crate) use parse::{known, maybe, time};
pub(crate) use room::code_after;
pub(crate) use seed::described;

use crate::acts::Act;
use crate::error::AppError;
use chrono::NaiveDateTime;
use chrono_tz::Tz;
use plumule_journal::content::Content;
use plumule_journal::id::{PacketId, PlaceId, SowingId, TrayId};
use plumule_journal::stamp::{Happened, Stamp};
use plumule_journal::{Ids, Journal};
use std::collections::{BTreeMap, BTreeSet};

/// Contents to be written as one act, and what they make or concern.
#[derive(Debug, Default)]
pub(crate) struct Made {
    pub(crate) contents: Vec<Content>,
    pub(crate) tray: Option<TrayId>,
    pub(crate) sowing: Option<SowingId>,
    pub(crate) packet: Option<PacketId>,
    pub(crate) place: Option<PlaceId>,
}

impl Made {
    fn one(content: Content) -> Self {
        Self {
            contents: vec![content],
            ..Self::default()
        }
    }

    fn of_packet(packet: PacketId, content: Content) -> Self {
        Self {
            packet: Some(packet),
            ..Self::one(content)
        }
    }

    fn of_tray(tray: TrayId, content: Content) -> Self {
        Self {
            tray: Some(tray),
            ..Self::one(content)
        }
    }
}

/// Turns an act into contents. Reads the journal, writes nothing.
pub(crate) struct Maker<'a> {
    journal: &'a Journal,
    ids: Ids,
    /// Now, local time of the garden.
    local: NaiveDateTime,
    zone: Tz,
    /// Free cells of the trays of this act, as it fills them.
    rooms: BTreeMap<TrayId, BTreeSet<u16>>,
    /// Codes that this act has given.
    codes: BTreeSet<String>,
}

impl<'a> Maker<'a> {
    pub(crate) fn new(journal: &'a Journal, stamp: &Stamp, zone: Tz) -> Result<Self, AppError> {
        Ok(Self {
            journal,
            ids: Ids::new(stamp, "things"),
            local: Happened::at(stamp.now, zone).local,
            zone,
            rooms: BTreeMap::new(),
            codes: BTreeSet::new(),
        })
    }

    pub(crate) fn make(mut self, act: &Act) -> Result<Made, AppError> {
        match act {
            Act::Feel { trays, feel, water } => {
                care::feel(trays, feel.as_deref(), water.as_deref())
            }
            Act::Read { place, of, range } => care::read(place, of, *range),
            Act::ReadNow {
                place,
                of,
                temperature_c,
            } => care::read_now(place, of, *temperature_c),
            Act::HeatOff {
                place,
                from,
                to,
                meanwhile,
            } => care::heat_off(place, *from, *to, *meanwhile),
            Act::Move { trays, place } => care::move_trays(trays, place),
            Act::Cover { tray, on } => care::cover(tray, *on),
            Act::Feed { tray } => care::feed(tray),
            Act::HardenOff { tray } => care::harden_off(tray),
            Act::HeatBack {
                place,
                at,
                meanwhile,
            } => care::heat_back(place, *at, *meanwhile),
            Act::Count { plants, up } => grow::count(plants, *up),
            Act::Leave {
                plants,
                number,
                how,
                cause,
            } => grow::leave(plants, *number, how, cause.as_deref()),
            Act::GoOn {
                plants,
                step,
                parts,
                rest_finished,
            } => self.go_on(plants, step, parts, *rest_finished),
            Act::Ready { plants } => grow::ready(plants),
            Act::DigUp { sowing, firm, soft } => grow::dig_up(sowing, *firm, *soft),
            Act::SeedsLost {
                sowing,
                number,
                cause,
            } => seen::seeds_lost(sowing, *number, cause),
            Act::Explain {
                sowing,
                causes,
                text,
            } => seen::explain(sowing, causes, text),
            Act::Notice { plants, sight } => seen::notice(plants, sight),
            Act::NothingCameUp { sowing } => grow::nothing_came_up(sowing),
            Act::Finish { plants } => grow::finish(plants),
            Act::Empty { tray } => self.empty(tray),
            Act::Note { about, text } => describe::note(about, text),
            Act::NamePhoto { photo, about } => describe::name_photo(photo, about),
            Act::PutOff { job, until } => self.put_off(job, *until),
            Act::Dismiss { job } => jobs::dismiss(job),
            Act::AddPacket { packet } => self.add_packet(packet),
            Act::DescribePacket {
                id,
                packet,
                retired,
            } => self.describe_packet(id, packet, *retired),
            Act::CountSeeds { packet, left } => seed::count(packet, *left),
            Act::TakeStock { packet, found } => self.take_stock(packet, found),
            Act::StartTest { packet, seeds } => self.start_test(packet, *seeds),
            Act::CountTest { test, sprouted } => self.count_test(test, *sprouted),
            Act::CloseTest { test, sprouted } => self.close_test(test, *sprouted),
            Act::WantToBuy {
                crop,
                variety,
                note,
            } => self.want_to_buy(crop, variety, note),
            Act::SetToBuy { item, standing } => self.set_to_buy(item, standing),
            Act::Plan { id, plan } => self.plan(id.as_deref(), plan),
            Act::EndPlan { plan } => self.end_plan(plan),
            Act::Reserve { of, number, note } => self.reserve(of, *number, note),
            Act::Release { reservation } => self.release(reservation),
            Act::HandOver {
                crop,
                number,
                how,
                reservation,
            } => self.hand_over(crop, *number, how, reservation.as_deref()),
            Act::DescribePlace { place } => self.describe_place(place),
            Act::OrderPlaces { places } => self.order_places(places),
            Act::DescribeGarden { garden } => describe::garden(garden),
            Act::Away { from, to } => Ok(season::away(*from, *to)),
            Act::CameBack { on } => Ok(season::came_back(*on)),
            Act::NightLow {
                night,
                place,
                low_c,
            } => season::night_low(*night, place.as_deref(), *low_c),
            Act::Shelter { trays, how } => care::shelter(trays, how),
            Act::Air { place } => season::air(place),
            Act::FrostOdds { odds } => self.frost_odds(odds),
            Act::Sow {
                packet,
                into,
                cells,
                seeds,
                depth_mm,
                wanted,
                again_of,
                treatment,
                plan,
            } => self.sow(grow::Sow {
                packet,
                into,
                cells,
                seeds: *seeds,
                depth_mm: *depth_mm,
                wanted: *wanted,
                again_of: again_of.as_deref(),
                treatment: *treatment,
                plan: plan.as_deref(),
            }),
            Act::StartBatch {
                origin,
                crop,
                variety,
                into,
                cells,
                number,
            } => self.start_batch(grow::Start {
                origin,
                crop,
                variety,
                into,
                cells,
                number: *number,
            }),
        }
    }
}
