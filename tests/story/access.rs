//! Why: growers see, hear and move each in their own way. Every screen of the
//! app itself, with its sheets open, in every theme, is looked over by axe-core
//! for the rules of WCAG 2.0 to 2.2, A and AA, and for what its makers hold to
//! be good practice. Two planted faults show that it would find one.

use crate::real::walk::{NOW, Walk};
use crate::real::window::until;
use crate::real::{Window, story};
use fantoccini::wd::TimeoutConfiguration;
use serde_json::{Value, json};
use std::time::Duration;

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

/// Looks a window over.
pub struct Eye<'a> {
    window: &'a Window,
    /// In the first all rules are asked; the others differ by their colours.
    pub themes: Vec<String>,
    screens: Vec<&'static str>,
    wrong: Vec<String>,
}

impl<'a> Eye<'a> {
    pub async fn open(window: &'a Window) -> Self {
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

    pub async fn look(&mut self, screen: &'static str) {
        if screen == "settings" {
            self.learn_themes().await;
        }
        let found = self.finds().await;
        let found = found.iter().map(|it| format!("{screen}, {it}"));
        self.wrong.extend(found);
        self.screens.push(screen);
    }

    /// Nothing was wrong, in more than one theme; gives the themes.
    pub fn judge(self) -> Vec<String> {
        let themes = self.themes.join(", ");
        assert!(self.themes.len() >= 2, "too few themes: {themes}");
        assert!(self.wrong.is_empty(), "{}", self.wrong.join("\n"));
        self.themes
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
        let mut walk = Walk::new(&window, async |screen| eye.look(screen).await);
        walk.through_the_demo().await;

        plants_are_found(&mut eye).await;
        let (screens, themes) = (eye.screens.len(), eye.themes.join(", "));
        println!("{screens} screens in {themes}: {}", eye.screens.join("; "));
        eye.judge();
        window.close().await;
    });
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
