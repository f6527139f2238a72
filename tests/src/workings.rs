//! Questions about the mathematics as JSON Lines: one object a line in, one a
//! line out, in the same order. A wrong question is answered by an error object
//! and the next line is read all the same.

mod question;

use question::WrongQuestion;
use serde_json::{Value, json};
use std::io::{self, BufRead, Read, Write};

/// The longest line that is read, in bytes.
const LONGEST_LINE: u64 = 1 << 20;

/// Answers every line of `input` on `output`, each as soon as it is read.
///
/// # Errors
///
/// Only where reading or writing itself fails; a wrong question is an answer.
pub fn answer_all(input: &mut impl BufRead, output: &mut impl Write) -> io::Result<()> {
    let mut line = Vec::new();
    loop {
        line.clear();
        if input
            .by_ref()
            .take(LONGEST_LINE + 1)
            .read_until(b'\n', &mut line)?
            == 0
        {
            return Ok(());
        }
        let found = if line.last() != Some(&b'\n') && line.len() as u64 > LONGEST_LINE {
            input.skip_until(b'\n')?;
            Err(WrongQuestion::TooLong)
        } else {
            answer(&line)
        };
        let answer = found.unwrap_or_else(
            |wrong| json!({"error": {"code": wrong.code(), "message": wrong.to_string()}}),
        );
        writeln!(output, "{answer}")?;
        output.flush()?;
    }
}

fn answer(line: &[u8]) -> Result<Value, WrongQuestion> {
    let text = std::str::from_utf8(line).map_err(|_| WrongQuestion::NotUtf8)?;
    question::answer(serde_json::from_str(text).map_err(WrongQuestion::NotJson)?)
}
