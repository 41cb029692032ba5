//! 10,000 random plans hashed: the C and Python doors have to print the same hash.

#[path = "support/random.rs"]
mod random;

use std::fmt::Write;
use std::path::{Path, PathBuf};

use random::Random;
use threadcalc_core::{Basis, Dialect, DrillSet, Error, FeedMode, Hole, Job, Length, Plan, Tap, Thread, Unit, plan};

const SEED: u64 = 20_261_125;
const JOBS: usize = 10_000;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/same_bits")
}

/// The 64-bit FNV-1a hash of all text written to it.
struct Hash(u64);

impl Write for Hash {
    fn write_str(&mut self, text: &str) -> std::fmt::Result {
        for byte in text.bytes() {
            self.0 = (self.0 ^ u64::from(byte)).wrapping_mul(0x0100_0000_01B3);
        }
        Ok(())
    }
}

/// One job by the draws of the README, all of them in its order, used or not.
fn draw(random: &mut Random, threads: &[Thread]) -> Job {
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
    job
}

fn ratio(value: Length) -> String {
    format!("{}/{}", value.numerator(), value.denominator())
}

fn double(value: f64) -> String {
    format!("{:016x}", value.to_bits())
}

fn joined<'a>(parts: impl Iterator<Item = &'a str>) -> String {
    parts.collect::<Vec<_>>().join(" ")
}

fn items(plan: &Plan) -> Result<String, Error> {
    let depths = &plan.depths;
    Ok([
        plan.thread.to_string(),
        ratio(plan.thread.lead_mm()),
        ratio(plan.programmed_rpm),
        plan.feed.word().into(),
        ratio(plan.feed.value()?),
        ratio(plan.lead_error),
        ratio(plan.axial_error_mm),
        ratio(plan.lead_cut_mm),
        plan.drill.chosen.drill.name().to_string(),
        double(plan.drill.chosen.percent),
        ratio(depths.tap_mm),
        ratio(depths.program_tap_mm),
        ratio(depths.full_diameter_mm),
        double(depths.drill_point_mm),
        joined(plan.cycle.words()),
        joined(plan.cycle.restore()),
        joined(plan.findings.iter().map(|finding| finding.id().name())),
        joined(plan.withheld.iter().flatten().map(|id| id.name())),
    ]
    .join("|"))
}

#[test]
fn ten_thousand_plans_have_the_expected_hash() {
    let listed = std::fs::read_to_string(folder().join("threads.txt")).unwrap();
    let lines = listed.lines().filter(|line| !line.starts_with('#'));
    let threads: Vec<_> = lines.map(|line| Thread::read(line.as_bytes()).unwrap()).collect();
    let (mut random, mut hash) = (Random(SEED), Hash(0xCBF2_9CE4_8422_2325));
    let mut planned = 0;
    for _ in 0..JOBS {
        match plan(&draw(&mut random, &threads)) {
            Err(error) => writeln!(hash, "error {} {}", error.code().name(), error.field()).unwrap(),
            Ok(plan) => {
                planned += 1;
                let json = serde_json::to_string(&plan).unwrap();
                // The text of a plan ends in a line feed of its own.
                write!(hash, "{}\n{plan}{json}\n", items(&plan).unwrap()).unwrap();
            }
        }
    }
    assert!(planned > JOBS / 2, "only {planned} jobs have a plan");
    let (got, path) = (format!("{:016x}\n", hash.0), folder().join("expected.txt"));
    if std::env::var_os("THREADCALC_WRITE_EXPECTED").is_some_and(|wanted| wanted == "1") {
        std::fs::write(&path, &got).unwrap();
    }
    let want = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    assert_eq!(got, want, "{} of {JOBS} jobs have a plan", planned);
}
