//! The season of a crop in a garden: when to sow it, when it goes out, until
//! when sowing is of use.

pub(crate) mod csv;
mod last;
pub(crate) mod odds;
#[cfg(test)]
mod tests;
mod year;

pub(crate) use last::{in_year, last_sowing};
pub(crate) use year::Years;

use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::view::{SeasonStanding, SeasonView};
use crate::words;
use chrono::{Datelike, NaiveDate};
use plumule_agronomy::{Crop, Window, set_out_window, sowing_window};

/// The season of a crop that is not over on a day, in words and dates. None
/// without a last frost date, and for a crop that has no weeks to go out.
pub(crate) fn season_view(picture: &Picture, crop: &Crop, today: NaiveDate) -> Option<SeasonView> {
    let season = season(picture, crop, today)?;
    let standing = season.standing(today);
    let mut says = vec![season.say(standing, crop, today)];
    if crop.weeks_to_raise.is_some() {
        says.push(set_out_say(picture, season.set_out));
    }
    Some(SeasonView {
        sow: [season.sow.first, season.sow.last],
        set_out: [season.set_out.first, season.set_out.last],
        last_useful: season.last_useful,
        standing,
        says,
    })
}

/// The dates of a season.
pub(crate) struct Season {
    pub(crate) sow: Window,
    pub(crate) set_out: Window,
    pub(crate) last_useful: Option<NaiveDate>,
}

/// The seasons of a crop that begin last year, this and the next; none where no
/// last frost is known or the crop has no weeks to go out.
pub(crate) fn seasons(picture: &Picture, crop: &Crop, today: NaiveDate) -> Vec<Season> {
    let garden = picture.garden.described.as_ref();
    let last_frost = garden.and_then(|garden| garden.last_frost);
    let season = |year| {
        let set_out = set_out_window(in_year(last_frost?, year)?, crop.set_out_weeks?).ok()?;
        let sow = sowing_window(set_out, crop.weeks_to_raise).ok()?;
        Some(Season {
            last_useful: last_sowing(picture, crop, sow.first),
            sow,
            set_out,
        })
    };
    let year = today.year();
    (year - 1..=year + 1).filter_map(season).collect()
}

/// The first season of which there is something to come.
pub(crate) fn season(picture: &Picture, crop: &Crop, today: NaiveDate) -> Option<Season> {
    let mut seasons = seasons(picture, crop, today).into_iter();
    seasons.find(|season| season.over() >= today)
}

impl Season {
    /// The last day on which sowing for it is of use.
    pub(crate) fn over(&self) -> NaiveDate {
        self.last_useful
            .map_or(self.sow.last, |last| last.max(self.sow.last))
    }

    pub(crate) fn standing(&self, today: NaiveDate) -> SeasonStanding {
        if today < self.sow.first {
            SeasonStanding::Early
        } else if today <= self.sow.last {
            SeasonStanding::Now
        } else {
            SeasonStanding::Late
        }
    }

    fn say(&self, standing: SeasonStanding, crop: &Crop, today: NaiveDate) -> Say {
        let key = match (standing, self.last_useful) {
            (SeasonStanding::Early, None) => "season-sow-early",
            (SeasonStanding::Early, Some(_)) => "season-sow-early-until",
            (SeasonStanding::Now, None) => "season-sow-now",
            (SeasonStanding::Now, Some(_)) => "season-sow-now-until",
            (SeasonStanding::Late, _) => "season-sow-late",
        };
        let say = Say::new(key)
            .with("crop", words::crop(&crop.key))
            .with("from", Arg::Day(self.sow.first))
            .with("to", Arg::Day(self.sow.last))
            .with(
                "days",
                Arg::Number((self.sow.first - today).num_days() as f64),
            );
        match self.last_useful {
            Some(last) => say.with("last", Arg::Day(last)),
            None => say,
        }
    }
}

fn set_out_say(picture: &Picture, set_out: Window) -> Say {
    let chance = odds::chance_after(picture, set_out.first);
    let key = if chance.is_some() {
        "season-set-out-odds"
    } else {
        "season-set-out"
    };
    let say = Say::new(key)
        .with("from", Arg::Day(set_out.first))
        .with("to", Arg::Day(set_out.last));
    match chance {
        Some(chance) => say.with("chance", crate::judgement::odds(chance)),
        None => say,
    }
}
