//! The projections against those that the entries give when they are made
//! anew in memory.

use crate::error::Error;
use crate::finding::{Finding, Findings};
use crate::store::add::Adding;
use crate::store::walk::{Found, walk};
use crate::store::{open, project};
use rusqlite::Connection;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

pub(super) fn check(db: &Connection, findings: &mut Findings) {
    let anew = match anew(db) {
        Ok(anew) => anew,
        Err(error) => return fail(findings, &error),
    };
    for table in project::TABLES {
        match (rows(db, table), rows(&anew, table)) {
            (Ok(here), Ok(there)) => {
                let differ = here.symmetric_difference(&there).count();
                if differ > 0 {
                    findings.found.push(
                        Finding::new("projection_differs")
                            .text("table", *table)
                            .number("rows", i64::try_from(differ).unwrap_or(i64::MAX)),
                    );
                }
            }
            (Err(error), _) | (_, Err(error)) => fail(findings, &error),
        }
    }
}

fn fail(findings: &mut Findings, error: &Error) {
    findings
        .found
        .push(Finding::new("file_damaged").text("fault", error.to_string()));
}

/// A journal in memory with the entries that are as they were written.
fn anew(db: &Connection) -> Result<Connection, Error> {
    let anew = open::in_memory()?;
    let mut adding = Adding::to(&anew)?;
    let mut failed = Ok(());
    walk(db, &mut |found| {
        if let Found::Row(row) = found
            && let Some(entry) = row.entry.filter(|_| row.hash_right)
        {
            failed = adding.entry(row.nr, &entry, &entry.hash()).map(drop);
        }
        failed.is_ok()
    });
    failed?;
    drop(adding);
    project::rebuild(&anew)?;
    Ok(anew)
}

/// The rows of a table, by their digests.
fn rows(db: &Connection, table: &str) -> Result<BTreeSet<[u8; 32]>, Error> {
    let mut query = db.prepare(&format!("SELECT * FROM {table}"))?;
    let columns = query.column_count();
    let mut found = query.query([])?;
    let mut rows = BTreeSet::new();
    while let Some(row) = found.next()? {
        let mut sum = Sha256::new();
        for column in 0..columns {
            sum.update(format!("{:?};", row.get_ref(column)?));
        }
        rows.insert(sum.finalize().into());
    }
    Ok(rows)
}
