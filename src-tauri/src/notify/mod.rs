//! Notices: the app says which are wanted and when; here they are put before
//! the grower, and what is answered there comes back.
//!
//! One trait stands for the systems. A desktop shows a notice at once, when
//! our timer says that it is due; a phone keeps them and shows them by itself,
//! also while the app is not running. The journal's device file alone knows
//! what was delivered: the same occurrence never comes twice.

mod answer;
mod timer;
mod watch;

#[cfg(target_os = "android")]
mod android;
#[cfg(desktop)]
mod desktop;
#[cfg(target_os = "ios")]
mod ios;

#[cfg(target_os = "android")]
pub use android::{PACKAGE as ANDROID_PACKAGE, Phone as System, plugin};
pub use answer::Opening;
#[cfg(desktop)]
pub use desktop::{Desktop as System, plugin};
#[cfg(target_os = "ios")]
pub use ios::{Phone as System, plugin};
pub use timer::{DUE_CHANGED, Timer, start};

use plumule_app::Notice;
use std::sync::Arc;

/// Whether notices come through.
#[cfg_attr(
    desktop,
    expect(dead_code, reason = "a desktop does not ask, and never refuses")
)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Permission {
    /// They do.
    Granted,
    /// The person said no, here or in the system's settings.
    Refused,
    /// The person was not asked yet.
    NotAsked,
    /// There is nothing here that shows them.
    Nobody,
}

impl Permission {
    /// Its word in views.
    pub fn word(self) -> &'static str {
        match self {
            Self::Granted => "granted",
            Self::Refused => "refused",
            Self::NotAsked => "ask",
            Self::Nobody => "nobody",
        }
    }
}

/// What stands in the way of notices.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// Whether they come through at all.
    pub permission: Permission,
    /// The system holds this app back to save the battery: they come late.
    pub held_back: bool,
}

/// What a person did with a notice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tap {
    /// Of the notice.
    pub id: i32,
    /// One of [`plumule_app::notices::ANSWERS`], else it was opened.
    pub answer: String,
    /// The tray that the notice was about.
    pub tray: Option<String>,
}

/// A system's way to put notices before the grower. None of these is called
/// on the window's thread: a phone answers on it.
pub trait Delivery: Send + Sync + 'static {
    /// How it stands.
    fn standing(&self) -> Standing;

    /// Asks the person for permission, where the system wants that, and waits
    /// for the answer.
    fn ask(&self) -> Permission;

    /// How many notices the system keeps and shows by itself; none: they are
    /// to be shown by us when they are due.
    fn keeps(&self) -> Option<usize>;

    /// Shows it, where the system keeps them at its time. One with the same id
    /// is replaced. If it cannot be, nothing is shown and `false` is given.
    fn put(&self, notice: &Notice) -> bool;

    /// Takes back notices, shown or kept, by id; those it does not have are
    /// passed over.
    fn take_back(&self, ids: &[i32]);

    /// Calls back with what is done with notices from now on, and with what
    /// was done that started the app.
    fn on_tap(&self, heard: Box<dyn Fn(Tap) + Send + Sync>);
}

/// The system's delivery, as the commands hold it.
pub type Shared = Arc<dyn Delivery>;
