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
    /// How a tray is sheltered for a night.
    Shelter {
        /// Brought in.
        BroughtIn = "brought_in",
        /// Covered with fleece.
        Fleece = "fleece",
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
words!(
    /// What a grower may blame for a sowing that did badly.
    Blame {
        /// Too cold.
        TooCold = "too_cold",
        /// Too hot.
        TooHot = "too_hot",
        /// Old seed.
        OldSeed = "old_seed",
        /// Sown too deep.
        TooDeep = "too_deep",
        /// Sown too shallow.
        TooShallow = "too_shallow",
        /// Buried away from the light.
        BuriedFromLight = "buried_from_light",
        /// Dried out.
        DriedOut = "dried_out",
        /// Kept wet in the cool.
        WetAndCool = "wet_and_cool",
        /// The wrong compost.
        WrongCompost = "wrong_compost",
        /// Washed out by a can.
        WashedOut = "washed_out",
        /// Eaten.
        Eaten = "eaten",
        /// Damped off.
        DampedOff = "damped_off",
        /// Frosted.
        Frosted = "frosted",
        /// Baked.
        Baked = "baked",
        /// Spilt or knocked over.
        Spilt = "spilt",
        /// Leggy for want of light.
        WantOfLight = "want_of_light",
        /// Kept too long in the heat.
        LongInTheHeat = "long_in_the_heat",
        /// Something else: the words say what.
        Other = "other",
    }
);
words!(
    /// How plants look.
    Sight {
        /// Drawn up, thin and pale for want of light.
        Leggy = "leggy",
        /// Short and stout, as they should be.
        Sturdy = "sturdy",
        /// Leaves pale or yellow: hungry.
        PaleLeaves = "pale_leaves",
        /// The first leaves of the plant's own kind.
        TrueLeaves = "true_leaves",
    }
);
words!(
    /// What is to become of a packet at the stocktake.
    Stock {
        /// It stays.
        Keep = "keep",
        /// It is to be tested before it is sown.
        Test = "test",
        /// It is used up.
        UsedUp = "used_up",
        /// It is given away.
        GivenAway = "given_away",
    }
);
words!(
    /// How it stands with something to buy.
    Standing {
        /// Wanted.
        Wanted = "wanted",
        /// Bought.
        Bought = "bought",
        /// No longer wanted.
        Dropped = "dropped",
    }
);
