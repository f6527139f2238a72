//! The way through the screens of the app, with their sheets open: one list of
//! stops for whoever looks at them. What is pressed is told by the keys of its
//! words, so that it is the same way in every language.

use super::Window;
use super::window::{Spot, until};
use plumule_app::words::{Language, plain_text};
use serde_json::json;

/// A Saturday in spring, at the end of the morning's round.
pub const NOW: &str = "2026-04-18T08:30:00+02:00";

/// Trays of the demo: on time, late, dead, with seedlings that were lost.
const TRAYS: [(&str, &str); 4] = [
    ("demo-propagator", "Slipway"),
    ("demo-shed", "Fogbell"),
    ("demo-propagator", "Night Ferry"),
    ("demo-greenhouse", "Broadsheet"),
];

/// Whoever goes it, and what they do at each stop, which has a name.
pub struct Walk<'a, L> {
    pub window: &'a Window,
    pub language: Language,
    pub look: L,
}

impl<'a, L: AsyncFnMut(&'static str)> Walk<'a, L> {
    /// In British English.
    pub fn new(window: &'a Window, look: L) -> Self {
        Self {
            window,
            language: Language::EnGb,
            look,
        }
    }

    /// From the first start through all of the demo.
    pub async fn through_the_demo(&mut self) {
        self.look("start").await;
        self.press("start-file-do").await;
        self.look("start, from a file").await;
        self.press("start-demo-do").await;
        self.window.await_one("article", "", &[]).await;
        self.await_button("tour-not-now").await;
        self.look("tour").await;
        self.press("tour-never").await;

        self.settings().await;
        self.round().await;
        self.bench().await;
        self.trays().await;
        self.seed().await;
        self.year().await;
        self.at("keep", "keep").await;
        self.at("labels", "labels").await;
        self.at("find", "find").await;
        self.at("search", "search").await;
        let field = self.said("search-field");
        self.window.fill(&field, "lantern").await;
        self.window.await_one("link", "Lantern", &[]).await;
        self.look("search, found").await;
    }

    /// From the first start through a journal in which nothing is yet.
    pub async fn through_an_empty_journal(&mut self) {
        self.press("start-own-do").await;
        self.press("tour-never").await;
        self.look("empty, round").await;
        for (address, screen) in [
            ("settings", "empty, settings"),
            ("sow", "empty, sow"),
            ("trays", "empty, trays"),
            ("seed", "empty, seed"),
            ("seed/now", "empty, seed, to sow now"),
            ("seed/buy", "empty, seed, to buy"),
            ("year", "empty, year"),
            ("keep", "empty, keep"),
            ("labels", "empty, labels"),
            ("search", "empty, search"),
        ] {
            self.at(address, screen).await;
        }
    }

    async fn settings(&mut self) {
        self.go("settings").await;
        self.await_button("place-add").await;
        self.look("settings").await;
        self.sheet("place-add", "settings, a place").await;
        self.press("settings-demo-leave").await;
        self.await_button("settings-demo-stay").await;
        self.look("settings, leaving the demo").await;
        self.press("settings-demo-stay").await;
    }

    async fn round(&mut self) {
        self.go("round").await;
        self.window.await_one("article", "", &[]).await;
        self.look("round").await;
        self.sheet("later-open-for", "round, later").await;
        self.sheet("earlier-open", "round, earlier").await;
        self.sheet("place-read", "round, a reading").await;
        self.sheet("place-heat-off-open", "round, heat off").await;
        self.press("feel-moist").await;
        self.await_button("toast-undo").await;
        self.look("round, answered").await;
        self.press("toast-undo").await;
        self.window.sees(&self.said("toast-undone")).await;
        self.press("toast-put-away").await;
        self.at("paper/round", "paper, the round").await;
        self.at("paper/away", "paper, away").await;
    }

    async fn bench(&mut self) {
        self.go("sow").await;
        let packet = [("line", "")];
        self.window.await_one("button", "", &packet).await;
        self.look("sow, packets").await;
        self.choose("sow-from-other").await;
        self.look("sow, without seed").await;
        self.choose("sow-from-seed").await;
        self.window.press_in(&packet, "").await;
        self.await_button("sow-save").await;
        self.look("sow, the form").await;
        self.press("sow-save").await;
        self.window.sees(&self.said("saved-title")).await;
        self.look("sow, saved").await;
        self.press("toast-put-away").await;
    }

    async fn trays(&mut self) {
        self.go("trays").await;
        self.press("trays-past").await;
        self.look("trays").await;
        for (place, plant) in TRAYS {
            self.go("trays").await;
            let place = self.said(place);
            let line = [("section", place.as_str()), ("line", plant)];
            self.window.follow_in(&line, "").await;
            self.await_heading("tray-timeline").await;
            if plant == "Night Ferry" {
                // Nobody has looked for some days.
                let (late, up) = (self.said("job-it-is-late"), self.said("count-up"));
                let late: [Spot<'_>; 1] = [("section", &late)];
                self.window.fill_in(&late, &up, "0").await;
                self.window.press_in(&late, &self.said("count-count")).await;
                self.press("toast-put-away").await;
            }
            self.look(plant).await;
        }
        self.sheet("plants-lost", "tray, lost some").await;
        self.sheet("plants-pricked_out", "tray, pricked out").await;
        self.sheet("tray-move", "tray, moved").await;
        self.sheet("fix-correct-this", "tray, a line put right")
            .await;
        self.at("tray/nowhere", "tray that is not there").await;
    }

    async fn seed(&mut self) {
        self.go("seed").await;
        self.window
            .await_one("link", &self.said("seed-sow-this"), &[])
            .await;
        self.look("seed").await;
        self.sheet("seed-add", "seed, a packet added").await;
        for (address, screen) in [
            ("seed/now", "seed, to sow now"),
            ("seed/buy", "seed, to buy"),
            ("seed/stocktake", "seed, stocktake"),
            ("seed/import", "seed, from a table"),
        ] {
            self.at(address, screen).await;
        }
        self.go("seed").await;
        self.window
            .await_one("link", &self.said("seed-sow-this"), &[])
            .await;
        self.window.follow_in(&[("line", "")], "").await;
        self.await_button("test-start").await;
        self.look("packet").await;
        self.sheet("seed-edit", "packet, changed").await;
        self.sheet("test-start", "packet, a test").await;
        self.sheet("packet-count", "packet, counted").await;
    }

    async fn year(&mut self) {
        self.go("year").await;
        self.await_button("kept-add").await;
        self.look("year").await;
        self.sheet("plan-add", "year, a plan").await;
        self.sheet("kept-add", "year, plants kept").await;
    }

    /// The words of a key, up to where something is filled in.
    fn said(&self, key: &str) -> String {
        let words = plain_text(key, self.language);
        let before = words.split('{').next().unwrap_or_default().trim();
        assert!(!before.is_empty(), "{key} does not begin with its words");
        before.to_owned()
    }

    async fn press(&self, key: &str) {
        self.window.press(&self.said(key)).await;
    }

    async fn choose(&self, key: &str) {
        self.window.choose(&self.said(key)).await;
    }

    async fn await_button(&self, key: &str) {
        self.window.await_one("button", &self.said(key), &[]).await;
    }

    async fn await_heading(&self, key: &str) {
        self.window.await_one("heading", &self.said(key), &[]).await;
    }

    /// Opens a screen by its link in the bar or the head of another.
    async fn go(&self, screen: &str) {
        self.window
            .follow(&self.said(&format!("nav-{screen}")))
            .await;
        self.await_heading(&format!("{screen}-title")).await;
    }

    /// Goes to an address of the app, and looks once what was there is gone.
    async fn at(&mut self, address: &str, screen: &'static str) {
        let script = "document.querySelector('h1').dataset.left = '';
            location.hash = `#/${arguments[0]}`";
        let address = vec![json!(address)];
        self.window.client.execute(script, address).await.unwrap();
        self.is(screen, "!document.querySelector('h1[data-left]')")
            .await;
        self.look(screen).await;
    }

    /// Opens a sheet by its button, looks, and closes it.
    pub async fn sheet(&mut self, button: &str, sheet: &'static str) {
        self.press(button).await;
        self.await_button("screen-close").await;
        self.look(sheet).await;
        self.press("screen-close").await;
        self.is("no sheet", "!document.querySelector('dialog[open]')")
            .await;
    }

    /// Looks at what is on the screen once nothing more comes.
    pub async fn look(&mut self, screen: &'static str) {
        self.is(screen, "!document.querySelector('[aria-busy=true]')")
            .await;
        let mut before = String::new();
        until(&format!("{screen} is drawn"), async || {
            let now = self.window.text().await;
            let still = !now.is_empty() && now == before;
            before = now;
            still.then_some(())
        })
        .await;
        (self.look)(screen).await;
    }

    async fn is(&self, screen: &str, so: &str) {
        let script = format!("return {so}");
        until(&format!("{screen}: {so}"), async || {
            let said = self.window.client.execute(&script, Vec::new()).await;
            (said.ok()? == true).then_some(())
        })
        .await;
    }
}
