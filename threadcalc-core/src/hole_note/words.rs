//! The words of hole notes.

/// What a word or phrase of a note means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Word {
    Deep,
    Through,
    Tap,
    Thread,
    FullThread,
    Drill,
    Diameter,
    Countersink,
    Counterbore,
    Spotface,
    Places,
    Hole,
    Count,
    EquallySpaced,
    BoltCircle,
    BothSides,
    NearSide,
    FarSide,
    Applies,
    AfterPlating,
    BeforePlating,
    Min,
    Degrees,
    Mm,
    Cm,
    Inch,
    Letter,
    Number,
    On,
    /// Says nothing by itself: TYP, AND, TO.
    Filler,
}

/// Words and phrases. A blank is any run of blanks, stops and dashes, or none; an apostrophe is one of
/// `'`, `.`, `-` and `/`, or none.
const WORDS: &[(&str, Word)] = &[
    ("DEEP", Word::Deep),
    ("DEPTH", Word::Deep),
    ("DEPTH OF", Word::Deep),
    ("DP", Word::Deep),
    ("THRU", Word::Through),
    ("THRU ALL", Word::Through),
    ("THRU HOLE", Word::Through),
    ("THROUGH", Word::Through),
    ("THROUGH ALL", Word::Through),
    ("THROUGH HOLE", Word::Through),
    ("TAP", Word::Tap),
    ("TAPPED", Word::Tap),
    ("TAPPING", Word::Tap),
    ("THD", Word::Thread),
    ("THDS", Word::Thread),
    ("THRD", Word::Thread),
    ("THREAD", Word::Thread),
    ("THREADS", Word::Thread),
    ("THREADED", Word::Thread),
    ("FULL THREAD", Word::FullThread),
    ("FULL THREADS", Word::FullThread),
    ("FULL THD", Word::FullThread),
    ("FULL THDS", Word::FullThread),
    ("DRILL", Word::Drill),
    ("DRILLED", Word::Drill),
    ("DRL", Word::Drill),
    ("TAP DRILL", Word::Drill),
    ("TAPPING DRILL", Word::Drill),
    ("PILOT", Word::Drill),
    ("PILOT DRILL", Word::Drill),
    ("PILOT HOLE", Word::Drill),
    ("DIA", Word::Diameter),
    ("DIAM", Word::Diameter),
    ("DIAMETER", Word::Diameter),
    ("CSK", Word::Countersink),
    ("C'SK", Word::Countersink),
    ("C'SINK", Word::Countersink),
    ("COUNTER'SINK", Word::Countersink),
    ("COUNTERSUNK", Word::Countersink),
    ("C'BORE", Word::Counterbore),
    ("C'BORED", Word::Counterbore),
    ("COUNTER'BORE", Word::Counterbore),
    ("COUNTERBORED", Word::Counterbore),
    ("S'F", Word::Spotface),
    ("S'FACE", Word::Spotface),
    ("SPOT FACE", Word::Spotface),
    ("SPOT FACED", Word::Spotface),
    ("PLACES", Word::Places),
    ("PLACE", Word::Places),
    ("PLCS", Word::Places),
    ("PLC", Word::Places),
    ("PLS", Word::Places),
    ("PL", Word::Places),
    ("HOLES", Word::Places),
    ("OFF", Word::Places),
    ("POSITIONS", Word::Places),
    ("REQ'D", Word::Places),
    ("REQUIRED", Word::Places),
    ("HOLE", Word::Hole),
    ("COUNT", Word::Count),
    ("QTY", Word::Count),
    ("QUANTITY", Word::Count),
    ("EQ SP", Word::EquallySpaced),
    ("EQ SPACED", Word::EquallySpaced),
    ("EQL SP", Word::EquallySpaced),
    ("EQUAL SPACING", Word::EquallySpaced),
    ("EQUALLY SP", Word::EquallySpaced),
    ("EQUALLY SPACED", Word::EquallySpaced),
    ("EQUI SPACED", Word::EquallySpaced),
    ("B'C", Word::BoltCircle),
    ("B'C'D", Word::BoltCircle),
    ("P'C'D", Word::BoltCircle),
    ("BOLT CIRCLE", Word::BoltCircle),
    ("BOLT CIRCLE DIA", Word::BoltCircle),
    ("PITCH CIRCLE", Word::BoltCircle),
    ("PITCH CIRCLE DIA", Word::BoltCircle),
    ("BOTH SIDES", Word::BothSides),
    ("BOTH ENDS", Word::BothSides),
    ("EACH SIDE", Word::BothSides),
    ("EACH END", Word::BothSides),
    ("NEAR SIDE", Word::NearSide),
    ("FAR SIDE", Word::FarSide),
    ("APPLIES", Word::Applies),
    ("CLASS APPLIES", Word::Applies),
    ("THREAD CLASS APPLIES", Word::Applies),
    ("APPLY", Word::Applies),
    ("LIMITS APPLY", Word::Applies),
    ("DIMENSIONS APPLY", Word::Applies),
    ("AFTER PLATING", Word::AfterPlating),
    ("AFTER PLATE", Word::AfterPlating),
    ("AFTER COATING", Word::AfterPlating),
    ("BEFORE PLATING", Word::BeforePlating),
    ("BEFORE PLATE", Word::BeforePlating),
    ("BEFORE COATING", Word::BeforePlating),
    ("PRIOR TO PLATING", Word::BeforePlating),
    ("MIN", Word::Min),
    ("MINIMUM", Word::Min),
    ("DEG", Word::Degrees),
    ("DEGS", Word::Degrees),
    ("DEGREE", Word::Degrees),
    ("DEGREES", Word::Degrees),
    ("MM", Word::Mm),
    ("CM", Word::Cm),
    ("IN", Word::Inch),
    ("INS", Word::Inch),
    ("INCH", Word::Inch),
    ("INCHES", Word::Inch),
    ("LETTER", Word::Letter),
    ("NO", Word::Number),
    ("NUMBER", Word::Number),
    ("TYP", Word::Filler),
    ("TYPICAL", Word::Filler),
    ("AND", Word::Filler),
    ("THEN", Word::Filler),
    ("WITH", Word::Filler),
    ("FOR", Word::Filler),
    ("TO", Word::Filler),
    ("ON", Word::On),
    ("A", Word::Filler),
];

/// The longest word or phrase that the text begins with, and its length.
pub(super) fn word_at(text: &[u8]) -> Option<(Word, usize)> {
    let found = |(phrase, word): &(&str, Word)| Some((*word, phrase_length(text, phrase.as_bytes())?));
    let stands = |(word, length): &(Word, usize)| {
        // `A1` is the name of a view.
        *word != Word::Filler || !text.get(*length).is_some_and(u8::is_ascii_digit)
    };
    WORDS.iter().filter_map(found).filter(stands).max_by_key(|(_, length)| *length)
}

/// How much of the text a phrase takes, if the text begins with it; a stop behind it is part of it.
fn phrase_length(text: &[u8], phrase: &[u8]) -> Option<usize> {
    let mut rest = text;
    for sign in phrase {
        rest = match (sign, rest) {
            (b' ', _) => after_gap(rest),
            (b'\'', [b'\'' | b'.' | b'-' | b'/', after @ ..]) => after,
            (b'\'', _) => rest,
            (letter, [first, after @ ..]) if first.eq_ignore_ascii_case(letter) => after,
            _ => return None,
        };
    }
    if let [next, ..] = rest {
        if next.is_ascii_alphabetic() {
            return None;
        }
    }
    rest = match rest {
        [b'.', next, ..] if next.is_ascii_digit() => rest,
        [b'.', after @ ..] => after,
        _ => rest,
    };
    text.len().checked_sub(rest.len())
}

fn after_gap(mut text: &[u8]) -> &[u8] {
    while let [b' ' | b'\n' | b'.' | b'-', rest @ ..] = text {
        text = rest;
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_longest_phrase_wins() {
        for (text, word, length) in [
            ("C'BORE 8", Word::Counterbore, 6),
            ("c.bore", Word::Counterbore, 6),
            ("C/SINK", Word::Countersink, 6),
            ("tap drill 6.8", Word::Drill, 9),
            ("TAP 16", Word::Tap, 3),
            ("EQ. SP.", Word::EquallySpaced, 7),
            ("B.C.", Word::BoltCircle, 4),
            ("THRU.375", Word::Through, 4),
            ("THRU. 375", Word::Through, 5),
            ("FULL THD", Word::FullThread, 8),
        ] {
            assert_eq!(word_at(text.as_bytes()), Some((word, length)), "{text}");
        }
        for text in ["TAPER", "DEEPER", "MAX", "", "8", "THRUST"] {
            assert_eq!(word_at(text.as_bytes()), None, "{text}");
        }
    }
}
