//! Packets, their stock, germination tests, what to buy.

use super::parse::{known, plants, range};
use super::{Made, Maker};
use crate::error::AppError;
use crate::view::PacketForm;
use plumule_journal::content::{
    Content, PacketDescribed, SeedsCounted, StatedDays, StockTaken, TestClosed, TestCounted,
    TestStarted, ToBuy,
};
use plumule_journal::id::{ItemId, PacketId, TestId};
use plumule_journal::state::TestState;
use plumule_journal::words::{Standing, Stock};

impl Maker<'_> {
    pub(super) fn add_packet(&mut self, form: &PacketForm) -> Result<Made, AppError> {
        let packet = PacketId(self.ids.next());
        packet_described(packet, form, false)
    }

    pub(super) fn describe_packet(
        &self,
        id: &str,
        form: &PacketForm,
        retired: bool,
    ) -> Result<Made, AppError> {
        packet_described(self.described(id)?.packet, form, retired)
    }

    fn described(&self, id: &str) -> Result<PacketDescribed, AppError> {
        let packet = self.journal.packet(known(id)?)?;
        Ok(packet.ok_or_else(|| AppError::bad_request(id))?.described)
    }

    /// The word on it, and out of use with what is used up or given away; back
    /// into use with what is not.
    pub(super) fn take_stock(&self, id: &str, found: &str) -> Result<Made, AppError> {
        let described = self.described(id)?;
        let (packet, found) = (described.packet, known(found)?);
        let mut made = Made::of_packet(packet, Content::StockTaken(StockTaken { packet, found }));
        let retired = matches!(found, Stock::UsedUp | Stock::GivenAway);
        if described.retired != retired {
            made.contents
                .push(Content::PacketDescribed(PacketDescribed {
                    retired,
                    ..described
                }));
        }
        Ok(made)
    }

    pub(super) fn start_test(&mut self, id: &str, seeds: u32) -> Result<Made, AppError> {
        let packet = known(id)?;
        let test = TestId(self.ids.next());
        Ok(Made::of_packet(
            packet,
            Content::TestStarted(TestStarted {
                test,
                packet,
                seeds,
            }),
        ))
    }

    pub(super) fn count_test(&self, id: &str, sprouted: u32) -> Result<Made, AppError> {
        let TestState { test, packet, .. } = self.test(id)?;
        Ok(Made::of_packet(
            packet,
            Content::TestCounted(TestCounted { test, sprouted }),
        ))
    }

    pub(super) fn close_test(&self, id: &str, sprouted: u32) -> Result<Made, AppError> {
        let TestState { test, packet, .. } = self.test(id)?;
        Ok(Made::of_packet(
            packet,
            Content::TestClosed(TestClosed {
                test,
                packet,
                sprouted,
            }),
        ))
    }

    fn test(&self, id: &str) -> Result<TestState, AppError> {
        let test = self.journal.test(known(id)?)?;
        test.ok_or_else(|| AppError::bad_request(id))
    }

    pub(super) fn want_to_buy(
        &mut self,
        crop: &str,
        variety: &str,
        note: &str,
    ) -> Result<Made, AppError> {
        Ok(Made::one(Content::ToBuy(ToBuy {
            item: ItemId(self.ids.next()),
            crop: crop.trim().to_owned(),
            variety: variety.trim().to_owned(),
            note: note.trim().to_owned(),
            standing: Standing::Wanted,
        })))
    }

    pub(super) fn set_to_buy(&self, id: &str, standing: &str) -> Result<Made, AppError> {
        let item = self.journal.item(known(id)?)?;
        let described = item.ok_or_else(|| AppError::bad_request(id))?.described;
        Ok(Made::one(Content::ToBuy(ToBuy {
            standing: known(standing)?,
            ..described
        })))
    }
}

pub(super) fn count(id: &str, left: u32) -> Result<Made, AppError> {
    let packet = known(id)?;
    Ok(Made::of_packet(
        packet,
        Content::SeedsCounted(SeedsCounted { packet, left }),
    ))
}

fn packet_described(packet: PacketId, form: &PacketForm, retired: bool) -> Result<Made, AppError> {
    Ok(Made::of_packet(
        packet,
        Content::PacketDescribed(described(packet, form, retired)?),
    ))
}

/// A packet as it is described in a form.
pub(crate) fn described(
    packet: PacketId,
    form: &PacketForm,
    retired: bool,
) -> Result<PacketDescribed, AppError> {
    Ok(PacketDescribed {
        packet,
        crop: form.crop.trim().to_owned(),
        variety: form.variety.trim().to_owned(),
        packed_year: form.packed_year,
        harvested_year: form.harvested_year,
        sow_by: form.sow_by,
        stated_germination: form.stated_germination,
        stated_days: form.stated_days.map(|stated| StatedDays {
            from: stated.from,
            to: stated.to,
            at: stated.at.map(range),
        }),
        seeds: form.seeds,
        storage: known(&form.storage)?,
        treated: form.treated,
        source: form.source.trim().to_owned(),
        note: form.note.trim().to_owned(),
        f1: form.f1,
        saved_from: form.saved_from.as_ref().map(plants).transpose()?,
        price: form.price.trim().to_owned(),
        retired,
    })
}
