"""The ports of an irrigation manifold: from the hole note on the drawing to drill and depth."""

from threadcalc import read_hole_note, tap_drill, taper_depths

note = read_hole_note("6X 1/4-18 NPT")
thread = note.thread
assert thread is not None
drill = tap_drill(thread, tap="cut").drill
depths = taper_depths(
    thread, drill_mm=drill.diameter_mm, point_angle_deg=118, bottom_clearance_mm=2 * thread.pitch_mm
)
print(f"{note.count or 1} x {thread}, drill {drill.name}")
print(f"first hole  {float(depths.first_hole_mm):.3f} mm, then gauge")
print(f"tap, basic  {float(depths.tap_mm):.3f} mm = {float(depths.tap_turns):.2f} turns")
print(f"one turn    {float(depths.diameter_per_turn_mm):.4f} mm on the diameter")
print(f"drill point {depths.drill_point_mm:.3f} mm")
for finding in thread.findings:
    print(f"{finding.id}: {finding.suggestion}")
