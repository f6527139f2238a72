//! The app's window, used as a person does: by what is on the screen.

use super::process::{self, Running};
use fantoccini::elements::{Element, ElementRef};
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, Instant};

/// How long a state may take to come about before the story has failed. It is
/// not a measure of speed: a busy machine may use it up.
const PATIENCE: Duration = Duration::from_secs(60);

/// The key that WebDriver sends for these code points (W3C WebDriver, 17.4.2).
const CONTROL: char = '\u{E009}';
pub const TAB: &str = "\u{E004}";
pub const ENTER: &str = "\u{E007}";

/// The key under which WebDriver hands over elements (W3C WebDriver, 12).
const ELEMENT: &str = "element-6066-11e4-a52e-4f735466cecf";

const FIND: &str = include_str!("find.js");

/// Where to look: a kind of thing and its words.
pub type Spot<'a> = (&'a str, &'a str);

pub struct Window {
    pub client: Client,
    driver: Running,
    /// In the environment of all that was started for it.
    sign: String,
    app: PathBuf,
}

impl Window {
    /// Has the driver open the app.
    pub async fn open(mut driver: Command, app: &Path, args: &[&str], sign: String) -> Self {
        let port = free_port();
        driver.args(["--host=127.0.0.1", &format!("--port={port}")]);
        let mut running = Running::start(&mut driver);
        until("the driver listens", async || {
            // On a port taken meanwhile it would end, and we would speak to
            // someone else's.
            assert!(!running.has_ended(), "WebKitWebDriver ended");
            TcpStream::connect(("127.0.0.1", port)).ok()
        })
        .await;
        let options = json!({ "binary": app, "args": args });
        let Value::Object(wanted) = json!({ "webkitgtk:browserOptions": options }) else {
            unreachable!("an object")
        };
        let client = ClientBuilder::new(HttpConnector::new())
            .capabilities(wanted)
            .connect(&format!("http://127.0.0.1:{port}"))
            .await
            .unwrap();
        let window = Self {
            client,
            driver: running,
            sign,
            app: app.to_owned(),
        };
        window.sees("Plumule|Round|Runde|damaged").await;
        window
    }

    /// Closes the window as a person does, and waits until the app has ended.
    pub async fn close(self) {
        self.client.clone().close().await.unwrap();
        self.ends().await;
    }

    /// Waits until the app has ended.
    pub async fn ends(self) {
        until("the app has ended", async || {
            self.apps().is_empty().then_some(())
        })
        .await;
    }

    /// Ends the app at once, as when the power fails or the system runs short.
    pub fn kill_9(self) {
        let apps = self.apps();
        assert_eq!(apps.len(), 1, "one app should be running");
        for id in apps {
            process::kill_9(id);
        }
        drop(self.driver);
    }

    fn apps(&self) -> Vec<u32> {
        let mut ids = process::with_in_environment(&self.sign);
        ids.retain(|id| process::runs(*id, &self.app));
        ids
    }

    /// Presses a button.
    pub async fn press(&self, name: &str) {
        self.press_in(&[], name).await;
    }

    /// Presses a button in a part of the screen.
    pub async fn press_in(&self, within: &[Spot<'_>], name: &str) {
        self.click("button", name, within).await;
    }

    /// Follows a link.
    pub async fn follow(&self, name: &str) {
        self.follow_in(&[], name).await;
    }

    /// Follows a link in a part of the screen.
    pub async fn follow_in(&self, within: &[Spot<'_>], name: &str) {
        self.click("link", name, within).await;
    }

    /// Opens a screen from the bar.
    pub async fn go(&self, screen: &str) {
        self.follow(screen).await;
        let heading = self.await_one("heading", screen, &[]).await;
        assert!(heading.is_displayed().await.unwrap());
    }

    /// Opens the settings, from the head of another screen.
    pub async fn go_to_settings(&self) {
        if self.count("heading", "Settings", &[]).await == 0 {
            self.follow("Settings").await;
        }
        self.await_one("heading", "Settings", &[]).await;
    }

    /// Whether a box is ticked.
    pub async fn is_ticked(&self, name: &str) -> bool {
        let tick = self.await_one("tick", name, &[]).await;
        tick.is_selected().await.unwrap()
    }

    /// Takes one of several choices.
    pub async fn choose(&self, name: &str) {
        self.click("choice", name, &[]).await;
    }

    /// Ticks a box, or clears it.
    pub async fn tick(&self, name: &str) {
        self.click("tick", name, &[]).await;
    }

    /// Types into a field in place of what is there, and goes on from it.
    pub async fn fill(&self, label: &str, words: &str) {
        self.fill_in(&[], label, words).await;
    }

    pub async fn fill_in(&self, within: &[Spot<'_>], label: &str, words: &str) {
        let keys = format!("{CONTROL}a{CONTROL}{words}{TAB}");
        let what = format!("the field {label} takes {words}");
        self.until(&what, async || {
            let field = self.find("field", label, within).await?;
            self.bring_clear(&field).await?;
            field.click().await.ok()?;
            field.send_keys(&keys).await.ok()
        })
        .await;
    }

    /// Gives a field a day, as `2026-05-16`: how one is typed goes by the system.
    pub async fn fill_day(&self, label: &str, day: &str) {
        let script = "const [field, day] = arguments; field.value = day;
            for (const told of ['input', 'change']) field.dispatchEvent(new Event(told, { bubbles: true }))";
        self.until(&format!("the field {label} takes {day}"), async || {
            let field = self.find("field", label, &[]).await?;
            let field = serde_json::to_value(&field).ok()?;
            self.client
                .execute(script, vec![field, day.into()])
                .await
                .ok()
        })
        .await;
    }

    /// What a field holds.
    pub async fn value(&self, label: &str) -> String {
        let field = self.await_one("field", label, &[]).await;
        field.prop("value").await.unwrap().unwrap_or_default()
    }

    /// Whether a choice is taken.
    pub async fn is_chosen(&self, name: &str) -> bool {
        let choice = self.await_one("choice", name, &[]).await;
        choice.is_selected().await.unwrap()
    }

    /// Picks from a list by the words of the option.
    pub async fn pick(&self, label: &str, option: &str) {
        self.pick_in(&[], label, option).await;
    }

    pub async fn pick_in(&self, within: &[Spot<'_>], label: &str, option: &str) {
        let what = format!("{label}: {option} can be picked");
        let path = format!("./option[contains(normalize-space(.), '{option}')]");
        self.until(&what, async || {
            let list = self.find("field", label, within).await?;
            list.find(Locator::XPath(&path))
                .await
                .ok()?
                .click()
                .await
                .ok()
        })
        .await;
    }

    /// Presses keys wherever the focus is.
    pub async fn keys(&self, keys: &str) {
        if let Ok(focused) = self.client.active_element().await {
            focused.send_keys(keys).await.unwrap();
        }
    }

    /// The words of what has the focus.
    pub async fn focused(&self) -> String {
        let script = "const e = document.activeElement; return e.ariaLabel ?? e.innerText.trim()";
        let words = self.client.execute(script, Vec::new()).await.unwrap();
        words.as_str().unwrap_or_default().to_owned()
    }

    /// The line of text that ends so, once it is there.
    pub async fn await_text(&self, end: &str) -> String {
        self.until(&format!("a line ends with {end}"), async || {
            let text = self.text().await;
            text.lines()
                .find(|line| line.ends_with(end))
                .map(str::to_owned)
        })
        .await
    }

    /// Waits until these words can be read; alternatives are parted by `|`.
    pub async fn sees(&self, words: &str) {
        let wanted: Vec<String> = words.split('|').map(folded).collect();
        self.until(&format!("one reads “{words}”"), async || {
            let text = folded(&self.text().await);
            wanted
                .iter()
                .any(|words| text.contains(words))
                .then_some(())
        })
        .await;
    }

    /// Waits until these words can be read no more.
    pub async fn sees_no_more(&self, words: &str) {
        let wanted = folded(words);
        self.until(&format!("“{words}” is gone"), async || {
            (!folded(&self.text().await).contains(&wanted)).then_some(())
        })
        .await;
    }

    /// Waits for a part of the screen that has all these words in it.
    pub async fn sees_in(&self, within: &[Spot<'_>], words: &[&str]) {
        let Some(((kind, name), outer)) = within.split_last() else {
            panic!("in which part?")
        };
        self.until(&format!("{within:?} has {words:?}"), async || {
            for part in self.all(kind, name, outer).await {
                let text = folded(&part.text().await.ok()?);
                if words.iter().all(|words| text.contains(&folded(words))) {
                    return Some(());
                }
            }
            None
        })
        .await;
    }

    /// All that can be read: of the open sheet if there is one.
    pub async fn text(&self) -> String {
        let script = "return ([...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body).innerText";
        let text = self.client.execute(script, Vec::new()).await;
        text.ok()
            .and_then(|text| text.as_str().map(str::to_owned))
            .unwrap_or_default()
    }

    /// Whether the window is on the screen at all.
    pub async fn is_in_sight(&self) -> bool {
        let script = "return document.visibilityState === 'visible'";
        let seen = self.client.execute(script, Vec::new()).await;
        seen.unwrap() == true
    }

    /// Waits until a picture is drawn.
    pub async fn draws(&self, picture: &str) {
        // One that is not in sight is not loaded.
        let script = format!(
            "const it = document.querySelector('{picture}'); it?.scrollIntoView(); return it?.naturalWidth > 0"
        );
        self.until(&format!("{picture} is drawn"), async || {
            let drawn = self.client.execute(&script, Vec::new()).await.ok()?;
            (drawn == true).then_some(())
        })
        .await;
    }

    /// How many such things are there.
    pub async fn count(&self, kind: &str, name: &str, within: &[Spot<'_>]) -> usize {
        self.all(kind, name, within).await.len()
    }

    /// Waits for the first such thing.
    pub async fn await_one(&self, kind: &str, name: &str, within: &[Spot<'_>]) -> Element {
        let what = format!("there is the {kind} {name} {within:?}");
        self.until(&what, async || self.find(kind, name, within).await)
            .await
    }

    /// Waits until there is no such thing any more.
    pub async fn has_no(&self, kind: &str, name: &str) {
        self.until(&format!("the {kind} {name} is gone"), async || {
            (self.count(kind, name, &[]).await == 0).then_some(())
        })
        .await;
    }

    pub async fn until<T>(&self, what: &str, ask: impl AsyncFnMut() -> Option<T>) -> T {
        match attempt(ask).await {
            Some(answer) => answer,
            None => panic!("not so: {what}. On the screen:\n{}", self.text().await),
        }
    }

    async fn click(&self, kind: &str, name: &str, within: &[Spot<'_>]) {
        let what = format!("the {kind} {name} {within:?} can be pressed");
        self.until(&what, async || {
            let found = self.find(kind, name, within).await?;
            if !found.is_enabled().await.ok()? {
                return None;
            }
            self.bring_clear(&found).await?;
            // What comes in above would have something else pressed.
            let before = found.rectangle().await.ok()?;
            tokio::time::sleep(Duration::from_millis(100)).await;
            if found.rectangle().await.ok()? != before {
                return None;
            }
            found.click().await.ok()
        })
        .await;
    }

    /// Scrolls it away from what sticks to the edge of the screen, as a person
    /// would.
    pub async fn bring_clear(&self, element: &Element) -> Option<()> {
        let script = "arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' })";
        let element = serde_json::to_value(element).ok()?;
        self.client.execute(script, vec![element]).await.ok()?;
        Some(())
    }

    async fn find(&self, kind: &str, name: &str, within: &[Spot<'_>]) -> Option<Element> {
        self.all(kind, name, within).await.into_iter().next()
    }

    /// All such things that are there now, or as soon as the screen is.
    pub async fn all(&self, kind: &str, name: &str, within: &[Spot<'_>]) -> Vec<Element> {
        let given = vec![json!(kind), json!(name), json!(within)];
        let found = attempt(async || {
            let found = self.client.execute(FIND, given.clone()).await.ok()?;
            found.as_array().cloned()
        });
        let found = found.await.into_iter().flatten();
        let ids = found.filter_map(|one| Some(one[ELEMENT].as_str()?.to_owned()));
        ids.map(|id| Element::from_element_id(self.client.clone(), ElementRef::from(id)))
            .collect()
    }
}

/// Waits until there is an answer.
pub async fn until<T>(what: &str, ask: impl AsyncFnMut() -> Option<T>) -> T {
    match attempt(ask).await {
        Some(answer) => answer,
        None => panic!("not so: {what}"),
    }
}

async fn attempt<T>(mut ask: impl AsyncFnMut() -> Option<T>) -> Option<T> {
    let end = Instant::now() + PATIENCE;
    while Instant::now() < end {
        if let Some(answer) = ask().await {
            return Some(answer);
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    None
}

fn folded(text: &str) -> String {
    text.split_whitespace()
        .collect::<Vec<_>>()
        .join(" ")
        .to_lowercase()
}

fn free_port() -> u16 {
    let held = TcpListener::bind(("127.0.0.1", 0)).unwrap();
    held.local_addr().unwrap().port()
}
