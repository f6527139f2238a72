//! What a desktop does with windows and signs, on a display without a desktop.

use x11rb::CURRENT_TIME;
use x11rb::connection::Connection as _;
use x11rb::protocol::xproto::{
    AtomEnum, ClientMessageEvent, ConnectionExt as _, EventMask, InputFocus,
};
use x11rb::rust_connection::RustConnection;
use zbus::blocking::Connection;
use zbus::blocking::connection::Builder;

/// Under which names signs stand on the message bus (freedesktop.org,
/// StatusNotifierItem).
const SIGN: &str = "org.kde.StatusNotifierItem";

/// Asks the windows of that title to close, as the cross in a frame does (ICCCM
/// 2.0, 4.2.8.1).
pub fn close_windows(display: &str, title: &str) {
    let (display, windows) = windows(display, title);
    let (protocols, delete) = closing(&display);
    for window in windows {
        let told = ClientMessageEvent::new(32, window, protocols, [delete, 0, 0, 0, 0]);
        let sent = display.send_event(false, window, EventMask::NO_EVENT, told);
        sent.unwrap().check().unwrap();
    }
}

/// Has keys go to the window of that title, as clicking on it does: without it
/// the web view says of nothing that it has the focus.
pub fn focus_window(display: &str, title: &str) {
    let (display, windows) = windows(display, title);
    for window in windows {
        let set = display.set_input_focus(InputFocus::PARENT, window, CURRENT_TIME);
        set.unwrap().check().unwrap();
    }
}

/// The windows of that title that can be closed.
fn windows(display: &str, title: &str) -> (RustConnection, Vec<u32>) {
    let (display, screen) = RustConnection::connect(Some(display)).unwrap();
    let (protocols, delete) = closing(&display);
    let root = display.setup().roots[screen].root;
    let mut windows = display.query_tree(root).unwrap().reply().unwrap().children;
    windows.retain(|window| {
        let (name, text) = (AtomEnum::WM_NAME, AtomEnum::ANY);
        let asked = display.get_property(false, *window, name, text, 0, 64);
        let named = asked
            .unwrap()
            .reply()
            .is_ok_and(|it| it.value == title.as_bytes());
        let asked = display.get_property(false, *window, protocols, AtomEnum::ATOM, 0, 16);
        let closes = asked.unwrap().reply().is_ok_and(|it| {
            it.value32()
                .is_some_and(|mut all| all.any(|it| it == delete))
        });
        named && closes
    });
    (display, windows)
}

/// What a window is told that is to close, and what says so.
fn closing(display: &RustConnection) -> (u32, u32) {
    let atom = |name: &str| {
        let asked = display.intern_atom(false, name.as_bytes()).unwrap();
        asked.reply().unwrap().atom
    };
    (atom("WM_PROTOCOLS"), atom("WM_DELETE_WINDOW"))
}

/// The signs that stand on a message bus, by their names.
pub fn signs(bus: &Connection) -> Vec<String> {
    let names = zbus::blocking::fdo::DBusProxy::new(bus).unwrap();
    let names = names.list_names().unwrap().into_iter();
    let names = names.map(|name| name.to_string());
    names.filter(|name| name.starts_with(SIGN)).collect()
}

/// Presses one.
pub fn press_sign(bus: &Connection, name: &str) {
    let place = (0_i32, 0_i32);
    let pressed = bus.call_method(
        Some(name),
        "/StatusNotifierItem",
        Some(SIGN),
        "Activate",
        &place,
    );
    pressed.unwrap();
}

/// A message bus, to be asked many times.
pub fn on(bus: &str) -> Connection {
    Builder::address(bus).and_then(Builder::build).unwrap()
}
