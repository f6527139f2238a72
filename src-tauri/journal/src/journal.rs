//! The journal as others use it.
#![allow(missing_docs, clippy::missing_errors_doc)]

use crate::content::Content;
use crate::entry::Line;
use crate::error::Error;
use crate::id::{BatchId, DeviceId, EntryId, PacketId, PlaceId, SowingId, TrayId};
use crate::stamp::{Happened, Stamp};
use crate::state::{
    BatchState, GardenState, PacketState, PlaceState, Reading, SowingState, TrayState,
};
use crate::subject::Subject;
use crate::wish::{Answer, Report, Wish};
use chrono::{DateTime, NaiveDate, Utc};
use std::path::Path;

/// A journal, open.
#[derive(Debug)]
pub struct Journal;

const NOT_YET: Error = Error::NotAJournal;

impl Journal {
    pub fn open(_home: &Path, _stamp: &Stamp) -> Result<Self, Error> {
        Err(NOT_YET)
    }
    pub fn device(&self) -> DeviceId {
        DeviceId(uuid::Uuid::nil())
    }
    pub fn write(&mut self, _stamp: &Stamp, _wish: Wish) -> Result<Answer, Error> {
        Err(NOT_YET)
    }
    pub fn undo(
        &mut self,
        _stamp: &Stamp,
        _act: EntryId,
        _hand: &str,
        _confirmed: bool,
    ) -> Result<Answer, Error> {
        Err(NOT_YET)
    }
    pub fn withdraw(
        &mut self,
        _stamp: &Stamp,
        _root: EntryId,
        _hand: &str,
        _confirmed: bool,
    ) -> Result<Answer, Error> {
        Err(NOT_YET)
    }
    pub fn correct(
        &mut self,
        _stamp: &Stamp,
        _root: EntryId,
        _content: Content,
        _happened: Option<Happened>,
        _hand: &str,
        _confirmed: bool,
    ) -> Result<Answer, Error> {
        Err(NOT_YET)
    }
    pub fn next_code(&self) -> Result<String, Error> {
        Err(NOT_YET)
    }
    pub fn garden(&self) -> Result<GardenState, Error> {
        Err(NOT_YET)
    }
    pub fn places(&self) -> Result<Vec<PlaceState>, Error> {
        Err(NOT_YET)
    }
    pub fn place(&self, _id: PlaceId) -> Result<Option<PlaceState>, Error> {
        Err(NOT_YET)
    }
    pub fn packets(&self) -> Result<Vec<PacketState>, Error> {
        Err(NOT_YET)
    }
    pub fn packet(&self, _id: PacketId) -> Result<Option<PacketState>, Error> {
        Err(NOT_YET)
    }
    pub fn living_trays(
        &self,
        _touched_since: Option<DateTime<Utc>>,
    ) -> Result<Vec<TrayState>, Error> {
        Err(NOT_YET)
    }
    pub fn tray(&self, _id: TrayId) -> Result<Option<TrayState>, Error> {
        Err(NOT_YET)
    }
    pub fn past_trays(&self, _limit: usize) -> Result<Vec<TrayState>, Error> {
        Err(NOT_YET)
    }
    pub fn living_sowings(&self) -> Result<Vec<SowingState>, Error> {
        Err(NOT_YET)
    }
    pub fn sowing(&self, _id: SowingId) -> Result<Option<SowingState>, Error> {
        Err(NOT_YET)
    }
    pub fn living_batches(&self) -> Result<Vec<BatchState>, Error> {
        Err(NOT_YET)
    }
    pub fn batch(&self, _id: BatchId) -> Result<Option<BatchState>, Error> {
        Err(NOT_YET)
    }
    pub fn readings(&self, _since: NaiveDate) -> Result<Vec<Reading>, Error> {
        Err(NOT_YET)
    }
    pub fn timeline(&self, _subjects: &[Subject], _limit: usize) -> Result<Vec<Line>, Error> {
        Err(NOT_YET)
    }
    pub fn entry(&self, _id: EntryId) -> Result<Option<Line>, Error> {
        Err(NOT_YET)
    }
    pub fn rebuild(&mut self) -> Result<(), Error> {
        Err(NOT_YET)
    }
    pub fn lines(&self) -> Result<Vec<String>, Error> {
        Err(NOT_YET)
    }
    pub fn take_in<'a>(
        &mut self,
        _stamp: &Stamp,
        _lines: impl Iterator<Item = &'a str>,
    ) -> Result<Report, Error> {
        Err(NOT_YET)
    }
    pub fn count(&self) -> Result<u64, Error> {
        Err(NOT_YET)
    }
}
