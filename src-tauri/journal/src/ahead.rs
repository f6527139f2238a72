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

/// Gives pieces to another thread to work on and takes them back in their
/// order; meanwhile this one gives the next and takes the last.
///
/// # Errors
/// What the giving or the taking fails with first.
pub(crate) fn meanwhile<I: Send, O: Send, E>(
    pieces: impl Iterator<Item = Result<I, E>>,
    work: impl Fn(I) -> O + Send,
    mut take: impl FnMut(O) -> Result<(), E>,
) -> Result<(), E> {
    thread::scope(|scope| {
        let (to, given) = sync_channel(1);
        let (back, from) = sync_channel(1);
        let worker = scope.spawn(move || {
            // Nobody takes any more after an error.
            given
                .into_iter()
                .all(|piece| back.send(work(piece)).is_ok())
        });
        for (number, piece) in pieces.enumerate() {
            // If this fails the worker has panicked, which comes out below.
            let _ = to.send(piece?);
            if number > 0
                && let Ok(done) = from.recv()
            {
                take(done)?;
            }
        }
        drop(to);
        from.into_iter().try_for_each(take)?;
        worker
            .join()
            .map_or_else(|panic| resume_unwind(panic), |_| Ok(()))
    })
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
        assert_eq!(taken, (0..100).collect::<Vec<_>>());
    }

    #[test]
    fn an_error_of_the_taking_stops_the_making() {
        let mut taken = 0;
        let mut take = |_| {
            taken += 1;
            if taken % 3 == 0 { Err("full") } else { Ok(()) }
        };
        assert_eq!(ahead(hundred, &mut take), Err("full"));
        let numbers = || (0..100).map(Ok);
        assert_eq!(
            meanwhile(numbers(), |number| number, &mut take),
            Err("full")
        );
        assert_eq!(taken, 6);
    }

    #[test]
    fn what_is_worked_on_meanwhile_comes_back_in_its_order() {
        for many in [0, 1, 2, 100] {
            let mut taken = Vec::new();
            let pieces = (0..many).map(Ok::<u32, &str>).chain([Err("given")]);
            let took = meanwhile(
                pieces,
                |number| 2 * number,
                |number| {
                    taken.push(number);
                    Ok(())
                },
            );
            assert_eq!(took, Err("given"));
            // The last two are still away when the giving fails.
            let last = many.saturating_sub(1);
            assert_eq!(
                taken,
                (0..last).map(|number| 2 * number).collect::<Vec<_>>()
            );
        }
        let mut sum = 0;
        let pieces = (1..=100).map(Ok::<u32, &str>);
        let took = meanwhile(
            pieces,
            |number| number,
            |number| {
                sum += number;
                Ok(())
            },
        );
        assert_eq!((took, sum), (Ok(()), 5050));
    }
}
