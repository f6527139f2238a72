//! Why: growers see, hear and move each in their own way. Every screen of the
//! app itself, with its sheets open, in every theme, is looked over by axe-core
//! for the rules of WCAG 2.0 to 2.2, A and AA, and for what its makers hold to
//! be good practice. Two planted faults show that it would find one.

use crate::real::window::until;
use crate::real::{Window, story};
use fantoccini::wd::TimeoutConfiguration;
use serde_json::{Value, json};
use std::time::Duration;

/// A Saturday in spring, at the end of the morning's round.
const NOW: &str = "2026-04-18T08:30:00+02:00";

const AXE: &str = "../ui/node_modules/axe-core/axe.min.js";
const RUN: &str = include_str!("real/axe.js");

/// The names that axe-core gives to the rules of WCAG and to its own.
const RULES: [&str; 6] = [
    "wcag2a",
    "wcag2aa",
    "wcag21a",
    "wcag21aa",
    "wcag22aa",
    "best-practice",
];

/// Trays of the demo: on time, late, dead, with seedlings that were lost.
const TRAYS: [(&str, &str); 4] = [
    ("Propagator", "Slipway"),
    ("Shed", "Fogbell"),
    ("Propagator", "Night Ferry"),
    ("Greenhouse", "Broadsheet"),
];

struct Eye<'a> {
    window: &'a Window,
    /// In the first all rules are asked; the others differ by their colours.
    themes: Vec<String>,
    screens: Vec<&'static str>,
    wrong: Vec<String>,
}

impl<'a> Eye<'a> {
    async fn open(window: &'a Window) -> Self {
        let axe = std::fs::read_to_string(AXE).expect("npm ci brings axe-core");
        window.client.execute(&axe, Vec::new()).await.unwrap();
        let patient = TimeoutConfiguration::new(Some(Duration::from_mins(2)), None, None);
        window.client.update_timeouts(patient).await.unwrap();
        Self {
            window,
            themes: vec!["light".into(), "dark".into()],
            screens: Vec::new(),
            wrong: Vec::new(),
        }
    }

    async fn script(&self, script: &str, given: Value) -> Value {
        let client = &self.window.client;
        client.execute(script, vec![given]).await.unwrap()
    }

    async fn wear(&self, theme: &str) {
        let script = "document.documentElement.dataset.theme = arguments[0]";
        self.script(script, json!(theme)).await;
    }

    /// What is wrong with what is on the screen, in each theme.
    async fn finds(&self) -> Vec<String> {
        let mut found = Vec::new();
        for (number, theme) in self.themes.iter().enumerate() {
            self.wear(theme).await;
            let rules = match number {
                0 => json!(RULES),
                _ => json!({ "type": "rule", "values": ["color-contrast"] }),
            };
            let client = &self.window.client;
            let wrong = client.execute_async(RUN, vec![rules]).await.unwrap();
            let wrong = wrong.as_array().into_iter().flatten();
            found.extend(wrong.map(|it| format!("{theme}: {}", it.as_str().unwrap())));
        }
        found
    }

    /// Looks at what is on the screen once nothing more comes.
    async fn look(&mut self, screen: &'static str) {
        let mut before = String::new();
        until(&format!("{screen} is drawn"), async || {
            let now = self.window.text().await;
            let still = !now.is_empty() && now == before;
            before = now;
            still.then_some(())
        })
        .await;
        let found = self.finds().await;
        let found = found.iter().map(|it| format!("{screen}, {it}"));
        self.wrong.extend(found);
        self.screens.push(screen);
    }

    /// Opens a sheet by its button, looks, and closes it.
    async fn look_in(&mut self, button: &str, sheet: &'static str) {
        self.window.press(button).await;
        self.window.await_one("button", "Close", &[]).await;
        self.look(sheet).await;
        self.window.press("Close").await;
        self.window.has_no("button", "Close").await;
    }

    /// Goes to an address of the app, and looks once its words are there.
    async fn look_at(&mut self, address: &str, words: &str, screen: &'static str) {
        self.script("location.hash = arguments[0]", json!(address))
            .await;
        self.window.sees(words).await;
        self.look(screen).await;
    }

    /// Wears every theme that the settings offer, as they do it.
    async fn learn_themes(&mut self) {
        let offered = "const dark = document.querySelector('input[type=radio][value=dark]');
            return [...document.getElementsByName(dark.name)].map((one) => one.value)";
        let offered = self.script(offered, Value::Null).await;
        let offered = offered.as_array().into_iter().flatten();
        let offered = offered.map(|it| it.as_str().unwrap().to_owned());
        self.themes = offered.filter(|it| it != "system").collect();
        let press = "document.querySelector(`input[type=radio][value=${arguments[0]}]`).click()";
        for theme in self.themes.iter().rev() {
            self.script(press, json!(theme)).await;
            let worn = "return document.documentElement.dataset.theme === arguments[0]";
            until(&format!("{theme} is worn"), async || {
                (self.script(worn, json!(theme)).await == true).then_some(())
            })
            .await;
        }
    }
}

#[test]
fn no_screen_breaks_the_rules_of_access() {
    story(async |world| {
        world.it_is(NOW);
        let window = world.open(&[]).await;
        let mut eye = Eye::open(&window).await;
        eye.look("start").await;
        window.press("I have a file").await;
        eye.look("start, from a file").await;
        window.press("Open the demo").await;
        window.await_one("article", "", &[]).await;
        window.go_to_settings().await;
        window.await_one("button", "Add a place", &[]).await;
        eye.learn_themes().await;
        eye.look("settings").await;
        eye.look_in("Add a place", "settings, a place").await;
        window.press("Leave the demo").await;
        window.await_one("button", "Stay in it", &[]).await;
        eye.look("settings, leaving the demo").await;
        window.press("Stay in it").await;

        round(&mut eye).await;
        bench(&mut eye).await;
        trays(&mut eye).await;
        seed(&mut eye).await;
        eye.look_at("#/year", "The years", "year").await;
        eye.look_at("#/keep", "Backup and other devices", "keep")
            .await;
        eye.look_at("#/labels", "Print labels", "labels").await;
        eye.look_at("#/find", "Find a tray by its label", "find")
            .await;

        plants_are_found(&mut eye).await;
        let (screens, themes) = (eye.screens.len(), eye.themes.join(", "));
        println!("{screens} screens in {themes}: {}", eye.screens.join("; "));
        assert!(eye.themes.len() >= 2, "too few themes: {themes}");
        assert!(eye.wrong.is_empty(), "{}", eye.wrong.join("\n"));
        window.close().await;
    });
}

async fn round(eye: &mut Eye<'_>) {
    let window = eye.window;
    window.go("Round").await;
    window.await_one("article", "", &[]).await;
    eye.look("round").await;
    eye.look_in("Later:", "round, later").await;
    eye.look_in("Writing down something earlier?", "round, earlier")
        .await;
    eye.look_in("Read", "round, a reading").await;
    window.press("moist").await;
    window.sees("felt moist").await;
    eye.look("round, answered").await;
    window.press("Undo").await;
    window.sees("Undone").await;
    eye.look_at("#/paper/round", "The round on paper", "paper, the round")
        .await;
    eye.look_at("#/paper/away", "While I am away", "paper, away")
        .await;
}

async fn bench(eye: &mut Eye<'_>) {
    let window = eye.window;
    window.go("Sow").await;
    let packet = [("line", "")];
    window.await_one("button", "", &packet).await;
    eye.look("sow, packets").await;
    window.choose("Without seed").await;
    eye.look("sow, without seed").await;
    window.choose("From seed").await;
    window.press_in(&packet, "").await;
    window.await_one("button", "Save the sowing", &[]).await;
    eye.look("sow, the form").await;
    window.press("Save the sowing").await;
    window.sees("It is in the journal").await;
    eye.look("sow, saved").await;
}

async fn trays(eye: &mut Eye<'_>) {
    let window = eye.window;
    window.go("Trays").await;
    window.press("Past trays").await;
    eye.look("trays, past ones too").await;
    for (place, plant) in TRAYS {
        window.go("Trays").await;
        let line = [("section", place), ("line", plant)];
        window.follow_in(&line, "").await;
        window.await_one("heading", "Journal", &[]).await;
        eye.look(plant).await;
    }
    eye.look_in("Lost some", "tray, lost some").await;
    eye.look_in("Correct:", "tray, a line put right").await;
    eye.look_at("#/tray/nowhere", "All trays", "tray that is not there")
        .await;
}

async fn seed(eye: &mut Eye<'_>) {
    let window = eye.window;
    window.go("Seed").await;
    window.await_one("link", "Sow it:", &[]).await;
    eye.look("seed").await;
    eye.look_in("Add packets", "seed, a packet added").await;
    for (part, words, screen) in [
        ("#/seed/now", "Sow now", "seed, to sow now"),
        ("#/seed/buy", "To buy", "seed, to buy"),
        ("#/seed/stocktake", "Stocktake", "seed, stocktake"),
        ("#/seed/import", "From a table", "seed, from a table"),
    ] {
        eye.look_at(part, words, screen).await;
    }
    window.go("Seed").await;
    window.await_one("link", "Sow it:", &[]).await;
    window.follow_in(&[("line", "")], "").await;
    window
        .await_one("button", "Start a germination test", &[])
        .await;
    eye.look("packet").await;
    eye.look_in("Change", "packet, changed").await;
    eye.look_in("Start a germination test", "packet, a test")
        .await;
    eye.look_in("Count seeds left", "packet, counted").await;
}

/// A button without a name, and words that are pale in the dark alone.
async fn plants_are_found(eye: &mut Eye<'_>) {
    let plant = "const main = document.querySelector('main');
        main.append(document.createElement('button'));
        const pale = document.createElement('p');
        pale.textContent = 'pale';
        pale.style.color = 'light-dark(#000, #333)';
        main.append(pale)";
    eye.script(plant, Value::Null).await;
    let found = eye.finds().await;
    for fault in ["light: button-name", "dark: color-contrast"] {
        let has = found.iter().any(|it| it.starts_with(fault));
        assert!(has, "{fault} is not found: {found:?}");
    }
}
