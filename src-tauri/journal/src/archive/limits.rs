//! What an archive may be at most. All are judgement: far above what fifty
//! years of sowing come to (375,000 entries, 150 MB), and low enough that a
//! hostile file costs minutes, not the phone.

/// Entries.
pub const MAX_ENTRIES: u64 = 5_000_000;
/// Bytes of all entries.
pub const MAX_ENTRIES_BYTES: u64 = 2 << 30;
/// Photos.
pub const MAX_PHOTOS: usize = 100_000;
/// Bytes of one photo.
pub const MAX_PHOTO_BYTES: u64 = 64 << 20;
/// Bytes of the manifest: a photo takes about 110 of them.
pub const MAX_MANIFEST_BYTES: u64 = 32 << 20;
/// Bytes of the habits, as they are kept.
pub const MAX_HABITS_BYTES: usize = 4 << 10;
/// Bytes read to learn what members there are, before any is read.
pub const MAX_DIRECTORY_BYTES: u64 = 64 << 20;
/// Greatest work for a passphrase, as the exponent N = 2^n of scrypt: 256 MiB
/// of memory.
pub const MAX_WORK: u8 = 18;
