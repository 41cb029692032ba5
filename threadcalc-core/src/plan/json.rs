//! A plan as data: exact values as text, derived ones as numbers, what is not given as null.

use serde::ser::{Error as _, Serialize, SerializeStruct, Serializer};

use super::{CardRow, Job, Machine, Plan, SCHEMA, Screw};
use crate::cutting::Gear;
use crate::cycle::Cycle;
use crate::drill::{Drill, DrillSet, OwnDrills, TapDrill};
use crate::feed::Feed;
use crate::json::{Array, Shown, serialize_fields};
use crate::limits::Limits;
use crate::thread::Thread;
use crate::tolerance_class::ToleranceClass;

impl Serialize for ToleranceClass {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.text().as_str())
    }
}

impl Serialize for Thread {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Thread",
            "designation": Shown(self),
            "form": self.form(),
            "series": self.series(),
            "is_standard": self.is_standard(),
            "wire_insert": self.is_wire_insert(),
            "size": self.size(),
            "nominal_mm": self.nominal_mm(),
            "major_mm": self.major_mm(),
            "pitch_mm": self.pitch_mm(),
            "lead_mm": self.lead_mm(),
            "starts": self.starts(),
            "hand": self.hand(),
            "taper_on_diameter": self.taper_on_diameter(),
            "side": self.side(),
            "tolerance_class": self.tolerance_class(),
            "written_as": self.written_as(),
        )
    }
}

impl Serialize for Limits {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Limits",
            "major_mm": self.major_mm,
            "pitch_diameter_mm": self.pitch_diameter_mm,
            "minor_mm": self.minor_mm,
            "native_unit": self.native_unit,
            "decimals": self.decimals,
            "source": self.source,
            "confidence": self.confidence,
        )
    }
}

impl Serialize for Feed {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Feed",
            "word": self.word(),
            "text": self.text(),
            "value": self.value().map_err(S::Error::custom)?,
            "exact": self.exact().map_err(S::Error::custom)?,
            "lead_error": self.lead_error().map_err(S::Error::custom)?,
        )
    }
}

impl Serialize for CardRow {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "CardRow",
            "rpm": self.rpm,
            "word": self.feed.word(),
            "exact": self.exact,
            "planned": self.planned,
        )
    }
}

impl Serialize for TapDrill {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "TapDrill",
            "drill": self.chosen.drill,
            "percent": self.chosen.percent,
            "basis": self.basis,
            "within_limits": self.chosen.within_limits,
            "left_to_limit_mm": self.chosen.left_to_limit_mm,
            "alternatives": Array(self.alternatives.iter().flatten()),
            "probable": self.probable,
        )
    }
}

impl Serialize for Machine {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Machine",
            "highest_rpm": self.highest_rpm,
            "lowest_rpm": self.lowest_rpm,
            "speed_step": self.speed_step,
            "axis_feed_limit_mm_min": self.axis_feed_limit_mm_min,
            "acceleration_rpm_s": self.acceleration_rpm_s,
            "retract_factor": self.retract_factor,
            "least_clearance_turns": self.least_clearance_turns,
            "gears": Array(self.gears.iter().flatten().map(Numbers)),
        )
    }
}

/// A gear as a job takes it: lowest and highest speed, then pairs of speed and torque.
struct Numbers<'a>(&'a Gear);

impl Serialize for Numbers<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeSeq;
        let mut list = serializer.serialize_seq(None)?;
        list.serialize_element(&self.0.lowest_rpm())?;
        list.serialize_element(&self.0.highest_rpm())?;
        let several = self.0.points().nth(1).is_some();
        for point in self.0.points() {
            if several {
                list.serialize_element(&point.rpm)?;
            }
            list.serialize_element(&point.torque_nm)?;
        }
        list.end()
    }
}

/// A list of drills as a job takes it: names, and "2 in" for a name that is a whole number.
struct Drills<'a>(&'a OwnDrills);

impl Serialize for Drills<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.iter().map(|drill| Shown(Named(drill))))
    }
}

struct Named(Drill);

impl core::fmt::Display for Named {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let whole_inches = self.0.set() == Some(DrillSet::Fractional) && self.0.name().as_str().parse::<u8>().is_ok();
        write!(f, "{}{}", self.0.name(), if whole_inches { " in" } else { "" })
    }
}

impl Serialize for Screw {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Screw",
            "tolerance_class": self.tolerance_class,
            "property_class": self.property_class,
            "tensile_mpa": self.tensile_mpa,
            "shear_mpa": self.shear_mpa,
            "engagement_mm": self.engagement_mm,
            "load_n": self.load_n,
        )
    }
}

impl Serialize for Job {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Job",
            "schema": SCHEMA,
            "thread": self.thread.map(Shown),
            "unit": self.unit,
            "mode": self.mode,
            "decimals": self.decimals,
            "rpm": self.rpm,
            "surface_speed_m_min": self.surface_speed_m_min,
            "surface_speed_ft_min": self.surface_speed_ft_min,
            "hole": self.hole,
            "full_thread_depth_mm": self.full_thread_depth_mm,
            "tap": self.tap,
            "tap_kind": self.tap_kind,
            "tap_mark": self.tap_mark,
            "chamfer_threads": self.chamfer_threads,
            "chamfer_form": self.chamfer_form,
            "tap_set_on": self.tap_set_on,
            "tap_centre_mm": self.tap_centre_mm,
            "projection_mm": self.projection_mm,
            "holder": self.holder,
            "holder_extension_mm": self.holder_extension_mm,
            "holder_compression_mm": self.holder_compression_mm,
            "underfeed_percent": self.underfeed_percent,
            "over_travel_turns": self.over_travel_turns,
            "drill_sets": Array(DrillSet::ALL.iter().filter(|set| self.drill_sets.holds(**set))),
            "drill_list": Drills(&self.drill_list),
            "oversize_mm": self.oversize_mm,
            "drill_mm": self.drill_mm,
            "taper_reamer": self.taper_reamer,
            "percent": self.percent,
            "basis": self.basis,
            "point_angle_deg": self.point_angle_deg,
            "bottom_clearance_mm": self.bottom_clearance_mm,
            "drill_depth_mm": self.drill_depth_mm,
            "part_thickness_mm": self.part_thickness_mm,
            "countersink_mm": self.countersink_mm,
            "countersink_angle_deg": self.countersink_angle_deg,
            "r_plane_mm": self.r_plane_mm,
            "peck_mm": self.peck_mm,
            "dwell_s": self.dwell_s,
            "return_to": self.return_to,
            "coating_um": self.coating_um,
            "material": self.material,
            "cutting_force_n_mm2": self.cutting_force_n_mm2,
            "part_shear_mpa": self.part_shear_mpa,
            "screw": self.screw,
            "hole_count": self.hole_count,
            "machine": self.machine,
            "dialect": self.dialect,
        )
    }
}

impl Serialize for Plan {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let cycle: &Cycle = &self.cycle;
        let mut fields = serializer.serialize_struct("Plan", 29)?;
        fields.serialize_field("schema", &SCHEMA)?;
        fields.serialize_field("thread", &self.thread)?;
        fields.serialize_field("profile", &self.profile)?;
        fields.serialize_field("limits", &self.limits)?;
        fields.serialize_field("drill", &self.drill)?;
        fields.serialize_field("asked_rpm", &self.asked_rpm)?;
        fields.serialize_field("programmed_rpm", &self.programmed_rpm)?;
        fields.serialize_field("feed", &self.feed)?;
        fields.serialize_field("lead_cut_mm", &self.lead_cut_mm)?;
        fields.serialize_field("axial_error_mm", &self.axial_error_mm)?;
        fields.serialize_field("card", &Array(self.card.iter().flatten()))?;
        fields.serialize_field("depths", &self.depths)?;
        fields.serialize_field("taper", &self.taper)?;
        fields.serialize_field("countersink", &self.countersink)?;
        fields.serialize_field("spindle", &self.spindle)?;
        fields.serialize_field("tap_class", &self.tap_class)?;
        fields.serialize_field("tap_limit", &self.tap_limit)?;
        fields.serialize_field("joint", &self.joint)?;
        fields.serialize_field("gauges", &self.gauges)?;
        fields.serialize_field("formed_minor_mm", &self.formed_minor_mm)?;
        fields.serialize_field("not_go", &self.not_go)?;
        fields.serialize_field("words", &Words(cycle))?;
        fields.serialize_field("blocks", &Blocks(cycle))?;
        fields.serialize_field("restore", &Restore(cycle))?;
        fields.serialize_field("withheld", &Array(self.withheld.iter().flatten()))?;
        fields.serialize_field("findings", &self.findings)?;
        fields.serialize_field("not_checked", &Array(self.not_checked()))?;
        fields.serialize_field("sources", &Array(self.sources()))?;
        fields.serialize_field("job", &self.job)?;
        fields.end()
    }
}

struct Words<'a>(&'a Cycle);
struct Blocks<'a>(&'a Cycle);
struct Restore<'a>(&'a Cycle);

impl Serialize for Words<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.words())
    }
}

impl Serialize for Blocks<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.blocks())
    }
}

impl Serialize for Restore<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.restore())
    }
}
