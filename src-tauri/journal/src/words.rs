//! The closed sets of words that entries use.

use serde::{Deserialize, Serialize};

macro_rules! words {
    ($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        pub enum $name { $($(#[$vdoc])* $variant),+ }

        impl $name {
            /// Every word of the set, in its usual order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];
        }
    };
}

words!(
    /// The kinds of place.
    PlaceKind {
        /// A propagator with bottom heat.
        HeatedPropagator,
        /// A windowsill indoors.
        Windowsill,
        /// A shed or garage.
        Shed,
        /// A greenhouse or polytunnel.
        Greenhouse,
        /// A cold frame.
        ColdFrame,
        /// Outdoors.
        Outdoors,
        /// A fridge, for cold weeks.
        Fridge,
    }
);
words!(
    /// How much light a place has, as a grower sees it.
    Light {
        /// None to speak of.
        Dark,
        /// Seedlings stretch.
        Dim,
        /// Enough for seedlings.
        Bright,
    }
);
words!(
    /// What a tray is.
    Container {
        /// A tray of cells.
        Cells,
        /// An open tray; its cells are strips across it.
        OpenTray,
        /// One pot.
        Pot,
        /// A group of pots; its cells are the pots.
        Pots,
        /// Damp paper, for sprouting.
        DampPaper,
        /// A bag of damp stuff, for sprouting or cold weeks.
        Bag,
    }
);
words!(
    /// What the tray is filled with.
    Compost {
        /// Fine seed compost.
        Seed,
        /// Multi-purpose compost.
        MultiPurpose,
        /// Potting compost, richer.
        Potting,
        /// Soil from the garden.
        GardenSoil,
        /// Coarse or home-made compost.
        Coarse,
        /// None: paper, water, sand.
        NoCompost,
    }
);
words!(
    /// How a packet is stored.
    Storage {
        /// In the fridge, sealed and dry.
        FridgeSealed,
        /// In a cool cupboard.
        CoolCupboard,
        /// In a warm room.
        WarmRoom,
        /// In a damp shed.
        DampShed,
    }
);
words!(
    /// How the compost feels, or the tray lifts.
    Feel {
        /// Dry: wants water.
        Dry,
        /// Moist: as it should be.
        Moist,
        /// Wet: leave it.
        Wet,
    }
);
words!(
    /// How a tray was watered.
    Watering {
        /// Stood in water.
        Below,
        /// From a fine rose.
        Rose,
        /// Misted.
        Mist,
    }
);
words!(
    /// What a thermometer was in.
    Medium {
        /// The air of the place.
        Air,
        /// The compost.
        Compost,
    }
);
words!(
    /// How plants went on.
    Step {
        /// A mixed tray was cut apart; nothing was disturbed.
        CutApart,
        /// Sprouted seeds were sown on.
        SownOn,
        /// Seedlings were pricked out.
        PrickedOut,
        /// Plants were potted on.
        PottedOn,
    }
);
words!(
    /// Why plants were lost.
    LossCause {
        /// Eaten by slugs, mice, birds.
        Eaten,
        /// Damped off: fell over at the neck.
        DampedOff,
        /// Killed by frost.
        Frosted,
        /// Baked by sun or heat.
        Baked,
        /// Dried out.
        DriedOut,
        /// Spilt or knocked over.
        Spilt,
        /// Nobody knows.
        Unknown,
    }
);
words!(
    /// What a batch without seed began as.
    Origin {
        /// Cuttings.
        Cuttings,
        /// Tubers.
        Tubers,
        /// Bulbs.
        Bulbs,
        /// Bought plugs.
        Plugs,
    }
);
