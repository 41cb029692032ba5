//! What a fit of threads carries, and the strengths to start from.

use core::ffi::c_char;
use core::mem::offset_of;

use threadcalc_core::{
    Engagement, EngagementRequest, Error, Field, Length, Material, PropertyClass, StartingStrength, engagement,
};

use crate::codes::threadcalc_status;
use crate::memory::{Request, SizedOutput, fixed_text, input, request};
use crate::number::given;
use crate::status::{given_double, guard, required, threadcalc_error_t};
use crate::tap_choices::{threadcalc_material, threadcalc_property_class, threadcalc_weakest};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// What an engagement is made of: mm, MPa = N/mm2, N. Begin with THREADCALC_ENGAGEMENT_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_engagement_request_t {
    /// sizeof(threadcalc_engagement_request_t).
    pub size: u32,
    /// 1 if there is a load, else 0 and load_n 0.
    pub load_is_given: i32,
    /// Length of engagement, incomplete threads and all. Required.
    pub length_mm: threadcalc_ratio_t,
    /// What of it has no full thread, chamfers of hole and screw and the tap's chamfer; 0/0: none.
    pub without_full_thread_mm: threadcalc_ratio_t,
    /// The hole as it was drilled; 0/0: the largest minor diameter of the internal class.
    pub drilled_mm: threadcalc_ratio_t,
    /// Shear strength of the tapped part. Required.
    pub internal_shear_mpa: f64,
    /// Shear strength of the screw. Required.
    pub external_shear_mpa: f64,
    /// Tensile strength of the screw. Required.
    pub external_tensile_mpa: f64,
    /// An axial load to be held against the weakest part.
    pub load_n: f64,
}

// SAFETY: integers and doubles only.
unsafe impl Request for threadcalc_engagement_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, load_is_given),
        offset_of!(Self, length_mm),
        offset_of!(Self, without_full_thread_mm),
        offset_of!(Self, drilled_mm),
        offset_of!(Self, internal_shear_mpa),
        offset_of!(Self, external_shear_mpa),
        offset_of!(Self, external_tensile_mpa),
        offset_of!(Self, load_n),
    ];
}

impl threadcalc_engagement_request_t {
    fn read(&self) -> Result<EngagementRequest, Error> {
        Ok(EngagementRequest {
            length_mm: self.length_mm.required(Field::EngagementLength)?,
            without_full_thread_mm: self.without_full_thread_mm.read(Field::WithoutFullThread)?.unwrap_or(Length::ZERO),
            internal_shear_mpa: self.internal_shear_mpa,
            external_shear_mpa: self.external_shear_mpa,
            external_tensile_mpa: self.external_tensile_mpa,
            drilled_mm: self.drilled_mm.read(Field::Drilled)?,
            load_n: given_double(self.load_is_given, self.load_n, Field::Load)?,
        })
    }
}

/// What a fit carries; derived. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_engagement_t {
    /// Tensile stress area of the screw.
    pub tensile_area_mm2: f64,
    /// Shear area of the threads in the hole.
    pub internal_shear_area_mm2: f64,
    /// Shear area of the screw's threads.
    pub external_shear_area_mm2: f64,
    /// Load that breaks the screw.
    pub tensile_load_n: f64,
    /// Load that strips the hole.
    pub internal_strip_load_n: f64,
    /// Load that strips the screw.
    pub external_strip_load_n: f64,
    /// The length of engagement, incomplete threads and all, at which the weaker of the two threads
    /// carries the screw's tensile load.
    pub required_length_mm: f64,
    /// Strip load of the screw's threads over that of the hole's, J; above 1 the hole strips first.
    pub strip_ratio: f64,
    /// The weakest part's load over the load given; NaN without one.
    pub safety_factor: f64,
    /// What gives way first; of equals the screw, then its threads.
    pub weakest: threadcalc_weakest,
    /// 0.
    pub reserved: i32,
}

impl threadcalc_engagement_t {
    pub(crate) fn of(found: &Engagement) -> Self {
        Self {
            tensile_area_mm2: found.tensile_area_mm2,
            internal_shear_area_mm2: found.internal_shear_area_mm2,
            external_shear_area_mm2: found.external_shear_area_mm2,
            tensile_load_n: found.tensile_load_n,
            internal_strip_load_n: found.internal_strip_load_n,
            external_strip_load_n: found.external_strip_load_n,
            required_length_mm: found.required_length_mm,
            strip_ratio: found.strip_ratio,
            safety_factor: found.safety_factor.unwrap_or(f64::NAN),
            weakest: found.weakest.number(),
            reserved: 0,
        }
    }
}

/// What a screw and a tapped hole carry together, at the limits of size that overlap least. found_size is
/// sizeof(threadcalc_engagement_t).
///
/// L = length - length without full thread; At = pi/4 ((d2 + d3)/2)^2 (M), pi/4 (D - 0.9743/n)^2 (UN);
/// ASs = pi n L D1max (1/(2n) + 0.57735 (d2min - D1max)); ASn = pi n L dmin (1/(2n) + 0.57735 (dmin - D2max));
/// loads are At x tensile strength, ASs and ASn x shear strengths; D1max is the hole as drilled if it is given.
/// Static loads along the axis that the threads share evenly: no bending, no fatigue, no temperature, no
/// torque. Structural, pressure and lifting joints belong to the engineer responsible.
/// Errors: missing, class-unset, not-sourced, contradiction (sides swapped, two different threads, classes
/// without overlap, a load without its flag), does-not-apply (another thread than M, MJ, UN, UNR and UNJ,
/// the hole of a wire insert), unknown-value (flag),
/// out-of-range (lengths up to 10 000 mm, strengths 0.000001 to 100 000 MPa, drilled hole, load), those of
/// threadcalc_thread_write, structure-size, unsupported-field.
/// Source: FED-STD-H28/2B and ASME B1.1 appendix B (shear areas, length of engagement, J); ISO 898-1 (At
/// of M); ASME B1.1 (At of UN).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_engagement(
    internal: *const threadcalc_thread_t,
    external: *const threadcalc_thread_t,
    engagement_request: *const threadcalc_engagement_request_t,
    found: *mut threadcalc_engagement_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let internal = unsafe { input(internal) }?.read()?;
        let external = unsafe { input(external) }?.read()?;
        let asked = unsafe { request(engagement_request) }?.read()?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_engagement_t::of(&engagement(&internal, &external, &asked)?));
        Ok(())
    })
}

/// Strengths to begin with where nothing better is known: never a default. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_starting_strength_t {
    /// Smallest tensile strength of the property class or the group of materials.
    pub tensile_mpa: f64,
    /// 0.6 of it.
    pub shear_mpa: f64,
    /// Where both are from.
    pub source: [c_char; 96],
}

impl threadcalc_starting_strength_t {
    fn of(strength: &StartingStrength) -> Self {
        Self { tensile_mpa: strength.tensile_mpa, shear_mpa: strength.shear_mpa, source: fixed_text(strength.source) }
    }
}

/// The smallest tensile strength of a screw of a property class and of this nominal diameter, and 0.6 of it as
/// shear strength. found_size is sizeof(threadcalc_starting_strength_t).
///
/// Class 8.8 has 800 MPa up to 16 mm and 830 MPa above; class 9.8 ends at 16 mm. A measured or specified shear
/// strength comes first.
/// Errors: missing, unknown-value, out-of-range (a diameter below 1.6 mm, above 39 mm, above 16 mm in class
/// 9.8), structure-size.
/// Source: ISO 898-1:2013 scope and table 3, from memory; shear: common practice for steel.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_starting_strength(
    property_class: threadcalc_property_class,
    diameter_mm: *const threadcalc_ratio_t,
    found: *mut threadcalc_starting_strength_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let class = required(property_class, PropertyClass::from_number, Field::ScrewProperty, PropertyClass::CHOICES)?;
        let diameter = unsafe { given(diameter_mm, Field::Diameter) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_starting_strength_t::of(&class.starting_strength(diameter)?));
        Ok(())
    })
}

/// The tensile strength that the weakest usual material of a group has, and 0.6 of it as shear strength: for the
/// threads of a tapped part. found_size is sizeof(threadcalc_starting_strength_t).
///
/// The groups with a range stand at its lower end. Of the others: free-cutting steel 11SMn30, grey cast iron
/// EN-GJL-150, copper alloy leaded gunmetal as cast, aluminium EN AW-5754 soft. Pure aluminium and castings of
/// aluminium carry less: the material's certificate comes first.
/// Errors: missing, unknown-value, structure-size.
/// Source: EN 10087, EN 1561, EN 485-2 and the ranges of the groups, from memory; shear: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_starting_part_strength(
    material: threadcalc_material,
    found: *mut threadcalc_starting_strength_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let material = required(material, Material::from_number, Field::Material, Material::CHOICES)?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_starting_strength_t::of(&material.starting_strength()));
        Ok(())
    })
}
