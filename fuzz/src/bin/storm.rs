//! Many drawn programs through the reader of programs and the checker, on every processor.
//!
//!     storm COUNT [SEED [FIRST]]    COUNT programs, of this seed, from this number on
//!
//! One execution is one program through both. A case that fails is shown with its number: `storm 1 SEED NUMBER`
//! runs it again. Ends with status 1 if a case fails, 3 if one takes more than a minute.

use std::cell::Cell;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicU64, Ordering};
use std::thread;
use std::time::{Duration, Instant};

use threadcalc_fuzz::storm::{Known, Storm, Tally, Told};

/// How many cases a thread takes at once.
const BATCH: u64 = 4096;
/// How many failures a run shows before it ends.
const MOST_FAILURES: u64 = 10;
const LONGEST: Duration = Duration::from_secs(60);

thread_local! {
    static CASE: Cell<u64> = const { Cell::new(0) };
}

/// What the threads share.
struct Run {
    seed: u64,
    next: AtomicU64,
    end: u64,
    failed: AtomicU64,
    tally: Mutex<Tally>,
}

fn main() {
    let arguments: Vec<u64> = std::env::args().skip(1).map(|text| text.parse().expect("whole numbers")).collect();
    let [count, rest @ ..] = &arguments[..] else { panic!("storm COUNT [SEED [FIRST]]") };
    let (seed, first) = (rest.first().copied().unwrap_or(1), rest.get(1).copied().unwrap_or(0));
    let run = Run {
        seed,
        next: AtomicU64::new(first),
        end: first + count,
        failed: AtomicU64::new(0),
        tally: Mutex::new(Tally::default()),
    };
    let (known, told) = (Known::new(programs()), Told::new(seed));
    show_the_case(seed);
    let threads = thread::available_parallelism().map_or(1, usize::from).min(count.div_ceil(BATCH).max(1) as usize);
    let running: Vec<AtomicU64> = (0..threads).map(|_| AtomicU64::new(first)).collect();
    let start = Instant::now();
    thread::scope(|scope| {
        let all: Vec<_> = running.iter().map(|case| scope.spawn(|| work(&run, &known, &told, case))).collect();
        watch(&run, &running, || all.iter().all(thread::ScopedJoinHandle::is_finished));
    });
    let failed = run.failed.load(Ordering::Relaxed);
    if failed > 0 {
        eprintln!("{failed} cases failed");
        std::process::exit(1);
    }
    report(&run.tally.lock().expect("no thread failed"), *count, start.elapsed());
}

/// The samples and the programs of the table of checks.
fn programs() -> Vec<Vec<u8>> {
    let tests = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests"));
    let mut paths: Vec<_> =
        tests.join("nc").read_dir().expect("samples").map(|entry| entry.expect("a sample").path()).collect();
    paths.retain(|path| path.extension().is_some_and(|end| end == "nc"));
    paths.sort();
    let mut programs: Vec<_> = paths.iter().map(|path| std::fs::read(path).expect("a sample")).collect();
    let table = std::fs::read_to_string(tests.join("reference/nc_check.csv")).expect("the table of checks");
    let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
    programs.extend(rows.filter_map(|row| Some(row.split(',').nth(1)?.replace(" | ", "\n").into_bytes())));
    assert!(programs.len() > 300, "{} programs", programs.len());
    programs
}

fn show_the_case(seed: u64) {
    let usual = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |info| {
        usual(info);
        eprintln!("case {} of seed {seed}", CASE.get());
    }));
}

fn work(run: &Run, known: &Known, told: &Told, running: &AtomicU64) {
    let mut storm = Storm::new(run.seed, known, told);
    while run.failed.load(Ordering::Relaxed) < MOST_FAILURES {
        let from = run.next.fetch_add(BATCH, Ordering::Relaxed);
        if from >= run.end {
            break;
        }
        for case in from..(from + BATCH).min(run.end) {
            running.store(case, Ordering::Relaxed);
            CASE.set(case);
            let is_well = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| storm.run(case))).is_ok();
            if !is_well {
                run.failed.fetch_add(1, Ordering::Relaxed);
                eprintln!("{}", storm.program().escape_ascii());
            }
        }
    }
    run.tally.lock().expect("no thread failed").add(storm.tally());
}

/// Until the threads are done: a line a minute, and an end to a case that has none.
fn watch(run: &Run, running: &[AtomicU64], is_done: impl Fn() -> bool) {
    let now = |case: &AtomicU64| case.load(Ordering::Relaxed);
    let mut seen: Vec<_> = running.iter().map(|case| (now(case), Instant::now())).collect();
    let (start, mut told) = (Instant::now(), Instant::now());
    while !is_done() {
        thread::sleep(Duration::from_millis(20));
        for (case, (last, since)) in running.iter().zip(&mut seen) {
            if now(case) != *last {
                (*last, *since) = (now(case), Instant::now());
            } else if since.elapsed() > LONGEST && *last + 1 < run.end {
                eprintln!("case {last} of seed {} has not ended in {LONGEST:?}", run.seed);
                std::process::exit(3);
            }
        }
        if told.elapsed() > Duration::from_secs(60) {
            told = Instant::now();
            println!("{} s: up to case {}", start.elapsed().as_secs(), run.next.load(Ordering::Relaxed));
        }
    }
}

fn report(tally: &Tally, count: u64, time: Duration) {
    assert_eq!(tally.programs, count, "every case was run");
    let findings: u64 = tally.findings.iter().sum();
    let rate = count as f64 / time.as_secs_f64();
    println!("{count} programs, {} bytes, in {:.1} s: {rate:.0} a second", tally.bytes, time.as_secs_f64());
    println!(
        "{} in pieces as well, {} as JSON; {} holes, {findings} findings",
        tally.in_pieces, tally.written, tally.holes
    );
    println!("findings never met: {:?}", tally.never_found().collect::<Vec<_>>());
    println!("reasons never met: {:?}", tally.never_a_reason().collect::<Vec<_>>());
}
