//! The fold: the state of a subject from the entries that touch it.
//!
//! It is total. What merged or withdrawn entries leave odd becomes a problem
//! of the state, never a refusal or a panic. Events fold by (happened instant,
//! lamport, device, seq), attributes by (lamport, device, seq).

mod garden;
mod held;
mod packet;
mod place;
mod plan;
mod plants;
mod seed;
mod sowing;
mod tray;

pub(crate) use held::Held;

use crate::error::Error;
use crate::state::{
    BatchState, GardenState, ItemState, PacketState, PlaceState, PlanState, PlantsState,
    ReservationState, SowingState, TestState, TrayState,
};
use crate::subject::{Plants, Subject};
use crate::words::Standing;
use serde::de::DeserializeOwned;

/// The state of any subject.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum State {
    Garden(GardenState),
    Place(PlaceState),
    Packet(PacketState),
    Tray(TrayState),
    Sowing(SowingState),
    Batch(BatchState),
    Test(TestState),
    Item(ItemState),
    Plan(PlanState),
    Reservation(ReservationState),
}

impl State {
    /// In use.
    pub fn alive(&self) -> bool {
        match self {
            State::Garden(_) => true,
            State::Place(state) => !state.described.retired,
            State::Packet(state) => !state.described.retired,
            State::Tray(state) => state.emptied.is_none(),
            State::Sowing(state) => state.plants.ended.is_none(),
            State::Batch(state) => state.plants.ended.is_none(),
            State::Test(state) => state.closed.is_none(),
            State::Item(state) => state.described.standing == Standing::Wanted,
            State::Plan(state) => !state.described.ended,
            State::Reservation(state) => state.remaining() > 0,
        }
    }

    /// The plants of a sowing or batch.
    pub fn plants(&self) -> Option<&PlantsState> {
        match self {
            State::Sowing(state) => Some(&state.plants),
            State::Batch(state) => Some(&state.plants),
            _ => None,
        }
    }

    /// As it is stored.
    pub fn to_json(&self) -> Result<String, Error> {
        Ok(match self {
            State::Garden(state) => serde_json::to_string(state),
            State::Place(state) => serde_json::to_string(state),
            State::Packet(state) => serde_json::to_string(state),
            State::Tray(state) => serde_json::to_string(state),
            State::Sowing(state) => serde_json::to_string(state),
            State::Batch(state) => serde_json::to_string(state),
            State::Test(state) => serde_json::to_string(state),
            State::Item(state) => serde_json::to_string(state),
            State::Plan(state) => serde_json::to_string(state),
            State::Reservation(state) => serde_json::to_string(state),
        }?)
    }

    /// From what is stored.
    pub fn from_json(subject: Subject, text: &str) -> Result<Self, Error> {
        fn read<T: DeserializeOwned>(text: &str) -> Result<T, Error> {
            Ok(serde_json::from_str(text)?)
        }
        Ok(match subject {
            Subject::Garden => State::Garden(read(text)?),
            Subject::Place(_) => State::Place(read(text)?),
            Subject::Packet(_) => State::Packet(read(text)?),
            Subject::Tray(_) => State::Tray(read(text)?),
            Subject::Sowing(_) => State::Sowing(read(text)?),
            Subject::Batch(_) => State::Batch(read(text)?),
            Subject::Test(_) => State::Test(read(text)?),
            Subject::Item(_) => State::Item(read(text)?),
            Subject::Plan(_) => State::Plan(read(text)?),
            Subject::Reservation(_) => State::Reservation(read(text)?),
        })
    }
}

/// The kind of a subject, as in the database.
pub(crate) fn kind(subject: Subject) -> &'static str {
    match subject {
        Subject::Garden => "garden",
        Subject::Place(_) => "place",
        Subject::Packet(_) => "packet",
        Subject::Tray(_) => "tray",
        Subject::Sowing(_) => "sowing",
        Subject::Batch(_) => "batch",
        Subject::Test(_) => "test",
        Subject::Item(_) => "item",
        Subject::Plan(_) => "plan",
        Subject::Reservation(_) => "reservation",
    }
}

/// The state of a subject; none if nothing says that it is there.
pub(crate) fn fold(subject: Subject, held: &[Held]) -> Option<State> {
    match subject {
        Subject::Garden => garden::fold(held).map(State::Garden),
        Subject::Place(id) => place::fold(id, held).map(State::Place),
        Subject::Packet(id) => packet::fold(id, held).map(State::Packet),
        Subject::Tray(id) => tray::fold(id, held).map(State::Tray),
        Subject::Sowing(id) => sowing::sowing(id, held).map(State::Sowing),
        Subject::Batch(id) => sowing::batch(id, held).map(State::Batch),
        Subject::Test(id) => seed::test(id, held).map(State::Test),
        Subject::Item(id) => seed::item(id, held).map(State::Item),
        Subject::Plan(id) => plan::plan(id, held).map(State::Plan),
        Subject::Reservation(id) => plan::reservation(id, held).map(State::Reservation),
    }
}

/// The state with one more that happened after all that made it, the same as
/// folding all of them; none where all of them are needed for that.
pub(crate) fn then(state: &State, held: &Held) -> Option<State> {
    match state {
        State::Tray(state) => tray::then(state, held).map(State::Tray),
        _ => None,
    }
}

/// Whether a content is about these plants.
fn about(plants: Plants, content: &crate::content::Content) -> bool {
    use crate::content::Content as C;
    match content {
        C::Counted(what) => what.of == plants,
        C::WentOn(what) => what.of == plants,
        C::Left(what) => what.of == plants,
        C::Ready(what) | C::Finished(what) => what.of == plants,
        C::DugUp(what) => Plants::Sowing(what.sowing) == plants,
        C::SeedsLost(what) => Plants::Sowing(what.sowing) == plants,
        C::NothingCameUp(what) => Plants::Sowing(what.sowing) == plants,
        C::Explained(what) => Plants::Sowing(what.sowing) == plants,
        C::Noticed(what) => what.of == plants,
        _ => false,
    }
}
