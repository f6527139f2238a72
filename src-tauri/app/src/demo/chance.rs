//! Chance with a fixed seed: the demo is the same every time.

/// A stream of numbers: the SplitMix64 generator (Steele, Lea and Flood, 2014;
/// its three constants from memory).
pub(super) struct Chance(u64);

impl Chance {
    pub(super) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15).wrapping_add(2026))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// Strictly between 0 and 1.
    pub(super) fn share(&mut self) -> f64 {
        ((self.next() >> 12) as f64 + 0.5) / (1_u64 << 52) as f64
    }

    pub(super) fn happens(&mut self, odds: f64) -> bool {
        self.share() < odds
    }

    /// Between -`most` and `most`.
    pub(super) fn about(&mut self, most: f64) -> f64 {
        (self.share() * 2.0 - 1.0) * most
    }
}
