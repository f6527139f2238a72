//! The sign in the tray of the desktop (freedesktop.org, StatusNotifierItem).
//! Spoken over the message bus alone, so that no library is needed that a
//! desktop without a tray does not have.

use crate::shell::Shell;
use crate::{clock, come_up};
use ksni::blocking::TrayMethods;
use ksni::menu::StandardItem;
use ksni::{Icon, MenuItem, Tray};
use plumule_app::words::{self, Language};
use std::time::Duration;
use tauri::{AppHandle, Manager, Runtime};

/// How often it is tried, and how much longer is waited before each time
/// (judgement: three seconds in all).
const TRIES: u32 = 4;
const PAUSE: Duration = Duration::from_millis(500);

/// Takes the sign down again.
pub type TakeDown = Box<dyn FnOnce() + Send>;

struct Sign<R: Runtime> {
    app: AppHandle<R>,
    /// Of its menu: the bus must not wait for a journal that is busy.
    language: Language,
}

/// Puts it up; none where the desktop has no message bus. A tray that comes
/// later shows it then.
pub fn put_up<R: Runtime>(app: &AppHandle<R>) -> Option<TakeDown> {
    let spoken = app.state::<Shell>();
    let spoken = spoken.ask(|opened, _| Ok(opened.app.units()?.language));
    let language = spoken.unwrap_or_else(|_| clock::language());
    let up = || {
        let app = app.clone();
        let sign = Sign { app, language };
        sign.assume_sni_available(true).spawn().ok()
    };
    // At a login, or under load, a bus may not answer at once.
    let sign = (0..TRIES).find_map(|turn| {
        std::thread::sleep(PAUSE * turn);
        up()
    })?;
    Some(Box::new(move || sign.shutdown().wait()))
}

impl<R: Runtime> Tray for Sign<R> {
    fn id(&self) -> String {
        self.app.config().identifier.clone()
    }

    fn title(&self) -> String {
        self.app.package_info().name.clone()
    }

    fn icon_pixmap(&self) -> Vec<Icon> {
        self.app
            .default_window_icon()
            .map(icon)
            .into_iter()
            .collect()
    }

    fn activate(&mut self, _x: i32, _y: i32) {
        come_up(&self.app);
    }

    fn menu(&self) -> Vec<MenuItem<Self>> {
        let item = |key, activate: fn(&mut Self)| {
            StandardItem {
                label: words::plain_text(key, self.language),
                activate: Box::new(activate),
                ..StandardItem::default()
            }
            .into()
        };
        vec![
            item("sign-open", |sign| come_up(&sign.app)),
            item("sign-quit", |sign| sign.app.exit(0)),
        ]
    }
}

/// Tauri has red, green, blue and opacity; a tray wants the opacity first.
fn icon(image: &tauri::image::Image<'_>) -> Icon {
    let side = |length: u32| i32::try_from(length).unwrap_or(0);
    let mut data = image.rgba().to_vec();
    for dot in data.chunks_exact_mut(4) {
        dot.rotate_right(1);
    }
    Icon {
        width: side(image.width()),
        height: side(image.height()),
        data,
    }
}
