//! Leads that are identified.

use proptest::prelude::*;
use threadcalc_core::nc::{
    FeedWords, Identification, LEAD_WITHIN, LeadVerdict, identify, identify_feed, threads_of_pitch,
};
use threadcalc_core::{FeedMode, Form, Length, Ratio, Thread, Unit, feed, standard_threads};

use crate::values::{config, length, parts};

/// Verdicts from the one that the least tolerance gives to the one that the most gives.
fn rank(verdict: LeadVerdict) -> usize {
    let rising = [LeadVerdict::Nonstandard, LeadVerdict::Identified, LeadVerdict::Ambiguous];
    rising.iter().position(|known| *known == verdict).unwrap()
}

/// The threads whose pitches a lead is looked for among.
fn tapped_threads() -> impl Iterator<Item = Thread> {
    standard_threads(None, None)
        .filter(|thread| thread.form().is_pipe() || matches!(thread.form(), Form::Metric | Form::Unified))
}

fn has(found: &Identification, pitch: Length) -> bool {
    found.matches().any(|near| near.pitch_mm == pitch && near.is_within)
}

#[test]
fn every_standard_thread_is_identified_by_its_lead_alone() {
    for thread in tapped_threads() {
        let found = identify(thread.lead_mm(), LEAD_WITHIN, 1).unwrap();
        let first = found.matches().next().unwrap();
        assert_eq!(found.verdict(), LeadVerdict::Identified, "{thread}");
        assert!(
            first.is_exact() && first.lead_error == Length::ZERO && first.pitch_mm == thread.pitch_mm(),
            "{thread}"
        );
        assert_eq!(first.tpi, thread.threads_per_inch(), "{thread}");
        let mut listed = threads_of_pitch(first.pitch_mm, thread.major_mm(), 1).unwrap();
        assert!(listed.any(|own| own == thread), "{thread}");
    }
}

fn word(feed: Ratio, rpm: Option<Ratio>, unit: Unit, mode: FeedMode, decimals: u8) -> FeedWords {
    FeedWords {
        feed,
        feed_decimals: Some(decimals),
        most_feed_decimals: Some(decimals),
        rpm,
        rpm_decimals: None,
        most_rpm_decimals: None,
        unit,
        mode,
    }
}

/// Whatever rounding a feed word went through, the thread it was made for is among the matches.
#[test]
fn every_standard_thread_is_among_those_of_its_own_feed_word() {
    for thread in tapped_threads() {
        for unit in [Unit::Mm, Unit::Inch] {
            for decimals in 0..=5 {
                for rpm in [None, Some(Length::integer(650)), Some(Length::integer(37))] {
                    let mode = if rpm.is_some() { FeedMode::PerMinute } else { FeedMode::PerRevolution };
                    let Ok(made) = feed(thread.lead_mm(), rpm, unit, mode, decimals) else { continue };
                    let words = word(made.value().unwrap(), rpm, unit, mode, decimals);
                    let found = identify_feed(&words, LEAD_WITHIN, 1).unwrap();
                    assert!(has(&found, thread.pitch_mm()), "{thread} {made} {unit} {rpm:?}: {found:?}");
                }
            }
        }
    }
}

fn lead() -> impl Strategy<Value = Length> {
    prop_oneof![parts(1..=20_000, 1_000), parts(1..=12_000_000, 1_000_000), parts(1_000..=9_000, 10_000)]
}

proptest! {
    #![proptest_config(config(3_000))]

    #[test]
    fn a_wider_tolerance_never_takes_back(lead in lead(), a in parts(0..=25_000, 100_000), b in parts(0..=900, 100_000)) {
        let (narrow, wide) = (a.min(b), a.max(b));
        let (less, more) = (identify(lead, narrow, 1).unwrap(), identify(lead, wide, 1).unwrap());
        prop_assert!(rank(less.verdict()) <= rank(more.verdict()), "{:?} {:?}", less, more);
        for near in less.matches().filter(|near| near.is_within) {
            prop_assert!(has(&more, near.pitch_mm));
        }
    }

    #[test]
    fn rounded_words_never_take_back(feed in parts(1..=9_999, 1_000), rpm in parts(1..=9_999, 1), inch in any::<bool>()) {
        let unit = if inch { Unit::Inch } else { Unit::Mm };
        let mut words = word(feed, Some(rpm), unit, FeedMode::PerMinute, 3);
        words.most_feed_decimals = None;
        let Ok(exact) = identify_feed(&words, LEAD_WITHIN, 1) else { return Ok(()) };
        prop_assert_eq!((exact.shortest_lead_mm(), exact.longest_lead_mm()), (exact.lead_mm(), exact.lead_mm()));
        prop_assert_eq!(exact, identify(exact.lead_mm(), LEAD_WITHIN, 1).unwrap());
        words.most_feed_decimals = Some(3);
        let rounded = identify_feed(&words, LEAD_WITHIN, 1).unwrap();
        prop_assert!(rounded.shortest_lead_mm() < exact.lead_mm() && exact.lead_mm() < rounded.longest_lead_mm());
        prop_assert!(rank(exact.verdict()) <= rank(rounded.verdict()));
        for near in exact.matches().filter(|near| near.is_within) {
            prop_assert!(has(&rounded, near.pitch_mm));
        }
    }

    #[test]
    fn starts_divide_the_lead_and_nothing_else(lead in lead(), starts in 1..=12_i64) {
        let pitch = lead.over(Length::integer(starts)).unwrap();
        let (whole, part) = (identify(lead, LEAD_WITHIN, starts).unwrap(), identify(pitch, LEAD_WITHIN, 1).unwrap());
        prop_assert_eq!(whole.verdict(), part.verdict());
        prop_assert!(whole.matches().eq(part.matches()));
    }

    #[test]
    fn matches_are_nearest_first_with_their_own_errors(lead in lead(), within in parts(0..=250, 1_000)) {
        let found = identify(lead, within, 1).unwrap();
        let matches: Vec<_> = found.matches().collect();
        prop_assert!(matches.is_sorted_by_key(|near| near.lead_error.magnitude()));
        for near in &matches {
            prop_assert_eq!(near.lead_error, lead.over(near.pitch_mm).unwrap().minus(Length::ONE).unwrap());
            let is_within = near.lead_error.magnitude() <= within;
            prop_assert_eq!(near.is_within, is_within || near.is_exact());
        }
        // No pitch of a standard is nearer than the first.
        let nearest = matches[0].lead_error.magnitude();
        for thread in tapped_threads() {
            let error = lead.over(thread.pitch_mm()).unwrap().minus(Length::ONE).unwrap().magnitude();
            prop_assert!(error >= nearest, "{} is nearer to {}", thread, lead);
        }
    }

    #[test]
    fn any_numbers_give_an_answer_or_an_error(
        numbers in [length(), length(), length()],
        places in [any::<Option<u8>>(), any::<Option<u8>>(), any::<Option<u8>>(), any::<Option<u8>>()],
        starts in any::<i64>(),
    ) {
        let [feed, rpm, within] = numbers;
        let [feed_decimals, most_feed_decimals, rpm_decimals, most_rpm_decimals] = places;
        let (unit, mode) = (Unit::Inch, FeedMode::PerMinute);
        let words = FeedWords {
            feed, feed_decimals, most_feed_decimals, rpm: Some(rpm), rpm_decimals, most_rpm_decimals, unit, mode,
        };
        for starts in [starts, 1] {
            for found in [identify(feed, within, starts), identify_feed(&words, within, starts)].into_iter().flatten() {
                prop_assert!(found.matches().count() > 0 && found.to_string().contains(" %)"));
            }
            if let Ok(threads) = threads_of_pitch(feed, rpm, starts) {
                prop_assert!(threads.count() < 10);
            }
        }
    }
}
