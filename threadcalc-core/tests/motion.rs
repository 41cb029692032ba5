//! The closed form of a tapping stroke against numerical integration, which knows nothing of ramps' lengths.

#[path = "support/random.rs"]
mod random;

use random::Random;
use threadcalc_core::{Code, Field, Length, TappingMotion, speed_after_turns, tapping_time, turns_to_speed};

const CASES: usize = 10_000;
/// Relative; the quadrature itself is good to about 1e-14.
const BOUND: f64 = 1e-9;
const NODES: usize = 20;

/// Nodes and weights of Gauss and Legendre on −1 to 1, by Newton's method.
fn nodes() -> Vec<(f64, f64)> {
    let legendre = |x: f64| {
        let (mut before, mut value) = (1.0, x);
        for degree in 2..=NODES {
            let k = degree as f64;
            (before, value) = (value, ((2.0 * k - 1.0) * x * value - (k - 1.0) * before) / k);
        }
        (value, NODES as f64 * (x * value - before) / (x * x - 1.0))
    };
    (0..NODES)
        .map(|place| {
            let mut x = (std::f64::consts::PI * (place as f64 + 0.75) / (NODES as f64 + 0.5)).cos();
            for _ in 0..20 {
                let (value, slope) = legendre(x);
                x -= value / slope;
            }
            let slope = legendre(x).1;
            (x, 2.0 / ((1.0 - x * x) * slope * slope))
        })
        .collect()
}

/// The largest speed and the time of one way: the integral of ds / v(s) over the turns, where v is what
/// the spindle may have there: n, no more than it can have gained since the start, no more than it can
/// still lose. `s = N sin²(t)` takes the two ends' infinite slowness out.
fn integrated(rpm: f64, turns: f64, rate: f64, nodes: &[(f64, f64)]) -> (f64, f64) {
    let (asked, gain) = (rpm / 60.0, (2.0 * rate / 60.0 * turns).sqrt());
    let speed = |t: f64| asked.min(gain * t.sin()).min(gain * t.cos());
    let half = std::f64::consts::FRAC_PI_4;
    // Where the speed asked for is reached, by bisection; in the middle if it never is.
    let (mut low, mut high) = (0.0, half);
    for _ in 0..60 {
        let middle = (low + high) / 2.0;
        if gain * f64::sin(middle) < asked { low = middle } else { high = middle }
    }
    let mut time = 0.0;
    for (from, to) in [(0.0, high), (high, 2.0 * half - high), (2.0 * half - high, 2.0 * half)] {
        for (x, weight) in nodes {
            let t = from + (to - from) * (1.0 + x) / 2.0;
            time += weight * (to - from) / 2.0 * 2.0 * turns * t.sin() * t.cos() / speed(t);
        }
    }
    (speed(half) * 60.0, time)
}

fn close(want: f64, got: f64) -> bool {
    ((got - want) / want).abs() <= BOUND
}

#[test]
fn ten_thousand_strokes_take_the_time_that_integration_gives() {
    let (nodes, mut random) = (nodes(), Random(2857));
    let (mut short, mut worst) = (0, 0.0_f64);
    for _ in 0..CASES {
        let lead = Length::new(1 + random.pick(6000) as i64, 1000).unwrap();
        let rpm = Length::new(1 + random.pick(6_000_000) as i64, 7 + random.pick(1000) as i64).unwrap();
        let travel = Length::new(1 + random.pick(200_000) as i64, 1000).unwrap();
        let rate = 10.0_f64.powf(1.0 + random.pick(5_000_000) as f64 / 1e6);
        let factor = Length::new(1 + random.pick(40) as i64, 10).unwrap();
        let dwell_s = random.pick(3) as f64 / 4.0;
        let motion = TappingMotion {
            lead_mm: lead,
            rpm,
            travel_mm: travel,
            acceleration_rpm_s: Some(rate),
            retract_factor: factor,
            dwell_s,
            peck_mm: None,
        };
        let Ok(found) = tapping_time(&motion) else { panic!("{motion:?}") };
        let turns = travel.to_f64() / lead.to_f64();
        let (reached, time_in) = integrated(rpm.to_f64(), turns, rate, &nodes);
        let (retract, time_out) = integrated(rpm.to_f64() * factor.to_f64(), turns, rate, &nodes);
        let pairs = [
            (reached, found.reached_rpm),
            (retract, found.retract_rpm),
            (time_in, found.time_in_s),
            (time_out, found.time_out_s),
            (time_in + dwell_s + time_out, found.time_s),
        ];
        for (want, got) in pairs {
            assert!(close(want, got), "want {want} got {got}: {motion:?}");
            worst = worst.max(((got - want) / want).abs());
        }
        short += usize::from(!found.reaches_speed);
    }
    assert!((1000..9000).contains(&short), "{short} of {CASES} strokes are short: one branch is hardly tried");
    // The bound is not used up: were it, the integration and not the formula would be on trial.
    assert!(worst < BOUND / 100.0, "worst {worst:e}");
}

/// The speed counted up in small steps of time, with the error of such steps as the bound.
#[test]
fn a_stroke_in_small_steps_takes_its_time() {
    let (rpm, rate, turns) = (600.0, 3000.0, 16.0);
    let step = 1e-6;
    let (mut speed, mut done, mut time) = (0.0_f64, 0.0_f64, 0.0_f64);
    // Brakes as soon as the turns that are left are those that braking takes.
    while done < turns - 1e-9 && time < 60.0 {
        let left = turns - done;
        let braking = speed * speed / (120.0 * rate) >= left;
        let next = if braking { speed - rate * step } else { (speed + rate * step).min(rpm) };
        if next <= 0.0 {
            break;
        }
        done += (speed + next) / 2.0 / 60.0 * step;
        (speed, time) = (next, time + step);
    }
    let found = tapping_time(&TappingMotion {
        lead_mm: Length::new(5, 4).unwrap(),
        rpm: Length::integer(600),
        travel_mm: Length::integer(20),
        acceleration_rpm_s: Some(rate),
        retract_factor: Length::ONE,
        dwell_s: 0.0,
        peck_mm: None,
    })
    .unwrap();
    // A step too early leaves at most a step's way at full speed; standing still on it takes this long.
    let bound = (2.0 * step * rpm / rate).sqrt() + step;
    assert!((found.time_in_s - time).abs() < bound, "formula {} steps {time}", found.time_in_s);
    assert_eq!(found.reached_rpm, 600.0);
}

/// The ends of the strokes, counted in whole micrometres.
fn ends(peck_um: i64, travel_um: i64) -> Vec<i64> {
    (1..)
        .map(|stroke| (stroke * peck_um).min(travel_um))
        .scan(0, |last, end| {
            let is_over = *last == travel_um;
            *last = end;
            (!is_over).then_some(end)
        })
        .collect()
}

#[test]
fn pecks_take_the_time_of_their_strokes_integrated_one_by_one() {
    let (nodes, mut random) = (nodes(), Random(431));
    let (mut mixed, mut most) = (0, 0);
    for case in 0..1000 {
        let (lead, rpm) = (200 + random.pick(6000) as i64, 1 + random.pick(6000) as i64);
        let travel_um = 1 + random.pick(100_000) as i64;
        let strokes = if case % 100 == 0 { 1000 } else { 1 + random.pick(12) as i64 };
        let peck_um = (travel_um / strokes + random.pick(50) as i64).clamp((travel_um + 999) / 1000, travel_um);
        let rate = 10.0_f64.powf(1.0 + random.pick(5_000_000) as f64 / 1e6);
        let factor = Length::new(1 + random.pick(40) as i64, 10).unwrap();
        let motion = TappingMotion {
            lead_mm: Length::new(lead, 1000).unwrap(),
            rpm: Length::integer(rpm),
            travel_mm: Length::new(travel_um, 1000).unwrap(),
            acceleration_rpm_s: Some(rate),
            retract_factor: factor,
            dwell_s: 0.25,
            peck_mm: Some(Length::new(peck_um, 1000).unwrap()),
        };
        let found = tapping_time(&motion).unwrap();
        let ends = ends(peck_um, travel_um);
        let ways = |rpm: f64| -> Vec<(f64, f64)> {
            ends.iter().map(|end| integrated(rpm, *end as f64 / lead as f64, rate, &nodes)).collect()
        };
        let (way_in, way_out) = (ways(rpm as f64), ways(rpm as f64 * factor.to_f64()));
        let time = |ways: &[(f64, f64)]| ways.iter().map(|way| way.1).sum::<f64>();
        let pairs = [
            (way_in.last().unwrap().0, found.reached_rpm),
            (way_out.last().unwrap().0, found.retract_rpm),
            (time(&way_in), found.time_in_s),
            (time(&way_out), found.time_out_s),
            (time(&way_in) + 0.25 * ends.len() as f64 + time(&way_out), found.time_s),
        ];
        for (want, got) in pairs {
            assert!(close(want, got), "want {want} got {got}: {motion:?}");
        }
        assert_eq!(found.strokes as usize, ends.len(), "{motion:?}");
        let alone = tapping_time(&TappingMotion { peck_mm: None, ..motion }).unwrap();
        assert_eq!((alone.turns, alone.reaches_speed), (found.turns, found.reaches_speed), "of the deepest stroke");
        mixed += usize::from(found.reaches_speed && way_in[0].0 < 0.999 * rpm as f64);
        most = most.max(found.strokes);
    }
    assert!(mixed > 100 && most > 900, "{mixed} of the cases have short strokes before long ones, {most} strokes");
}

#[test]
fn a_peck_of_the_whole_travel_is_one_stroke_bit_for_bit() {
    let mut random = Random(7);
    for _ in 0..1000 {
        let motion = TappingMotion {
            lead_mm: Length::new(1 + random.pick(6000) as i64, 1000).unwrap(),
            rpm: Length::new(1 + random.pick(6_000_000) as i64, 7 + random.pick(1000) as i64).unwrap(),
            travel_mm: Length::new(1 + random.pick(200_000) as i64, 1000).unwrap(),
            acceleration_rpm_s: random.pick(2).eq(&1).then_some(1.0 + random.pick(1_000_000) as f64),
            retract_factor: Length::new(1 + random.pick(40) as i64, 10).unwrap(),
            dwell_s: random.pick(100) as f64 / 7.0,
            peck_mm: None,
        };
        let pecked = TappingMotion { peck_mm: Some(motion.travel_mm), ..motion };
        assert_eq!(tapping_time(&motion), tapping_time(&pecked), "{motion:?}");
    }
}

#[test]
fn pecks_are_from_a_thousandth_of_the_travel_to_all_of_it() {
    let of = |travel_mm: Length, peck_mm: Length| {
        tapping_time(&TappingMotion {
            lead_mm: Length::ONE,
            rpm: Length::integer(600),
            travel_mm,
            acceleration_rpm_s: None,
            retract_factor: Length::ONE,
            dwell_s: 0.0,
            peck_mm: Some(peck_mm),
        })
    };
    let ratio = |top, bottom| Length::new(top, bottom).unwrap();
    let ten = Length::integer(10);
    for (peck, strokes) in [(ten, 1), (ratio(999, 100), 2), (Length::integer(5), 2), (ratio(1, 100), 1000)] {
        assert_eq!(of(ten, peck).unwrap().strokes, strokes, "{peck}");
    }
    // No double tells these travels from 10.
    let large = i64::MAX / 11;
    let (below, above) = (ratio(10 * large - 1, large), ratio(10 * large + 1, large));
    assert_eq!((below.to_f64(), above.to_f64()), (10.0, 10.0));
    assert_eq!((of(below, ratio(1, 100)).unwrap().strokes, of(below, below).unwrap().strokes), (1000, 1));
    for (travel, peck) in [(above, ratio(1, 100)), (below, ten)] {
        assert_eq!(of(travel, peck).unwrap_err().field(), Field::Peck, "{travel} {peck}");
    }
    let least =
        [Length::ZERO, ten.negative(), ratio(1, i64::MAX), ratio(i64::MAX / 101, i64::MAX), ratio(i64::MIN + 1, 2)];
    for peck in least.into_iter().chain([ratio(i64::MAX, large), ratio(1001, 100), Length::integer(i64::MAX)]) {
        let error = of(ten, peck).unwrap_err();
        assert_eq!(
            (error.code(), error.field(), error.value()),
            (Code::OutOfRange, Field::Peck, peck.to_f64()),
            "{peck}"
        );
        assert_eq!((error.low(), error.high()), (0.01, 10.0));
        assert_eq!(error.hint(), "at most the way from R to the bottom, in at most 1000 strokes");
    }
}

#[test]
fn turns_and_speed_belong_together() {
    let mut random = Random(68);
    for _ in 0..1000 {
        let rpm = Length::new(1 + random.pick(1_000_000) as i64, 100).unwrap();
        let rate = 1.0 + random.pick(100_000_000) as f64 / 1e3;
        let turns = turns_to_speed(rpm, rate).unwrap();
        assert!(close(rpm.to_f64(), speed_after_turns(turns, rate).unwrap()), "{rpm} {rate}");
    }
    for (turns, rate) in [(-1.0, 100.0), (f64::NAN, 100.0), (1.0, 0.0), (1.0, f64::NAN), (1e7, 100.0)] {
        assert!(speed_after_turns(turns, rate).is_err());
    }
    assert!(turns_to_speed(Length::ZERO, 100.0).is_err() && turns_to_speed(Length::ONE, f64::INFINITY).is_err());
}
