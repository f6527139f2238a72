//! Why: not everybody can point. The main job, from a packet to seedlings in the
//! light, is done by keys alone; what has the focus is seen at every stop, it is
//! never lost with an answer, and a sheet holds it and gives it back.

use crate::growing::{add_place, begin, tray};
use crate::real::desk::focus_window;
use crate::real::window::{ENTER, Spot, TAB, until};
use crate::real::{Window, World, story};
use fantoccini::actions::{InputSource, KeyAction, KeyActions};
use serde_json::{Value, json};
use std::cell::RefCell;
use std::collections::BTreeSet;

// The keys that WebDriver presses for these code points (W3C WebDriver, 17.4.2).
const CONTROL: char = '\u{E009}';
const ESCAPE: &str = "\u{E00C}";
const DOWN: &str = "\u{E015}";
const SPACE: &str = " ";

const STOP: &str = include_str!("real/stop.js");

/// More stops than any screen of this story has.
const STOPS: usize = 250;

/// Goes by keys, and notes at which stops that is not to be seen.
struct Hands<'a>(&'a Window, RefCell<BTreeSet<String>>);

impl Hands<'_> {
    /// Presses keys one after the other.
    async fn keys(&self, keys: &str) {
        let mut all = KeyActions::new("keys".into());
        for value in keys.chars() {
            all = all
                .then(KeyAction::Down { value })
                .then(KeyAction::Up { value });
        }
        self.0.client.perform_actions(all).await.unwrap();
    }

    async fn script(&self, script: &str, given: Vec<Value>) -> Value {
        self.0.client.execute(script, given).await.unwrap()
    }

    /// Goes to it, stop by stop; each can be seen.
    async fn to(&self, kind: &str, name: &str, within: &[Spot<'_>]) {
        for moved in 0..STOPS {
            let target = self.0.await_one(kind, name, within).await;
            let target = serde_json::to_value(&target).unwrap();
            let stop = self.script(STOP, vec![target]).await;
            // What was pressed by the pointer before need not be marked.
            if moved > 0 {
                self.note(&stop, name);
            }
            if stop["there"] == json!(true) {
                return;
            }
            self.keys(TAB).await;
        }
        panic!("no way by keys to {kind} {name}")
    }

    fn note(&self, stop: &Value, when: &str) {
        let wrong = stop["wrong"].as_str().unwrap();
        if !wrong.is_empty() {
            self.1.borrow_mut().insert(format!("{wrong} ({when})"));
        }
    }

    async fn press(&self, kind: &str, name: &str, within: &[Spot<'_>]) {
        self.to(kind, name, within).await;
        self.keys(ENTER).await;
    }

    async fn fill(&self, label: &str, words: &str) {
        self.to("field", label, &[]).await;
        let all = KeyActions::new("keys".into())
            .then(KeyAction::Down { value: CONTROL })
            .then(KeyAction::Down { value: 'a' })
            .then(KeyAction::Up { value: 'a' })
            .then(KeyAction::Up { value: CONTROL });
        self.0.client.perform_actions(all).await.unwrap();
        self.keys(words).await;
        until(&format!("{label} holds {words}"), async || {
            (self.0.value(label).await == words).then_some(())
        })
        .await;
    }

    /// Something has the focus, and goes on having it.
    async fn is_somewhere(&self, after: &str) {
        let script =
            "return document.activeElement === document.body ? '' : document.activeElement.tagName";
        until(
            &format!("something has the focus after {after}"),
            async || {
                let had = self.script(script, Vec::new()).await;
                (had != json!("")).then_some(())
            },
        )
        .await;
        let stop = self.script(STOP, vec![Value::Null]).await;
        self.note(&stop, after);
    }

    async fn is_in_a_sheet(&self) -> bool {
        let script = "return document.activeElement.closest('dialog[open]') !== null";
        self.script(script, Vec::new()).await == true
    }
}

#[test]
fn from_packet_to_light_by_keys_alone() {
    story(async |world| {
        // The places are set up as in the other stories; the rest is keys.
        let window = begin(world).await;
        add_place(&window, "Heated propagator", "Warm bench").await;
        add_place(&window, "Windowsill", "Kitchen sill").await;
        focus_window(world.display(), "Plumule");
        let hands = Hands(&window, RefCell::default());

        hands.press("link", "Skip to the page", &[]).await;
        assert_eq!(window.focused().await, "Settings", "the way past the bar");

        add_packet(&hands).await;
        let code = sow(&hands).await;
        let card = tray(&code);
        let feel = [card, ("section", "feel the compost")];
        let look = [card, ("section", "look for seedlings")];

        world.it_is("2026-03-04T08:30:00+01:00");
        hands.press("link", "Round", &[]).await;
        hands.press("button", "moist", &feel).await;
        window.sees(&format!("{code} felt moist")).await;
        window.sees("Nothing is due").await;
        hands.is_somewhere("the compost was felt").await;

        hands.to("button", "Undo", &[]).await;
        hands.keys(SPACE).await;
        window.sees("Undone").await;
        hands.is_somewhere("that was undone").await;
        assert_eq!(window.focused().await, "Bring back");
        hands.keys(ENTER).await;
        window.sees("Nothing is due").await;
        hands.is_somewhere("it was brought back").await;

        until_due(world, &hands, &look, &feel).await;
        hands.to("button", "one more", &look).await;
        for _ in 0..3 {
            hands.keys(SPACE).await;
        }
        until("three are counted", async || {
            (window.value("Up now").await == "3").then_some(())
        })
        .await;
        hands.press("button", "Count", &look).await;
        window.sees(&format!("Counted in {code}: 3")).await;
        hands.is_somewhere("seedlings were counted").await;

        let light = [card, ("section", "into the light")];
        hands.press("button", "Kitchen sill", &light).await;
        window.sees(&format!("{code} moved to Kitchen sill")).await;
        hands.is_somewhere("the tray was moved").await;
        let wrong = hands.1.take();
        assert!(wrong.is_empty(), "{wrong:#?}");
        window.close().await;
    });
}

/// The sheet holds the focus while it is open and gives it back.
async fn add_packet(hands: &Hands<'_>) {
    let window = hands.0;
    hands.press("link", "Seed", &[]).await;
    window.await_one("heading", "Seed", &[]).await;
    hands.is_somewhere("the screen has changed").await;
    hands.press("button", "Add packets", &[]).await;
    window.await_one("button", "Close", &[]).await;
    for _ in 0..20 {
        let stop = hands.script(STOP, vec![Value::Null]).await;
        hands.note(&stop, "in the sheet");
        assert!(hands.is_in_a_sheet().await, "it left the open sheet");
        hands.keys(TAB).await;
    }
    hands.fill("Plant", "Tomato").await;
    hands.fill("Variety", "Ruby Lantern").await;
    hands.fill("Year", "2026").await;
    hands.press("button", "Add this packet", &[]).await;
    window.sees("Tomato ‘Ruby Lantern’ is in.").await;
    hands.is_somewhere("the packet was added").await;
    assert!(hands.is_in_a_sheet().await);
    hands.keys(ESCAPE).await;
    window.has_no("button", "Close").await;
    assert_eq!(window.focused().await, "Add packets", "given back");
}

/// Twelve seeds into all cells of a new tray on the warm bench; the tray's code.
async fn sow(hands: &Hands<'_>) -> String {
    let window = hands.0;
    hands.press("link", "Sow", &[]).await;
    window.await_one("heading", "Sow", &[]).await;
    hands.press("button", "Ruby Lantern", &[]).await;
    window.await_one("button", "Save the sowing", &[]).await;
    hands.is_somewhere("a packet was chosen").await;
    hands.fill("Seeds", "12").await;
    hands.to("choice", "", &[("group", "Where")]).await;
    for _ in 0..2 {
        if !window.is_chosen("Warm bench").await {
            hands.keys(DOWN).await;
        }
    }
    assert!(window.is_chosen("Warm bench").await, "arrows choose");
    hands.press("button", "Save the sowing", &[]).await;
    window.sees("It is in the journal").await;
    hands.is_somewhere("it was sown").await;
    let label = window.await_one("group", "The label", &[]).await;
    let text = label.text().await.unwrap();
    text.split_whitespace().next().unwrap().to_owned()
}

/// Goes round every morning, feels what is to be felt, until the other is due.
async fn until_due(world: &World, hands: &Hands<'_>, due: &[Spot<'_>], feel: &[Spot<'_>]) {
    let window = hands.0;
    for day in 5..=14 {
        world.it_is(&format!("2026-03-{day:02}T08:30:00+01:00"));
        window.sees(&format!(" {day} March, 08:30")).await;
        if window.count("button", "moist", feel).await > 0 {
            hands.press("button", "moist", feel).await;
            window.sees("felt moist").await;
            hands.is_somewhere("the compost was felt").await;
        }
        if window.count("button", "Count", due).await > 0 {
            return;
        }
    }
    panic!("never due. On the screen:\n{}", window.text().await)
}
