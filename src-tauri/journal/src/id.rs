//! Identities: a newtype for each, over a UUIDv7 made from the stamp.

use crate::stamp::Stamp;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::fmt;
use std::str::FromStr;
use uuid::Uuid;

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }

        impl FromStr for $name {
            type Err = uuid::Error;
            fn from_str(text: &str) -> Result<Self, Self::Err> {
                Uuid::parse_str(text).map(Self)
            }
        }
    };
}

id!(
    /// One line of the journal.
    EntryId
);
id!(
    /// A journal's copy on one device; made anew on restore.
    DeviceId
);
id!(
    /// A lot of seed.
    PacketId
);
id!(
    /// Where trays stand.
    PlaceId
);
id!(
    /// One container.
    TrayId
);
id!(
    /// Seeds of one packet in some cells of one tray.
    SowingId
);
id!(
    /// Plants that went on together.
    BatchId
);
id!(
    /// A germination test.
    TestId
);
id!(
    /// Something to buy.
    ItemId
);
id!(
    /// A plan to raise plants.
    PlanId
);
id!(
    /// Plants kept for somebody.
    ReservationId
);

/// Ids made under one stamp for one purpose: UUIDs of version 7 (RFC 9562,
/// 5.7), the time from the stamp and the rest from its entropy. The same stamp
/// and purpose give the same ids in the same order; another purpose others.
#[derive(Clone, Debug)]
pub struct Ids {
    ms: u64,
    seed: Sha256,
    made: u64,
}

impl Ids {
    /// For a purpose.
    #[must_use]
    pub fn new(stamp: &Stamp, purpose: &str) -> Self {
        let ms = u64::try_from(stamp.now.timestamp_millis()).unwrap_or(0);
        let seed = Sha256::new()
            .chain_update(stamp.entropy)
            .chain_update(ms.to_be_bytes())
            .chain_update(purpose.as_bytes());
        Self { ms, seed, made: 0 }
    }

    /// The next one.
    #[allow(clippy::should_implement_trait, reason = "it never ends")]
    pub fn next(&mut self) -> Uuid {
        let digest = self.seed.clone().chain_update(self.made.to_be_bytes());
        self.made += 1;
        let mut chance = [0; 10];
        for (to, from) in chance.iter_mut().zip(digest.finalize()) {
            *to = from;
        }
        uuid::Builder::from_unix_timestamp_millis(self.ms, &chance).into_uuid()
    }
}
