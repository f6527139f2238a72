//! What to sow now.

use crate::growth::Learnt;
use crate::packet_words;
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::season::season;
use crate::view::{SeasonStanding, SowNow};
use chrono::NaiveDate;
use plumule_agronomy::{Crop, crops};
use plumule_journal::content::MonthDay;
use plumule_journal::state::PacketState;

pub(super) fn last_frost(picture: &Picture) -> Option<MonthDay> {
    picture.garden.described.as_ref()?.last_frost
}

/// By packet, what closes first; without a last frost, every packet with what
/// the crop book says.
pub(super) fn sow_now(picture: &Picture, packets: &[PacketState], today: NaiveDate) -> Vec<SowNow> {
    let left = packets
        .iter()
        .filter(|packet| packet.seeds_left() != Some(0));
    let mut found: Vec<SowNow> = left
        .filter_map(|packet| {
            let crop = crops().get(&packet.described.crop)?;
            let (say, last) = match last_frost(picture) {
                Some(_) => open_now(picture, crop, today)?,
                None => (by_the_book(crop)?, None),
            };
            let learnt = Learnt::of(picture, packet);
            Some(SowNow {
                line: packet_words::line(packet, &learnt, today),
                say,
                last,
            })
        })
        .collect();
    found.sort_by(|one, other| {
        let key = |it: &SowNow| (it.last, it.line.crop.key.clone(), it.line.variety.clone());
        key(one).cmp(&key(other))
    });
    found
}

/// In the window for raising it; or after it, while it can still ripen.
fn open_now(picture: &Picture, crop: &Crop, today: NaiveDate) -> Option<(Say, Option<NaiveDate>)> {
    let season = season(picture, crop, today)?;
    let (key, last) = match season.standing(today) {
        SeasonStanding::Early => return None,
        SeasonStanding::Now => ("now-until", season.sow.last),
        SeasonStanding::Late => ("now-late", season.over()),
    };
    Some((Say::new(key).with("last", Arg::Day(last)), Some(last)))
}

/// In weeks from the last frost.
fn by_the_book(crop: &Crop) -> Option<Say> {
    let (first_out, last_out) = crop.set_out_weeks?;
    let (least, most) = crop.weeks_to_raise.unwrap_or((0.0, 0.0));
    let (first, last) = (first_out - most, last_out - least);
    let key = match (first < 0.0, last < 0.0) {
        (true, true) => "now-book-before",
        (true, false) => "now-book-around",
        (false, _) => "now-book-after",
    };
    Some(
        Say::new(key)
            .with("first", Arg::Number(first.abs().round()))
            .with("last", Arg::Number(last.abs().round())),
    )
}
