//! The standards' names for their rows of diameters and pitches.

use crate::named::named;

named! {
    /// The standard's token for a row of diameters and pitches.
    pub enum Series {
        /// ISO 261 coarse pitch.
        Coarse = 1 "coarse",
        /// ISO 261 fine pitch.
        Fine = 2 "fine",
        /// Unified coarse.
        Unc = 3 "UNC",
        /// Unified fine.
        Unf = 4 "UNF",
        /// Unified extra fine.
        Unef = 5 "UNEF",
        /// Unified constant pitch, 4 threads per inch.
        Un4 = 6 "4-UN",
        /// Unified constant pitch, 6 threads per inch.
        Un6 = 7 "6-UN",
        /// Unified constant pitch, 8 threads per inch.
        Un8 = 8 "8-UN",
        /// Unified constant pitch, 12 threads per inch.
        Un12 = 9 "12-UN",
        /// Unified constant pitch, 16 threads per inch.
        Un16 = 10 "16-UN",
        /// Unified constant pitch, 20 threads per inch.
        Un20 = 11 "20-UN",
        /// Unified constant pitch, 28 threads per inch.
        Un28 = 12 "28-UN",
        /// Unified constant pitch, 32 threads per inch.
        Un32 = 13 "32-UN",
        /// Unified special: a diameter-pitch combination outside the standard series.
        Uns = 14 "UNS",
        /// British Standard Whitworth, coarse.
        Bsw = 15 "BSW",
        /// British Standard Fine.
        Bsf = 16 "BSF",
    }
}

impl Series {
    /// The token as it stands in a designation: the constant-pitch series are written `UN`.
    #[must_use]
    pub const fn token(self) -> &'static str {
        match self {
            Self::Coarse | Self::Fine => "",
            Self::Bsw => "BSW",
            Self::Bsf => "BSF",
            Self::Unc => "UNC",
            Self::Unf => "UNF",
            Self::Unef => "UNEF",
            Self::Uns => "UNS",
            _ => "UN",
        }
    }
}
