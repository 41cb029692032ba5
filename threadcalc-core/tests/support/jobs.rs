//! The random jobs of tests/same_bits/README.md and the line of a plan. Without the standard library,
//! so that machines that have none can run the same jobs.

use core::fmt::{self, Write};

use threadcalc_core::{
    Basis, ChamferForm, Dialect, DrillSet, FeedMode, Holder, Hole, Job, Length, Material, Plan, Tap, Thread, Unit,
    Value,
};

use super::random::Random;

pub const SEED: u64 = 20_261_125;

/// The 64-bit FNV-1a hash of all text written to it.
pub struct Hash(pub u64);

impl Hash {
    pub const EMPTY: Self = Self(0xCBF2_9CE4_8422_2325);
}

impl Write for Hash {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        for byte in text.bytes() {
            self.0 = (self.0 ^ u64::from(byte)).wrapping_mul(0x0100_0000_01B3);
        }
        Ok(())
    }
}

/// One job by the draws of the README, all of them in its order, used or not.
pub fn draw(random: &mut Random, threads: &[Thread]) -> Job {
    let mut job = Job::default();
    let mut pick = |count: usize| random.pick(count as u64) as usize;
    let parts = |count: usize, parts| Some(Length::new(count as i64, parts).unwrap());
    job.thread = Some(threads[pick(threads.len())]);
    job.unit = Some([Unit::Mm, Unit::Inch][pick(2)]);
    job.mode = Some([FeedMode::PerMinute, FeedMode::PerRevolution][pick(2)]);
    job.decimals = Some(pick(6) as u8 + 1);
    job.rpm = parts(pick(60_000) + 1, 10);
    job.hole = Some([Hole::Through, Hole::Blind][pick(2)]);
    job.full_thread_depth_mm = parts(pick(4_000) + 1, 100);
    let tap = [Tap::Cut, Tap::Form][pick(2)];
    job.tap = Some(tap);
    let (drill, percent) = (pick(3), parts(pick(26) + 50, 1));
    let basis = [Basis::ThreeQuartersH, Basis::FiveEighthsH][pick(2)];
    let sets = pick(15) + 1;
    if drill == 1 {
        job.percent = percent;
        job.basis = (tap == Tap::Cut).then_some(basis);
    }
    if drill == 2 {
        let in_bits = [DrillSet::Metric, DrillSet::Number, DrillSet::Letter, DrillSet::Fractional];
        let held = in_bits.into_iter().enumerate().filter(|(bit, _)| sets & (1 << bit) != 0);
        job.drill_sets = held.fold(job.drill_sets, |all, (_, set)| all.with(set));
    }
    job.point_angle_deg = Some(Length::integer([118, 130, 135, 140][pick(4)]));
    job.dialect = (pick(2) == 0).then(Dialect::rs274ngc);
    if pick(2) == 0 {
        let mut unused = Job::default();
        draw_rest(&mut pick, &mut unused, drill);
    } else {
        draw_rest(&mut pick, &mut job, drill);
    }
    job
}

/// The draws behind the one that says whether they are used.
fn draw_rest(pick: &mut impl FnMut(usize) -> usize, job: &mut Job, drill: usize) {
    let parts = |count: usize, parts| Some(Length::new(count as i64, parts).unwrap());
    let one_of = |choices: [i64; 2], place: usize| place.checked_sub(1).map(|place| Length::integer(choices[place]));
    if pick(2) == 1 {
        job.full_thread_depth_mm = None;
    }
    let holder = pick(3);
    job.holder = Some(Holder::ALL[holder]);
    let underfeed = pick(4);
    if holder > 0 {
        job.underfeed_percent = parts(underfeed, 1);
    }
    job.over_travel_turns = parts(pick(4), 2);
    let (speed, surface) = (pick(3), parts(pick(40) + 2, 1));
    if speed > 0 {
        job.rpm = None;
        *(if speed == 1 { &mut job.surface_speed_m_min } else { &mut job.surface_speed_ft_min }) = surface;
    }
    job.material = Some(Material::ALL[pick(10)]);
    job.chamfer_form = pick(20).checked_sub(10).map(|place| ChamferForm::ALL[place]);
    job.part_thickness_mm = one_of([10, 60], pick(3));
    let drilled = one_of([20, 45], pick(3));
    job.drill_depth_mm = drilled.filter(|_| job.hole != Some(Hole::Through));
    job.countersink_mm = one_of([12, 30], pick(6).saturating_sub(3));
    job.coating_um = one_of([5, 9], pick(3));
    job.machine.acceleration_rpm_s = one_of([500, 4000], pick(3));
    job.machine.axis_feed_limit_mm_min = one_of([1000, 4000], pick(3));
    for gear in [[20, 600, 40], [20, 4000, 8]].into_iter().take(pick(3)) {
        job.machine.add_gear(&gear.map(Length::integer)).unwrap();
    }
    draw_screw(pick(3), job);
    job.hole_count = (pick(2) == 1).then(|| Length::integer(12));
    if pick(3) == 2 && drill == 0 {
        for name in ["#7", "F", "6.8", "8.5"] {
            job.drill_list.read(name.as_bytes()).unwrap();
        }
    }
}

fn draw_screw(screw: usize, job: &mut Job) {
    let fields: &[(&str, &str)] = match screw {
        0 => return,
        1 => &[("screw.property_class", "8.8"), ("part_shear_mpa", "200")],
        _ => &[("screw.tensile_mpa", "900"), ("screw.load_n", "5000"), ("part_shear_mpa", "250")],
    };
    for (key, value) in fields {
        job.set(key, Value::Text(value.as_bytes())).unwrap();
    }
}

/// Writes the README's items of a plan, joined by `|`, without a line feed.
pub fn write_items(out: &mut dyn Write, plan: &Plan) -> fmt::Result {
    let depths = &plan.depths;
    write!(out, "{}", plan.thread)?;
    ratio(out, plan.thread.lead_mm())?;
    ratio(out, plan.programmed_rpm)?;
    write!(out, "|{}", plan.feed.word())?;
    ratio(out, plan.feed.value().map_err(|_| fmt::Error)?)?;
    for value in [plan.lead_error, plan.axial_error_mm, plan.lead_cut_mm] {
        ratio(out, value)?;
    }
    write!(out, "|{}", plan.drill.chosen.drill.name())?;
    double(out, plan.drill.chosen.percent)?;
    for value in [depths.tap_mm, depths.program_tap_mm, depths.full_diameter_mm] {
        ratio(out, value)?;
    }
    double(out, depths.drill_point_mm)?;
    joined(out, plan.cycle.words())?;
    joined(out, plan.cycle.restore())?;
    joined(out, plan.findings.iter().map(|finding| finding.id().name()))?;
    joined(out, plan.withheld.iter().flatten().map(|id| id.name()))
}

pub fn ratio(out: &mut dyn Write, value: Length) -> fmt::Result {
    write!(out, "|{}/{}", value.numerator(), value.denominator())
}

pub fn double(out: &mut dyn Write, value: f64) -> fmt::Result {
    write!(out, "|{:016x}", value.to_bits())
}

fn joined<'a>(out: &mut dyn Write, parts: impl Iterator<Item = &'a str>) -> fmt::Result {
    let gaps = core::iter::once("|").chain(core::iter::repeat(" "));
    // An empty list is an empty item.
    let mut parts = parts.peekable();
    if parts.peek().is_none() {
        return out.write_str("|");
    }
    gaps.zip(parts).try_for_each(|(gap, part)| write!(out, "{gap}{part}"))
}
