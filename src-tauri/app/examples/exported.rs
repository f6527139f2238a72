//! Exports of a small journal with words in it that break careless programs,
//! as one JSON object, for `tests/exchange/read_back.py`.

use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::App;
use plumule_app::acts::{Act, ActRequest};
use plumule_app::view::{Answer, PacketForm, RangeView};
use plumule_app::words::Language;
use plumule_journal::stamp::Stamp;
use serde_json::json;
use std::error::Error;
use std::io::Write;

fn stamp(now: DateTime<Utc>, turn: u8) -> Stamp {
    Stamp {
        now,
        zone: chrono_tz::Europe::London,
        entropy: [turn; 16],
    }
}

fn main() -> Result<(), Box<dyn Error>> {
    let now: DateTime<Utc> = "2026-04-20T09:30:00Z".parse()?;
    let home = tempfile::tempdir()?;
    plumule_app::demo::plant(home.path(), &stamp(now, 1), Language::EnGb)?;
    let mut app = App::open(home.path(), &stamp(now, 2))?;
    let known = app.seed(&stamp(now, 2))?.packets;
    let first = &known.first().ok_or("the demo has no packets")?.line.packet;
    let like = app.packet(&stamp(now, 2), first)?.described;
    let hostile = [
        "=2+5",
        "+1",
        "-1",
        "@SUM(A1)",
        "\tTab",
        "\rReturn",
        "'Quoted",
        "Comma, \"quote\"\nand line",
        "Ümläut 🌱",
        "<script>alert(1)</script>",
    ];
    for (turn, variety) in (3..).zip(hostile) {
        let packet = PacketForm {
            variety: variety.to_owned(),
            note: format!("note {variety}"),
            ..like.clone()
        };
        let request = ActRequest {
            act: Act::AddPacket { packet },
            happened: None,
            hand: String::new(),
            confirmed: true,
        };
        match app.act(&stamp(now, turn), request)? {
            Answer::Written { .. } => {}
            Answer::AsksFirst { .. } => return Err("a packet was asked about".into()),
        }
    }
    let places = app.settings(&stamp(now, 60), true)?.places;
    let place = places.first().and_then(|place| place.id.clone());
    let frost = ActRequest {
        act: Act::Read {
            place: place.ok_or("the demo has no places")?,
            of: "air".to_owned(),
            range: RangeView {
                min_c: -3.5,
                max_c: 12.0,
            },
        },
        happened: None,
        hand: String::new(),
        confirmed: true,
    };
    app.act(&stamp(now, 61), frost)?;
    let later = now + TimeDelta::minutes(50);
    let part = |part: &str, now| -> Result<String, Box<dyn Error>> {
        Ok(String::from_utf8(app.export(&stamp(now, 99), part)?.bytes)?)
    };
    let trimmed: Vec<&str> = hostile.iter().map(|it| it.trim()).collect();
    let told = json!({
        "now": now, "hostile": trimmed,
        "sowings": part("sowings", now)?, "packets": part("packets", now)?,
        "readings": part("readings", now)?, "report": part("report", now)?,
        "calendar": part("calendar", now)?, "calendar_later": part("calendar", later)?,
    });
    Ok(writeln!(std::io::stdout(), "{told}")?)
}
