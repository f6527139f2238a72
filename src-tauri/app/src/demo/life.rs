//! The life of what was raised, day by day from sowing to yesterday.

use super::chance::Chance;
use super::diary::Diary;
use super::plans;
use super::scenario::{Kept, Raise, Then, Where};
use super::weather;
use plumule_agronomy::{Curve, crops, day_temperature_at};
use plumule_journal::content::{
    Content, Counted, CoverChanged, DugUp, Felt, Leaving, Left, Noted, OfPlants, OfSowing, OfTray,
    Part, Seeds, Sown, TrayDescribed, TrayMoved, Treatment, Up, WentOn,
};
use plumule_journal::id::{BatchId, PacketId, SowingId, TrayId};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Compost, Container, Feel, Step, Watering};

/// Spread of ln progress among the seeds of a sowing, as the scale of a
/// logistic distribution: another shape and width than the forecasts take
/// (judgement).
const SCALE: f64 = 0.13;

/// Days to emergence, at 20 °C, of a crop that is not in the crop book.
const STRANGER_DAYS: f64 = 9.0;

/// Plants of this life that stand in one tray.
struct Group {
    of: Plants,
    tray: TrayId,
    place: Where,
    /// What the journal takes to be there.
    there: u32,
    hardening: bool,
}

struct Life<'a> {
    diary: &'a mut Diary,
    raise: &'a Raise,
    /// Name for ids, the same every time.
    name: String,
    sowing: SowingId,
    chance: Chance,
    groups: Vec<Group>,
    /// Progress at which each living seed comes up.
    coming: Vec<f64>,
    progress: f64,
    /// Last counted.
    counted: Option<u32>,
    /// The sowing has gone on or been thinned: no more counts.
    gone_on: bool,
    made: u32,
}

/// Writes down the life of one sowing.
pub(super) fn play(diary: &mut Diary, raise: &Raise, index: usize) {
    let name = format!("{} {} {}", raise.packet, raise.day, raise.place as u32);
    let sowing = SowingId(diary.id(&format!("sowing {index} {name}")));
    let mut life = Life {
        diary,
        raise,
        name,
        sowing,
        chance: Chance::new(index as u64),
        groups: Vec::new(),
        coming: Vec::new(),
        progress: 0.0,
        counted: None,
        gone_on: false,
        made: 0,
    };
    life.sow();
    for day in raise.day + 1..0 {
        if life.groups.is_empty() {
            break;
        }
        life.day(day);
    }
}

impl Life<'_> {
    fn sow(&mut self) {
        let raise = self.raise;
        let (tray, cells) = self.bed();
        let living = match raise.kept {
            Kept::Well => 0.86,
            Kept::Wet => 0.45,
            Kept::Old => 0.34,
            Kept::Dead => 0.0,
        };
        let slow = self.chance.about(0.16) + if raise.kept == Kept::Old { 0.25 } else { 0.0 };
        for _ in 0..raise.seeds {
            let (lives, share) = (self.chance.happens(living), self.chance.share());
            if lives {
                let logit = (share / (1.0 - share)).ln();
                self.coming.push((slow + SCALE * logit).exp());
            }
        }
        let packet = PacketId(self.diary.id(raise.packet));
        let crop = self.crop();
        let plan = plans::answered(self.diary, raise);
        self.say(
            raise.day,
            (17, 30),
            Content::Sown(Sown {
                sowing: self.sowing,
                packet,
                tray,
                cells: (cells.0..cells.0 + cells.1).collect(),
                seeds: if raise.seeds > 50 {
                    Seeds::About(raise.seeds)
                } else {
                    Seeds::Exact(raise.seeds)
                },
                depth_mm: crop.map(|crop| crop.depth_mm.0.midpoint(crop.depth_mm.1).round()),
                wanted: Some(raise.seeds * 2 / 3),
                again_of: None,
                treatment: Treatment::default(),
                plan,
            }),
        );
        self.groups.push(Group {
            of: Plants::Sowing(self.sowing),
            tray,
            place: raise.place,
            there: 0,
            hardening: false,
        });
    }

    /// The tray, which the first sowing in it sets up, and the cells.
    fn bed(&mut self) -> (TrayId, (u16, u16)) {
        let name = format!("tray {} {}", self.raise.day, self.raise.place as u32);
        match self.raise.tray {
            None => (
                TrayId(self.diary.id(&name)),
                self.raise.cells.unwrap_or_default(),
            ),
            Some((rows, columns)) => {
                let name = if self.raise.cells.is_some() {
                    name
                } else {
                    format!("{name} {}", self.name)
                };
                let tray = TrayId(self.diary.id(&name));
                let container = if columns == 1 {
                    Container::OpenTray
                } else {
                    Container::Cells
                };
                let time = (17, 30);
                self.set_up(
                    tray,
                    (rows, columns),
                    container,
                    Compost::Seed,
                    self.raise.place,
                    self.raise.day,
                    time,
                );
                if self.raise.place == Where::Propagator {
                    let on = Content::CoverChanged(CoverChanged { tray, on: true });
                    self.say(self.raise.day, time, on);
                }
                (tray, self.raise.cells.unwrap_or((0, rows * columns)))
            }
        }
    }

    #[allow(clippy::too_many_arguments, reason = "a line of the scenario")]
    fn set_up(
        &mut self,
        tray: TrayId,
        (rows, columns): (u16, u16),
        container: Container,
        compost: Compost,
        place: Where,
        day: i64,
        time: (u32, u32),
    ) {
        self.say(
            day,
            time,
            Content::TrayDescribed(TrayDescribed {
                tray,
                code: String::new(),
                container,
                rows,
                columns,
                compost,
            }),
        );
        let place = self.diary.place(place);
        self.say(day, time, Content::TrayMoved(TrayMoved { tray, place }));
    }

    fn say(&mut self, day: i64, time: (u32, u32), content: Content) {
        self.diary.say(day, time, content);
    }

    fn crop(&self) -> Option<&'static plumule_agronomy::Crop> {
        crops().get(super::scenario::crop(self.raise.packet))
    }

    fn day(&mut self, day: i64) {
        let since = day - self.raise.day;
        self.grow(day);
        if !self.gone_on {
            self.look(day);
        }
        self.feel(day, since);
        for then in self.raise.then {
            self.then(day, since, *then);
        }
    }

    /// The night and day before, hour by hour.
    fn grow(&mut self, day: i64) {
        let place = self.groups.first().map_or(self.raise.place, |it| it.place);
        let (low, high) = weather::day(place, day - 1);
        let curve = self.crop().map(|crop| &crop.curve);
        let rate = |temperature_c: f64| {
            curve.map_or(
                (temperature_c / 20.0 / STRANGER_DAYS).max(0.0),
                |curve: &Curve| curve.rate_per_day(temperature_c),
            )
        };
        for hour in 0..24 {
            self.progress += rate(day_temperature_at(low, high, f64::from(hour) + 0.5)) / 24.0;
        }
    }

    /// Looks for seedlings once they may come, until no more do; now and then
    /// one is missed.
    fn look(&mut self, day: i64) {
        let up = self
            .coming
            .iter()
            .filter(|at| **at <= self.progress)
            .count() as u32;
        let due = (0.7..2.2).contains(&self.progress);
        let missed = u32::from(up > 3 && self.progress < 1.3 && self.chance.happens(0.12));
        let seen = up - missed;
        let news = match self.counted {
            None => seen > 0 || self.progress > 1.0,
            Some(before) => seen > before || (before > 0 && day % 4 == 0 && seen < before),
        };
        if !due || !news {
            return;
        }
        self.counted = Some(seen);
        let of = Plants::Sowing(self.sowing);
        self.say(
            day,
            (8, 20),
            Content::Counted(Counted {
                of,
                up: Up::Number(seen),
            }),
        );
        if let Some(group) = self.groups.first_mut() {
            group.there = seen;
        }
    }

    /// Every second day while it is young, later every fourth.
    fn feel(&mut self, day: i64, since: i64) {
        let every = if since < 40 { 2 } else { 4 };
        if self.raise.tray.is_none() || day.rem_euclid(every) != 0 {
            return;
        }
        let trays: Vec<TrayId> = self.groups.iter().map(|group| group.tray).collect();
        for tray in trays {
            let feel = match (self.raise.kept, self.chance.share()) {
                (Kept::Wet, _) => Feel::Wet,
                (_, share) if share < 0.28 => Feel::Dry,
                (_, share) if share > 0.94 => Feel::Wet,
                _ => Feel::Moist,
            };
            let water = match feel {
                Feel::Dry if since < 12 => Some(Watering::Below),
                Feel::Dry => Some(Watering::Rose),
                Feel::Wet if self.raise.kept == Kept::Wet && day % 3 == 0 => Some(Watering::Rose),
                Feel::Moist | Feel::Wet => None,
            };
            self.say(
                day,
                (8, 10),
                Content::Felt(Felt {
                    tray,
                    feel: Some(feel),
                    water,
                }),
            );
        }
    }

    fn then(&mut self, day: i64, since: i64, then: Then) {
        let evening = (17, 0);
        match then {
            Then::To(when, place) if when == since => self.to(day, place),
            Then::Thin(when, number) if when == since => self.leave(day, number, Leaving::Thinned),
            Then::Sell(when, number) if when == since => self.leave(day, number, Leaving::Sold),
            Then::Give(when, number) if when == since => {
                self.leave(day, number, Leaving::GivenAway)
            }
            Then::Lose(when, number, cause) if when == since => {
                self.leave(day, number, Leaving::Lost(cause));
            }
            Then::PrickOut(when, place, trays) if when == since => {
                self.go_on(day, Step::PrickedOut, place, trays, Container::Cells);
            }
            Then::PotOn(when, place, tray) if when == since => {
                self.go_on(day, Step::PottedOn, place, &[tray], Container::Pots);
            }
            Then::Harden(when, days) if (when..when + days).contains(&since) => self.harden(day),
            Then::Ready(when) if when == since => {
                for of in self.plants() {
                    self.say(day, evening, Content::Ready(OfPlants { of }));
                }
            }
            Then::PlantOut(when) if when == since => self.plant_out(day),
            Then::NothingCameUp(when) if when == since => {
                let sowing = self.sowing;
                self.say(day, evening, Content::NothingCameUp(OfSowing { sowing }));
                self.empty(day);
            }
            Then::DigUp(when, firm, soft) if when == since => {
                let sowing = self.sowing;
                self.say(day, evening, Content::DugUp(DugUp { sowing, firm, soft }));
            }
            Then::Feed(when) if when == since => {
                for tray in self.trays() {
                    self.say(day, evening, Content::Fed(OfTray { tray }));
                }
            }
            Then::Note(when, text) if when == since => {
                for tray in self.trays() {
                    self.say(
                        day,
                        evening,
                        Content::Noted(Noted {
                            about: Subject::Tray(tray),
                            text: self.diary.word(text),
                        }),
                    );
                }
            }
            _ => {}
        }
    }

    fn plants(&self) -> Vec<Plants> {
        let living = self.groups.iter().filter(|group| group.there > 0);
        living.map(|group| group.of).collect()
    }

    fn trays(&self) -> Vec<TrayId> {
        self.groups.iter().map(|group| group.tray).collect()
    }

    fn to(&mut self, day: i64, to: Where) {
        let place = self.diary.place(to);
        for index in 0..self.groups.len() {
            let Some(group) = self.groups.get_mut(index) else {
                continue;
            };
            let (tray, covered) = (group.tray, group.place == Where::Propagator);
            group.place = to;
            if covered {
                let off = Content::CoverChanged(CoverChanged { tray, on: false });
                self.say(day, (17, 0), off);
            }
            self.say(day, (17, 0), Content::TrayMoved(TrayMoved { tray, place }));
        }
    }

    /// So many of the first group that has them.
    fn leave(&mut self, day: i64, number: u32, how: Leaving) {
        let Some(group) = self.groups.iter_mut().find(|group| group.there > number) else {
            return;
        };
        group.there -= number;
        let of = group.of;
        self.gone_on = true;
        self.say(
            day,
            (17, 0),
            Content::Left(Left {
                of,
                number,
                how,
                reservation: None,
            }),
        );
    }

    /// Every group goes on into new trays, and its old tray is emptied.
    fn go_on(
        &mut self,
        day: i64,
        step: Step,
        place: Where,
        trays: &[(u16, u16)],
        container: Container,
    ) {
        self.gone_on = true;
        let time = (17, 10);
        for group in std::mem::take(&mut self.groups) {
            let mut left = group.there;
            let mut parts = Vec::new();
            for &(rows, columns) in trays {
                let number = left.min(u32::from(rows * columns));
                if number == 0 {
                    continue;
                }
                left -= number;
                self.made += 1;
                let tray = TrayId(self.diary.id(&format!("{} tray {}", self.name, self.made)));
                let batch = BatchId(self.diary.id(&format!("{} batch {}", self.name, self.made)));
                self.set_up(
                    tray,
                    (rows, columns),
                    container,
                    Compost::Potting,
                    place,
                    day,
                    time,
                );
                parts.push(Part {
                    batch,
                    tray,
                    cells: (0..rows * columns).take(number as usize).collect(),
                    number,
                });
                self.groups.push(Group {
                    of: Plants::Batch(batch),
                    tray,
                    place,
                    there: number,
                    hardening: false,
                });
            }
            let of = group.of;
            let still_to_come = matches!(of, Plants::Sowing(_)) && group.there < self.raise.seeds;
            if !parts.is_empty() {
                self.say(day, time, Content::WentOn(WentOn { of, step, parts }));
            }
            if left > 0 || still_to_come {
                self.say(day, time, Content::Finished(OfPlants { of }));
            }
            let tray = group.tray;
            self.say(day, time, Content::TrayEmptied(OfTray { tray }));
        }
    }

    /// Out in the cold frame by day; the first time they move there.
    fn harden(&mut self, day: i64) {
        if self.groups.iter().any(|group| !group.hardening) {
            for group in &mut self.groups {
                group.hardening = true;
            }
            self.to(day, Where::Frame);
        }
        for tray in self.trays() {
            self.say(day, (8, 30), Content::HardenedOff(OfTray { tray }));
        }
    }

    fn plant_out(&mut self, day: i64) {
        for group in &self.groups {
            let (of, number) = (group.of, group.there);
            let how = Leaving::PlantedOut;
            if number > 0 {
                let left = Content::Left(Left {
                    of,
                    number,
                    how,
                    reservation: None,
                });
                self.diary.say(day, (17, 0), left);
            }
            // Seed that may yet come keeps a sowing alive.
            if matches!(of, Plants::Sowing(_)) {
                let finished = Content::Finished(OfPlants { of });
                self.diary.say(day, (17, 0), finished);
            }
        }
        self.empty(day);
    }

    fn empty(&mut self, day: i64) {
        for tray in self.trays() {
            self.say(day, (17, 0), Content::TrayEmptied(OfTray { tray }));
        }
        self.groups.clear();
    }
}
