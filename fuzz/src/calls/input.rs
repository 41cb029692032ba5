//! The bytes of a fuzz input as a source of arguments; behind its end there are zeros.

use threadcalc::{threadcalc_ratio_t, threadcalc_thread_t};

use super::State;

/// What is left of an input.
pub struct Input<'a>(&'a [u8]);

/// Texts that lead somewhere.
const TEXTS: [&str; 44] = [
    "M8",
    "M8x1.25-6H",
    "M10x1-6g-LH",
    "M16xPh3P1.5",
    "M1.6-5H",
    "M8-6H/6g",
    "M7x0.9",
    "1/4-20 UNC-2B",
    "#10-32 UNF-3A",
    "1/4-18",
    "1/4-18 NPT",
    "1/2-14 NPTF-1",
    "1/8-27 NPSF",
    "G1/2A",
    "Rc 1/2",
    "R1/4-LH",
    "BSPT 3/4",
    "Rp/R 1/2",
    "1/4-20 UNF",
    "MJ8x1.25-4H5H",
    "S1-4H6",
    "1/4-20 UNRC-2A",
    "1/4-28 UNJF-3B",
    "1/2 BSW-medium",
    "2 BA",
    "Tr40x14P7-7H-LH",
    "1/2-10 ACME-2G",
    "1/2-10 STUB ACME",
    "2.5-4 BUTT-2",
    "M8x1.25 STI",
    "1/4-20 UNC-2B STI",
    "2 1/2-8 UN-2B",
    "0.3",
    "No. 10",
    "1 1/4",
    "127/70",
    "1,25",
    "F",
    "#7",
    "5/16",
    "6.8",
    "",
    " ",
    "\u{d8}8\0",
];

/// Numbers that lead somewhere.
const RATIOS: [(i64, i64); 24] = [
    (0, 0),
    (0, 1),
    (1, 1),
    (5, 4),
    (3, 1),
    (8, 1),
    (20, 1),
    (118, 1),
    (180, 1),
    (650, 1),
    (127, 70),
    (34, 5),
    (17, 2),
    (1, 4),
    (1, 3),
    (75, 1),
    (3000, 1),
    (-1, 1),
    (1, -1),
    (1, 0),
    (i64::MAX, 1),
    (i64::MIN, 1),
    (1, i64::MAX),
    (999_999_999_999, 1_000_000_000_000),
];

impl<'a> Input<'a> {
    /// All of an input.
    #[must_use]
    pub const fn new(bytes: &'a [u8]) -> Self {
        Self(bytes)
    }

    /// True if there is nothing left.
    #[must_use]
    pub const fn is_at_end(&self) -> bool {
        self.0.is_empty()
    }

    /// The next bytes, as many as are left.
    pub fn bytes(&mut self, length: usize) -> &'a [u8] {
        let (taken, left) = self.0.split_at(length.min(self.0.len()));
        self.0 = left;
        taken
    }

    fn array<const N: usize>(&mut self) -> [u8; N] {
        let mut array = [0; N];
        let taken = self.bytes(N);
        array[..taken.len()].copy_from_slice(taken);
        array
    }

    /// One byte.
    pub fn byte(&mut self) -> u8 {
        self.array::<1>()[0]
    }

    /// A place in a list of this length.
    pub fn place(&mut self, length: usize) -> usize {
        usize::from(self.byte()) % length
    }

    /// True once in sixteen: for what is seldom right.
    pub fn seldom(&mut self) -> bool {
        self.byte() & 0xF0 == 0xF0
    }

    /// Any 32-bit number.
    pub fn int32(&mut self) -> i32 {
        i32::from_le_bytes(self.array())
    }

    /// Any 64-bit number.
    pub fn int64(&mut self) -> i64 {
        i64::from_le_bytes(self.array())
    }

    /// Any double, mostly a short one.
    pub fn double(&mut self) -> f64 {
        match self.byte() {
            0xF0.. => f64::from_le_bytes(self.array()),
            byte => f64::from(i16::from_le_bytes(self.array())) / f64::from(byte.max(1)),
        }
    }

    /// The number of a choice: mostly a small one, which may be too large or negative all the same.
    pub fn choice(&mut self) -> i32 {
        match self.byte() {
            0xF0.. => self.int32(),
            byte => i32::from(byte % 20) - i32::from(byte == 0xEF),
        }
    }

    /// A text: one that leads somewhere, or any bytes.
    pub fn text(&mut self) -> Vec<u8> {
        let pick = usize::from(self.byte());
        match TEXTS.get(pick) {
            Some(text) => text.as_bytes().to_vec(),
            None => self.bytes(pick % 96).to_vec(),
        }
    }

    /// A member of fixed length: a text of [`Input::text`], cut or with zeros behind it.
    pub fn letters<const N: usize>(&mut self) -> [core::ffi::c_char; N] {
        let text = self.text();
        core::array::from_fn(|place| text.get(place).copied().unwrap_or(0) as _)
    }

    /// An exact number: one that leads somewhere, a result, a small one, or any.
    pub fn ratio(&mut self, state: &State) -> threadcalc_ratio_t {
        let pick = self.byte();
        let (numerator, denominator) = match (RATIOS.get(usize::from(pick)), pick) {
            (Some(known), _) => *known,
            (None, 0..0x40) => (state.ratio.numerator, state.ratio.denominator),
            (None, 0x40..0x80) => (i64::from(self.byte()), i64::from(pick & 0x3F)),
            (None, 0x80..0xE0) => (i64::from(self.int32() & 0xFFFF), 100),
            (None, _) => (self.int64(), self.int64()),
        };
        threadcalc_ratio_t { numerator, denominator }
    }

    /// A thread: one of those held, often with one member changed.
    pub fn thread(&mut self, state: &State) -> threadcalc_thread_t {
        let pick = self.byte();
        let mut thread = state.threads[usize::from(pick) % state.threads.len()];
        match pick >> 4 {
            2 => thread.written_as = self.choice(),
            3 => thread.wire_insert = self.choice(),
            4 => thread.major_mm = self.ratio(state),
            5 => thread.taper_on_diameter = self.ratio(state),
            6 => thread.form = self.choice(),
            7 => thread.series = self.choice(),
            8 => thread.starts = self.choice(),
            9 => thread.hand = self.choice(),
            10 => thread.side = self.choice(),
            11 => thread.is_standard = self.choice(),
            12 => thread.nominal_mm = self.ratio(state),
            13 => thread.pitch_mm = self.ratio(state),
            14 => thread.lead_mm = self.ratio(state),
            15 => thread.tolerance_class = self.array::<8>().map(|byte| byte as _),
            _ => {}
        }
        thread
    }
}
