//! The passphrase: the age format (<https://age-encryption.org/v1>) around the
//! whole archive, so that any program for that format opens it.
//!
//! The one thing under the shell that takes chance from the system: a key must
//! be nobody's to foresee. No entry depends on it.

use crate::archive::limits::MAX_WORK;
use crate::error::{Error, Fault};
use crate::files::at;
use age::secrecy::SecretString;
use age::{DecryptError, Decryptor, Encryptor, scrypt, stream};
use std::fs::File;
use std::io::{self, BufReader, BufWriter, Read, Seek, Write};
use std::path::Path;

/// How a sealed file begins.
const BEGINS: &[u8] = b"age-encryption.org/";
/// Work for a passphrase, N = 2^17 with r = 8: what OWASP's cheat sheet on
/// storing passwords asks of scrypt at least (from memory).
const WORK: u8 = 17;

/// A file that can be read anywhere.
pub(super) trait Source: Read + Seek + Send {}
impl<T: Read + Seek + Send> Source for T {}

fn secret(passphrase: &str) -> Result<SecretString, Error> {
    if passphrase.is_empty() {
        return Err(Fault::PassphraseEmpty.into());
    }
    Ok(SecretString::from(passphrase.to_owned()))
}

pub(super) fn is_sealed(path: &Path) -> Result<bool, Error> {
    let mut begins = Vec::new();
    let most = u64::try_from(BEGINS.len()).unwrap_or(0);
    let file = File::open(path).map_err(at(path))?;
    file.take(most).read_to_end(&mut begins).map_err(at(path))?;
    Ok(begins == BEGINS)
}

/// Opens a file, through its seal if it has one.
pub(super) fn open(
    path: &Path,
    passphrase: Option<&str>,
) -> Result<(Box<dyn Source>, bool), Error> {
    let sealed = is_sealed(path)?;
    let file = BufReader::new(File::open(path).map_err(at(path))?);
    if !sealed {
        return Ok((Box::new(file), false));
    }
    let passphrase = passphrase.ok_or(Fault::PassphraseWanted)?;
    let mut key = scrypt::Identity::new(secret(passphrase)?);
    key.set_max_work_factor(MAX_WORK);
    let opened = Decryptor::new_buffered(file)
        .and_then(|sealed| sealed.decrypt(std::iter::once(&key as &dyn age::Identity)))
        .map_err(|error| fault(error, path))?;
    Ok((Box::new(opened), true))
}

fn fault(error: DecryptError, path: &Path) -> Error {
    match error {
        DecryptError::DecryptionFailed | DecryptError::KeyDecryptionFailed => {
            Fault::PassphraseWrong.into()
        }
        DecryptError::ExcessiveWork { .. } => Fault::TooLarge("work").into(),
        // For the key of another person, not a passphrase.
        DecryptError::NoMatchingKeys => Fault::NotAnArchive.into(),
        DecryptError::Io(error) if error.kind() != io::ErrorKind::UnexpectedEof => at(path)(error),
        other => Fault::damaged("seal", other).into(),
    }
}

/// A file being written, through a seal if it gets one.
pub(super) enum Sink {
    Plain(BufWriter<File>),
    Sealed(Box<stream::StreamWriter<BufWriter<File>>>),
}

impl Sink {
    pub fn to(path: &Path, passphrase: Option<&str>) -> Result<Self, Error> {
        let secret = passphrase.map(secret).transpose()?;
        let file = BufWriter::new(File::create(path).map_err(at(path))?);
        let Some(secret) = secret else {
            return Ok(Self::Plain(file));
        };
        let mut key = scrypt::Recipient::new(secret);
        key.set_work_factor(WORK);
        let sealed = Encryptor::with_recipients(std::iter::once(&key as &dyn age::Recipient))
            .map_err(io::Error::other)
            .and_then(|sealing| sealing.wrap_output(file))
            .map_err(at(path))?;
        Ok(Self::Sealed(Box::new(sealed)))
    }

    /// Writes what is still held back.
    pub fn finish(self) -> io::Result<()> {
        let mut file = match self {
            Self::Plain(file) => file,
            Self::Sealed(sealed) => sealed.finish()?,
        };
        file.flush()
    }
}

impl Write for Sink {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        match self {
            Self::Plain(file) => file.write(bytes),
            Self::Sealed(sealed) => sealed.write(bytes),
        }
    }

    fn flush(&mut self) -> io::Result<()> {
        match self {
            Self::Plain(file) => file.flush(),
            Self::Sealed(sealed) => sealed.flush(),
        }
    }
}
