//! The crop book and the pure mathematics of raising plants from seed.
//!
//! From a crop's published days to emergence and the temperatures a tray has
//! stood at, this crate says how far along a sowing is ([`Curve`]), what share
//! of its seedlings should be up ([`emerged_share`]), on which days they are to
//! be expected ([`forecast()`]), what a packet is still worth
//! ([`packet_outlook`]), how many seeds to sow for the plants wanted
//! ([`seeds_to_sow`], [`cells_to_sow`]) and when to feel the compost next
//! ([`drying_interval_days`]). Of a sowing that is late it says whether to wait or
//! sow again ([`verdict()`]), of one that did badly why ([`causes()`]), of one that
//! is done how it went ([`germination_indices`], [`interval`], [`p_higher`]), and
//! of a year when there is frost, light and time ([`FrostOdds`],
//! [`day_length_hours`], [`last_useful_sowing`]). The figures of each crop, every
//! one with its source, are in [`crops`].
//!
//! Nothing here reads a clock, a file or a database, keeps state between calls
//! or knows of trays: the same question always has the same answer, on every
//! target, wasm32 included. Temperatures are in °C, times in days, shares in
//! 0 to 1. Bad input is an [`Error`] with a code, never a panic or a NaN.

mod beta_binomial;
mod book;
mod causes;
mod compare;
mod crop;
mod curve;
mod day;
mod degree_days;
mod drying;
mod emergence;
mod enough;
mod entry;
mod error;
mod forecast;
mod frost;
mod indices;
mod learn;
mod light;
mod normal;
mod outlook;
mod packet;
mod season;
mod verdict;
mod watch;

pub use book::{BookError, CropBook, crops};
pub use causes::{CAUSES_SHOWN, Cause, CauseKind, Compost, Fact, Kept, Seen, causes};
pub use compare::{interval, p_higher};
pub use crop::{
    Basis, Cardinals, Caution, Crop, CropGroup, DayNight, Hardiness, LightNeed, Maturity,
    MaturityFrom, Provenance, SowingCompost, Treatment,
};
pub use curve::{Curve, CurveError};
pub use day::{day_temperature_at, mean_from_reading_now};
pub use degree_days::degree_days;
pub use drying::{drying_interval_days, vapour_pressure_kpa};
pub use emergence::{
    PROGRESS_EPSILON, SIGMA, TAU_KIND, TimeFactor, average_emerged_share, emerged_share,
    old_seed_time_factor, stated_mean_ln, tau,
};
pub use enough::{CONFIDENCE, MOST_SEEDS, cells_to_sow, seeds_to_sow};
pub use error::Error;
pub use forecast::{Forecast, HORIZON_DAYS, forecast, probability_any_up};
pub use frost::{FrostOdds, Half, Hemisphere, MonthDay, frost_date};
pub use indices::{GerminationIndices, germination_indices};
pub use learn::{Finished, learnt_time_factor};
pub use light::{
    Light, daily_light_integral, day_length_hours, extraterrestrial_radiation, lamp_light_integral,
};
pub use outlook::Outlook;
pub use packet::{PacketOutlook, Storage, Test, packet_outlook};
pub use season::{Window, end_of_growth, last_useful_sowing, set_out_window, sowing_window};
pub use verdict::{NoVerdict, Remedy, Standing, VERDICT_FROM, Verdict, verdict};
pub use watch::{Beside, DEAD, Posterior, Watched};
