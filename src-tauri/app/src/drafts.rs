//! What was typed and not yet written: kept on the device under a name, so
//! that it is there again when the system ended the app meanwhile.

use crate::App;
use crate::error::AppError;

/// Longest name of a draft, bytes: a word and an id.
const NAME: usize = 100;
/// Longest draft, bytes: the longest note, and all a form has beside it.
const TEXT: usize = 1 << 18;

impl App {
    /// A draft as it was kept; none if there is none.
    ///
    /// # Errors
    /// If the name is none or the device's file cannot be read.
    pub fn draft(&self, name: &str) -> Result<Option<String>, AppError> {
        Ok(self.device.get(&key(name)?)?)
    }

    /// Keeps a draft, or with none forgets it; on disk when it returns.
    ///
    /// # Errors
    /// If the name is none, the text is too long or it cannot be kept.
    pub fn keep_draft(&self, name: &str, text: Option<&str>) -> Result<(), AppError> {
        let key = key(name)?;
        match text {
            Some(text) if text.len() > TEXT => return Err(AppError::plain("draft_too_long")),
            Some(text) => self.device.set(&key, text)?,
            None => self.device.forget(&key)?,
        }
        Ok(())
    }
}

/// Drafts are apart from the habits.
fn key(name: &str) -> Result<String, AppError> {
    let plain = |it: char| it.is_ascii_alphanumeric() || "-_:".contains(it);
    if name.is_empty() || name.len() > NAME || !name.chars().all(plain) {
        return Err(AppError::bad_request(name));
    }
    Ok(format!("draft:{name}"))
}
