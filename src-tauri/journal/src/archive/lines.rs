//! Lines out of bytes that may be anything: none longer than an entry may be,
//! all of them text.

use crate::entry::MAX_LINE;
use crate::error::{Error, Fault};
use std::io::{self, BufRead, Read};

/// Calls `each` with every line, counted from 1 and without its end; all of
/// them must have one.
///
/// # Errors
/// What `each` fails with, a fault of the lines, or what `failed` makes of an
/// error of reading.
pub(super) fn each_line(
    from: &mut impl BufRead,
    failed: impl Fn(io::Error) -> Error,
    each: &mut dyn FnMut(u64, &str) -> Result<(), Error>,
) -> Result<(), Error> {
    let most = u64::try_from(MAX_LINE).unwrap_or(u64::MAX) + 1;
    let mut line = Vec::new();
    for number in 1.. {
        line.clear();
        let mut one = from.by_ref().take(most);
        if one.read_until(b'\n', &mut line).map_err(&failed)? == 0 {
            break;
        }
        let Some(bytes) = line.strip_suffix(b"\n") else {
            return Err(Fault::line(number, "it does not end").into());
        };
        let text = std::str::from_utf8(bytes).map_err(|error| Fault::line(number, error))?;
        each(number, text)?;
    }
    Ok(())
}
