//! The ports of an irrigation manifold: from the hole note on the drawing to drill and depth.

use threadcalc_core::{
    DrillSets, Error, Length, Tap, TapDrillRequest, TaperDepthRequest, read_hole_note, tap_drill, taper_depths,
};

const NOTE: &str = "6X 1/4-18 NPT";

fn main() -> Result<(), Error> {
    let note = read_hole_note(NOTE.as_bytes(), None)?;
    let Some(thread) = note.thread() else { return Ok(()) };
    let request = TapDrillRequest {
        tap: Tap::Cut,
        percent: None,
        basis: None,
        sets: DrillSets::usual(thread.form()),
        taper_reamer: false,
    };
    let drill = tap_drill(&thread, &request)?;
    let request = TaperDepthRequest {
        projection_mm: None,
        drill_mm: drill.chosen.drill.diameter_mm(),
        point_angle_deg: Length::integer(118),
        bottom_clearance_mm: thread.pitch_mm().times(Length::integer(2))?,
    };
    let depths = taper_depths(&thread, &request)?;
    println!("{} x {thread}, drill {}", note.count().unwrap_or(1), drill.chosen.drill.name());
    println!("first hole  {:.3} mm, then gauge", depths.first_hole_mm.to_f64());
    println!("tap, basic  {:.3} mm = {:.2} turns", depths.tap_mm.to_f64(), depths.tap_turns.to_f64());
    println!("one turn    {:.4} mm on the diameter", depths.diameter_per_turn_mm.to_f64());
    println!("drill point {:.3} mm", depths.drill_point_mm);
    for finding in thread.findings().iter() {
        println!("{}: {}", finding.id(), finding.suggestion());
    }
    Ok(())
}
