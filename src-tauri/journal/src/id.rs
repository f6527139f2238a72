//! Identities: a newtype for each, over a UUIDv7 made from the stamp.

use serde::{Deserialize, Serialize};
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
