//! The garden of a scene: it reads entries, a line each, through the app as the
//! UI does, and says what the app says.

use crate::{request, said};
use chrono::{DateTime, Days, NaiveDate, NaiveDateTime, TimeZone, Utc};
use chrono_tz::Tz;
use plumule_app::App;
use plumule_app::acts::{Act, SeedsAnswer, TreatmentForm, UpAnswer};
use plumule_app::view::{
    Answer, GardenForm, PacketForm, PlaceForm, PlantsRef, RangeView, RoundView, StatedDaysForm,
    TrayChoice, TrayView, VerdictView,
};
use plumule_journal::stamp::Stamp;
use std::collections::BTreeMap;
use tempfile::TempDir;

pub(super) struct Garden {
    /// Holds the folder while the scene lasts.
    _home: TempDir,
    app: App,
    zone: Tz,
    now: NaiveDateTime,
    turn: u32,
    places: BTreeMap<String, String>,
    packets: BTreeMap<String, String>,
    /// Id of the tray, and its sowing, by the order of sowing.
    trays: Vec<(String, String)>,
}

fn number<T: std::str::FromStr>(text: &str) -> T {
    let read = text.parse().ok();
    read.unwrap_or_else(|| panic!("no number: {text}"))
}

/// `03-02`, `03-02 20:00` or `2027-03-02 20:00`; else of 2026, at 9 in the morning.
fn moment(words: &[&str]) -> NaiveDateTime {
    let (day, time) = match words {
        [day] => (*day, "09:00"),
        [day, time] => (*day, *time),
        _ => panic!("no time: {words:?}"),
    };
    let day = if day.len() > 5 {
        day.to_owned()
    } else {
        format!("2026-{day}")
    };
    NaiveDateTime::parse_from_str(&format!("{day} {time}"), "%Y-%m-%d %H:%M").unwrap()
}

impl Garden {
    pub(super) fn new() -> Self {
        let home = TempDir::new().unwrap();
        let now = moment(&["01-05"]);
        let first = Stamp {
            now: now.and_utc(),
            zone: chrono_tz::Europe::Berlin,
            entropy: [0; 16],
        };
        let app = App::open(home.path(), &first).unwrap();
        let mut this = Self {
            _home: home,
            app,
            zone: chrono_tz::Europe::Berlin,
            now,
            turn: 0,
            places: BTreeMap::new(),
            packets: BTreeMap::new(),
            trays: Vec::new(),
        };
        this.garden(52.5, Some("05-10"), Some("10-15"));
        this
    }

    fn garden(&mut self, latitude: f64, last: Option<&str>, first: Option<&str>) {
        let garden = GardenForm {
            zone: self.zone.name().to_owned(),
            latitude: Some(latitude),
            last_frost: last.map(str::to_owned),
            first_frost: first.map(str::to_owned),
            morning: "08:00".to_owned(),
            evening: "18:00".to_owned(),
        };
        self.act(Act::DescribeGarden { garden });
    }

    fn stamp(&mut self) -> Stamp {
        self.turn += 1;
        let local = self.zone.from_local_datetime(&self.now).earliest();
        let mut entropy = [7; 16];
        entropy[..4].copy_from_slice(&self.turn.to_le_bytes());
        Stamp {
            now: local.map_or_else(
                || self.now.and_utc(),
                |at: DateTime<Tz>| at.with_timezone(&Utc),
            ),
            zone: self.zone,
            entropy,
        }
    }

    fn act(&mut self, act: Act) -> Answer {
        let stamp = self.stamp();
        let mut request = request(act);
        request.confirmed = true;
        self.app.act(&stamp, request).unwrap()
    }

    fn at(&mut self, when: &[&str], act: Act) -> Answer {
        self.now = moment(when);
        self.act(act)
    }

    fn tray(&self) -> String {
        self.trays.last().expect("a tray").0.clone()
    }

    fn sowing(&self) -> String {
        self.trays.last().expect("a sowing").1.clone()
    }

    fn plants(&self) -> PlantsRef {
        PlantsRef::Sowing(self.sowing())
    }

    /// Reads a line.
    pub(super) fn read(&mut self, line: &str) {
        let words: Vec<&str> = line.split_whitespace().collect();
        match words.as_slice() {
            ["garden", "south"] => {
                self.zone = chrono_tz::Pacific::Auckland;
                self.garden(-41.0, Some("10-20"), Some("04-20"));
            }
            ["garden", "without", "frosts"] => self.garden(52.5, None, None),
            ["place", name, low, high, rest @ ..] => self.place(name, low, high, rest),
            ["packet", name, crop, rest @ ..] => self.packet(name, crop, rest),
            ["sow", seeds, packet, "in", place, "on", rest @ ..] => {
                self.sow(seeds, packet, place, rest);
            }
            ["count", up, "on", when @ ..] => {
                let up = UpAnswer::Number(number(up));
                let plants = self.plants();
                self.at(when, Act::Count { plants, up });
            }
            ["take", "back", "the", "count", "on", when @ ..] => self.take_back(when),
            ["move", place, "on", when @ ..] => {
                let place = self.places[*place].clone();
                let trays = vec![self.tray()];
                self.at(when, Act::Move { trays, place });
            }
            [feel @ ("dry" | "moist" | "wet"), "watered", "on", when @ ..] => {
                self.feel(Some(feel), true, when);
            }
            [feel @ ("dry" | "moist" | "wet"), "on", when @ ..] => {
                self.feel(Some(feel), false, when)
            }
            ["water", "on", when @ ..] => self.feel(None, true, when),
            ["dug", firm, soft, "on", when @ ..] => {
                let (firm, soft) = (number(firm), number(soft));
                let sowing = self.sowing();
                self.at(when, Act::DigUp { sowing, firm, soft });
            }
            ["seeds", "lost", lost, cause, "on", when @ ..] => {
                let (sowing, cause) = (self.sowing(), (*cause).to_owned());
                let number = number(lost);
                self.at(
                    when,
                    Act::SeedsLost {
                        sowing,
                        number,
                        cause,
                    },
                );
            }
            ["lost", lost, cause, "on", when @ ..] => {
                let act = Act::Leave {
                    plants: self.plants(),
                    number: number(lost),
                    how: "lost".to_owned(),
                    cause: Some((*cause).to_owned()),
                };
                self.at(when, act);
            }
            ["say", cause, "on", when @ ..] => {
                let act = Act::Explain {
                    sowing: self.sowing(),
                    causes: vec![(*cause).to_owned()],
                    text: String::new(),
                };
                self.at(when, act);
            }
            ["looks", sight, "on", when @ ..] => {
                let (plants, sight) = (self.plants(), (*sight).to_owned());
                self.at(when, Act::Notice { plants, sight });
            }
            ["read", place, low, high, "from", from, "to", to] => {
                self.readings(place, (number(low), number(high)), from, to);
            }
            [
                "heat",
                "off",
                place,
                low,
                high,
                "from",
                from,
                from_time,
                "to",
                to,
                to_time,
            ] => {
                let act = Act::HeatOff {
                    place: self.places[*place].clone(),
                    from: moment(&[from, from_time]),
                    to: Some(moment(&[to, to_time])),
                    meanwhile: Some(RangeView {
                        min_c: number(low),
                        max_c: number(high),
                    }),
                };
                self.at(&[to, to_time], act);
            }
            ["nothing", "came", "up", "on", when @ ..] => {
                let sowing = self.sowing();
                self.at(when, Act::NothingCameUp { sowing });
            }
            ["done", "on", when @ ..] => {
                let plants = self.plants();
                self.at(when, Act::Finish { plants });
            }
            ["away", from, "to", to] => {
                let day = |text: &str| moment(&[text]).date();
                let act = Act::Away {
                    from: day(from),
                    to: Some(day(to)),
                };
                self.act(act);
            }
            ["now", when @ ..] => self.now = moment(when),
            _ => panic!("not read: {line}"),
        }
    }

    fn place(&mut self, name: &str, low: &str, high: &str, rest: &[&str]) {
        let kind = match name {
            "propagator" => "heated_propagator",
            "shed" | "fridge" | "outdoors" | "greenhouse" => name,
            "frame" => "cold_frame",
            _ => "windowsill",
        };
        let light = rest.first().copied().unwrap_or("bright");
        let place = PlaceForm {
            id: None,
            name: name.to_owned(),
            kind: kind.to_owned(),
            usual: RangeView {
                min_c: number(low),
                max_c: number(high),
            },
            unheated: None,
            light: light.to_owned(),
            covered: false,
            position: self.places.len() as u32,
            retired: false,
        };
        if let Answer::Written {
            place: Some(id), ..
        } = self.act(Act::DescribePlace { place })
        {
            self.places.insert(name.to_owned(), id);
        }
    }

    fn packet(&mut self, name: &str, crop: &str, rest: &[&str]) {
        let year = rest.first().map_or(2026, |year| number(year));
        let stated_days = match rest {
            [_, "days", from, to, at_c] => Some(StatedDaysForm {
                from: number(from),
                to: number(to),
                at: Some(RangeView {
                    min_c: number(at_c),
                    max_c: number(at_c),
                }),
            }),
            _ => None,
        };
        let packet = PacketForm {
            crop: crop.to_owned(),
            variety: name.to_owned(),
            packed_year: Some(year),
            harvested_year: None,
            stated_germination: None,
            stated_days,
            seeds: None,
            storage: "cool_cupboard".to_owned(),
            treated: false,
            source: String::new(),
            note: String::new(),
            sow_by: None,
            f1: false,
            saved_from: None,
            price: String::new(),
        };
        if let Answer::Written {
            packet: Some(id), ..
        } = self.act(Act::AddPacket { packet })
        {
            self.packets.insert(name.to_owned(), id);
        }
    }

    /// `sow 20 pepper in sill on 03-02 wanted 12 deep 6 soil garden_soil …`; a
    /// packet that was not described is of this year and called by its crop.
    fn sow(&mut self, seeds: &str, packet: &str, place: &str, rest: &[&str]) {
        if !self.packets.contains_key(packet) {
            self.packet(packet, packet, &[]);
        }
        let split = rest
            .iter()
            .position(|word| word.parse::<f64>().is_err() && !word.contains(['-', ':']));
        let (when, said) = rest.split_at(split.unwrap_or(rest.len()));
        let mut act = (
            None,
            None,
            "seed",
            "open_tray",
            TreatmentForm::default(),
            false,
        );
        let mut said = said.iter();
        let mut again = None;
        while let Some(word) = said.next() {
            let mut next = || *said.next().expect("a word more");
            match *word {
                "wanted" => act.0 = Some(number(next())),
                "deep" => act.1 = Some(number(next())),
                "compost" => act.2 = next(),
                "in" => act.3 = next(),
                "soaked" => act.4.soaked_hours = Some(number(next())),
                "cold" => act.4.cold_weeks = Some(number(next())),
                "beside" => act.5 = true,
                "again" => again = Some(self.sowing()),
                word => panic!("not read: {word}"),
            }
        }
        let (wanted, depth_mm, compost, container, treatment, beside) = act;
        let into = if beside {
            TrayChoice::Existing { id: self.tray() }
        } else {
            TrayChoice::New {
                code: None,
                container: container.to_owned(),
                rows: 1,
                columns: if beside { 1 } else { 2 },
                compost: compost.to_owned(),
                place: self.places[place].clone(),
                covered: false,
            }
        };
        let cells = if beside { vec![1] } else { vec![0] };
        let seeds = match seeds {
            "pinch" => SeedsAnswer::Pinch,
            seeds => SeedsAnswer::Exact(number(seeds)),
        };
        let act = Act::Sow {
            packet: self.packets[packet].clone(),
            into,
            cells,
            seeds,
            depth_mm,
            wanted,
            again_of: again,
            treatment,
            plan: None,
        };
        let Answer::Written { tray, sowing, .. } = self.at(when, act) else {
            panic!("not sown: {packet}");
        };
        let tray = tray.unwrap_or_else(|| self.tray());
        self.trays.push((tray, sowing.expect("a sowing")));
    }

    fn feel(&mut self, feel: Option<&str>, watered: bool, when: &[&str]) {
        let act = Act::Feel {
            trays: vec![self.tray()],
            feel: feel.map(str::to_owned),
            water: watered.then(|| "below".to_owned()),
        };
        self.at(when, act);
    }

    /// A lowest and highest every evening.
    fn readings(&mut self, place: &str, (min_c, max_c): (f64, f64), from: &str, to: &str) {
        let place = self.places[place].clone();
        let (mut day, last): (NaiveDate, NaiveDate) =
            (moment(&[from]).date(), moment(&[to]).date());
        while day <= last {
            self.now = day.and_hms_opt(18, 0, 0).unwrap();
            let range = RangeView { min_c, max_c };
            let of = "air".to_owned();
            self.act(Act::Read {
                place: place.clone(),
                of,
                range,
            });
            day = day.checked_add_days(Days::new(1)).unwrap();
        }
    }

    fn take_back(&mut self, when: &[&str]) {
        self.now = moment(when);
        let page = self.page();
        let counted = page
            .timeline
            .iter()
            .find(|line| line.say.key == "line-counted");
        let entry = counted.expect("a count").entry.clone();
        let stamp = self.stamp();
        self.app.withdraw(&stamp, &entry, true).unwrap();
    }

    fn page(&mut self) -> TrayView {
        let (stamp, tray) = (self.stamp(), self.tray());
        self.app.tray(&stamp, &tray).unwrap()
    }

    /// All that is said of the last tray, a line each: `forecast`, the verdict,
    /// `- choice: what it gives`, causes, `fact`, `try`, `treated`, `job`s of the
    /// round, what was learnt, what the seed page says.
    pub(super) fn said(&mut self) -> Vec<String> {
        let stamp = self.stamp();
        let round: RoundView = self.app.round(&stamp).unwrap();
        let page = self.page();
        let mut lines = Vec::new();
        for plants in &page.plants {
            let of = |text: String| text;
            if let Some(forecast) = &plants.forecast {
                lines.push(of(format!("forecast: {}", said::one(&forecast.say))));
            }
            if let Some(verdict) = &plants.verdict {
                lines.extend(told(verdict));
            }
            for reason in &plants.reasons {
                lines.push(said::one(&reason.say));
                let facts = reason.facts.iter();
                lines.extend(facts.map(|fact| format!("fact: {}", said::one(fact))));
                lines.push(format!("try: {}", said::one(&reason.remedy)));
            }
            let treated = plants.treatment.iter();
            lines.extend(treated.map(|it| format!("treated: {}", said::one(it))));
            lines.extend(
                plants
                    .learnt
                    .iter()
                    .map(|taught| format!("learnt: {}", said::one(taught))),
            );
            for relative in &plants.relatives {
                lines.push(format!("linked: {}", relative.direction));
            }
        }
        let cards = round.places.iter().flat_map(|place| &place.cards);
        for job in cards
            .filter(|card| card.tray == page.tray)
            .flat_map(|card| &card.jobs)
        {
            lines.push(format!("job {:?}: {}", job.kind, said::one(&job.why)));
            lines.extend(job.verdict.iter().flat_map(told));
        }
        if round.away_until.is_some() {
            lines.push("away".to_owned());
        }
        let stamp = self.stamp();
        for packet in self.app.seed(&stamp).unwrap().packets {
            let page = self.app.packet(&stamp, &packet.line.packet).unwrap();
            let own = page.own.iter().map(said::one).collect::<String>();
            if !own.is_empty() {
                lines.push(format!("packet {}: {own}", packet.line.variety));
            }
        }
        lines
    }
}

fn told(verdict: &VerdictView) -> Vec<String> {
    let choices = verdict.choices.iter().map(|choice| {
        let gives = choice.gives.as_ref().map(said::one).unwrap_or_default();
        format!("- {}: {gives}", said::one(&choice.say))
    });
    std::iter::once(said::one(&verdict.say))
        .chain(choices)
        .collect()
}
