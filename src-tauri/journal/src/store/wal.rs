//! Whether a WAL that was left behind lost anything. SQLite takes a damaged
//! frame for the end of the WAL and quietly drops what follows; what follows
//! may have been confirmed.
//!
//! The format: <https://sqlite.org/fileformat2.html#the_write_ahead_log>.

use std::path::Path;

const HEADER: usize = 32;
const FRAME_HEADER: usize = 24;
/// Checksums are over big-endian words; one less: little-endian.
const BIG_ENDIAN: u32 = 0x377f_0683;

type Sum = (u32, u32);

/// True if transactions that were complete come after a damaged place. The
/// last one alone does not tell: power may have gone while it was written, and
/// then it was not confirmed.
pub(crate) fn lost_commits(wal: &Path) -> bool {
    std::fs::read(wal).is_ok_and(|bytes| damaged(&bytes).unwrap_or(false))
}

/// None if it is too short to hold a frame.
fn damaged(bytes: &[u8]) -> Option<bool> {
    let header = bytes.get(..HEADER)?;
    let big = word(header, 0)? == BIG_ENDIAN;
    let stored = (word(header, 24)?, word(header, 28)?);
    let counted = sum(big, header.get(..24)?, (0, 0));
    if stored != counted {
        // The header of a WAL begun anew may be torn, and then the frames are
        // of the one before. If they are its own, it was damaged later.
        let sizes = (9..=16).map(|power| 1 << power);
        return Some(sizes.into_iter().any(|size| {
            let first = bytes.get(HEADER..HEADER + FRAME_HEADER + size);
            first.is_some_and(|frame| {
                [(big, stored), (big, counted), (!big, stored)]
                    .into_iter()
                    .any(|(big, seed)| follows(big, frame, seed).is_some())
            })
        }));
    }
    let size = usize::try_from(word(header, 8)?).ok()?;
    let mut seed = Some(counted);
    let mut commits_after = 0;
    for frame in bytes.get(HEADER..)?.chunks_exact(FRAME_HEADER + size) {
        // Frames of a WAL before this one may follow.
        let own = frame.get(8..16) == header.get(16..24);
        seed = seed
            .filter(|_| own)
            .and_then(|seed| follows(big, frame, seed));
        if seed.is_none() && own && word(frame, 4)? != 0 {
            commits_after += 1;
        }
    }
    Some(commits_after > 1)
}

/// The checksum of a frame, if it is the one it states.
fn follows(big: bool, frame: &[u8], seed: Sum) -> Option<Sum> {
    let head = sum(big, frame.get(..8)?, seed);
    let counted = sum(big, frame.get(FRAME_HEADER..)?, head);
    ((word(frame, 16)?, word(frame, 20)?) == counted).then_some(counted)
}

fn sum(big: bool, bytes: &[u8], seed: Sum) -> Sum {
    let (pairs, _) = bytes.as_chunks::<8>();
    pairs.iter().fold(seed, |(a, b), pair| {
        let [x, y] = [0, 4].map(|at| {
            let bytes = pair.get(at..at + 4).and_then(|four| four.try_into().ok());
            let bytes = bytes.unwrap_or_default();
            if big {
                u32::from_be_bytes(bytes)
            } else {
                u32::from_le_bytes(bytes)
            }
        });
        let a = a.wrapping_add(x).wrapping_add(b);
        (a, b.wrapping_add(y).wrapping_add(a))
    })
}

/// A big-endian word at a place.
fn word(bytes: &[u8], at: usize) -> Option<u32> {
    let four = bytes.get(at..at + 4)?.try_into().ok()?;
    Some(u32::from_be_bytes(four))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::*;
    use crate::words::Feel;

    /// The WAL of a journal that is still open, of several acts.
    fn wal() -> Vec<u8> {
        let mut world = World::new();
        for n in 1..6 {
            world.at(n, vec![felt(10, Feel::Dry)]);
        }
        std::fs::read(world.home.path().join("journal/journal.db-wal")).unwrap()
    }

    #[test]
    fn a_whole_wal_and_any_beginning_of_it_lost_nothing() {
        let wal = wal();
        assert_eq!(damaged(&wal), Some(false));
        for end in (0..wal.len()).step_by(997) {
            assert!(!damaged(&wal[..end]).unwrap_or(false), "{end}");
        }
        // Another order of bytes in the header's magic number is another WAL.
        assert_eq!(damaged(&[]), None);
    }

    #[test]
    fn a_changed_byte_before_the_last_transactions_is_noticed() {
        let wal = wal();
        let mut noticed = 0;
        for at in (0..wal.len() / 2).step_by(61).chain(0..HEADER) {
            let mut wal = wal.clone();
            wal[at] ^= 0x10;
            assert_eq!(damaged(&wal), Some(true), "{at}");
            noticed += 1;
        }
        assert!(noticed > 500, "{noticed}");
    }

    #[test]
    fn a_torn_last_transaction_and_frames_of_an_older_wal_are_no_damage() {
        let mut wal = wal();
        let near_the_end = wal.len() - 100;
        wal[near_the_end] ^= 1;
        assert_eq!(damaged(&wal), Some(false));
        // The header of the next WAL over the frames of this one.
        let mut begun_anew = wal;
        begun_anew[16..32].fill(0x5A);
        assert_eq!(damaged(&begun_anew), Some(false));
    }
}
