//! ASME B1.1-2003, limits and allowances that the standard's table prints off its own rule.
//!
//! The table keeps values of older editions, 0.0001 in (a minor diameter: 0.001 in) off what the rule gives;
//! as printed they are what threads are made and gauged to.

use crate::length::Length;
use crate::thread::Thread;

/// Allowances of 1A and 2A: diameter, threads per inch, and the allowance in 1/10000 in. By the rule they are
/// 0.0010, 0.0017 and 0.0019.
const ALLOWANCES: [(i128, i64, i128); 3] = [
    (2_160, 32, 9),   // No. 12-32 UNEF: 0.2151, 0.2091; table of class 2A limits
    (6_250, 11, 16),  // 5/8-11 UNC: 0.6234, 0.6113; table of limits
    (57_500, 14, 20), // 5 3/4-14 UNS; Machinery's Handbook 27, table 3
];

/// A limit of one class that is printed: diameter, threads per inch, class, the limit in 1/10000 in, and
/// whether every other limit of the row was read too.
type Cell = (i128, i64, &'static str, i128, bool);

/// The far limit of the pitch diameter: the smallest of an external thread, the largest of an internal one.
const PITCH_DIAMETERS: [Cell; 7] = [
    (9_375, 12, "2A", 8_760, true), // 15/16: table of limits
    (9_375, 12, "3A", 8_793, true),
    (9_375, 12, "2B", 8_908, true),
    (9_375, 16, "2B", 9_034, true),
    (9_375, 16, "3B", 9_018, true),
    (23_750, 20, "2A", 23_359, true), // 2 3/8: Machinery's Handbook 27, table 3
    (23_750, 20, "3B", 23_475, true),
];

/// The largest minor diameter of an internal thread.
const MINOR_DIAMETERS: [Cell; 1] = [
    (1_900, 36, "2B", 1_660, false), // No. 10-36 UNS: table of class 2B limits
];

/// A printed limit, and whether its whole row was read.
#[derive(Clone, Copy)]
pub(super) struct Printed {
    pub e4: i128,
    pub is_whole_row: bool,
}

/// What is looked up: a thread of a diameter in 1/10000 in, and its class.
#[derive(Clone, Copy)]
pub(super) struct Asked<'a> {
    pub thread: &'a Thread,
    pub diameter_e4: i128,
    pub class: &'a str,
    /// Whether the length of engagement is that of the table.
    pub at_usual_length: bool,
}

impl Asked<'_> {
    #[inline(never)]
    fn among(self, cells: &[Cell]) -> Option<Printed> {
        let is_it = |cell: &&Cell| cell.0 == self.diameter_e4 && cell.2 == self.class && self.has_per_inch(cell.1);
        cells.iter().find(is_it).map(|cell| Printed { e4: cell.3, is_whole_row: cell.4 })
    }

    fn has_per_inch(self, count: i64) -> bool {
        self.thread.threads_per_inch().and_then(Length::whole) == Some(count)
    }

    pub(super) fn pitch_diameter(self) -> Option<Printed> {
        if self.at_usual_length { self.among(&PITCH_DIAMETERS) } else { None }
    }

    pub(super) fn minor_diameter(self) -> Option<Printed> {
        self.among(&MINOR_DIAMETERS)
    }

    /// The allowance of 1A and 2A, in 1/10000 in.
    pub(super) fn allowance_e4(self) -> Option<i128> {
        let is_it = |row: &&(i128, i64, i128)| row.0 == self.diameter_e4 && self.has_per_inch(row.1);
        ALLOWANCES.iter().find(is_it).map(|row| row.2)
    }
}

#[cfg(test)]
mod tests {
    use crate::limits::Confidence;
    use crate::thread::Thread;

    #[test]
    fn a_printed_limit_says_so() {
        let of = |text: &str| {
            let limits = Thread::read(text.as_bytes()).and_then(|thread| thread.limits()).unwrap();
            (limits.confidence, limits.source.rsplit(", ").next().unwrap())
        };
        // Whole rows were read, but of No. 10-36 and No. 12-32 no pitch diameter.
        assert_eq!(of("15/16-12 UN-2A"), (Confidence::Confirmed, "pitch diameter as printed"));
        assert_eq!(of("2 3/8-20 UN-3B"), (Confidence::Confirmed, "pitch diameter as printed"));
        assert_eq!(of("10-36 UNS-2B"), (Confidence::Rule, "minor diameter as printed"));
        assert_eq!(of("12-32 UNEF-2A"), (Confidence::Rule, "allowance as printed"));
        // Another class and another pitch of the same diameter keep to the rule.
        for text in ["15/16-16 UN-3A", "15/16-20 UNEF-2B", "2 3/8-20 UN-2B", "12-32 UNEF-3A"] {
            assert_eq!(of(text), (Confidence::Rule, "formulas for limits of size"), "{text}");
        }
    }
}
