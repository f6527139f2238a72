//! Answers questions about the mathematics, one JSON object a line.

use std::io::{BufWriter, Write, stdin, stdout};

fn main() -> std::io::Result<()> {
    let mut output = BufWriter::new(stdout().lock());
    plumule_tests::answer_all(&mut stdin().lock(), &mut output)?;
    output.flush()
}
