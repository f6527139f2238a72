//! What an entry is about.

use crate::id::{
    BatchId, ItemId, PacketId, PlaceId, PlanId, ReservationId, SowingId, TestId, TrayId,
};
use rusqlite::ToSql;
use rusqlite::types::ToSqlOutput;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;
use uuid::Uuid;

/// Something in the journal that has a state of its own: the sum of the
/// entries that touch it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(tag = "type", content = "id", rename_all = "snake_case")]
pub enum Subject {
    /// The garden: zone, latitude, frost dates, round times, away dates, jobs put off.
    Garden,
    /// A place.
    Place(PlaceId),
    /// A packet.
    Packet(PacketId),
    /// A tray.
    Tray(TrayId),
    /// A sowing.
    Sowing(SowingId),
    /// A batch.
    Batch(BatchId),
    /// A germination test.
    Test(TestId),
    /// Something to buy.
    Item(ItemId),
    /// A plan to raise plants.
    Plan(PlanId),
    /// Plants kept for somebody.
    Reservation(ReservationId),
}

/// Plants in a tray: still where they were sown, or gone on as a batch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(tag = "type", content = "id", rename_all = "snake_case")]
pub enum Plants {
    /// A sowing.
    Sowing(SowingId),
    /// A batch.
    Batch(BatchId),
}

impl From<Plants> for Subject {
    fn from(plants: Plants) -> Self {
        match plants {
            Plants::Sowing(id) => Subject::Sowing(id),
            Plants::Batch(id) => Subject::Batch(id),
        }
    }
}

impl fmt::Display for Subject {
    /// `tray:0190…`, as in job keys.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (kind, id) = match self {
            Subject::Garden => return f.write_str("garden"),
            Subject::Place(id) => ("place:", id.0),
            Subject::Packet(id) => ("packet:", id.0),
            Subject::Tray(id) => ("tray:", id.0),
            Subject::Sowing(id) => ("sowing:", id.0),
            Subject::Batch(id) => ("batch:", id.0),
            Subject::Test(id) => ("test:", id.0),
            Subject::Item(id) => ("item:", id.0),
            Subject::Plan(id) => ("plan:", id.0),
            Subject::Reservation(id) => ("reservation:", id.0),
        };
        f.write_str(kind)?;
        f.write_str(id.hyphenated().encode_lower(&mut Uuid::encode_buffer()))
    }
}

impl ToSql for Subject {
    /// As the projections name it: a byte for its kind, then its id, if it has
    /// one. They sort like the subjects.
    fn to_sql(&self) -> rusqlite::Result<ToSqlOutput<'_>> {
        let (kind, id) = match self {
            Subject::Garden => return Ok(vec![0].into()),
            Subject::Place(id) => (1, id.0),
            Subject::Packet(id) => (2, id.0),
            Subject::Tray(id) => (3, id.0),
            Subject::Sowing(id) => (4, id.0),
            Subject::Batch(id) => (5, id.0),
            Subject::Test(id) => (6, id.0),
            Subject::Item(id) => (7, id.0),
            Subject::Plan(id) => (8, id.0),
            Subject::Reservation(id) => (9, id.0),
        };
        let mut key = Vec::with_capacity(17);
        key.push(kind);
        key.extend(id.as_bytes());
        Ok(key.into())
    }
}

/// A text that names no subject.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' names nothing in a journal")]
pub struct NoSubject(pub String);

impl FromStr for Subject {
    type Err = NoSubject;
    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let none = || NoSubject(text.to_owned());
        if text == "garden" {
            return Ok(Subject::Garden);
        }
        let (kind, id) = text.split_once(':').ok_or_else(none)?;
        let subject = match kind {
            "place" => id.parse().ok().map(Subject::Place),
            "packet" => id.parse().ok().map(Subject::Packet),
            "tray" => id.parse().ok().map(Subject::Tray),
            "sowing" => id.parse().ok().map(Subject::Sowing),
            "batch" => id.parse().ok().map(Subject::Batch),
            "test" => id.parse().ok().map(Subject::Test),
            "item" => id.parse().ok().map(Subject::Item),
            "plan" => id.parse().ok().map(Subject::Plan),
            "reservation" => id.parse().ok().map(Subject::Reservation),
            _ => None,
        };
        subject.ok_or_else(none)
    }
}
