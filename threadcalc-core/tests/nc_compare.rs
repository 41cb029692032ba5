//! What a comparison of two versions does for every program: drawn ones are the same as themselves however they are
//! written, and a change that is put in is named alone.
//!
//! `THREADCALC_COMPARE_CASES` sets the number of cases; 150 if it is not set.

#[path = "support/random.rs"]
mod random;

use random::Random;
use threadcalc_core::nc::{
    CheckOptions, Event, HoleChange, HoleCounts, HoleValue, ProgramCheck, TappedHole, compare, scratch_for,
};
use threadcalc_core::{Code, Dialect, Length, Value};

fn cases() -> u64 {
    std::env::var("THREADCALC_COMPARE_CASES").ok().map_or(150, |cases| cases.parse().unwrap())
}

fn mill() -> Dialect {
    let mut mill = Dialect::unset();
    for (key, code) in [("tap_rh", "G84"), ("tap_lh", "G74"), ("feed_per_revolution", "G95"), ("feed_basis", "by_mode")]
    {
        mill.set(key, Value::Text(code.as_bytes())).unwrap();
    }
    mill
}

fn holes(program: &str) -> Vec<TappedHole> {
    let hole = |event| if let Event::Hole(hole) = event { Some(hole) } else { None };
    ProgramCheck::new(program.as_bytes(), &mill(), &CheckOptions::default()).filter_map(hole).collect()
}

fn compared(old: &[TappedHole], new: &[TappedHole]) -> (Vec<HoleChange>, HoleCounts) {
    let mut scratch = vec![u32::MAX - 1; scratch_for(old.len(), new.len())];
    let comparison = compare(old, new, &mut scratch).unwrap();
    (comparison.changes().collect(), comparison.counts())
}

/// A tapped hole as it is written.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Hole {
    /// None: by a variable that nobody sets.
    place: Option<(u64, u64)>,
    depth: u64,
    /// In hundredths of a millimetre.
    lead: u64,
    is_left: bool,
    speed: u64,
    tool: u64,
}

/// A few holes, some twice at one place, some at a place that is not known.
fn draw(random: &mut Random) -> Vec<Hole> {
    let unknown_of_4 = random.pick(5);
    (0..1 + random.pick(30)).map(|_| draw_hole(random, unknown_of_4)).collect()
}

fn draw_hole(random: &mut Random, unknown_of_4: u64) -> Hole {
    let place = (random.pick(9) * 10, random.pick(4) * 15);
    Hole {
        place: (random.pick(4) >= unknown_of_4).then_some(place),
        depth: 10 + random.pick(3),
        lead: 100 + 25 * random.pick(3),
        is_left: random.pick(6) == 0,
        speed: 200 + 100 * random.pick(3),
        tool: 1 + random.pick(3),
    }
}

/// The blocks of a program; `noise` draws what changes nothing.
fn written(drawn: &[Hole], mut noise: Option<&mut Random>) -> String {
    let mut lines: Vec<String> = vec!["G17 G21 G90 G94 G54".into()];
    for hole in drawn {
        let feed = Length::new(hole.lead as i64 * hole.speed as i64, 100).unwrap();
        let place = hole.place.map_or("X#5 Y#6".into(), |(x, y)| format!("X{x}. Y{y}."));
        let (cycle, turn) = if hole.is_left { ("G74", "M4") } else { ("G84", "M3") };
        lines.push(format!("T{} M6", hole.tool));
        lines.push(format!("S{} {turn}", hole.speed));
        lines.push(format!("G99 {cycle} {place} Z-{}. R5. F{feed}", hole.depth));
        lines.push("G80".into());
    }
    let mut text = String::new();
    for (place, line) in lines.iter().enumerate() {
        let mut line = line.clone();
        if let Some(random) = noise.as_deref_mut() {
            match random.pick(5) {
                0 => line = line.to_lowercase(),
                1 => line = format!("N{} {line}", 10 * place),
                2 => line = format!("{line} (LOOK HERE)"),
                3 => line = format!("\n(NEXT)\n{line}"),
                _ => line = line.replace(' ', ""),
            }
        }
        text += &line;
        text += "\n";
    }
    text
}

/// Places that no two holes share, so that each is found by its own.
fn spread(drawn: &mut [Hole]) {
    for (place, hole) in drawn.iter_mut().enumerate() {
        hole.place = Some((7 * place as u64, place as u64 % 5));
    }
}

/// Some edits of a program.
fn edited(random: &mut Random, drawn: &[Hole]) -> Vec<Hole> {
    let mut edited = drawn.to_vec();
    for _ in 0..random.pick(6) {
        let at = random.pick(edited.len() as u64 + 1) as usize;
        match random.pick(4) {
            0 => edited.insert(at, draw_hole(random, 2)),
            1 if at < edited.len() => drop(edited.remove(at)),
            2 if at < edited.len() => edited.rotate_left(at),
            _ if at < edited.len() => edited[at] = draw_hole(random, 2),
            _ => {}
        }
    }
    edited
}

#[test]
fn a_program_is_the_same_as_itself_however_it_is_written() {
    let mut random = Random(1);
    for _ in 0..cases() {
        let drawn = draw(&mut random);
        let plain = holes(&written(&drawn, None));
        assert_eq!(plain.len(), drawn.len());
        assert_eq!(compared(&plain, &plain).0, []);
        let text = written(&drawn, Some(&mut random));
        assert_eq!(compared(&plain, &holes(&text)).0, [], "{text}");
    }
}

#[test]
fn a_change_that_is_put_in_is_named_alone() {
    let mut random = Random(2);
    let mut seen = [0_u32; 6];
    for _ in 0..cases() {
        let drawn = draw(&mut random);
        let at = random.pick(drawn.len() as u64) as usize;
        let old = holes(&written(&drawn, None));
        let mut changed = drawn.clone();
        let hole = &mut changed[at];
        let which = random.pick(seen.len() as u64) as usize;
        let value = match which {
            0 => (hole.lead += 35, HoleValue::Lead).1,
            1 => (hole.depth += 7, HoleValue::Depth).1,
            2 => (hole.is_left ^= true, HoleValue::Hand).1,
            3 => (hole.speed += 50, HoleValue::Speed).1,
            4 => (hole.tool += 10, HoleValue::Tool).1,
            _ => (hole.place = Some((500, 500)), HoleValue::Place).1,
        };
        let text = written(&changed, Some(&mut random));
        let (changes, counts) = compared(&old, &holes(&text));
        let [change] = &changes[..] else { panic!("{changes:#?} in {drawn:#?} and {text}") };
        assert_eq!(change.changed.iter().collect::<Vec<_>>(), [value], "{change}");
        // Of several holes that only differ in it, any may have been moved.
        if value != HoleValue::Place {
            assert_eq!(change.before, Some(old[at]), "{change}");
            assert_eq!(change.after.map(|hole| hole.number), Some(at as u32 + 1), "{change}");
        }
        assert_eq!((counts.changed, counts.added, counts.removed), (1, 0, 0));
        seen[which] += 1;
    }
    assert!(seen.iter().all(|count| *count > 0), "{seen:?}");
}

#[test]
fn holes_that_come_and_go_are_named_alone_in_any_order() {
    let mut random = Random(3);
    for _ in 0..cases() {
        let mut drawn = draw(&mut random);
        spread(&mut drawn);
        let mut shuffled = drawn.clone();
        for place in (1..shuffled.len()).rev() {
            shuffled.swap(place, random.pick(place as u64 + 1) as usize);
        }
        let old = holes(&written(&drawn, None));
        assert_eq!(compared(&old, &holes(&written(&shuffled, None))).0, []);
        let gone = random.pick(shuffled.len() as u64 + 1) as usize;
        let stay = shuffled.split_off(gone);
        let (changes, counts) = compared(&old, &holes(&written(&stay, None)));
        assert!(changes.iter().all(|change| change.after.is_none() && change.before.is_some()), "{changes:#?}");
        assert_eq!((counts.removed, counts.changed, counts.added), (gone as u32, 0, 0));
        let (_, counts) = compared(&holes(&written(&stay, None)), &old);
        assert_eq!((counts.removed, counts.changed, counts.added), (0, 0, gone as u32));
    }
}

/// What tells a change apart, with the sides as they are or swapped.
fn key(change: &HoleChange, is_swapped: bool) -> (u32, u32, Vec<HoleValue>) {
    let (old, new) = if is_swapped { (change.after, change.before) } else { (change.before, change.after) };
    let number = |hole: Option<TappedHole>| hole.map_or(0, |hole| hole.number);
    (number(old), number(new), change.changed.iter().collect())
}

#[test]
fn the_way_back_is_the_same_with_sides_swapped() {
    let mut random = Random(4);
    let mut changed = 0;
    for _ in 0..cases() * 4 {
        let drawn = draw(&mut random);
        let old = holes(&written(&drawn, None));
        let text = written(&edited(&mut random, &drawn), Some(&mut random));
        let new = holes(&text);
        let ((there, counts), (back, _)) = (compared(&old, &new), compared(&new, &old));
        let mut there: Vec<_> = there.iter().map(|change| key(change, false)).collect();
        let mut back: Vec<_> = back.iter().map(|change| key(change, true)).collect();
        there.sort_by_key(|(old, new, _)| (*old, *new));
        back.sort_by_key(|(old, new, _)| (*old, *new));
        assert_eq!(there, back, "{drawn:#?}\n{text}");
        assert_eq!(counts.before + counts.added, counts.after + counts.removed);
        changed += usize::from(!there.is_empty());
    }
    assert!(changed as u64 > cases(), "{changed}");
}

/// The length of the longest common subsequence, by the whole table.
fn longest_common(old: &[Hole], new: &[Hole]) -> u32 {
    let mut best = vec![vec![0_u32; new.len() + 1]; old.len() + 1];
    for i in (0..old.len()).rev() {
        for j in (0..new.len()).rev() {
            best[i][j] = if old[i] == new[j] { best[i + 1][j + 1] + 1 } else { best[i + 1][j].max(best[i][j + 1]) };
        }
    }
    best[0][0]
}

#[test]
fn where_no_place_is_known_the_most_holes_agree() {
    let mut random = Random(5);
    for _ in 0..cases() {
        let mut drawn = draw(&mut random);
        drawn.iter_mut().for_each(|hole| hole.place = None);
        let mut changed = edited(&mut random, &drawn);
        changed.iter_mut().for_each(|hole| hole.place = None);
        let (old, new) = (holes(&written(&drawn, None)), holes(&written(&changed, None)));
        let (_, counts) = compared(&old, &new);
        let agree = counts.before - counts.changed - counts.removed;
        assert_eq!(agree, longest_common(&drawn, &changed), "{drawn:#?}\n{changed:#?}");
    }
}

/// Holes of a long program: one of the library's own with other values.
fn many(of: TappedHole, count: u32, random: &mut Random, values: u64, is_placed: bool) -> Vec<TappedHole> {
    let hole = |number| {
        let mut hole = of;
        (hole.number, hole.line) = (number + 1, number + 1);
        hole.depth_mm = Some(Length::integer(random.pick(values) as i64));
        hole.x_mm = is_placed.then_some(Length::new(i64::from(number) * 7, 3).unwrap());
        hole
    };
    (0..count).map(hole).collect()
}

/// Nothing that goes with the square of the length: holes that hardly agree, and as many that all do.
#[test]
fn long_programs_end() {
    const COUNT: u32 = 10_000;
    let mut random = Random(6);
    let of = holes(&written(&[draw_hole(&mut random, 0)], None))[0];
    for (values, is_placed) in [(1_000_000, false), (3, false), (1, false), (9, true)] {
        let old = many(of, COUNT, &mut random, values, is_placed);
        let mut new = many(of, COUNT, &mut random, values, is_placed);
        new.reverse();
        let (_, counts) = compared(&old, &new);
        assert_eq!((counts.before, counts.after), (COUNT, COUNT));
        assert_eq!(counts.before + counts.added, counts.after + counts.removed);
        assert!(values > 1 || counts.changed == 0);
        assert!(!is_placed || counts.added == 0);
    }
}

#[test]
fn scratch_that_is_too_short_is_told() {
    let old = holes(&written(&[draw_hole(&mut Random(7), 0)], None));
    let mut scratch = [0; 4];
    for length in 0..4 {
        let refused = compare(&old, &old, &mut scratch[..length]).expect_err("too short");
        assert_eq!(refused.code(), Code::OutOfRange);
        assert!(refused.to_string().contains("scratch"), "{refused}");
    }
    assert!(compare(&old, &old, &mut scratch).is_ok());
    assert_eq!(scratch_for(1, 1), 4);
    assert!(compare(&[], &[], &mut []).is_ok_and(|comparison| comparison.changes().next().is_none()));
}
