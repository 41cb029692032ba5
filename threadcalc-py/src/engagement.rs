//! What a screw and a tapped hole carry together.

use pyo3::prelude::*;
use threadcalc_core::{self as core, EngagementRequest, Field, Length, Material, PropertyClass};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{double, exact, optional_double_of, optional_exact};
use crate::text::choose;
use crate::thread::Thread;

answer! {
    /// What a fit carries.
    Engagement(core::Engagement) {
        /// Tensile stress area of the screw.
        tensile_area_mm2,
        /// Shear area of the threads in the hole.
        internal_shear_area_mm2,
        /// Shear area of the screw's threads.
        external_shear_area_mm2,
        /// Load that breaks the screw.
        tensile_load_n,
        /// Load that strips the hole.
        internal_strip_load_n,
        /// Load that strips the screw.
        external_strip_load_n,
        /// What gives way first.
        weakest,
        /// The length of engagement at which the weaker thread carries the screw's tensile load.
        required_length_mm,
        /// Strip load of the screw's threads over that of the hole's.
        strip_ratio,
        /// The weakest part's load over the load given.
        safety_factor,
    }
}

/// What a screw and a tapped hole carry together.
#[pyfunction]
#[pyo3(
    signature = (internal, external, length_mm, *, internal_shear_mpa, external_shear_mpa, external_tensile_mpa,
        without_full_thread_mm=None, drilled_mm=None, load_n=None),
    text_signature = "(internal, external, length_mm, *, internal_shear_mpa, external_shear_mpa, external_tensile_mpa, without_full_thread_mm=0, drilled_mm=None, load_n=None)"
)]
#[expect(clippy::too_many_arguments, reason = "keywords in Python, so that none is mistaken for another")]
pub fn engagement(
    internal: &Bound<'_, Thread>,
    external: &Bound<'_, Thread>,
    length_mm: &Bound<'_, PyAny>,
    internal_shear_mpa: &Bound<'_, PyAny>,
    external_shear_mpa: &Bound<'_, PyAny>,
    external_tensile_mpa: &Bound<'_, PyAny>,
    without_full_thread_mm: Option<&Bound<'_, PyAny>>,
    drilled_mm: Option<&Bound<'_, PyAny>>,
    load_n: Option<&Bound<'_, PyAny>>,
) -> PyResult<Engagement> {
    let request = EngagementRequest {
        length_mm: exact(length_mm, Field::EngagementLength)?,
        without_full_thread_mm: optional_exact(without_full_thread_mm, Field::WithoutFullThread)?
            .unwrap_or(Length::ZERO),
        internal_shear_mpa: double(internal_shear_mpa, Field::InternalShear)?,
        external_shear_mpa: double(external_shear_mpa, Field::ExternalShear)?,
        external_tensile_mpa: double(external_tensile_mpa, Field::ExternalTensile)?,
        drilled_mm: optional_exact(drilled_mm, Field::Drilled)?,
        load_n: optional_double_of(load_n, Field::Load)?,
    };
    core::engagement(&internal.get().0, &external.get().0, &request).map(Engagement).map_err(raise)
}

answer! {
    /// Strengths to begin with.
    StartingStrength(core::StartingStrength) {
        /// Smallest tensile strength of the property class or the group of materials.
        tensile_mpa,
        /// 0.6 of it.
        shear_mpa,
        /// Where both are from.
        source,
    }
}

/// The property classes of screws.
#[pyfunction]
pub fn property_classes() -> Vec<&'static str> {
    PropertyClass::ALL.iter().map(|class| class.name()).collect()
}

/// Strengths of a screw of a property class to begin with where nothing better is known.
#[pyfunction]
#[pyo3(signature = (property_class, diameter_mm, /))]
pub fn starting_strength(
    property_class: &Bound<'_, PyAny>,
    diameter_mm: &Bound<'_, PyAny>,
) -> PyResult<StartingStrength> {
    let class: PropertyClass = choose(property_class)?;
    class.starting_strength(exact(diameter_mm, Field::Diameter)?).map(StartingStrength).map_err(raise)
}

/// Strengths of a tapped part to begin with where nothing better is known.
#[pyfunction]
#[pyo3(signature = (material, /))]
pub fn starting_part_strength(material: &Bound<'_, PyAny>) -> PyResult<StartingStrength> {
    choose::<Material>(material).map(|material| StartingStrength(material.starting_strength()))
}
