//! SplitMix64: the same draws in every language and on every run.

/// A stream of random numbers from one seed.
pub struct Random(pub u64);

impl Random {
    /// The next 64 bits.
    pub fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// A number below `count`.
    pub fn pick(&mut self, count: u64) -> u64 {
        self.next() % count
    }
}
