//! Why: what is on the screen only once something went wrong, or is asked, is
//! read by the same growers: photos, the question before a line is withdrawn
//! on which others build, a damaged journal on its way back.

use crate::access::Eye;
use crate::growing::{open_tray, tomatoes};
use crate::keeping::keep;
use crate::photos::{choose, photo};
use crate::real::walk::Walk;
use crate::real::{World, story};
use std::fs;

#[test]
fn nor_does_what_is_rarely_there() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        let mut eye = Eye::open(&window).await;
        let mut walk = Walk::new(&window, async |screen| eye.look(screen).await);
        window.go_to_settings().await;
        walk.look("settings").await;
        photos(&mut walk, world, &code).await;
        question(&mut walk, world, &code).await;
        keep(&window).await;
        window.press("Back up now").await;
        window.sees("Backed up and read back").await;
        let themes = eye.judge();
        window.close().await;

        let journal = world.journals().join("own/journal");
        for name in ["journal.db", "journal.db-wal"] {
            fs::write(journal.join(name), b"spilt over").unwrap();
        }
        let window = world.open(&[]).await;
        let mut eye = Eye::open(&window).await;
        eye.themes = themes;
        let mut walk = Walk::new(&window, async |screen| eye.look(screen).await);
        let back = "Bring the journal back";
        window.await_one("button", back, &[]).await;
        walk.look("a damaged journal").await;
        window.press(back).await;
        window.sees("The journal is back").await;
        walk.look("a journal that is back").await;
        window.press("Open it").await;
        open_tray(&window, &code).await;
        eye.judge();
        window.close().await;
    });
}

async fn photos<L: AsyncFnMut(&'static str)>(walk: &mut Walk<'_, L>, world: &World, code: &str) {
    let window = walk.window;
    let file = photo(&world.saved());
    window.go("Round").await;
    open_tray(window, code).await;
    choose(window, "Choose a photo", &file).await;
    window.sees("Photo taken").await;
    window.press("Photo of").await;
    window.await_one("button", "Larger", &[]).await;
    window.draws("dialog img").await;
    walk.look("photo, whole").await;
    window.press("Larger").await;
    walk.look("photo, larger").await;
    window.press("Close").await;
    window.has_no("button", "Larger").await;

    window.go("Sow").await;
    window.press("Photograph now, name later").await;
    choose(window, "Choose a photo", &file).await;
    window.await_one("button", "Name it", &[]).await;
    walk.look("sow, a photo to name").await;
    walk.sheet("photo-name", "photo, named").await;
}

async fn question<L: AsyncFnMut(&'static str)>(walk: &mut Walk<'_, L>, world: &World, code: &str) {
    let window = walk.window;
    world.it_is("2026-03-09T08:30:00+01:00");
    open_tray(window, code).await;
    let look = [("section", "look for seedlings")];
    window.fill_in(&look, "Up now", "3").await;
    window.press_in(&look, "Count").await;
    window.sees(&format!("Counted in {code}: 3")).await;
    window.press(&format!("Withdraw: Sown in {code}")).await;
    window.sees("Withdraw this line?").await;
    walk.look("tray, a line withdrawn").await;
    window.press("Withdraw").await;
    window.sees("Is that right?").await;
    walk.look("tray, the question about it").await;
    window.press("No, go back").await;
    window.sees_no_more("Is that right?").await;
    window.press("Close").await;
}
