//! Plans to raise plants: what is to be sown for them, when, and how they
//! stand; and the season of the grower's crops as a chart.

mod chart;
mod count;
mod need;
mod raise;
mod stock;
#[cfg(test)]
mod tests;
mod view;

pub(crate) use need::{Need, needs};
pub(crate) use stock::ready;
pub(crate) use view::{plan_head, planned, view};

/// The odds at which seeds are enough for a plan, in a hundred (the bench's own).
pub(crate) const ODDS: u8 = 90;
