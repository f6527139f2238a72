//! A notification daemon that only remembers what it is asked to show.

use std::collections::HashMap;
use std::sync::{Arc, Mutex};
use zbus::blocking::{Connection, connection};
use zbus::zvariant::OwnedValue;

/// A notice as it arrived.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    pub title: String,
    pub body: String,
}

/// The daemon, until it is dropped.
pub struct Notices {
    shown: Arc<Mutex<Vec<Shown>>>,
    _connection: Connection,
}

impl Notices {
    /// Takes the daemon's name on that message bus.
    pub fn on(bus: &str) -> Self {
        let shown = Arc::default();
        let daemon = Daemon(Arc::clone(&shown));
        let connection = connection::Builder::address(bus)
            .and_then(|builder| builder.name("org.freedesktop.Notifications"))
            .and_then(|builder| builder.serve_at("/org/freedesktop/Notifications", daemon))
            .and_then(connection::Builder::build);
        Self {
            shown,
            _connection: connection.unwrap(),
        }
    }

    /// What arrived so far.
    pub fn shown(&self) -> Vec<Shown> {
        self.shown.lock().unwrap().clone()
    }
}

struct Daemon(Arc<Mutex<Vec<Shown>>>);

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
        _actions: Vec<String>,
        _hints: HashMap<String, OwnedValue>,
        _expire_timeout: i32,
    ) -> u32 {
        let mut shown = self.0.lock().unwrap();
        shown.push(Shown {
            title: summary.to_owned(),
            body: body.to_owned(),
        });
        u32::try_from(shown.len()).unwrap()
    }

    fn get_capabilities(&self) -> Vec<String> {
        vec!["body".to_owned()]
    }

    fn get_server_information(&self) -> (String, String, String, String) {
        let text = str::to_owned;
        (text("remembered"), text("tests"), text("1"), text("1.2"))
    }

    fn close_notification(&self, _id: u32) {}
}
