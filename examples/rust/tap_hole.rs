//! Scratch.
use threadcalc_core::*;
fn main() {
    for s in [
        "M8",
        "m 8 x 1,25-6h",
        "M8x1.25-6H",
        "M10x1-6H-LH",
        "M16xPh3P1.5-6H-LH",
        "#10-32",
        "1-8",
        "1-64",
        "1-1/4-7 UNC-2B",
        "2-4 1/2 UNC",
        ".250-20 unc 2b",
        "1 1/8-8 UN-2B",
        "1/4-20 UNF",
        "1/4-18",
        "M10x1.1",
        "3/4-.0625P-.1875L(3 STARTS) UN-2A",
        "G1/2",
        "M8x1.25-6H/6g",
        "",
        "M8x1.25 garbage",
        "1/4-20 TPI",
        "M13",
        "No. 10-24 UNC-2B-LH",
        "1/4\"-20",
        "0.3-24",
        "1.000-64",
        "2-64",
        "6-32",
        "5-40",
        "1/8-40",
        "M8\u{d7}1",
        "1/4-24 UNS",
    ] {
        match Thread::read(s.as_bytes()) {
            Ok(t) => {
                println!(
                    "{s:?} -> {t} size {} series {:?} major {} pitch {} lead {} ",
                    t.size(),
                    t.series(),
                    t.major_mm(),
                    t.pitch_mm(),
                    t.lead_mm()
                );
                for f in t.findings().iter() {
                    println!("   {f}");
                }
                if let Ok(l) = t.limits() {
                    println!("   {:?}", l.minor_mm);
                }
                let back = Thread::read(t.to_string().as_bytes());
                if back != Ok(t) {
                    println!("   BACK {back:?}");
                }
            }
            Err(e) => println!("{s:?} ERR {} {e}", e.code().name()),
        }
    }
    let mut n = 0;
    for t in standard_threads(None, None) {
        n += 1;
        if Thread::read(t.to_string().as_bytes()) != Ok(t) {
            println!("bad {t}");
        }
        if !t.is_standard() {
            println!("ns {t}");
        }
    }
    println!("{n}");
    println!("{}", drills(DrillSets::ALL).count());
    println!("{} {}", core::mem::size_of::<Plan>(), core::mem::size_of::<Job>());
    let mut job = Job::default();
    for (k, v) in [
        ("thread", "7/16-14 UNC-2B"),
        ("rpm", "650"),
        ("unit", "mm"),
        ("mode", "per-minute"),
        ("decimals", "3"),
        ("hole", "blind"),
        ("full_thread_depth_mm", "20"),
        ("tap", "cut"),
        ("dialect", "rs274ngc"),
    ] {
        job.set(k, Value::Text(v.as_bytes())).unwrap();
    }
    let p = plan(&job).unwrap();
    println!("{p:#?}");
}
