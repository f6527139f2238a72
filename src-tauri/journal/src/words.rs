//! The closed sets of words that entries use.

use serde::{Deserialize, Serialize};
use std::str::FromStr;

/// A text that is not a word of the set.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a word of the set")]
pub struct NoSuchWord(pub String);

macro_rules! words {
    ($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident = $word:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        pub enum $name { $($(#[$vdoc])* #[serde(rename = $word)] $variant),+ }

        impl $name {
            /// Every word of the set, in its usual order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The word as it is stored.
            #[must_use]
            pub fn as_str(self) -> &'static str {
                match self { $(Self::$variant => $word),+ }
            }
        }

        impl FromStr for $name {
            type Err = NoSuchWord;
            fn from_str(text: &str) -> Result<Self, Self::Err> {
                match text {
                    $($word => Ok(Self::$variant),)+
                    _ => Err(NoSuchWord(text.to_owned())),
                }
            }
        }
    };
}

words!(
    /// The kinds of place.
    PlaceKind {
        /// A propagator with bottom heat.
        HeatedPropagator = "heated_propagator",
        /// A windowsill indoors.
        Windowsill = "windowsill",
        /// A shed or garage.
        Shed = "shed",
        /// A greenhouse or polytunnel.
        Greenhouse = "greenhouse",
        /// A cold frame.
        ColdFrame = "cold_frame",
        /// Outdoors.
        Outdoors = "outdoors",
        /// A fridge, for cold weeks.
        Fridge = "fridge",
    }
);
words!(
    /// How much light a place has, as a grower sees it.
    Light {
        /// None to speak of.
        Dark = "dark",
        /// Seedlings stretch.
        Dim = "dim",
        /// Enough for seedlings.
        Bright = "bright",
    }
);
words!(
    /// What a tray is.
    Container {
        /// A tray of cells.
        Cells = "cells",
        /// An open tray; its cells are strips across it.
        OpenTray = "open_tray",
        /// One pot.
        Pot = "pot",
        /// A group of pots; its cells are the pots.
        Pots = "pots",
        /// Damp paper, for sprouting.
        DampPaper = "damp_paper",
        /// A bag of damp stuff, for sprouting or cold weeks.
        Bag = "bag",
    }
);
words!(
    /// What the tray is filled with.
    Compost {
        /// Fine seed compost.
        Seed = "seed",
        /// Multi-purpose compost.
        MultiPurpose = "multi_purpose",
        /// Potting compost, richer.
        Potting = "potting",
        /// Soil from the garden.
        GardenSoil = "garden_soil",
        /// Coarse or home-made compost.
        Coarse = "coarse",
        /// None: paper, water, sand.
        NoCompost = "no_compost",
    }
);
words!(
    /// How a packet is stored.
    Storage {
        /// In the fridge, sealed and dry.
        FridgeSealed = "fridge_sealed",
        /// In a cool cupboard.
        CoolCupboard = "cool_cupboard",
        /// In a warm room.
        WarmRoom = "warm_room",
        /// In a damp shed.
        DampShed = "damp_shed",
    }
);
words!(
    /// How the compost feels, or the tray lifts.
    Feel {
        /// Dry: wants water.
        Dry = "dry",
        /// Moist: as it should be.
        Moist = "moist",
        /// Wet: leave it.
        Wet = "wet",
    }
);
words!(
    /// How a tray was watered.
    Watering {
        /// Stood in water.
        Below = "below",
        /// From a fine rose.
        Rose = "rose",
        /// Misted.
        Mist = "mist",
    }
);
words!(
    /// What a thermometer was in.
    Medium {
        /// The air of the place.
        Air = "air",
        /// The compost.
        Compost = "compost",
    }
);
words!(
    /// How plants went on.
    Step {
        /// A mixed tray was cut apart; nothing was disturbed.
        CutApart = "cut_apart",
        /// Sprouted seeds were sown on.
        SownOn = "sown_on",
        /// Seedlings were pricked out.
        PrickedOut = "pricked_out",
        /// Plants were potted on.
        PottedOn = "potted_on",
    }
);
words!(
    /// Why plants were lost.
    LossCause {
        /// Eaten by slugs, mice, birds.
        Eaten = "eaten",
        /// Damped off: fell over at the neck.
        DampedOff = "damped_off",
        /// Killed by frost.
        Frosted = "frosted",
        /// Baked by sun or heat.
        Baked = "baked",
        /// Dried out.
        DriedOut = "dried_out",
        /// Spilt or knocked over.
        Spilt = "spilt",
        /// Nobody knows.
        Unknown = "unknown",
    }
);
words!(
    /// What a batch without seed began as.
    Origin {
        /// Cuttings.
        Cuttings = "cuttings",
        /// Tubers.
        Tubers = "tubers",
        /// Bulbs.
        Bulbs = "bulbs",
        /// Bought plugs.
        Plugs = "plugs",
    }
);
