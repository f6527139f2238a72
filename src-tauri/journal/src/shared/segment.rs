//! A line of a segment: an entry's line with its hash.

use crate::entry::{Entry, MAX_LINE};
use crate::files::hex;
use sha2::{Digest, Sha256};

const BEFORE_HASH: &[u8] = b"{\"sha256\":\"";
const AFTER_HASH: &[u8] = b"\",\"line\":";
const END: &[u8] = b"}\n";
const HEX: usize = 64;

/// Longest line of a segment, bytes.
pub(super) const MAX: usize = BEFORE_HASH.len() + HEX + AFTER_HASH.len() + MAX_LINE + END.len();

/// What a line of a segment is.
pub(super) enum Read {
    /// An entry.
    Entry(Box<Entry>),
    /// As it was written, and no entry: a hostile hand, or a line of another
    /// version. There is no use in waiting.
    NoEntry,
    /// Not as it was written: it may be on its way.
    Broken,
}

pub(super) fn write(entry: &str, into: &mut Vec<u8>) {
    into.extend(BEFORE_HASH);
    into.extend(hex(&Sha256::digest(entry)).bytes());
    into.extend(AFTER_HASH);
    into.extend(entry.bytes());
    into.extend(END);
}

/// Reads a line with its end.
pub(super) fn read(line: &[u8]) -> Read {
    let Some((hash, entry)) = parts(line) else {
        return Read::Broken;
    };
    if hex(&Sha256::digest(entry)).as_bytes() != hash {
        return Read::Broken;
    }
    match std::str::from_utf8(entry).map(Entry::parse) {
        Ok(Ok(entry)) => Read::Entry(Box::new(entry)),
        _ => Read::NoEntry,
    }
}

fn parts(line: &[u8]) -> Option<(&[u8], &[u8])> {
    let (hash, rest) = line.strip_prefix(BEFORE_HASH)?.split_at_checked(HEX)?;
    let entry = rest.strip_prefix(AFTER_HASH)?.strip_suffix(END)?;
    Some((hash, entry))
}
