//! The key of a job as text: `kind/subject/opened_by`. Opaque to the UI.

use plumule_journal::content::JobKey;

/// As the UI holds it.
#[must_use]
pub fn text(key: &JobKey) -> String {
    format!("{}/{}/{}", key.kind, key.subject, key.opened_by)
}

/// Back from the UI; none if it is no such key.
#[must_use]
pub fn parse(text: &str) -> Option<JobKey> {
    let mut parts = text.splitn(3, '/');
    let kind = parts.next().filter(|kind| !kind.is_empty())?.to_owned();
    let subject = parts.next()?.parse().ok()?;
    let opened_by = parts.next()?.parse().ok()?;
    Some(JobKey {
        kind,
        subject,
        opened_by,
    })
}
