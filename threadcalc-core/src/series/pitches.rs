//! The pitches that the standards list, each once, derived from their tables of sizes.

use super::asme_b1_1::UnifiedSize;
use super::asme_b1_20_1::InchPipe;
use super::iso_228_1::MetricPipe;
use super::iso_261::MetricSize;
use super::{CONSTANT_PITCH, asme_b1_1, asme_b1_20_1, iso_228_1, iso_261};
use crate::length::Length;
use crate::named::named;

named! {
    /// A system of threads that shares its pitches.
    pub enum PitchSystem {
        /// ISO 261, M.
        Metric = 1 "metric",
        /// ASME B1.1, UN.
        Unified = 2 "unified",
        /// ISO 228-1 and ISO 7-1: G, R, Rp, Rc.
        WhitworthPipe = 3 "whitworth-pipe",
        /// ASME B1.20.1 and B1.20.3: NPT and its kin.
        Npt = 4 "npt",
    }
}

/// Several systems of threads.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct PitchSystems(u8);

impl PitchSystems {
    /// No system.
    pub const NONE: Self = Self(0);

    /// These systems and one more.
    #[must_use]
    pub const fn with(self, system: PitchSystem) -> Self {
        Self(self.0 | (1 << system as u8))
    }

    /// True if the system is one of these.
    #[must_use]
    pub const fn holds(self, system: PitchSystem) -> bool {
        self.0 & (1 << system as u8) != 0
    }

    /// The systems, in the order of their numbers.
    pub fn iter(self) -> impl Iterator<Item = PitchSystem> + Clone {
        PitchSystem::ALL.iter().copied().filter(move |system| self.holds(*system))
    }
}

/// A pitch in millimetres, as its table counts it, and the systems that list it.
#[derive(Clone, Copy)]
pub(crate) struct ListedPitch {
    numerator: u16,
    denominator: u16,
    systems: PitchSystems,
}

impl ListedPitch {
    const FINEST: Self = Self { numerator: 0, denominator: 1, systems: PitchSystems::NONE };
    const COARSEST: Self = Self { numerator: u16::MAX, denominator: 1, systems: PitchSystems::NONE };

    const fn metric(um: u16) -> Self {
        Self { numerator: um, denominator: 1000, systems: PitchSystems::NONE.with(PitchSystem::Metric) }
    }

    const fn inch(tenths_per_inch: u16, system: PitchSystem) -> Self {
        Self { numerator: 254, denominator: tenths_per_inch, systems: PitchSystems::NONE.with(system) }
    }

    const fn is_finer_than(self, other: Self) -> bool {
        let own = (self.numerator as u32).wrapping_mul(other.denominator as u32);
        own < (other.numerator as u32).wrapping_mul(self.denominator as u32)
    }

    /// The pitch in millimetres.
    pub(crate) const fn mm(self) -> Length {
        Length::parts(self.numerator as u32, self.denominator as u32)
    }

    /// Threads per inch; `None` for a metric pitch.
    pub(crate) const fn threads_per_inch(self) -> Option<Length> {
        if self.systems.holds(PitchSystem::Metric) { None } else { Some(Length::parts(self.denominator as u32, 10)) }
    }

    /// The systems that list it.
    pub(crate) const fn systems(self) -> PitchSystems {
        self.systems
    }
}

/// The search for the finest pitch above another one.
#[derive(Clone, Copy)]
struct Search {
    above: ListedPitch,
    best: ListedPitch,
}

impl Search {
    const fn with(self, found: ListedPitch) -> Self {
        // A table has 0 where there is no pitch.
        if found.denominator == 0 || !self.above.is_finer_than(found) || self.best.is_finer_than(found) {
            return self;
        }
        if found.is_finer_than(self.best) {
            return Self { best: found, ..self };
        }
        let systems = PitchSystems(self.best.systems.0 | found.systems.0);
        Self { best: ListedPitch { systems, ..self.best }, ..self }
    }

    const fn through_metric(mut self, mut sizes: &[MetricSize]) -> Self {
        while let [size, rest @ ..] = sizes {
            self = self.with(ListedPitch::metric(size.coarse_um));
            let mut fine = size.fine_um;
            while let [um, finer @ ..] = fine {
                self = self.with(ListedPitch::metric(*um));
                fine = finer;
            }
            sizes = rest;
        }
        self
    }

    const fn through_unified(mut self, mut sizes: &[UnifiedSize]) -> Self {
        while let [size, rest @ ..] = sizes {
            let mut graded: &[u16] = &[size.unc_tenths, size.unf_tenths, size.unef_tenths];
            while let [tenths, finer @ ..] = graded {
                self = self.with(ListedPitch::inch(*tenths, PitchSystem::Unified));
                graded = finer;
            }
            let mut constant: &[(_, u16, u16)] = &CONSTANT_PITCH;
            while let [(_, per_inch, bit), others @ ..] = constant {
                if size.constant & *bit != 0 {
                    let tenths = per_inch.wrapping_mul(10);
                    self = self.with(ListedPitch::inch(tenths, PitchSystem::Unified));
                }
                constant = others;
            }
            sizes = rest;
        }
        self
    }

    const fn through_whitworth(mut self, mut sizes: &[MetricPipe]) -> Self {
        while let [size, rest @ ..] = sizes {
            let tenths = (size.per_inch as u16).wrapping_mul(10);
            self = self.with(ListedPitch::inch(tenths, PitchSystem::WhitworthPipe));
            sizes = rest;
        }
        self
    }

    const fn through_npt(mut self, mut sizes: &[InchPipe]) -> Self {
        while let [size, rest @ ..] = sizes {
            self = self.with(ListedPitch::inch(size.per_inch_tenths, PitchSystem::Npt));
            sizes = rest;
        }
        self
    }
}

/// The finest listed pitch that is coarser than another one; [`ListedPitch::COARSEST`] if there is none.
const fn next(above: ListedPitch) -> ListedPitch {
    Search { above, best: ListedPitch::COARSEST }
        .through_metric(&iso_261::SIZES)
        .through_unified(&asme_b1_1::SIZES)
        .through_whitworth(&iso_228_1::SIZES)
        .through_npt(&asme_b1_20_1::SIZES)
        .best
}

/// How many pitches there are.
const COUNT: usize = 54;

const fn all() -> [ListedPitch; COUNT] {
    let mut listed = [ListedPitch::COARSEST; COUNT];
    let mut above = ListedPitch::FINEST;
    let mut free: &mut [ListedPitch] = &mut listed;
    while let [place, rest @ ..] = free {
        above = next(above);
        *place = above;
        free = rest;
    }
    listed
}

/// Every pitch that a standard lists, finest first.
pub(crate) static PITCHES: [ListedPitch; COUNT] = all();

const _: () = {
    let [.., last] = all();
    assert!(last.numerator != u16::MAX, "COUNT is too large");
    assert!(next(last).numerator == u16::MAX, "COUNT is too small");
};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::series::standard_threads;
    use std::collections::BTreeMap;
    use std::format;
    use std::string::{String, ToString};
    use std::vec::Vec;

    fn texts(system: PitchSystem) -> Vec<String> {
        let own = PITCHES.iter().filter(|pitch| pitch.systems().holds(system));
        own.map(|pitch| pitch.threads_per_inch().unwrap_or(pitch.mm()).to_string()).collect()
    }

    #[test]
    fn pitches_are_those_of_the_standards() {
        // ISO 261:1998 table 2, the head of its columns.
        let metric = "0.2 0.25 0.3 0.35 0.4 0.45 0.5 0.6 0.7 0.75 0.8 1 1.25 1.5 1.75 2 2.5 3 3.5 4 4.5 5 5.5 6 8";
        assert_eq!(texts(PitchSystem::Metric).join(" "), metric);
        // ASME B1.1-2003 table 1.
        let unified = "80 72 64 56 48 44 40 36 32 28 24 20 18 16 14 13 12 11 10 9 8 7 6 5 4.5 4";
        assert_eq!(texts(PitchSystem::Unified).join(" "), unified);
        // ISO 228-1 table 1; ASME B1.20.1 table 2.
        assert_eq!(texts(PitchSystem::WhitworthPipe).join(" "), "28 19 14 11");
        assert_eq!(texts(PitchSystem::Npt).join(" "), "27 18 14 11.5 8");
    }

    #[test]
    fn pitches_are_those_of_all_standard_threads() {
        let mut seen: BTreeMap<Length, PitchSystems> = BTreeMap::new();
        for thread in standard_threads(None, None) {
            let system = match thread.form() {
                crate::Form::Metric => PitchSystem::Metric,
                crate::Form::Unified => PitchSystem::Unified,
                form if form.is_whitworth_pipe() => PitchSystem::WhitworthPipe,
                form if form.is_inch_pipe() => PitchSystem::Npt,
                // A lead is looked for among the pitches that are tapped most.
                _ => continue,
            };
            let systems = seen.entry(thread.pitch_mm()).or_default();
            *systems = systems.with(system);
        }
        let derived: BTreeMap<_, _> = PITCHES.iter().map(|pitch| (pitch.mm(), pitch.systems())).collect();
        assert_eq!(format!("{derived:?}"), format!("{seen:?}"));
        assert!(PITCHES.is_sorted_by(|a, b| a.mm() < b.mm()));
    }
}
