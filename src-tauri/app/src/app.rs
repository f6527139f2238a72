//! The use cases, as the shell calls them: each loads what it needs, asks a
//! pure function and hands the answer on.

use crate::act::{Made, Maker};
use crate::acts::ActRequest;
use crate::error::{AppError, asked};
use crate::names::Names;
use crate::notices::{Ahead, Notice, NoticeDesk, NoticePlan};
use crate::paper::sitter_sheet;
use crate::picture::Picture;
use crate::round::round_view;
use crate::say::{Arg, Say};
use crate::view::{
    Answer, BenchView, DeviceForm, EnoughAsk, EnoughView, FrostCsvOptions, FrostPreview,
    ImportForm, ImportView, PacketView, ResultsAsked, ResultsView, RoundView, SearchView, SeedView,
    SettingsView, SitterSheet, TrayView, TraysView, YearView,
};
use crate::words::{self, Language, Units};
use crate::{
    bench, device, import, line, plans, results, search, season, seed, settings, tray_page, trays,
};
use chrono_tz::Tz;
use plumule_agronomy::Hemisphere;
use plumule_journal::content::{Content, GardenDescribed};
use plumule_journal::id::EntryId;
use plumule_journal::stamp::{Happened, Stamp};
use plumule_journal::{Answer as Door, Device, Journal, Wish};
use std::path::Path;

/// A journal and the habits of the device it is read on.
#[derive(Debug)]
pub struct App {
    pub(crate) journal: Journal,
    pub(crate) device: Device,
    /// What the device's system speaks.
    system: Language,
}

impl App {
    /// Opens a home, or makes one: the journal and the device's own file.
    ///
    /// # Errors
    /// If either cannot be opened.
    pub fn open(home: &Path, stamp: &Stamp) -> Result<Self, AppError> {
        Ok(Self {
            journal: Journal::open(home, stamp)?,
            device: Device::open_or_stand_in(home, stamp)?,
            system: Language::default(),
        })
    }

    /// The same on a system that speaks this.
    #[must_use]
    pub fn on_a_system_of(self, system: Language) -> Self {
        Self { system, ..self }
    }

    /// Begins an own, empty journal: the garden in the zone of the device and
    /// nothing else. Does nothing to a garden that was described before.
    ///
    /// # Errors
    /// If it cannot be written.
    pub fn begin(&mut self, stamp: &Stamp) -> Result<(), AppError> {
        if self.journal.garden()?.described.is_some() {
            return Ok(());
        }
        let wish = Wish {
            contents: vec![Content::GardenDescribed(GardenDescribed {
                zone: stamp.zone.name().to_owned(),
                ..settings::usual_garden()
            })],
            happened: None,
            hand: String::new(),
            confirmed: false,
        };
        self.journal.write(stamp, wish)?;
        Ok(())
    }

    /// It was written by a newer version: it is shown, and nothing can be
    /// written until this program is updated.
    #[must_use]
    pub fn read_only(&self) -> bool {
        self.journal.read_only()
    }

    /// Goes up with everything that is written to the journal while it is open.
    #[must_use]
    pub fn changes(&self) -> u64 {
        self.journal.changes()
    }

    /// The round: what is due now.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn round(&self, stamp: &Stamp) -> Result<RoundView, AppError> {
        let picture = Picture::of_the_living(&self.journal, stamp)?;
        Ok(round_view(&picture, picture.now(stamp)))
    }

    /// The sheet for whoever looks after the trays while the grower is away.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn sitter_sheet(&self, stamp: &Stamp) -> Result<SitterSheet, AppError> {
        let picture = Picture::of_the_living(&self.journal, stamp)?;
        Ok(sitter_sheet(&picture, picture.now(stamp)))
    }

    /// The living trays by place, those set aside, and the past ones.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn trays(&self, stamp: &Stamp) -> Result<TraysView, AppError> {
        trays::view(&self.journal, stamp)
    }

    /// One tray's page.
    ///
    /// # Errors
    /// If there is no such tray or the journal cannot be read.
    pub fn tray(&self, stamp: &Stamp, id: &str) -> Result<TrayView, AppError> {
        tray_page::view(&self.journal, stamp, id)
    }

    /// Looks for words and days through the whole journal; of nothing but
    /// blanks and signs nothing is found.
    ///
    /// # Errors
    /// `search_too_long`, or if the journal cannot be read.
    pub fn search(&self, stamp: &Stamp, typed: &str) -> Result<SearchView, AppError> {
        search::view(&self.journal, stamp, typed)
    }

    /// The packets.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn seed(&self, stamp: &Stamp) -> Result<SeedView, AppError> {
        seed::view(&self.journal, stamp)
    }

    /// The year: sowing windows, plans, plants kept for somebody.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn year(&self, stamp: &Stamp) -> Result<YearView, AppError> {
        plans::view(&self.journal, stamp)
    }

    /// What the years gave.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn results(&self, stamp: &Stamp, asked: &ResultsAsked) -> Result<ResultsView, AppError> {
        results::view(&self.journal, stamp, asked)
    }

    /// One packet's page.
    ///
    /// # Errors
    /// If there is no such packet or the journal cannot be read.
    pub fn packet(&self, stamp: &Stamp, id: &str) -> Result<PacketView, AppError> {
        seed::page(&self.journal, stamp, id)
    }

    /// The Sow screen, with what would come of a packet if one is chosen.
    ///
    /// # Errors
    /// If there is no such packet or the journal cannot be read.
    pub fn bench(&self, stamp: &Stamp, packet: Option<&str>) -> Result<BenchView, AppError> {
        bench::view(&self.journal, stamp, packet)
    }

    /// How many seeds or cells of a packet are enough for the plants wanted.
    ///
    /// # Errors
    /// Odds out of range, no such packet, or the journal cannot be read.
    pub fn enough(&self, stamp: &Stamp, ask: EnoughAsk) -> Result<EnoughView, AppError> {
        bench::enough(&self.journal, stamp, ask)
    }

    /// What the notices are reckoned from: read at once, so that the journal
    /// is free for the grower while they are.
    ///
    /// # Errors
    /// If the journal or the device's file cannot be read.
    pub fn notice_desk(&self, stamp: &Stamp) -> Result<NoticeDesk, AppError> {
        Ok(NoticeDesk {
            picture: Picture::of_the_living(&self.journal, stamp)?,
            device: self.spoken()?,
            now: stamp.now,
            zone: stamp.zone,
        })
    }

    /// The notices wanted in the days to come, and when to plan again; those
    /// that were delivered are wanted no more.
    ///
    /// # Errors
    /// If the journal or the device's file cannot be read.
    pub fn notices(&self, stamp: &Stamp) -> Result<NoticePlan, AppError> {
        let plan = self.notice_desk(stamp)?.plan();
        self.undelivered(plan)
    }

    /// The plan without what was delivered.
    ///
    /// # Errors
    /// If the device's file cannot be read.
    pub fn undelivered(&self, mut plan: NoticePlan) -> Result<NoticePlan, AppError> {
        let mut wanted = Vec::new();
        for notice in plan.wanted {
            if !self.device.delivered(&notice.key)? {
                wanted.push(notice);
            }
        }
        plan.wanted = wanted;
        Ok(plan)
    }

    /// What to change of the notices that the system keeps and shows by
    /// itself, at most so many of them. Those whose time has come count as
    /// delivered: by the system, or by the round that is now on the screen.
    /// `afresh`: the system may have lost some.
    ///
    /// # Errors
    /// If the device's file cannot be read.
    pub fn notices_ahead(
        &mut self,
        stamp: &Stamp,
        plan: NoticePlan,
        (most, afresh): (usize, bool),
    ) -> Result<Ahead, AppError> {
        let before = device::handed_over(&self.device)?;
        for notice in before.iter().filter(|notice| notice.at <= stamp.now) {
            self.device.mark_delivered(&notice.key, notice.at)?;
        }
        let mut plan = self.undelivered(plan)?;
        for notice in plan.wanted.iter().filter(|notice| notice.at <= stamp.now) {
            self.device.mark_delivered(&notice.key, stamp.now)?;
        }
        plan.wanted.retain(|notice| notice.at > stamp.now);
        plan.keep(most, stamp.now);
        Ok(Ahead::between(&before, plan.wanted, afresh))
    }

    /// The system now keeps these.
    ///
    /// # Errors
    /// If that cannot be kept.
    pub fn handed_over(&mut self, kept: &[Notice]) -> Result<(), AppError> {
        device::hand_over(&self.device, kept)
    }

    /// A notice that only shows that notices come through.
    ///
    /// # Errors
    /// If the habits cannot be read.
    pub fn test_notice(&self, stamp: &Stamp) -> Result<Notice, AppError> {
        let local = stamp.now.with_timezone(&self.zone(stamp)?).naive_local();
        let say = Say::new("notice-test").with("at", Arg::Moment(local));
        let body = words::render(&say, self.units()?, local.date());
        Ok(Notice::test(stamp.now, body, self.units()?.language))
    }

    /// A notice was delivered: it is not wanted again.
    ///
    /// # Errors
    /// If that cannot be kept.
    pub fn delivered(&mut self, stamp: &Stamp, key: &str) -> Result<(), AppError> {
        self.device.mark_delivered(key, stamp.now)?;
        Ok(())
    }

    /// What the settings screen shows. `demo`: whether this is the demo journal.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn settings(&self, stamp: &Stamp, demo: bool) -> Result<SettingsView, AppError> {
        settings::view(&self.journal, self.device()?, stamp, demo)
    }

    /// What a record of daily minima would give. Nothing is written: what it
    /// gives is sent back as an act.
    ///
    /// # Errors
    /// A file that is too large or holds no days and minima; a journal that
    /// cannot be read.
    pub fn frost_preview(
        &self,
        file: &[u8],
        options: &FrostCsvOptions,
    ) -> Result<FrostPreview, AppError> {
        let garden = self.journal.garden()?.described;
        let latitude = garden.and_then(|garden| garden.latitude);
        let hemisphere = if latitude.is_some_and(|latitude| latitude < 0.0) {
            Hemisphere::South
        } else {
            Hemisphere::North
        };
        season::csv::preview(file, options, hemisphere)
    }

    /// Habits of this device.
    ///
    /// # Errors
    /// If they cannot be read.
    pub fn device(&self) -> Result<DeviceForm, AppError> {
        device::load(&self.device, self.system)
    }

    /// How the grower is spoken to on this device.
    ///
    /// # Errors
    /// If the habits cannot be read.
    pub fn units(&self) -> Result<Units, AppError> {
        Ok(Units::of(&self.spoken()?))
    }

    /// The habits, with the language that is spoken.
    fn spoken(&self) -> Result<DeviceForm, AppError> {
        let mut device = self.device()?;
        let language = Language::of_tag(&device.language).unwrap_or(self.system);
        language.tag().clone_into(&mut device.language);
        Ok(device)
    }

    /// Sets the habits of this device.
    ///
    /// # Errors
    /// A word that is none of its set, a time that is none, initials too long.
    pub fn set_device(&mut self, form: &DeviceForm) -> Result<(), AppError> {
        device::save(&self.device, form)
    }

    /// Writes an act, or says what is odd about it.
    ///
    /// # Errors
    /// If the journal refuses it or a word of it is unknown.
    pub fn act(&mut self, stamp: &Stamp, request: ActRequest) -> Result<Answer, AppError> {
        let zone = self.zone(stamp)?;
        let made = Maker::new(&self.journal, stamp, zone)?.make(&request.act)?;
        let happened = match request.happened {
            Some(local) => Happened::at_local(local, zone),
            None => Happened::at(stamp.now, zone),
        };
        let (hand, confirmed) = (self.hand(&request.hand)?, request.confirmed);
        self.write_made(stamp, &made, happened, hand, confirmed)
    }

    /// What a table of packets would bring.
    ///
    /// # Errors
    /// If it is too large, no text or empty, or the journal cannot be read.
    pub fn read_packets(
        &self,
        stamp: &Stamp,
        bytes: &[u8],
        form: &ImportForm,
    ) -> Result<ImportView, AppError> {
        import::view(&self.journal, stamp, bytes, form)
    }

    /// Adds the packets of a table as one act: those lines that can be read.
    ///
    /// # Errors
    /// As [`App::read_packets`]; if none can be read; if the journal refuses.
    pub fn import_packets(
        &mut self,
        stamp: &Stamp,
        bytes: &[u8],
        form: &ImportForm,
    ) -> Result<Answer, AppError> {
        let made = import::made(&self.journal, stamp, bytes, form)?;
        let happened = Happened::at(stamp.now, self.zone(stamp)?);
        let hand = self.hand("")?;
        self.write_made(stamp, &made, happened, hand, false)
    }

    fn write_made(
        &mut self,
        stamp: &Stamp,
        made: &Made,
        happened: Happened,
        hand: String,
        confirmed: bool,
    ) -> Result<Answer, AppError> {
        let wish = Wish {
            contents: made.contents.clone(),
            happened: Some(happened),
            hand,
            confirmed,
        };
        let door = self.write(stamp, wish)?;
        let say = line::act(&Names(&self.journal), &made.contents)?;
        Ok(answer(door, say, made))
    }

    /// Takes an act back, or brings it back if it was.
    ///
    /// # Errors
    /// If there is no such act or the journal refuses.
    pub fn undo(&mut self, stamp: &Stamp, act: &str, confirmed: bool) -> Result<Answer, AppError> {
        let (act, hand) = (entry(act)?, self.hand("")?);
        let door = self.journal.undo(stamp, act, &hand, confirmed)?;
        Ok(answer(door, Say::new("line-undone"), &Made::default()))
    }

    /// Withdraws one entry.
    ///
    /// # Errors
    /// If there is no such entry or the journal refuses.
    pub fn withdraw(
        &mut self,
        stamp: &Stamp,
        id: &str,
        confirmed: bool,
    ) -> Result<Answer, AppError> {
        let (root, hand) = (entry(id)?, self.hand("")?);
        let door = self.journal.withdraw(stamp, root, &hand, confirmed)?;
        Ok(answer(door, Say::new("line-withdrawn"), &Made::default()))
    }

    /// The folder of the journal and what is beside it.
    #[must_use]
    pub fn home(&self) -> &Path {
        self.journal.home()
    }

    pub(crate) fn journal(&self) -> &Journal {
        &self.journal
    }

    pub(crate) fn write(&mut self, stamp: &Stamp, wish: Wish) -> Result<Door, AppError> {
        Ok(self.journal.write(stamp, wish)?)
    }

    /// The zone of the garden; of the device until the garden has one.
    pub(crate) fn zone(&self, stamp: &Stamp) -> Result<Tz, AppError> {
        let garden = self.journal.garden()?;
        Ok(garden
            .described
            .and_then(|garden| garden.zone.parse().ok())
            .unwrap_or(stamp.zone))
    }

    /// The hand that was named, else the device's initials.
    pub(crate) fn hand(&self, named: &str) -> Result<String, AppError> {
        let named = named.trim();
        Ok(if named.is_empty() {
            self.device()?.initials
        } else {
            named.to_owned()
        })
    }
}

pub(crate) fn entry(id: &str) -> Result<EntryId, AppError> {
    id.parse().map_err(|_| AppError::bad_request(id))
}

pub(crate) fn answer(door: Door, say: Say, made: &Made) -> Answer {
    match door {
        Door::Written { act, .. } => Answer::Written {
            act: act.to_string(),
            say,
            tray: made.tray.map(|id| id.to_string()),
            sowing: made.sowing.map(|id| id.to_string()),
            packet: made.packet.map(|id| id.to_string()),
            place: made.place.map(|id| id.to_string()),
        },
        Door::AsksFirst(questions) => Answer::AsksFirst {
            questions: questions.iter().map(asked).collect(),
        },
    }
}
