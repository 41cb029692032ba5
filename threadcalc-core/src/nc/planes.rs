//! Sixty-four bytes of a program at once: a bit for each, by what it is.

/// How many bytes are looked at together.
pub(super) const WIDTH: usize = 64;

/// Which of the bytes are what; the lowest bit is the first byte. What is none of it is in none.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Planes {
    pub digit: u64,
    /// 0 to 3, and 0.
    pub small: u64,
    pub zero: u64,
    pub point: u64,
    pub minus: u64,
    pub blank: u64,
    pub line_feed: u64,
    pub carriage_return: u64,
    /// The letters of moves, in the order of [`LETTERS`].
    pub letters: [u64; LETTERS.len()],
}

/// The letters that moves have; something is kept of the first.
pub(super) const LETTERS: [u8; 10] = *b"GXYZFNIJKR";
pub(super) const KEPT: usize = 5;

impl Planes {
    /// Of these bytes; None if one of them is above 127.
    #[inline(always)]
    pub(super) fn of(bytes: &[u8; WIDTH]) -> Option<Self> {
        let [b0, b1, b2, b3, b4, b5, b6, b7] = bits(bytes);
        if b7 != 0 {
            return None;
        }
        let (sign, control) = (b5 & !b6 & !b4, !(b6 | b5 | b4));
        let small = b5 & !b6 & b4 & !b3 & !b2;
        let digit = b5 & !b6 & b4 & !(b3 & (b2 | b1));
        // Of the low four bits, as they stand in the code of each.
        let (of_6_7, of_9_11, of_14) = (!b3 & b2 & b1, b3 & !b2, b3 & b2 & b1 & !b0);
        let upper = b6 & !b5;
        let (early, late) = (upper & !b4, upper & b4 & !b2);
        let letters = [
            early & of_6_7 & b0,
            late & b3 & !b1 & !b0,
            late & b3 & !b1 & b0,
            late & b3 & b1 & !b0,
            early & of_6_7 & !b0,
            early & of_14,
            early & of_9_11 & !b1 & b0,
            early & of_9_11 & b1 & !b0,
            early & of_9_11 & b1 & b0,
            late & !b3 & b1 & !b0,
        ];
        Some(Self {
            digit,
            small,
            zero: small & !b1 & !b0,
            point: sign & of_14,
            minus: sign & b3 & b2 & !b1 & b0,
            blank: sign & !(b3 | b2 | b1 | b0),
            line_feed: control & of_9_11 & b1 & !b0,
            carriage_return: control & b3 & b2 & !b1 & b0,
            letters,
        })
    }
}

/// The lowest bits of all bytes, the second lowest of all, and so on.
#[inline(always)]
fn bits(bytes: &[u8; WIDTH]) -> [u64; 8] {
    let mut words = [0_u64; 8];
    for (word, chunk) in words.iter_mut().zip(bytes.chunks_exact(8)) {
        *word = u64::from_le_bytes(<[u8; 8]>::try_from(chunk).unwrap_or_default());
    }
    // In each word the bits of its eight bytes change places with their bytes, then so do the bytes with the words.
    for (distance, mask) in [(7, 0x00AA_00AA_00AA_00AA), (14, 0x0000_CCCC_0000_CCCC), (28, 0x0000_0000_F0F0_F0F0)] {
        for word in &mut words {
            let turned = (*word ^ word.wrapping_shr(distance)) & mask;
            *word ^= turned ^ turned.wrapping_shl(distance);
        }
    }
    let [mut a, mut b, mut c, mut d, mut e, mut f, mut g, mut h] = words;
    (a, e) = swap(a, e, 32, 0x0000_0000_FFFF_FFFF);
    (b, f) = swap(b, f, 32, 0x0000_0000_FFFF_FFFF);
    (c, g) = swap(c, g, 32, 0x0000_0000_FFFF_FFFF);
    (d, h) = swap(d, h, 32, 0x0000_0000_FFFF_FFFF);
    (a, c) = swap(a, c, 16, 0x0000_FFFF_0000_FFFF);
    (b, d) = swap(b, d, 16, 0x0000_FFFF_0000_FFFF);
    (e, g) = swap(e, g, 16, 0x0000_FFFF_0000_FFFF);
    (f, h) = swap(f, h, 16, 0x0000_FFFF_0000_FFFF);
    (a, b) = swap(a, b, 8, 0x00FF_00FF_00FF_00FF);
    (c, d) = swap(c, d, 8, 0x00FF_00FF_00FF_00FF);
    (e, f) = swap(e, f, 8, 0x00FF_00FF_00FF_00FF);
    (g, h) = swap(g, h, 8, 0x00FF_00FF_00FF_00FF);
    [a, b, c, d, e, f, g, h]
}

/// The high parts of the first change places with the low parts of the second.
#[inline(always)]
const fn swap(first: u64, second: u64, distance: u32, low: u64) -> (u64, u64) {
    let turned = (first.wrapping_shr(distance) ^ second) & low;
    (first ^ turned.wrapping_shl(distance), second ^ turned)
}
