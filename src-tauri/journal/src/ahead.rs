//! Work that another thread does ahead, handed over in its order.

use std::panic::resume_unwind;
use std::sync::mpsc::sync_channel;
use std::thread;

/// Bytes handed over at once, and how often ahead: enough that neither side
/// stands idle, and little to hold (judgement).
const BYTES: usize = 1 << 16;
const TIMES: usize = 4;

/// Gives a piece, with its size in bytes; false when no more are wanted.
pub(crate) type Give<'g, T> = &'g mut dyn FnMut(T, usize) -> bool;

/// Takes on this thread, piece by piece, what is made on another.
///
/// # Errors
/// What the taking fails with, else the making; what was made before is taken
/// first.
pub(crate) fn ahead<T: Send, E: Send>(
    make: impl FnOnce(Give<T>) -> Result<(), E> + Send,
    mut take: impl FnMut(T) -> Result<(), E>,
) -> Result<(), E> {
    thread::scope(|scope| {
        let (to, from) = sync_channel(TIMES);
        let maker = scope.spawn(move || {
            let (mut pieces, mut held) = (Vec::new(), 0);
            let made = make(&mut |piece, bytes| {
                pieces.push(piece);
                held += bytes;
                held < BYTES || {
                    held = 0;
                    to.send(std::mem::take(&mut pieces)).is_ok()
                }
            });
            // Nobody is there to take it after an error.
            let _ = to.send(pieces);
            made
        });
        for piece in from.into_iter().flatten() {
            take(piece)?;
        }
        maker.join().unwrap_or_else(|panic| resume_unwind(panic))
    })
}

/// The same on this thread: another is not worth its while for little.
///
/// # Errors
/// As [`ahead`].
pub(crate) fn at_once<T, E>(
    make: impl FnOnce(Give<T>) -> Result<(), E>,
    mut take: impl FnMut(T) -> Result<(), E>,
) -> Result<(), E> {
    let mut taken = Ok(());
    let made = make(&mut |piece, _| {
        taken = take(piece);
        taken.is_ok()
    });
    taken.and(made)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hundred(give: Give<u32>) -> Result<(), &'static str> {
        for number in 0..100 {
            if !give(number, BYTES / 2) {
                return Err("not wanted");
            }
        }
        Err("made")
    }

    #[test]
    fn all_is_taken_in_its_order_before_the_makers_error() {
        let mut taken = Vec::new();
        let mut take = |number| {
            taken.push(number);
            Ok(())
        };
        assert_eq!(ahead(hundred, &mut take), Err("made"));
        assert_eq!(at_once(hundred, &mut take), Err("made"));
        assert_eq!(taken, (0..100).chain(0..100).collect::<Vec<_>>());
    }

    #[test]
    fn an_error_of_the_taking_stops_the_making() {
        let mut taken = 0;
        let mut take = |_| {
            taken += 1;
            if taken % 3 == 0 { Err("full") } else { Ok(()) }
        };
        assert_eq!(ahead(hundred, &mut take), Err("full"));
        assert_eq!(at_once(hundred, &mut take), Err("full"));
        assert_eq!(taken, 6);
    }
}
