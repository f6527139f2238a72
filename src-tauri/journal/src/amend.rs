//! Correcting, withdrawing and undoing: all three write amendments.

use crate::check::{refuse, settle::How};
use crate::content::{Amended, Content};
use crate::door::Door;
use crate::entry::Entry;
use crate::error::{Error, Question, Value};
use crate::fold::Held;
use crate::id::EntryId;
use crate::stamp::{Happened, Stamp};
use crate::store::read;
use crate::subject::Subject;
use crate::touches::opens;
use crate::wish::Answer;
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet};

/// Corrects a root entry.
pub(crate) fn correct(
    mut door: Door,
    stamp: &Stamp,
    root: EntryId,
    content: Content,
    happened: Option<Happened>,
    confirmed: bool,
) -> Result<Answer, Error> {
    let held = understood(door.db(), root)?;
    let original = held.entry.content.as_ref();
    let same = original.is_some_and(|original| {
        std::mem::discriminant(original) == std::mem::discriminant(&content)
            && opens(original) == opens(&content)
    });
    if !same {
        return refuse("correction_of_another_kind");
    }
    let when = happened.clone().unwrap_or_else(|| held.happened().clone());
    if when != *held.happened() {
        door.check_happened(&when)?;
    }
    door.check_content(&when, &content, true)?;
    let amended = Content::Amended(Amended {
        root,
        content: Some(Box::new(content)),
        happened: (when != held.entry.happened).then_some(when),
    });
    door.append(&stamp.happened(), &amended)?;
    door.close(How::Corrected, confirmed)
}

/// Withdraws a root entry and all that builds on it.
pub(crate) fn withdraw(
    door: Door,
    stamp: &Stamp,
    root: EntryId,
    confirmed: bool,
) -> Result<Answer, Error> {
    let held = understood(door.db(), root)?;
    if held.withdrawn() {
        return refuse("nothing_to_undo");
    }
    carry_out(door, stamp, vec![gone(root)], confirmed)
}

/// Undoes an act: what held before it holds again.
pub(crate) fn undo(
    door: Door,
    stamp: &Stamp,
    act: EntryId,
    confirmed: bool,
) -> Result<Answer, Error> {
    let entries = read::act(door.db(), act)?;
    if entries.is_empty() {
        return refuse("entry_unknown");
    }
    let mut plan = Vec::new();
    for held in entries {
        match &held.entry.content {
            Some(Content::Amended(amended)) => {
                plan.extend(before(door.db(), &held.entry, amended.root)?);
            }
            Some(_) if !held.withdrawn() => plan.push(gone(held.entry.id)),
            Some(_) => {}
            None => return refuse("entry_not_understood"),
        }
    }
    // What was written last is withdrawn first.
    plan.reverse();
    carry_out(door, stamp, plan, confirmed)
}

fn gone(root: EntryId) -> Amended {
    Amended {
        root,
        content: None,
        happened: None,
    }
}

fn understood(db: &Connection, root: EntryId) -> Result<Held, Error> {
    let Some((_, held)) = read::roots(db, root)?.into_iter().next() else {
        return refuse("entry_unknown");
    };
    if held.entry.content.is_none() {
        return refuse("entry_not_understood");
    }
    Ok(held)
}

/// What held before an amendment; none if a later one holds by now.
fn before(db: &Connection, amendment: &Entry, root: EntryId) -> Result<Option<Amended>, Error> {
    let mut others = read::amendments(db, root)?;
    let holds = others.pop();
    if holds.is_none_or(|holds| holds.line != amendment.line) {
        return Ok(None);
    }
    let earlier = others.iter().rfind(|other| other.act != amendment.act);
    if let Some(Content::Amended(earlier)) = earlier.and_then(|it| it.content.as_ref()) {
        return Ok(Some(earlier.clone()));
    }
    let original = understood(db, root)?.entry.content.clone();
    Ok(Some(Amended {
        root,
        content: original.map(Box::new),
        happened: None,
    }))
}

fn carry_out(
    mut door: Door,
    stamp: &Stamp,
    mut plan: Vec<Amended>,
    confirmed: bool,
) -> Result<Answer, Error> {
    if plan.is_empty() {
        return refuse("nothing_to_undo");
    }
    let with_it = building_on(door.db(), &plan)?;
    if !with_it.is_empty() {
        let number = f64::from(u32::try_from(with_it.len()).unwrap_or(u32::MAX));
        door.ask(Question::new("others_build_on_it").with("entries", Value::Number(number)));
        plan.splice(0..0, with_it.into_iter().rev().map(gone));
    }
    for amended in plan {
        door.append(&stamp.happened(), &Content::Amended(amended))?;
    }
    door.close(How::Withdrawn, confirmed)
}

/// What goes with the withdrawals of a plan: the entries about what is no
/// longer there without them, and about what came from that.
fn building_on(db: &Connection, plan: &[Amended]) -> Result<Vec<EntryId>, Error> {
    let planned: BTreeSet<EntryId> = plan.iter().map(|amended| amended.root).collect();
    let mut gone = BTreeSet::new();
    let mut open: Vec<EntryId> = plan
        .iter()
        .filter(|amended| amended.content.is_none())
        .map(|amended| amended.root)
        .collect();
    let mut with_it: BTreeMap<(i64, EntryId), EntryId> = BTreeMap::new();
    gone.extend(open.iter().copied());
    while let Some(root) = open.pop() {
        for (_, held) in read::roots(db, root)? {
            let Some(content) = held.content() else {
                continue;
            };
            if matches!(content, Content::PhotoTaken(_)) {
                let named = naming(db, root)?;
                follow(named, &planned, &mut gone, &mut open, &mut with_it);
            }
            for subject in opens(content) {
                // What was sown again stands by itself.
                let stays_or_falls = |content: &Content| match content {
                    Content::Sown(sown) => {
                        Subject::Sowing(sown.sowing) == subject
                            || sown.again_of.map(Subject::Sowing) != Some(subject)
                    }
                    _ => true,
                };
                let about: Vec<Held> = read::timeline(db, subject, usize::MAX)?
                    .into_iter()
                    .map(|(_, held)| held)
                    .filter(|held| !held.withdrawn() && held.content().is_some_and(stays_or_falls))
                    .collect();
                let still_open = about.iter().any(|held| {
                    !gone.contains(&held.entry.id)
                        && held
                            .content()
                            .is_some_and(|content| opens(content).contains(&subject))
                });
                if !still_open {
                    follow(about, &planned, &mut gone, &mut open, &mut with_it);
                }
            }
        }
    }
    Ok(with_it.into_values().collect())
}

fn follow(
    found: Vec<Held>,
    planned: &BTreeSet<EntryId>,
    gone: &mut BTreeSet<EntryId>,
    open: &mut Vec<EntryId>,
    with_it: &mut BTreeMap<(i64, EntryId), EntryId>,
) {
    for held in found {
        let id = held.entry.id;
        if gone.insert(id) && !planned.contains(&id) {
            with_it.insert((held.entry.lamport, id), id);
            open.push(id);
        }
    }
}

/// The entries that name a photo.
fn naming(db: &Connection, photo: EntryId) -> Result<Vec<Held>, Error> {
    let mut named = read::photos(db, Subject::Garden)?;
    named.retain(|held| match held.content() {
        Some(Content::PhotoNamed(what)) => what.taken == photo,
        _ => false,
    });
    Ok(named)
}
