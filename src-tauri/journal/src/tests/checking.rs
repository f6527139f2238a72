//! Checking the journal: each fault is found and named.

use crate::content::*;
use crate::finding::{Finding, Findings, Step};
use crate::subject::Subject;
use crate::testing::*;
use sha2::{Digest, Sha256};

/// A photo on disk, named by its SHA-256; its name.
fn photo(world: &mut World, bytes: &[u8]) -> String {
    let name: String = Sha256::digest(bytes)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let path = world.home.path().join("journal/photos").join(&name);
    std::fs::write(path, bytes).unwrap();
    let photo = name.clone();
    let taken = PhotoTaken {
        photo,
        taken: None,
        about: None,
    };
    world.at(2, vec![Content::PhotoTaken(taken)]);
    name
}

fn check(world: &World) -> Findings {
    world.journal.check(&mut |_| true)
}

/// Changes the database behind the journal's back, and checks.
fn after(sql: &str) -> Vec<Finding> {
    let world = World::new();
    world.journal.connection().execute_batch(sql).unwrap();
    check(&world).found
}

#[test]
fn a_whole_journal_has_no_findings() {
    let mut world = World::new();
    world.at(3, vec![counted(sowing(20), 5), reading(10.0, 20.0)]);
    let act = world.at(4, vec![counted(sowing(20), 9)]);
    world.undo(4, act);
    photo(&mut world, b"a leaf");
    let before = world.dump();
    let findings = check(&world);
    assert!(findings.all_well(), "{findings:?}");
    assert_eq!(findings.entries, world.journal.count().unwrap());
    assert_eq!(findings.photos, 1);
    assert_eq!(world.dump(), before);
}

#[test]
fn an_altered_line_is_named() {
    let found = after("UPDATE entries SET line = replace(line, 'South', 'North') WHERE nr = 2");
    assert!(found.contains(&Finding::new("entry_altered").number("entry", 2)));
    let found = after("UPDATE entries SET line = '{' WHERE nr = 3");
    assert!(found.contains(&Finding::new("entry_unreadable").number("entry", 3)));
}

#[test]
fn a_column_that_is_not_the_lines_is_named() {
    let found = after("UPDATE entries SET lamport = 99, act = zeroblob(16) WHERE nr = 4");
    let misfiled = Finding::new("entry_misfiled")
        .number("entry", 4)
        .text("columns", "act, lamport");
    assert_eq!(found, [misfiled]);
}

#[test]
fn missing_numbers_are_named() {
    let world = World::new();
    world
        .journal
        .connection()
        .execute_batch("PRAGMA foreign_keys = OFF; DELETE FROM entries WHERE nr IN (1, 4, 5)")
        .unwrap();
    let gap = |first, last| {
        Finding::new("entries_missing")
            .text("device", world.journal.device().to_string())
            .number("first", first)
            .number("last", last)
    };
    let found = check(&world).found;
    assert!(found.contains(&gap(1, 1)), "{found:?}");
    assert!(found.contains(&gap(4, 5)), "{found:?}");
}

#[test]
fn each_projection_is_compared_with_a_rebuild() {
    for (table, sql) in [
        (
            "states",
            "UPDATE states SET alive = 0 WHERE kind = 'tray' AND hex(subject) LIKE '%A'",
        ),
        ("touches", "DELETE FROM touches WHERE subject = x'00'"),
        (
            "readings",
            "INSERT INTO readings VALUES (1, x'01', 0, '{}')",
        ),
        (
            "jobs",
            "INSERT INTO jobs VALUES (1, x'00', 0, x'', 0, '{}')",
        ),
        (
            "amendments",
            "INSERT INTO amendments VALUES (x'', 0, x'', 0, x'', 1)",
        ),
    ] {
        let differs = Finding::new("projection_differs")
            .text("table", table)
            .number("rows", if table == "states" { 2 } else { 1 });
        assert_eq!(after(sql), [differs]);
    }
}

#[test]
fn photos_are_checked_against_their_names() {
    let mut world = World::new();
    let gone = photo(&mut world, b"gone");
    let altered = photo(&mut world, b"altered");
    let photos = world.home.path().join("journal/photos");
    std::fs::remove_file(photos.join(&gone)).unwrap();
    std::fs::write(photos.join(&altered), b"Altered").unwrap();
    std::fs::write(photos.join("half.part"), b"half").unwrap();
    assert_eq!(
        check(&world).found,
        [
            Finding::new("photo_missing").text("photo", gone),
            Finding::new("photo_altered").text("photo", altered),
        ]
    );
}

#[test]
fn the_file_of_a_withdrawn_photo_may_be_gone() {
    let mut world = World::new();
    let photo = photo(&mut world, b"a leaf");
    let path = world.home.path().join("journal/photos").join(photo);
    std::fs::remove_file(path).unwrap();
    let act = world.journal.timeline(&[Subject::Garden], 1).unwrap()[0].act;
    assert!(check(&world).has("photo_missing"));
    let undone = world.undo(3, act);
    assert!(check(&world).all_well());
    world.undo(4, undone);
    assert!(check(&world).has("photo_missing"));
}

#[test]
fn it_tells_how_far_it_is_and_can_be_cancelled_at_each_step() {
    let mut world = World::new();
    photo(&mut world, b"a leaf");
    let mut told = Vec::new();
    let whole = world.journal.check(&mut |progress| {
        told.push(progress.step);
        true
    });
    assert!(whole.all_well());
    for step in [Step::File, Step::Projections, Step::Photos] {
        assert!(told.contains(&step), "{step:?}");
    }
    for stop in 0..told.len() {
        let mut n = 0;
        let findings = world.journal.check(&mut |_| {
            n += 1;
            n <= stop
        });
        assert!(findings.cancelled && !findings.all_well());
        assert_eq!(n, stop + 1);
    }
}

#[test]
fn entries_whose_numbers_are_far_apart_are_all_read() {
    let mut world = World::new();
    let count = world.journal.count().unwrap();
    world
        .journal
        .connection()
        .execute_batch(
            "PRAGMA foreign_keys = OFF;
             UPDATE entries SET nr = nr + 1000000000 WHERE nr > 3;
             PRAGMA foreign_keys = ON;",
        )
        .unwrap();
    world.journal.rebuild().unwrap();
    let findings = world.journal.check(&mut |_| true);
    assert!(findings.all_well(), "{findings:?}");
    assert_eq!(findings.entries, count);
    let stamp = world.stamp(5);
    crate::backup::make(&world.journal, &stamp, &mut |_| true).unwrap();
}

#[test]
fn what_is_taken_in_again_uses_up_no_numbers() {
    let mut world = World::new();
    let lines = world.journal.lines().unwrap();
    for _ in 0..3 {
        let stamp = world.stamp(5);
        let lines = lines.iter().map(String::as_str);
        world.journal.take_in(&stamp, lines).unwrap();
    }
    world.at(6, vec![felt(10, crate::words::Feel::Dry)]);
    assert_eq!(world.journal.last_number().unwrap(), lines.len() as i64 + 1);
}
