//! Mutations of bytes that are mostly JSON, or a zip.

use crate::chance::Chance;

/// What numbers, lengths and texts are set to.
const WORDS: &[&str] = &[
    "0",
    "-1",
    "1",
    "255",
    "65535",
    "4294967295",
    "9007199254740992",
    "9007199254740993",
    "9223372036854775807",
    "18446744073709551616",
    "1e308",
    "-0.0",
    "null",
    "true",
    "\"\"",
    "[]",
    "{}",
    "\"2026-02-30\"",
    "\"+262142-12-31T23:59:59\"",
    "\"-262143-01-01T00:00:00\"",
    "\"../../x\"",
    "\"\\u0000\"",
    "\"\\ud800\"",
    "\u{feff}",
    "\r",
    "\n",
    "\"amended\"",
    "\"content\":null",
    "\"entries.jsonl\"",
    "photos/",
    "..\\\\",
    "PK\u{3}\u{4}",
    "PK\u{1}\u{2}",
];

fn at(chance: &mut Chance, length: usize) -> usize {
    usize::try_from(chance.below(length as u64 + 1)).unwrap()
}

/// A range of an input, mostly a short one.
fn range(chance: &mut Chance, length: usize) -> std::ops::Range<usize> {
    let from = at(chance, length);
    let most = if chance.below(4) == 0 {
        length - from
    } else {
        (length - from).min(16)
    };
    from..from + at(chance, most)
}

/// The JSON value, or anything else between two marks, around a place.
fn token(bytes: &[u8], place: usize) -> std::ops::Range<usize> {
    let mark = |byte: &u8| b",:{}[]\n".contains(byte);
    let before = bytes[..place].iter().rposition(mark).map_or(0, |at| at + 1);
    let after = bytes[place..].iter().position(mark);
    before..after.map_or(bytes.len(), |at| place + at)
}

/// One to eight mutations of one of the inputs.
pub(super) fn mutated(of: &[Vec<u8>], chance: &mut Chance) -> Vec<u8> {
    let any = |chance: &mut Chance| &of[usize::try_from(chance.below(of.len() as u64)).unwrap()];
    let mut bytes = any(chance).clone();
    for _ in 0..=chance.below(8) {
        let length = bytes.len();
        match chance.below(11) {
            0 if length > 0 => bytes[at(chance, length - 1)] ^= 1 << chance.below(8),
            1 if length > 0 => bytes[at(chance, length - 1)] = chance.draw().to_le_bytes()[0],
            2 => drop(bytes.drain(range(chance, length))),
            3 => {
                let copy = bytes[range(chance, length)].to_vec();
                let times = if chance.below(20) == 0 { 500 } else { 1 };
                let to = at(chance, length);
                bytes.splice(to..to, copy.repeat(times));
            }
            4 | 5 => {
                let token = token(&bytes, at(chance, length));
                let word = WORDS[usize::try_from(chance.below(WORDS.len() as u64)).unwrap()];
                bytes.splice(token, word.bytes());
            }
            6 | 7 => {
                // A token of the same or another input.
                let other = any(chance);
                let from = token(other, at(chance, other.len()));
                let to = token(&bytes, at(chance, length));
                bytes.splice(to, other[from].iter().copied());
            }
            8 => {
                let other = any(chance);
                let from = range(chance, other.len());
                let to = range(chance, length);
                bytes.splice(to, other[from].iter().copied());
            }
            9 => bytes.truncate(at(chance, length)),
            _ => {
                // Four bytes of a length or an offset.
                let place = at(chance, length);
                let number = [0, 1, u32::MAX, 0x7fff_ffff, 0xffff][chance.below(5) as usize];
                for (byte, new) in bytes[place..].iter_mut().zip(number.to_le_bytes()) {
                    *byte = new;
                }
            }
        }
    }
    bytes
}
