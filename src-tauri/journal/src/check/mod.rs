//! What the door checks before it writes: one file an area.
//!
//! What a content says by itself, and what it names, is checked here before
//! it is added; whether it adds up is seen after the fold, in [`settle`].

mod garden;
mod plan;
mod plants;
mod round;
mod season;
pub(crate) mod seed;
pub(crate) mod settle;
mod texts;
mod tray;

use crate::content::Content;
use crate::error::{Error, Question, Refusal, Value};
use crate::fold::State;
use crate::id::{PlaceId, TrayId};
use crate::stamp::{Happened, Stamp};
use crate::state::{PlaceState, TrayState};
use crate::store::read;
use crate::subject::Subject;
use chrono::Duration;
use rusqlite::Connection;

/// Further ahead than this nothing has happened: clocks and zones differ by
/// less.
const AHEAD_DAYS: i64 = 1;
/// Further back than this is asked about.
const FAR_BACK_DAYS: i64 = 30;
/// No zone is further from UTC than 14 hours (IANA); with room to spare.
const MAX_OFFSET_MIN: i32 = 16 * 60;

/// What a check looks at.
pub(crate) struct Check<'a> {
    pub db: &'a Connection,
    pub stamp: &'a Stamp,
    pub happened: &'a Happened,
    /// The content replaces one that is there already.
    pub correcting: bool,
    pub questions: &'a mut Vec<Question>,
}

/// Refuses.
pub(crate) fn refuse<T>(code: &'static str) -> Result<T, Error> {
    Err(Refusal::new(code).into())
}

/// Refuses with arguments.
pub(crate) fn refuse_with<T, const N: usize>(
    code: &'static str,
    args: [(&'static str, Value); N],
) -> Result<T, Error> {
    let args = args.into_iter().collect();
    Err(Refusal { code, args }.into())
}

/// A number as an argument.
pub(crate) fn number(value: impl Into<f64>) -> Value {
    Value::Number(value.into())
}

/// When it happened.
pub(crate) fn happened(check: &mut Check) -> Result<(), Error> {
    let happened = check.happened;
    if happened.zone.parse::<chrono_tz::Tz>().is_err() || happened.offset_min.abs() > MAX_OFFSET_MIN
    {
        return refuse_with(
            "zone_unknown",
            [("zone", Value::Text(happened.zone.clone()))],
        );
    }
    let ahead = happened.instant().signed_duration_since(check.stamp.now);
    let day = Value::Day(happened.local.date());
    if ahead > Duration::days(AHEAD_DAYS) {
        return refuse_with("in_the_future", [("day", day)]);
    }
    if ahead < -Duration::days(FAR_BACK_DAYS) {
        let days = f64::from(i32::try_from(-ahead.num_days()).unwrap_or(i32::MAX));
        check.questions.push(
            Question::new("far_back")
                .with("day", day)
                .with("days", Value::Number(days)),
        );
    }
    Ok(())
}

/// Checks a content against the state as it is.
pub(crate) fn content(check: &mut Check, content: &Content) -> Result<(), Error> {
    use Content as C;
    match content {
        C::GardenDescribed(what) => garden::garden(what),
        C::Away(what) => garden::away(what),
        C::CameBack(what) => season::came_back(check, what),
        C::FrostReckoned(what) => season::frost(what),
        C::NightForecast(what) => season::night(check, what),
        C::PlaceDescribed(what) => garden::place(what),
        C::PacketDescribed(what) => seed::packet(check, what),
        C::SeedsCounted(what) => seed::counted(check, what),
        C::StockTaken(what) => known(check, Subject::Packet(what.packet)),
        C::TestStarted(what) => seed::test_started(check, what),
        C::TestCounted(what) => seed::test_counted(check, what),
        C::TestClosed(what) => seed::test_closed(check, what),
        C::ToBuy(what) => seed::to_buy(what),
        C::PlanDescribed(what) => plan::described(check, what),
        C::Reserved(what) => plan::reserved(check, what),
        C::TrayDescribed(what) => tray::described(check, what),
        C::TrayMoved(what) => {
            usable_tray(check, what.tray)?;
            usable_place(check, what.place)
        }
        C::CoverChanged(what) => usable_tray(check, what.tray),
        C::TrayEmptied(what) | C::Fed(what) | C::HardenedOff(what) => usable_tray(check, what.tray),
        C::Sheltered(what) => usable_tray(check, what.tray),
        C::Aired(what) => place(check, what.place).map(drop),
        C::Felt(what) => round::felt(check, what),
        C::ReadingTaken(what) => round::reading(check, what),
        C::HeatOff(what) => round::heat_off(check, what),
        C::HeatBack(what) => round::heat_back(check, what),
        C::JobPutOff(what) => round::job(check, &what.job),
        C::JobDismissed(what) => round::job(check, &what.job),
        C::Sown(what) => plants::sown(check, what),
        C::BatchStarted(what) => plants::started(check, what),
        C::Counted(what) => plants::counted(check, what),
        C::WentOn(what) => plants::went_on(check, what),
        C::Left(what) => plants::left(check, what),
        C::Ready(what) => plants::living(check, what.of).map(drop),
        C::DugUp(what) => plants::dug_up(check, what),
        C::SeedsLost(what) => plants::seeds_lost(check, what),
        C::NothingCameUp(what) => plants::nothing_came_up(check, what),
        C::Explained(what) => texts::explained(check, what),
        C::Noticed(what) => plants::living(check, what.of).map(drop),
        C::Finished(what) => plants::finished(check, what),
        C::Noted(what) => texts::noted(check, what),
        C::PhotoTaken(what) => texts::photo(check, what),
        C::PhotoNamed(what) => texts::named(check, what),
        C::Amended(_) => refuse("amendment_by_hand"),
    }
}

/// The subject is there, dead or alive.
pub(crate) fn known(check: &Check, subject: Subject) -> Result<(), Error> {
    let there = subject == Subject::Garden || read::alive(check.db, subject)?.is_some();
    if there {
        Ok(())
    } else {
        refuse(unknown(subject))
    }
}

fn unknown(subject: Subject) -> &'static str {
    match subject {
        Subject::Garden | Subject::Place(_) => "place_unknown",
        Subject::Packet(_) => "packet_unknown",
        Subject::Tray(_) => "tray_unknown",
        Subject::Sowing(_) => "sowing_unknown",
        Subject::Batch(_) => "batch_unknown",
        Subject::Test(_) => "test_unknown",
        Subject::Item(_) => "item_unknown",
        Subject::Plan(_) => "plan_unknown",
        Subject::Reservation(_) => "reservation_unknown",
    }
}

/// The subject is not there yet.
fn new(check: &Check, subject: Subject) -> Result<(), Error> {
    if !check.correcting && read::alive(check.db, subject)?.is_some() {
        return refuse("id_taken");
    }
    Ok(())
}

fn place(check: &Check, id: PlaceId) -> Result<PlaceState, Error> {
    match read::state(check.db, Subject::Place(id))? {
        Some(State::Place(state)) => Ok(state),
        _ => refuse("place_unknown"),
    }
}

fn usable_place(check: &Check, id: PlaceId) -> Result<(), Error> {
    let place = place(check, id)?;
    if place.described.retired && !check.correcting {
        return refuse_with(
            "place_retired",
            [("name", Value::Text(place.described.name))],
        );
    }
    Ok(())
}

/// The tray is in use: its state is read only to say why it is not.
fn usable_tray(check: &Check, id: TrayId) -> Result<(), Error> {
    match read::alive(check.db, Subject::Tray(id))? {
        Some(true) => Ok(()),
        _ => living_tray(check, id).map(drop),
    }
}

fn living_tray(check: &Check, id: TrayId) -> Result<TrayState, Error> {
    let Some(State::Tray(tray)) = read::state(check.db, Subject::Tray(id))? else {
        return refuse("tray_unknown");
    };
    if tray.emptied.is_some() && !check.correcting {
        return refuse_with("tray_emptied", [("code", Value::Text(tray.described.code))]);
    }
    Ok(tray)
}

/// Whose hand: a name or initials, or nothing.
pub(crate) fn name_of_hand(hand: &str) -> Result<(), Error> {
    texts::optional_name(hand, texts::MAX_NAME)
}
