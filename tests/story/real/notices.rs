//! A notification daemon that only remembers what it is asked to show.

use std::collections::HashMap;
use std::sync::{Arc, Mutex};
use zbus::blocking::{Connection, connection};
use zbus::zvariant::OwnedValue;

/// A notice as it arrived.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// By which the daemon tells of it.
    pub id: u32,
    pub title: String,
    pub body: String,
    /// Each with its name before its title.
    pub actions: Vec<String>,
}

/// The daemon, until it is dropped.
pub struct Notices {
    shown: Arc<Mutex<Vec<Shown>>>,
    closed: Arc<Mutex<Vec<u32>>>,
    connection: Connection,
}

const NAME: &str = "org.freedesktop.Notifications";
const PATH: &str = "/org/freedesktop/Notifications";

impl Notices {
    /// Takes the daemon's name on that message bus.
    pub fn on(bus: &str) -> Self {
        let (shown, closed) = (Arc::default(), Arc::default());
        let daemon = Daemon {
            shown: Arc::clone(&shown),
            closed: Arc::clone(&closed),
        };
        let connection = connection::Builder::address(bus)
            .and_then(|builder| builder.name(NAME))
            .and_then(|builder| builder.serve_at(PATH, daemon))
            .and_then(connection::Builder::build);
        Self {
            shown,
            closed,
            connection: connection.unwrap(),
        }
    }

    /// Presses an action of a notice, `default` for the notice itself.
    pub fn press(&self, notice: &Shown, action: &str) {
        let told = self.connection.emit_signal(
            None::<&str>,
            PATH,
            NAME,
            "ActionInvoked",
            &(notice.id, action),
        );
        told.unwrap();
    }

    /// Whether the app took a notice back.
    pub fn is_closed(&self, notice: &Shown) -> bool {
        self.closed.lock().unwrap().contains(&notice.id)
    }

    /// What arrived so far.
    pub fn shown(&self) -> Vec<Shown> {
        self.shown.lock().unwrap().clone()
    }
}

struct Daemon {
    shown: Arc<Mutex<Vec<Shown>>>,
    closed: Arc<Mutex<Vec<u32>>>,
}

/// Desktop Notifications Specification 1.2, section 9.
#[zbus::interface(name = "org.freedesktop.Notifications")]
impl Daemon {
    #[expect(clippy::too_many_arguments, reason = "the specification has eight")]
    fn notify(
        &self,
        _app_name: &str,
        _replaces_id: u32,
        _app_icon: &str,
        summary: &str,
        body: &str,
        actions: Vec<String>,
        _hints: HashMap<String, OwnedValue>,
        _expire_timeout: i32,
    ) -> u32 {
        let mut shown = self.shown.lock().unwrap();
        let id = u32::try_from(shown.len() + 1).unwrap();
        shown.push(Shown {
            id,
            title: summary.to_owned(),
            body: body.to_owned(),
            actions,
        });
        id
    }

    fn get_capabilities(&self) -> Vec<String> {
        vec!["body".to_owned(), "actions".to_owned()]
    }

    fn get_server_information(&self) -> (String, String, String, String) {
        let text = str::to_owned;
        (text("remembered"), text("tests"), text("1"), text("1.2"))
    }

    fn close_notification(&self, id: u32) {
        self.closed.lock().unwrap().push(id);
    }
}
