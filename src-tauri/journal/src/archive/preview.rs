//! What an archive would bring, and where both sides changed the same thing.

use crate::archive::{Inside, read};
use crate::audit;
use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::finding::Watch;
use crate::id::{DeviceId, EntryId};
use crate::journal::Journal;
use crate::store::add;
use crate::subject::Subject;
use crate::touches::opens;
use rusqlite::{Connection, params};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// What taking in an archive would bring.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Preview {
    /// What is in it.
    pub inside: Inside,
    /// Entries that are new here, by kind as it is stored; unknown kinds too.
    pub new: BTreeMap<String, u64>,
    /// Entries that are here already.
    pub known: u64,
    /// Photos in it that are not here.
    pub photos_new: usize,
    /// Where both sides changed the same thing.
    pub conflicts: Vec<Conflict>,
}

impl Preview {
    /// Nothing in it is new here.
    #[must_use]
    pub fn nothing_new(&self) -> bool {
        self.new.is_empty() && self.photos_new == 0
    }
}

/// Something that both sides changed without knowing of the other's change.
/// Both entries stay in the journal; the greatest by (lamport, device, seq)
/// holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// What was changed.
    pub matter: Matter,
    /// The change made here.
    pub here: EntryId,
    /// The change that comes in.
    pub there: EntryId,
    /// The one that comes in holds; else the one made here.
    pub theirs_holds: bool,
}

/// What can be changed on two sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Matter {
    /// How a thing is described: the garden, a place, a packet, a tray.
    Described(Subject),
    /// An entry that was corrected, withdrawn or brought back.
    Amended(EntryId),
}

/// What orders changes of one matter: the greatest holds.
type Order = (i64, DeviceId, i64, [u8; 32]);

fn order(entry: &Entry) -> Order {
    (entry.lamport, entry.device, entry.seq, entry.hash())
}

fn matter(content: &Content) -> Option<Matter> {
    match content {
        Content::GardenDescribed(_) => Some(Matter::Described(Subject::Garden)),
        Content::PlaceDescribed(_) | Content::PacketDescribed(_) | Content::TrayDescribed(_) => {
            opens(content).into_iter().next().map(Matter::Described)
        }
        Content::Amended(what) => Some(Matter::Amended(what.root)),
        _ => None,
    }
}

/// Changes met on the way through another side's entries.
#[derive(Debug, Default)]
pub(super) struct Changes {
    /// Of each matter the greatest that is new here.
    new: BTreeMap<Matter, (Order, EntryId)>,
    /// All of those that the other side has.
    theirs: BTreeSet<[u8; 32]>,
}

impl Changes {
    pub fn entry(&mut self, entry: &Entry, new: bool) {
        let Some(matter) = entry.content.as_ref().and_then(matter) else {
            return;
        };
        let order = order(entry);
        self.theirs.insert(order.3);
        let held = self.new.get(&matter);
        if new && held.is_none_or(|(before, _)| *before < order) {
            self.new.insert(matter, (order, entry.id));
        }
    }

    /// Those that are also changed here in a way the other side does not have.
    pub fn conflicts(&self, db: &Connection) -> Result<Vec<Conflict>, Error> {
        let mut conflicts = Vec::new();
        for (matter, (theirs, there)) in &self.new {
            let here = here(db, *matter)?
                .into_iter()
                .map(|entry| (order(&entry), entry.id))
                .filter(|(order, _)| !self.theirs.contains(&order.3))
                .max();
            if let Some((ours, here)) = here {
                conflicts.push(Conflict {
                    matter: *matter,
                    here,
                    there: *there,
                    theirs_holds: *theirs > ours,
                });
            }
        }
        Ok(conflicts)
    }
}

/// The changes of a matter that are here.
fn here(db: &Connection, of: Matter) -> Result<Vec<Entry>, Error> {
    let mut found = Vec::new();
    let mut keep = |line: &str| {
        if let Ok(entry) = Entry::parse(line)
            && entry.content.as_ref().and_then(matter) == Some(of)
        {
            found.push(entry);
        }
    };
    match of {
        Matter::Amended(root) => {
            let mut query = db.prepare_cached(
                "SELECT e.line FROM amendments AS a JOIN entries AS e ON e.nr = a.entry
                 WHERE a.root = ?1",
            )?;
            let mut rows = query.query([add::blob(root)])?;
            while let Some(row) = rows.next()? {
                keep(row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?);
            }
        }
        Matter::Described(subject) => {
            let kind = format!("{}_described", crate::fold::kind(subject));
            let mut query = db.prepare_cached(
                "SELECT e.line FROM touches AS t JOIN entries AS e ON e.nr = t.entry
                 WHERE t.subject = ?1 AND e.kind = ?2",
            )?;
            let mut rows = query.query(params![subject, kind])?;
            while let Some(row) = rows.next()? {
                keep(row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?);
            }
        }
    }
    Ok(found)
}

pub(super) fn preview(
    journal: &Journal,
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Preview, Error> {
    let mut opened = read::open(path, passphrase)?;
    let inside = opened.verify(watch)?;
    let db = journal.connection();
    let mut changes = Changes::default();
    let mut new: BTreeMap<String, u64> = BTreeMap::new();
    let mut known = 0;
    let mut seen: BTreeSet<[u8; 32]> = BTreeSet::new();
    opened.each_entry(&mut |_, (entry, hash)| {
        let is_new = !add::is_there(db, &hash)? && seen.insert(hash);
        if is_new {
            *new.entry(entry.kind.clone()).or_default() += 1;
        } else {
            known += 1;
        }
        changes.entry(&entry, is_new);
        Ok(())
    })?;
    let there = audit::on_disk(&journal.home().join("journal/photos"))?;
    let photos = opened.photos.keys();
    Ok(Preview {
        inside,
        new,
        known,
        photos_new: photos.filter(|name| !there.contains_key(*name)).count(),
        conflicts: changes.conflicts(db)?,
    })
}
