//! The crates against figures from outside: published tables, SciPy, and the
//! same sums worked out again in plain Python (`golden/`).

#![cfg(test)]

mod causes;
mod distributions;
mod golden;
mod looking_back;
mod manifest;
mod published_table;
mod published_values;
mod recomputed;
mod results;
mod season;
mod sowing;
mod sun_and_warmth;
mod trade_facts;
mod workings;
