//! Numbers that are the same for the same seed, on every machine.

/// A generator whose every start is as good as any other.
pub struct Random(u64);

impl Random {
    /// The numbers of one case of a run.
    #[must_use]
    pub const fn new(seed: u64, case: u64) -> Self {
        Self(mix(seed ^ mix(case)))
    }

    /// The next 64 bits.
    pub const fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        mix(self.0)
    }

    /// A number below `count`.
    pub const fn below(&mut self, count: usize) -> usize {
        (((self.next() >> 32) * count as u64) >> 32) as usize
    }

    /// One time in `count`.
    pub const fn one_in(&mut self, count: usize) -> bool {
        self.below(count) == 0
    }

    /// One of a list.
    pub fn of<'a, T: ?Sized>(&mut self, list: &[&'a T]) -> &'a T {
        list[self.below(list.len())]
    }
}

const fn mix(state: u64) -> u64 {
    let state = (state ^ (state >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    let state = (state ^ (state >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    state ^ (state >> 31)
}
