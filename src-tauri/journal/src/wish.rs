//! What is asked of the door, and what it answers.

use crate::content::Content;
use crate::error::Question;
use crate::id::EntryId;
use crate::stamp::Happened;
use crate::subject::Subject;
use std::collections::{BTreeMap, BTreeSet};

/// What is to be written, as one act.
#[derive(Clone, Debug, PartialEq)]
pub struct Wish {
    /// Checked in order, each against what the earlier ones leave.
    pub contents: Vec<Content>,
    /// When it happened; none: now.
    pub happened: Option<Happened>,
    /// Whose hand.
    pub hand: String,
    /// The questions it raises were answered with yes.
    pub confirmed: bool,
}

/// What the door answers.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// Written, and on disk.
    Written {
        /// The act, to undo it by.
        act: EntryId,
        /// What was touched.
        touched: BTreeSet<Subject>,
    },
    /// Nothing was written: these want a yes first.
    AsksFirst(Vec<Question>),
}

/// What taking in lines did.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Report {
    /// Entries that were not here before.
    pub new: u64,
    /// Entries that were here already.
    pub known: u64,
    /// Lines that are no entries, by number from 1.
    pub damaged: Vec<u64>,
    /// New entries of a kind or version this program does not know; kept.
    pub unknown_kinds: u64,
    /// Another copy wrote under this device's identity, so a new one was made.
    pub new_identity: bool,
    /// New entries by kind, as it is stored.
    pub kinds: BTreeMap<String, u64>,
    /// What was touched.
    pub touched: BTreeSet<Subject>,
}
