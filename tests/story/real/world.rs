//! A world of its own for each story: home, display, message bus and clock.

use super::process::{self, Running};
use super::window::Window;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::{env, fs};
use tempfile::TempDir;

/// The app's own name for its folder, in `tauri.conf.json`.
const IDENTIFIER: &str = "garden.plumule.journal";

pub struct World {
    folder: TempDir,
    display: String,
    bus: String,
    zone: String,
    language: String,
    _display: Running,
    _bus: Running,
}

impl World {
    /// Starts a display and a message bus that nobody else uses, on a system of
    /// this zone and language.
    pub fn new(zone: &str, language: &str) -> Self {
        let folder = tempfile::tempdir().unwrap();
        for part in ["home", "data", "config", "cache", "state", "run", "saved"] {
            fs::create_dir(folder.path().join(part)).unwrap();
        }
        let mut xvfb = Command::new("Xvfb");
        xvfb.args(["-displayfd", "1", "-screen", "0", "1280x1024x24"])
            .args(["-nolisten", "tcp"])
            .stderr(Stdio::null());
        let (_display, number) = Running::start_and_hear(&mut xvfb);
        assert!(!number.is_empty(), "Xvfb has no display");
        let address = format!("--address=unix:dir={}", folder.path().join("run").display());
        let mut bus = alone(Command::new("dbus-daemon"), folder.path());
        bus.args(["--session", "--nofork", "--print-address", &address])
            .stderr(Stdio::null());
        let (_bus, bus) = Running::start_and_hear(&mut bus);
        assert!(!bus.is_empty(), "dbus-daemon has no address");
        Self {
            display: format!(":{number}"),
            bus,
            zone: zone.to_owned(),
            language: format!("{language}.UTF-8"),
            folder,
            _display,
            _bus,
        }
    }

    /// Sets the clock (RFC 3339), in the zone of this world. The app sees one
    /// time or the other, never half of it.
    pub fn it_is(&self, instant: &str) {
        let part = self.folder.path().join("clock.part");
        fs::write(&part, format!("{instant}\n{}\n", self.zone)).unwrap();
        fs::rename(part, self.folder.path().join("clock")).unwrap();
    }

    /// Opens the app in its window.
    pub async fn open(&self, args: &[&str]) -> Window {
        let driver = self.here(Command::new("WebKitWebDriver"));
        Window::open(driver, &app(), args, self.sign()).await
    }

    /// Starts the app once more while it runs, as from the desktop's menu.
    pub fn open_again(&self) {
        let again = self.here(Command::new(app())).output().unwrap();
        assert!(again.status.success(), "{again:?}");
    }

    /// The program with what this world gives it.
    fn here(&self, program: Command) -> Command {
        let mut here = alone(program, self.folder.path());
        here.env("DISPLAY", &self.display)
            .env("DBUS_SESSION_BUS_ADDRESS", &self.bus)
            .env("LANG", &self.language)
            .env("GDK_BACKEND", "x11")
            .env("NO_AT_BRIDGE", "1")
            .env("LIBGL_ALWAYS_SOFTWARE", "1")
            .env("WEBKIT_DISABLE_DMABUF_RENDERER", "1")
            .env("TAURI_WEBVIEW_AUTOMATION", "true")
            .env("PLUMULE_TEST_CLOCK", self.folder.path().join("clock"))
            .env("PLUMULE_TEST_SAVE", self.saved())
            .env("PLUMULE_TEST_CHOOSE", self.chosen());
        here
    }

    /// What the display shows in its upper left corner, where the window stands,
    /// as a PNG. Not the driver's own picture: that never comes while the web
    /// view is automated on a display without a window manager.
    pub fn picture(&self, (width, height): (u32, u32)) -> Vec<u8> {
        let mut import = Command::new("import");
        import
            .args(["-display", &self.display, "-window", "root"])
            .args([
                "-crop",
                &format!("{width}x{height}+0+0"),
                "+repage",
                "png:-",
            ]);
        import.output().unwrap().stdout
    }

    /// The folder that the app saves files to.
    pub fn saved(&self) -> PathBuf {
        self.folder.path().join("saved")
    }

    /// The file that is chosen where the app asks for one.
    pub fn chosen(&self) -> PathBuf {
        self.folder.path().join("chosen")
    }

    /// The display's name.
    pub fn display(&self) -> &str {
        &self.display
    }

    /// Where the message bus listens.
    pub fn bus(&self) -> &str {
        &self.bus
    }

    /// The file by which the desktop starts the app at login.
    pub fn at_login(&self) -> PathBuf {
        let folder = self.folder.path().join("config").join("autostart");
        folder.join(format!("{IDENTIFIER}.desktop"))
    }

    /// The folder in which the app keeps its journals.
    pub fn journals(&self) -> PathBuf {
        self.folder.path().join("data").join(IDENTIFIER)
    }

    /// Asserts that nothing was written but to the folders made for it.
    pub fn assert_hermetic(&self) {
        let home = self.folder.path().join("home");
        let left: Vec<_> = fs::read_dir(home)
            .unwrap()
            .map(|entry| entry.unwrap().file_name())
            .collect();
        assert!(left.is_empty(), "written to the home folder: {left:?}");
        assert!(self.journals().is_dir(), "the journals are elsewhere");
    }

    fn sign(&self) -> String {
        format!("HOME={}", self.folder.path().display())
    }
}

impl Drop for World {
    fn drop(&mut self) {
        // What the app started may outlive it by a moment; the folder can only
        // go when it is gone.
        for id in process::with_in_environment(&self.sign()) {
            process::kill_9(id);
        }
    }
}

/// The app that is driven: the one named by `PLUMULE_APP`, else the debug
/// build of this workspace.
fn app() -> PathBuf {
    let usual = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/debug/plumule");
    let named = env::var_os("PLUMULE_APP").map_or(usual, PathBuf::from);
    match named.canonicalize() {
        Ok(app) => app,
        Err(e) => panic!(
            "{}: {e}\nBuild it with: cargo build -p plumule --features test-hooks",
            named.display()
        ),
    }
}

/// The program with nothing of our environment but the path.
fn alone(mut program: Command, folder: &Path) -> Command {
    program.env_clear();
    program.env("PATH", env::var_os("PATH").unwrap_or_default());
    program.env("LANG", "C.UTF-8");
    for (name, part) in [
        ("HOME", "home"),
        ("XDG_DATA_HOME", "data"),
        ("XDG_CONFIG_HOME", "config"),
        ("XDG_CACHE_HOME", "cache"),
        ("XDG_STATE_HOME", "state"),
        ("XDG_RUNTIME_DIR", "run"),
    ] {
        program.env(name, folder.join(part));
    }
    program
}
