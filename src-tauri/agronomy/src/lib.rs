//! The crop book and the pure mathematics of raising plants from seed.
//!
//! From a crop's published days to emergence and the temperatures a tray has
//! stood at, this crate says how far along a sowing is ([`Curve`]), what share
//! of its seedlings should be up ([`emerged_share`]), on which days they are to
//! be expected ([`forecast()`]), what a packet is still worth
//! ([`packet_outlook`]) and when to feel the compost next
//! ([`drying_interval_days`]). The figures of each crop, every one with its
//! source, are in [`crops`].
//!
//! Nothing here reads a clock, a file or a database, keeps state between calls
//! or knows of trays: the same question always has the same answer, on every
//! target, wasm32 included. Temperatures are in °C, times in days, shares in
//! 0 to 1. Bad input is an [`Error`] with a code, never a panic or a NaN.

mod book;
mod crop;
mod curve;
mod day;
mod drying;
mod emergence;
mod entry;
mod error;
mod forecast;
mod normal;
mod outlook;
mod packet;

pub use book::{BookError, CropBook, crops};
pub use crop::{
    Basis, Cardinals, Caution, Crop, CropGroup, DayNight, Hardiness, LightNeed, Maturity,
    MaturityFrom, Provenance, SowingCompost, Treatment,
};
pub use curve::{Curve, CurveError};
pub use day::{day_temperature_at, mean_from_reading_now};
pub use drying::{drying_interval_days, vapour_pressure_kpa};
pub use emergence::{
    PROGRESS_EPSILON, SIGMA, TAU_KIND, TimeFactor, average_emerged_share, emerged_share,
    old_seed_time_factor, tau,
};
pub use error::Error;
pub use forecast::{Forecast, HORIZON_DAYS, forecast, probability_any_up};
pub use outlook::Outlook;
pub use packet::{PacketOutlook, Storage, Test, packet_outlook};
