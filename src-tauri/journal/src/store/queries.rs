//! What the database is asked by [`super::read`].

/// The living of a kind.
pub(crate) const LIVING: &str =
    "SELECT state FROM states WHERE kind = ?1 AND alive = 1 AND last_ms >= ?2
     ORDER BY last_ms, subject";
/// The past of a kind, latest first.
pub(crate) const PAST: &str = "SELECT state FROM states WHERE kind = ?1 AND alive = 0
     ORDER BY last_ms DESC, subject LIMIT ?2";
/// Packets of a crop; the expression is that of an index.
pub(crate) const PACKETS_OF_CROP: &str = "SELECT state FROM states
     WHERE kind = 'packet' AND json_extract(state, '$.described.crop') = ?1
     ORDER BY alive DESC, last_ms DESC, subject LIMIT ?2";
/// A state, and when the last that made it happened.
pub(crate) const STATE: &str = "SELECT state, last_ms FROM states WHERE subject = ?1";
/// Whether a subject is in use.
pub(crate) const ALIVE: &str = "SELECT alive FROM states WHERE subject = ?1";
/// Another living tray with a code.
pub(crate) const CODE_IN_USE: &str = include_str!("code_in_use.sql");
/// Readings since a moment.
pub(crate) const READINGS: &str =
    "SELECT reading FROM readings WHERE at_ms >= ?1 ORDER BY at_ms, entry";
/// Readings of a place between two moments, the last first.
pub(crate) const LAST_READINGS: &str =
    "SELECT reading FROM readings WHERE place = ?1 AND at_ms BETWEEN ?2 AND ?3
     ORDER BY at_ms DESC, entry DESC";
/// Answers to jobs of the living.
pub(crate) const JOB_ANSWERS: &str = include_str!("job_answers.sql");
/// The entries that make a state.
pub(crate) const WEIGHING: &str = "SELECT entry FROM touches WHERE subject = ?1 AND weighs = 1";
/// The entry of a number.
pub(crate) const NUMBERED: &str = concat!(
    include_str!("held.sql"),
    "FROM entries AS e WHERE e.nr = ?1"
);
/// The latest of a timeline.
pub(crate) const TIMELINE: &str = concat!(
    include_str!("held.sql"),
    ", e.nr\n",
    include_str!("timeline.sql")
);
/// The entries with an id that are no amendments.
pub(crate) const ROOTS: &str = concat!(
    include_str!("held.sql"),
    ", e.nr FROM entries AS e WHERE e.id = ?1 AND e.kind <> 'amended' ORDER BY e.hash"
);
/// The entries of an act, in the order written.
pub(crate) const ACT: &str = concat!(
    include_str!("held.sql"),
    "FROM entries AS e WHERE e.act = ?1 ORDER BY e.lamport, e.device, e.seq, e.hash"
);
/// The amendments of a root, the greatest last.
pub(crate) const AMENDMENTS: &str =
    "SELECT e.line FROM amendments AS a JOIN entries AS e ON e.nr = a.entry
     WHERE a.root = ?1 ORDER BY a.lamport, a.device, a.seq, a.hash";
/// The entries about a subject that take in or name a photo.
pub(crate) const PHOTOS: &str = concat!(
    include_str!("held.sql"),
    "FROM touches AS t JOIN entries AS e ON e.nr = t.entry
     WHERE t.subject = ?1 AND e.kind IN ('photo_taken', 'photo_named')"
);
/// All entries that took in a photo.
pub(crate) const PHOTOS_TAKEN: &str = concat!(
    include_str!("held.sql"),
    "FROM entries AS e WHERE e.kind = 'photo_taken'"
);
/// The device after one, by id.
pub(crate) const NEXT_DEVICE: &str = "SELECT MIN(device) FROM entries WHERE device > ?1";
/// The roots that have amendments.
pub(crate) const AMENDED: &str = "SELECT DISTINCT root FROM amendments";
/// A line with a text in it.
pub(crate) const MENTIONED: &str = "SELECT 1 FROM entries WHERE instr(line, ?1) > 0 LIMIT 1";
/// All lines, in the order of arrival.
pub(crate) const LINES: &str = "SELECT line FROM entries ORDER BY nr";

/// Those that find what they want by an index, however many entries there are:
/// all that a screen or the door asks.
#[cfg(test)]
pub(crate) const FINDING: &[&str] = &[
    LIVING,
    PAST,
    PACKETS_OF_CROP,
    STATE,
    ALIVE,
    CODE_IN_USE,
    READINGS,
    LAST_READINGS,
    JOB_ANSWERS,
    WEIGHING,
    NUMBERED,
    TIMELINE,
    ROOTS,
    ACT,
    AMENDMENTS,
    PHOTOS,
    PHOTOS_TAKEN,
    NEXT_DEVICE,
];
/// Those that go through all of a table.
#[cfg(test)]
pub(crate) const GOING_THROUGH: &[&str] = &[AMENDED, MENTIONED, LINES];
