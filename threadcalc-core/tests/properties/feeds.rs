//! Programmed speeds, feeds and exact speeds.

use proptest::prelude::*;
use threadcalc_core::{
    Code, FeedMode, Length, Unit, exact_speeds, feed, nearest_exact_speeds, programmed_speed, read_number,
};

use crate::values::{config, length, parts};

fn unit() -> impl Strategy<Value = Unit> {
    prop_oneof![Just(Unit::Mm), Just(Unit::Inch)]
}

fn lead() -> impl Strategy<Value = Length> {
    let per_inch = (1..=160_i64).prop_map(|halves| Length::new(254, halves * 5).unwrap());
    prop_oneof![parts(1..=8_000, 1_000), parts(1..=160, 20), per_inch]
}

/// Feed × 10^decimals in the unit: whole where the word is exact.
fn digits(lead: Length, rpm: Length, unit: Unit, decimals: u8) -> Length {
    let power = Length::integer(10_i64.pow(decimals.into()));
    lead.times(rpm).and_then(|mm| mm.over(unit.in_mm())).and_then(|feed| feed.times(power)).unwrap()
}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn the_speed_held_is_a_multiple_and_never_up(
        rpm in parts(1..=600_000, 10),
        step in prop_oneof![parts(1..=1_000, 10), parts(1..=5, 3)],
        lowest in proptest::option::of(parts(1..=5_000, 1)),
        highest in proptest::option::of(parts(1..=60_000, 1)),
    ) {
        match programmed_speed(rpm, step, lowest, highest) {
            Ok(held) => {
                prop_assert!(held.over(step).unwrap().whole().is_some() && held.is_positive());
                prop_assert!(held <= rpm && highest.is_none_or(|most| held <= most));
                prop_assert!(lowest.is_none_or(|least| held >= least));
                let next = held.plus(step).unwrap();
                prop_assert!(next > rpm || highest.is_some_and(|most| next > most), "{} could be {}", held, next);
            }
            Err(error) if lowest.zip(highest).is_some_and(|(lowest, highest)| lowest > highest) => {
                prop_assert_eq!(error.code(), Code::Contradiction);
            }
            Err(error) => {
                prop_assert_eq!(error.code(), Code::OutOfRange);
                let most = highest.map_or(rpm, |most| most.min(rpm)).down_to_multiple(step).unwrap();
                prop_assert!(!most.is_positive() || lowest.is_some_and(|least| most < least));
            }
        }
    }

    #[test]
    fn any_numbers_give_a_speed_or_an_error(rpm in length(), step in length(), low in length(), high in length()) {
        if let Ok(held) = programmed_speed(rpm, step, Some(low), Some(high)) {
            prop_assert!(low <= held && held <= high && held <= rpm);
        }
    }

    #[test]
    fn the_word_reads_back_to_the_value(
        lead in lead(), rpm in parts(1..=600_000, 10), unit in unit(), per_minute in any::<bool>(), decimals in 0..=9_u8
    ) {
        let (mode, speed) =
            if per_minute { (FeedMode::PerMinute, Some(rpm)) } else { (FeedMode::PerRevolution, None) };
        let exact = digits(lead, speed.unwrap_or(Length::ONE), unit, decimals);
        let half = Length::new(1, 2).unwrap();
        let Ok(made) = feed(lead, speed, unit, mode, decimals) else {
            prop_assert!(exact <= half, "{} digits are a feed", exact);
            return Ok(());
        };
        let value = made.value().unwrap();
        prop_assert_eq!(read_number(made.text().as_bytes()), Ok(value));
        let units = value.times(Length::integer(10_i64.pow(decimals.into()))).unwrap();
        let off = units.minus(exact).unwrap().magnitude();
        prop_assert!(off <= half, "{} is {} digits off", made, off);
        prop_assert!(off != half || units.whole().is_some_and(|units| units % 2 == 0), "{} is an odd tie", made);
        let (whole, behind) = made.text().split_once('.').unwrap();
        prop_assert_eq!(made.word(), "F".to_string() + made.text());
        prop_assert!(!behind.ends_with('0'));
        prop_assert!(whole == "0" || !whole.starts_with('0'));
        prop_assert_eq!((made.unit(), made.mode(), made.to_string()), (unit, mode, made.word().into()));
        if let Ok(error) = made.lead_error() {
            prop_assert_eq!(error.is_positive(), units > exact);
            prop_assert_eq!(error == Length::ZERO, units == exact);
            // Both ways round: the lead cut is the lead times 1 + error.
            let cut = made.lead_cut_mm().unwrap();
            prop_assert_eq!(cut.over(lead).unwrap().minus(Length::ONE), Ok(error));
            prop_assert_eq!(made.axial_error_mm(Length::ZERO), Ok(Length::ZERO));
        }
    }

    #[test]
    fn any_numbers_give_a_feed_or_an_error(lead in length(), rpm in length(), unit in unit(), decimals in any::<u8>()) {
        for (mode, rpm) in [(FeedMode::PerMinute, Some(rpm)), (FeedMode::PerRevolution, None)] {
            if let Ok(made) = feed(lead, rpm, unit, mode, decimals) {
                prop_assert!(decimals <= 9 && lead.is_positive());
                prop_assert_eq!(read_number(made.text().as_bytes()), made.value());
                let _exact_or_overflow = (made.exact(), made.lead_error(), made.lead_cut_mm());
                prop_assert!(made.axial_error_mm(Length::integer(-1)).is_err());
            }
        }
    }

    #[test]
    fn exact_speeds_are_all_exact_and_complete(
        lead in lead(),
        rpm in parts(1..=20_000, 10),
        unit in unit(),
        decimals in 0..=4_u8,
        count in 0..=12_usize,
        lowest in 1..=1_500_i64,
        room in 0..=1_500_i64,
    ) {
        let highest = lowest + room;
        let speeds = exact_speeds(lead, rpm, unit, decimals, count, lowest, Some(highest)).unwrap();
        let away = |speed: i64| Length::integer(speed).minus(rpm).unwrap().magnitude();
        let is_exact = |speed: &i64| digits(lead, Length::integer(*speed), unit, decimals).whole().is_some();
        let mut all: Vec<i64> = (lowest..=highest).filter(is_exact).collect();
        all.sort_by_key(|speed| (away(*speed), *speed));
        all.truncate(count);
        prop_assert_eq!(speeds.collect::<Vec<_>>(), all);
    }

    #[test]
    fn the_nearest_exact_speeds_are_the_nearest_the_control_holds(
        lead in lead(),
        rpm in parts(1..=20_000, 10),
        unit in unit(),
        decimals in 0..=4_u8,
        step in prop_oneof![parts(1..=50, 1), parts(1..=100, 10), parts(1..=5, 3)],
        lowest in proptest::option::of(parts(1..=20_000, 10)),
        highest in proptest::option::of(parts(1..=40_000, 10)),
    ) {
        let found = nearest_exact_speeds(lead, rpm, unit, decimals, step, lowest, highest).unwrap();
        let fits = |speed: &i64| {
            let speed = Length::integer(*speed);
            digits(lead, speed, unit, decimals).whole().is_some()
                && speed.over(step).unwrap().whole().is_some()
                && lowest.is_none_or(|lowest| lowest <= speed)
                && highest.is_none_or(|highest| speed <= highest)
                && speed != rpm
        };
        let two = Length::integer(2);
        let (half, at, double) = (rpm.over(two).unwrap(), rpm.to_f64() as i64, rpm.times(two).unwrap());
        let below = (1..=at).rev().filter(|speed| Length::integer(*speed) >= half).find(fits);
        let above = (at.max(1)..).take_while(|speed| Length::integer(*speed) <= double);
        let above = above.filter(|speed| Length::integer(*speed) > rpm).find(|speed| fits(speed));
        prop_assert_eq!(found, (below, above));
    }

    #[test]
    fn any_numbers_give_speeds_or_an_error(
        lead in length(), rpm in length(), decimals in any::<u8>(), count in 0..=20_usize,
        lowest in any::<i64>(), highest in proptest::option::of(any::<i64>()),
    ) {
        if let Ok(speeds) = exact_speeds(lead, rpm, Unit::Inch, decimals, count, lowest, highest) {
            let found: Vec<i64> = speeds.collect();
            prop_assert!(found.len() <= count);
            prop_assert!(found.iter().all(|speed| *speed >= lowest && highest.is_none_or(|most| *speed <= most)));
            let away = |speed: i64| Length::integer(speed).minus(rpm).map(Length::magnitude);
            let distances: Vec<_> = found.iter().filter_map(|speed| away(*speed).ok()).collect();
            prop_assert!(distances.is_sorted());
        }
        let step = Length::integer(highest.unwrap_or(1));
        if let Ok(near) = nearest_exact_speeds(lead, rpm, Unit::Inch, decimals, step, Some(rpm), None) {
            prop_assert!(near.0.is_none() && near.1.is_none_or(|above| Length::integer(above) > rpm));
        }
    }
}
