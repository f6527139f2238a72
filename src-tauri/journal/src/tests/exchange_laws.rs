//! Laws of exchange, for any acts: merging, archives, old backups, and a
//! folder that carries files late, in half, twice and under wrong names,
//! between devices whose clocks are wrong by decades.

use super::laws::{run, steps, take_in};
use crate::content::*;
use crate::id::*;
use crate::stamp::Stamp;
use crate::testing::*;
use crate::words::*;
use crate::{Answer, Journal, Progress, Wish, archive, backup, shared};
use chrono::{Duration, TimeZone, Utc};
use proptest::prelude::*;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

fn on(_: Progress) -> bool {
    true
}

fn lines(journal: &Journal) -> Vec<String> {
    let mut lines = journal.lines().unwrap();
    lines.sort();
    lines
}

/// A device with what another has.
fn joined(entropy: u8, from: &World) -> World {
    let mut world = World::empty(entropy);
    take_in(&mut world, &from.journal.lines().unwrap());
    world
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(16))]

    #[test]
    fn merging_is_commutative_associative_and_idempotent(
        a in steps(10), b in steps(10), c in steps(10),
    ) {
        let mut first = World::new();
        let mut second = joined(0xD0, &first);
        let mut third = joined(0xC0, &first);
        run(&mut first, &a);
        run(&mut second, &b);
        run(&mut third, &c);
        let [a, b, c] = [&first, &second, &third].map(|w| w.journal.lines().unwrap());
        let union = |parts: &[&[String]]| {
            let mut world = World::empty(0xB0);
            for part in parts {
                take_in(&mut world, part);
            }
            (lines(&world.journal), world.states())
        };
        let ab = union(&[&a, &b]).0;
        let bc = union(&[&b, &c]).0;
        prop_assert_eq!(union(&[&a, &b]), union(&[&b, &a]));
        prop_assert_eq!(union(&[&ab, &c]), union(&[&a, &bc]));
        prop_assert_eq!(union(&[&ab, &ab, &a]), union(&[&ab]));
    }

    #[test]
    fn an_archive_restored_or_taken_in_gives_an_equal_journal(acts in steps(24)) {
        let mut here = World::new();
        run(&mut here, &acts);
        let path = super::archives::written(&mut here, 31, None);
        let home = tempfile::tempdir().unwrap();
        archive::restore(home.path(), &stamp(32), &path, None, &mut on).unwrap();
        let journal = Journal::open(home.path(), &stamp(33)).unwrap();
        prop_assert_eq!(journal.lines().unwrap(), here.journal.lines().unwrap());
        prop_assert_eq!(dump(&journal, false), here.dump());
        let mut there = World::empty(0xD0);
        let now = there.stamp(32);
        archive::take_in(&mut there.journal, &now, &path, None, &mut on).unwrap();
        prop_assert_eq!(there.states(), here.states());
        prop_assert_eq!(there.journal.lines().unwrap(), here.journal.lines().unwrap());
    }

    #[test]
    fn a_backup_restored_on_two_devices_and_written_on_both_loses_nothing(
        before in steps(12), left in steps(12), right in steps(12),
    ) {
        let mut origin = World::new();
        run(&mut origin, &before);
        let path = super::archives::written(&mut origin, 31, None);
        let restored = |entropy: u8| {
            World::empty(entropy).reopened(|home| {
                let mut now = stamp(32);
                now.entropy = [entropy; 16];
                archive::restore(home, &now, &path, None, &mut on).unwrap();
            })
        };
        let (mut one, mut two) = (restored(0xD1), restored(0xD2));
        prop_assert_ne!(one.journal.device(), two.journal.device());
        run(&mut one, &left);
        run(&mut two, &right);
        run(&mut origin, &right);
        let mut all: Vec<String> = [&origin, &one, &two]
            .iter()
            .flat_map(|world| world.journal.lines().unwrap())
            .collect();
        all.sort();
        all.dedup();
        let (from_one, from_origin) = (one.journal.lines().unwrap(), origin.journal.lines().unwrap());
        take_in(&mut two, &from_one);
        take_in(&mut two, &from_origin);
        let from_two = two.journal.lines().unwrap();
        take_in(&mut one, &from_two);
        prop_assert_eq!(lines(&one.journal), all.clone());
        prop_assert_eq!(lines(&two.journal), all);
        prop_assert_eq!(one.states(), two.states());
    }

    #[test]
    fn what_is_withdrawn_stays_so_after_an_older_backup_is_taken_in(
        acts in steps(12), gone in any::<prop::sample::Index>(),
    ) {
        let mut world = World::new();
        let acts = run(&mut world, &acts);
        let path = super::archives::written(&mut world, 31, None);
        let all = if acts.is_empty() { Vec::new() } else { vec![acts[gone.index(acts.len())]] };
        for act in &all {
            let now = world.stamp(30);
            // It may be undone already.
            let _ = world.journal.undo(&now, *act, "", true);
        }
        let (before, states) = (lines(&world.journal), world.states());
        let now = world.stamp(31);
        let done = archive::take_in(&mut world.journal, &now, &path, None, &mut on).unwrap();
        prop_assert_eq!(done.report.new, 0);
        prop_assert_eq!(lines(&world.journal), before);
        prop_assert_eq!(&world.states(), &states);
        // The same with a copy that was made by itself.
        let made = backup::make(&world.journal, &now, &mut on).unwrap();
        prop_assert!(backup::look_inside(world.home.path(), &made, &mut on).is_ok());
    }

    #[test]
    fn three_devices_with_wrong_clocks_converge_through_a_folder_and_refuse_nothing(
        doings in prop::collection::vec(doing(), 1..60),
    ) {
        let mut devices = [Phone::new(0xE0), Phone::new(0xD0), Phone::new(0xC0)];
        for doing in doings {
            match doing {
                Doing::Write { who, act, clock } => devices[who].write(act, clock),
                Doing::Sync(who) => devices[who].sync(),
                Doing::Carry { from, to, how, seed } => {
                    let (from, to) = (from, (from + to) % 3);
                    carry(devices[from].folder.path(), devices[to].folder.path(), how, seed);
                }
            }
        }
        // In the end everything arrives.
        for _ in 0..3 {
            for from in 0..3 {
                devices[from].sync();
                for to in 0..3 {
                    if to != from {
                        let own = devices[from].world.journal.device().to_string();
                        let at = devices[to].folder.path().join(&own);
                        copy_all(&devices[from].folder.path().join(&own), &at);
                    }
                }
            }
        }
        for phone in &mut devices {
            phone.sync();
        }
        let written: u64 = devices.iter().map(|phone| phone.written).sum();
        let all = lines(&devices[0].world.journal);
        prop_assert_eq!(all.len() as u64, written + BASE);
        for phone in &mut devices[1..] {
            prop_assert_eq!(&lines(&phone.world.journal), &all);
        }
        let states = devices[0].world.states();
        for phone in &mut devices[1..] {
            prop_assert_eq!(&phone.world.states(), &states);
            let before = phone.world.dump();
            phone.world.journal.rebuild().unwrap();
            prop_assert_eq!(phone.world.dump(), before);
        }
    }
}

/// Entries that `World::new` begins with.
const BASE: u64 = 9;

#[derive(Clone, Copy, Debug)]
enum How {
    Whole,
    Half,
    AsConflict,
}

#[derive(Clone, Copy, Debug)]
enum Doing {
    Write {
        who: usize,
        act: u8,
        clock: u16,
    },
    Sync(usize),
    Carry {
        from: usize,
        to: usize,
        how: How,
        seed: u16,
    },
}

fn doing() -> impl Strategy<Value = Doing> {
    let how = prop_oneof![Just(How::Whole), Just(How::Half), Just(How::AsConflict)];
    prop_oneof![
        3 => (0_usize..3, any::<u8>(), any::<u16>())
            .prop_map(|(who, act, clock)| Doing::Write { who, act, clock }),
        2 => (0_usize..3).prop_map(Doing::Sync),
        3 => (0_usize..3, 1_usize..3, how, any::<u16>())
            .prop_map(|(from, to, how, seed)| Doing::Carry { from, to, how, seed }),
    ]
}

struct Phone {
    world: World,
    folder: TempDir,
    entropy: u8,
    written: u64,
    stamps: u32,
}

impl Phone {
    fn new(entropy: u8) -> Self {
        let world = if entropy == 0xE0 {
            World::new()
        } else {
            World::empty(entropy)
        };
        let folder = tempfile::tempdir().unwrap();
        let own = world.journal.device().to_string();
        fs::write(folder.path().join("own"), own).unwrap();
        Self {
            world,
            folder,
            entropy,
            written: 0,
            stamps: 0,
        }
    }

    /// The first phone says 1970, the second 2099, the third anything.
    fn stamp(&mut self, clock: u16) -> Stamp {
        self.stamps += 1;
        let year = match self.entropy {
            0xE0 => 1970,
            0xD0 => 2099,
            _ => 1970 + i32::from(clock % 160),
        };
        let mut entropy = [self.entropy; 16];
        entropy[..4].copy_from_slice(&self.stamps.to_be_bytes());
        Stamp {
            now: Utc.with_ymd_and_hms(year, 1, 1, 0, 0, 0).unwrap()
                + Duration::minutes(i64::from(clock)),
            zone: chrono_tz::Europe::Berlin,
            entropy,
        }
    }

    /// Something that a grower may well do now; it must not be refused.
    fn write(&mut self, act: u8, clock: u16) {
        let of = sowing(20);
        let number = u32::from(act / 8) % 20 + 1;
        let knows = self
            .world
            .journal
            .sowing(SowingId(id(20)))
            .unwrap()
            .is_some();
        let contents = match act % 8 {
            _ if !knows => vec![Content::PlaceDescribed(place(
                90 + u128::from(self.entropy),
            ))],
            0 => vec![felt(10, Feel::Dry)],
            1 => vec![counted(of, number)],
            2 => vec![counted(of, number + 1), left(of, 1, Leaving::Thinned)],
            3 => vec![reading(8.0, 12.0 + f64::from(act % 9))],
            4 => vec![Content::PacketDescribed(packet(PACKET))],
            5 => vec![Content::PlaceDescribed(place(PLACE))],
            6 => vec![left(batch(30), 1, Leaving::Sold)],
            _ => vec![Content::TrayMoved(TrayMoved {
                tray: TrayId(id(10)),
                place: PlaceId(id(PLACE)),
            })],
        };
        let contents: Vec<_> = match &contents[0] {
            // Only what is there, and known here by now, can be sold.
            Content::Left(_) if !self.can_sell() => vec![felt(10, Feel::Wet)],
            _ => contents,
        };
        let count = contents.len() as u64;
        let wish = Wish {
            contents,
            happened: None,
            hand: String::new(),
            confirmed: true,
        };
        let stamp = self.stamp(clock);
        let answer = self.world.journal.write(&stamp, wish).unwrap();
        assert!(matches!(answer, Answer::Written { .. }));
        self.written += count;
    }

    fn can_sell(&self) -> bool {
        let state = self.world.journal.batch(BatchId(id(30))).unwrap();
        state.is_some_and(|it| it.plants.numbers.there > 0 && it.plants.ended.is_none())
    }

    fn sync(&mut self) {
        let stamp = self.stamp(7);
        let journal = &mut self.world.journal;
        shared::read_others(journal, &stamp, self.folder.path(), &mut on).unwrap();
        shared::write_own(journal, self.folder.path(), &mut on).unwrap();
    }
}

fn copy_all(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for file in fs::read_dir(from).unwrap() {
        let file = file.unwrap();
        if file.file_type().unwrap().is_file() {
            fs::copy(file.path(), to.join(file.file_name())).unwrap();
        }
    }
}

/// What a syncing program may do with one device's files on another: all of
/// them or some, whole, in half, or beside the right name.
fn carry(from: &Path, to: &Path, how: How, seed: u16) {
    for device in fs::read_dir(from).unwrap() {
        let device = device.unwrap();
        let at = to.join(device.file_name());
        // A program does not touch what the device itself is writing.
        if is_own(to, &at) || !device.path().is_dir() {
            continue;
        }
        fs::create_dir_all(&at).unwrap();
        for (n, file) in fs::read_dir(device.path()).unwrap().enumerate() {
            let file = file.unwrap();
            if !file.file_type().unwrap().is_file() || (usize::from(seed) >> (n % 4)) & 1 == 1 {
                continue;
            }
            let bytes = fs::read(file.path()).unwrap();
            let name = file.file_name().into_string().unwrap();
            match how {
                How::Whole => fs::write(at.join(name), bytes).unwrap(),
                How::Half => {
                    let cut = usize::from(seed) % (bytes.len() + 1);
                    fs::write(at.join(name), &bytes[..cut]).unwrap();
                }
                How::AsConflict => {
                    let name = name.replace(".jsonl", " (copy).jsonl");
                    fs::write(at.join(name), bytes).unwrap();
                }
            }
        }
    }
}

/// Whether a folder is the one of the device whose copy of all this is.
fn is_own(folder: &Path, device: &Path) -> bool {
    fs::read_to_string(folder.join("own"))
        .is_ok_and(|own| device.file_name().is_some_and(|name| *name == *own))
}
