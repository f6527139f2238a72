//! What was done, in words: a line of the journal, and the answer to an act.

use crate::error::AppError;
use crate::names::Names;
use crate::say::{Arg, Say};
use crate::words::{key, word};
use plumule_journal::content::{
    Content, Counted, Explained, Felt, HeatOff, JobKey, Leaving, Left, PacketDescribed,
    PlanDescribed, ReadingTaken, Reserved, Rhythm, Seeds, Shown, Sown, Up, Wares, WentOn,
};
use plumule_journal::id::{PacketId, PlaceId, TestId};
use plumule_journal::subject::Plants;

/// An act in words: of several contents the one that was meant.
pub(crate) fn act(names: &Names<'_>, contents: &[Content]) -> Result<Say, AppError> {
    match contents {
        [Content::Felt(felt), _, ..] if all(contents, |it| matches!(it, Content::Felt(_))) => {
            return Ok(felt_say(felt, "-many").with("trays", count(contents.len())));
        }
        [Content::Sheltered(it), _, ..]
            if all(contents, |it| matches!(it, Content::Sheltered(_))) =>
        {
            let line = format!("{}-many", key("line-sheltered", it.how.as_str()));
            return Ok(Say::new(line).with("trays", count(contents.len())));
        }
        [Content::PacketDescribed(_), _, ..]
            if all(contents, |it| matches!(it, Content::PacketDescribed(_))) =>
        {
            return Ok(Say::new("line-packets-described").with("packets", count(contents.len())));
        }
        [Content::TrayMoved(moved), _, ..]
            if all(contents, |it| matches!(it, Content::TrayMoved(_))) =>
        {
            return Ok(Say::new("line-moved-many")
                .with("trays", count(contents.len()))
                .with("place", names.place(moved.place)?));
        }
        _ => {}
    }
    let meant = |content: &&Content| {
        !matches!(
            content,
            Content::TrayDescribed(_)
                | Content::TrayMoved(_)
                | Content::CoverChanged(_)
                | Content::Finished(_)
        )
    };
    match contents.iter().find(meant).or_else(|| contents.first()) {
        Some(content) => line(names, content),
        None => Ok(Say::new("line-undone")),
    }
}

fn all(contents: &[Content], is: impl Fn(&Content) -> bool) -> bool {
    contents.iter().all(is)
}

/// One entry in words.
pub(crate) fn line(names: &Names<'_>, content: &Content) -> Result<Say, AppError> {
    Ok(match content {
        Content::GardenDescribed(_) => Say::new("line-garden-described"),
        Content::Away(away) if away.open => {
            Say::new("line-away-open").with("from", Arg::Day(away.from))
        }
        Content::Away(away) => Say::new("line-away")
            .with("from", Arg::Day(away.from))
            .with("to", Arg::Day(away.to)),
        Content::CameBack(back) => Say::new("line-came-back").with("day", Arg::Day(back.on)),
        Content::FrostReckoned(frost) => Say::new("line-frost-reckoned")
            .with("from", Arg::Day(frost.first_day))
            .with("to", Arg::Day(frost.last_day)),
        Content::NightForecast(night) => {
            let say = match night.place {
                Some(place) => Say::new("line-night-in").with("place", names.place(place)?),
                None => Say::new("line-night"),
            };
            say.with("day", Arg::Day(night.night))
                .with("temperature", Arg::Celsius(night.low_c))
        }
        Content::Sheltered(it) => {
            Say::new(key("line-sheltered", it.how.as_str())).with("tray", names.tray(it.tray)?)
        }
        Content::Aired(it) => Say::new("line-aired").with("place", names.place(it.place)?),
        Content::HeatBack(back) => Say::new("line-heat-back")
            .with("place", names.place(back.place)?)
            .with("at", Arg::Moment(back.at)),
        Content::PlaceDescribed(place) => {
            Say::new("line-place-described").with("place", Arg::Text(place.name.clone()))
        }
        Content::PacketDescribed(packet) => packet_say(packet),
        Content::SeedsCounted(it) => {
            of_packet(names, "line-seeds-counted", it.packet)?.with("left", number(it.left))
        }
        Content::StockTaken(it) => {
            of_packet(names, key("line-stock", it.found.as_str()), it.packet)?
        }
        Content::TestStarted(it) => {
            of_packet(names, "line-test-started", it.packet)?.with("seeds", number(it.seeds))
        }
        Content::TestCounted(it) => of_test(names, "line-test-counted", it.test, it.sprouted)?,
        Content::TestClosed(it) => of_test(names, "line-test-closed", it.test, it.sprouted)?,
        Content::ToBuy(it) => Say::new(key("line-to-buy", it.standing.as_str()))
            .with("crop", crate::words::crop(&it.crop))
            .with("variety", crate::words::variety(&it.variety)),
        Content::PlanDescribed(it) => plan_say(it),
        Content::Reserved(it) => reserved_say(names, it)?,
        Content::TrayDescribed(tray) => {
            Say::new("line-tray-described").with("tray", Arg::Text(tray.code.clone()))
        }
        Content::TrayMoved(moved) => Say::new("line-moved")
            .with("tray", names.tray(moved.tray)?)
            .with("place", names.place(moved.place)?),
        Content::CoverChanged(cover) => Say::new(if cover.on {
            "line-covered"
        } else {
            "line-uncovered"
        })
        .with("tray", names.tray(cover.tray)?),
        Content::TrayEmptied(it) => Say::new("line-emptied").with("tray", names.tray(it.tray)?),
        Content::Sown(sown) => sown_say(names, sown)?,
        Content::BatchStarted(it) => Say::new(key("line-started", it.origin.as_str()))
            .with("tray", names.tray(it.tray)?)
            .with("number", number(it.number))
            .with("crop", crate::words::crop(&it.crop))
            .with("variety", crate::words::variety(&it.variety)),
        Content::Felt(felt) => felt_say(felt, "").with("tray", names.tray(felt.tray)?),
        Content::Fed(it) => Say::new("line-fed").with("tray", names.tray(it.tray)?),
        Content::HardenedOff(it) => {
            Say::new("line-hardened-off").with("tray", names.tray(it.tray)?)
        }
        Content::ReadingTaken(reading) => reading_say(names, reading)?,
        Content::HeatOff(heat) => heat_say(names, heat)?,
        Content::Counted(counted) => counted_say(names, counted)?,
        Content::WentOn(went) => went_on_say(names, went)?,
        Content::Left(left) => left_say(names, left)?,
        Content::Ready(it) => of_plants(names, "line-ready", it.of)?,
        Content::DugUp(dug) => of_plants(names, "line-dug-up", Plants::Sowing(dug.sowing))?
            .with("firm", number(dug.firm))
            .with("soft", number(dug.soft)),
        Content::SeedsLost(it) => of_plants(names, "line-seeds-lost", Plants::Sowing(it.sowing))?
            .with("number", number(it.number))
            .with("cause", word("cause", it.cause.as_str())),
        Content::Explained(it) => explained_say(names, it)?,
        Content::Noticed(it) => of_plants(names, key("line-noticed", it.sight.as_str()), it.of)?,
        Content::NothingCameUp(it) => {
            of_plants(names, "line-nothing-came-up", Plants::Sowing(it.sowing))?
        }
        Content::Finished(it) => of_plants(names, "line-finished", it.of)?,
        Content::Noted(note) => Say::new("line-noted").with("text", Arg::Text(note.text.clone())),
        Content::PhotoTaken(_) => Say::new("line-photo-taken"),
        Content::PhotoNamed(_) => Say::new("line-photo-named"),
        Content::JobPutOff(put_off) => {
            job("line-job-put-off", &put_off.job).with("until", Arg::Moment(put_off.until))
        }
        Content::JobDismissed(dismissed) => job("line-job-dismissed", &dismissed.job),
        Content::Amended(amended) => Say::new(if amended.content.is_some() {
            "line-corrected"
        } else {
            "line-withdrawn"
        }),
    })
}

fn plan_say(plan: &PlanDescribed) -> Say {
    let line = match plan.rhythm {
        _ if plan.ended => "line-plan-ended",
        Rhythm::By { .. } => "line-plan-by",
        Rhythm::Sale { .. } => "line-plan-sale",
        Rhythm::Every { .. } => "line-plan-every",
        Rhythm::TrueLeaves { .. } => "line-plan-true-leaves",
    };
    let weeks = match plan.rhythm {
        Rhythm::Every { weeks, .. } => weeks,
        _ => 0,
    };
    Say::new(line)
        .with("crop", crate::words::crop(&plan.crop))
        .with("variety", crate::words::variety(&plan.variety))
        .with("wanted", number(plan.wanted))
        .with("weeks", number(weeks))
        .with("day", Arg::Day(plan.rhythm.last_day()))
}

fn reserved_say(names: &Names<'_>, it: &Reserved) -> Result<Say, AppError> {
    let line = if it.released {
        "line-released"
    } else {
        "line-reserved"
    };
    let (crop, variety) = match &it.of {
        Wares::Plants { of } => {
            let name = names.plants(*of)?;
            (name.crop, name.variety)
        }
        Wares::Crop { crop, variety } => (crop.clone(), variety.clone()),
    };
    let note = it.note.trim();
    Ok(Say::new(line)
        .with("crop", crate::words::crop(&crop))
        .with("variety", crate::words::variety(&variety))
        .with("number", number(it.number))
        .with("named", Arg::Number(f64::from(u8::from(!note.is_empty()))))
        .with("note", Arg::Text(note.to_owned())))
}

fn number(number: u32) -> Arg {
    Arg::Number(f64::from(number))
}

fn count(number: usize) -> Arg {
    Arg::Number(number as f64)
}

fn job(line: &str, job: &JobKey) -> Say {
    Say::new(line).with("job", word("job", &job.kind))
}

/// A message about plants: crop, variety and tray.
fn of_plants(names: &Names<'_>, line: impl Into<String>, of: Plants) -> Result<Say, AppError> {
    let name = names.plants(of)?;
    let say = Say::new(line)
        .with("crop", crate::words::crop(&name.crop))
        .with("variety", crate::words::variety(&name.variety));
    Ok(match name.tray {
        Some(tray) => say.with("tray", names.tray(tray)?),
        None => say.with("tray", Arg::Text("?".to_owned())),
    })
}

fn of_packet(
    names: &Names<'_>,
    line: impl Into<String>,
    packet: PacketId,
) -> Result<Say, AppError> {
    let (crop, variety) = names.packet(packet)?;
    Ok(Say::new(line).with("crop", crop).with("variety", variety))
}

fn of_test(names: &Names<'_>, line: &str, test: TestId, sprouted: u32) -> Result<Say, AppError> {
    let (packet, seeds) = names.test(test)?;
    let say = match packet {
        Some(packet) => of_packet(names, line, packet)?,
        None => Say::new(line)
            .with("crop", Arg::Text("?".to_owned()))
            .with("variety", Arg::Text(String::new())),
    };
    Ok(say
        .with("sprouted", number(sprouted))
        .with("seeds", number(seeds)))
}

fn packet_say(packet: &PacketDescribed) -> Say {
    let say = match packet.stated_days {
        Some(stated) => Say::new("line-packet-described-days")
            .with("from", number(stated.from))
            .with("to", number(stated.to))
            .with("spread", number(stated.to.saturating_sub(stated.from))),
        None => Say::new("line-packet-described"),
    };
    say.with("crop", crate::words::crop(&packet.crop))
        .with("variety", crate::words::variety(&packet.variety))
}

fn sown_say(names: &Names<'_>, sown: &Sown) -> Result<Say, AppError> {
    let say = match sown.seeds {
        Seeds::Exact(seeds) => Say::new("line-sown").with("seeds", number(seeds)),
        Seeds::About(seeds) => Say::new("line-sown-about").with("seeds", number(seeds)),
        Seeds::Pinch => Say::new("line-sown-pinch"),
    };
    let (crop, variety) = names.packet(sown.packet)?;
    Ok(say
        .with("tray", names.tray(sown.tray)?)
        .with("crop", crop)
        .with("variety", variety))
}

fn felt_say(felt: &Felt, many: &str) -> Say {
    let feel = felt.feel.map(|feel| word("feel", feel.as_str()));
    let water = felt.water.map(|water| word("watering", water.as_str()));
    match (feel, water) {
        (Some(feel), Some(water)) => Say::new(format!("line-felt-and-watered{many}"))
            .with("feel", feel)
            .with("water", water),
        (Some(feel), None) => Say::new(format!("line-felt{many}")).with("feel", feel),
        (None, Some(water)) => Say::new(format!("line-watered{many}")).with("water", water),
        (None, None) => Say::new("line-corrected"),
    }
}

fn reading_say(names: &Names<'_>, reading: &ReadingTaken) -> Result<Say, AppError> {
    let say = match reading.shown {
        Shown::LowHigh { min_c, max_c } => Say::new("line-reading")
            .with("low", Arg::Celsius(min_c))
            .with("high", Arg::Celsius(max_c)),
        Shown::Now { temperature_c } => {
            Say::new("line-reading-now").with("temperature", Arg::Celsius(temperature_c))
        }
    };
    Ok(say
        .with("place", names.place(reading.place)?)
        .with("of", word("medium", reading.of.as_str())))
}

fn heat_say(names: &Names<'_>, heat: &HeatOff) -> Result<Say, AppError> {
    let place: PlaceId = heat.place;
    let say = match heat.to {
        Some(to) => Say::new("line-heat-off").with("to", Arg::Moment(to)),
        None => Say::new("line-heat-off-still"),
    };
    Ok(say
        .with("place", names.place(place)?)
        .with("from", Arg::Moment(heat.from)))
}

fn counted_say(names: &Names<'_>, counted: &Counted) -> Result<Say, AppError> {
    let line = match (counted.up, counted.of) {
        (Up::Number(_), Plants::Sowing(_)) => "line-counted",
        (Up::Number(_), Plants::Batch(_)) => "line-counted-batch",
        (Up::Few, _) => "line-counted-few",
        (Up::Half, _) => "line-counted-half",
        (Up::NearlyAll, _) => "line-counted-nearly-all",
    };
    let say = of_plants(names, line, counted.of)?;
    Ok(match counted.up {
        Up::Number(up) => say.with("number", number(up)),
        Up::Few | Up::Half | Up::NearlyAll => say,
    })
}

fn went_on_say(names: &Names<'_>, went: &WentOn) -> Result<Say, AppError> {
    let mut into = Vec::new();
    for part in &went.parts {
        let tray = names.tray(part.tray)?;
        if !into.contains(&tray) {
            into.push(tray);
        }
    }
    let all: u32 = went.parts.iter().map(|part| part.number).sum();
    Ok(
        of_plants(names, key("line-went-on", went.step.as_str()), went.of)?
            .with("number", number(all))
            .with("into", Arg::List(into)),
    )
}

fn explained_say(names: &Names<'_>, it: &Explained) -> Result<Say, AppError> {
    let text = it.text.trim();
    let line = match (it.causes.is_empty(), text.is_empty()) {
        (true, true) => "line-explained-taken-back",
        (true, false) => "line-explained-words",
        (false, true) => "line-explained",
        (false, false) => "line-explained-both",
    };
    let causes = it.causes.iter();
    let causes = causes.map(|cause| word("reason-cause", cause.as_str()));
    Ok(of_plants(names, line, Plants::Sowing(it.sowing))?
        .with("causes", Arg::List(causes.collect()))
        .with("text", Arg::Text(text.to_owned())))
}

fn left_say(names: &Names<'_>, left: &Left) -> Result<Say, AppError> {
    let line = match left.how {
        Leaving::Thinned => "line-left-thinned",
        Leaving::Lost(_) => "line-left-lost",
        Leaving::PlantedOut => "line-left-planted-out",
        Leaving::Sold => "line-left-sold",
        Leaving::GivenAway => "line-left-given-away",
    };
    let say = of_plants(names, line, left.of)?.with("number", number(left.number));
    Ok(match left.how {
        Leaving::Lost(cause) => say.with("cause", word("cause", cause.as_str())),
        Leaving::Thinned | Leaving::PlantedOut | Leaving::Sold | Leaving::GivenAway => say,
    })
}
