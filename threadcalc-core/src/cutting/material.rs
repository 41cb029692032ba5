//! Cutting forces and strengths to start from, by group of material.

use super::torque::{ForceByChipArea, ForceByPitch};
use crate::engagement::StartingStrength;
use crate::named::named;

named! {
    /// A group of materials that taps alike.
    pub enum Material {
        /// Free-cutting steel up to 700 N/mm².
        FreeCuttingSteel = 1 "free_cutting_steel",
        /// Structural steel, 500 to 950 N/mm².
        StructuralSteel = 2 "structural_steel",
        /// Heat-treatable steel of medium strength, 500 to 950 N/mm².
        TemperedSteel = 3 "tempered_steel",
        /// Nitrided or tempered steel, 950 to 1400 N/mm².
        HighStrengthSteel = 4 "high_strength_steel",
        /// Tool steel, 950 to 1400 N/mm².
        ToolSteel = 5 "tool_steel",
        /// Austenitic stainless steel, 500 to 950 N/mm².
        AusteniticStainless = 6 "austenitic_stainless",
        /// Grey cast iron, 150 to 250 HB.
        GreyCastIron = 7 "grey_cast_iron",
        /// Malleable cast iron, 350 to 700 N/mm².
        MalleableCastIron = 8 "malleable_cast_iron",
        /// Copper alloy with short chips, up to 500 N/mm².
        CopperAlloy = 9 "copper_alloy",
        /// Wrought aluminium alloy.
        Aluminium = 10 "aluminium",
    }
}

impl Material {
    /// A force to start from for [`torque_by_pitch`](crate::torque_by_pitch). The tap maker's own replaces
    /// it.
    ///
    /// # Source
    /// A tap maker's published table for kc P² D / 8000; aluminium from memory of the trade.
    #[must_use]
    pub const fn force_by_pitch(self) -> ForceByPitch {
        ForceByPitch::starting(match self {
            Self::FreeCuttingSteel => 2300.0,
            Self::StructuralSteel => 2500.0,
            Self::TemperedSteel => 2600.0,
            Self::HighStrengthSteel | Self::ToolSteel => 3600.0,
            Self::AusteniticStainless => 3200.0,
            Self::GreyCastIron => 1600.0,
            Self::MalleableCastIron => 1100.0,
            Self::CopperAlloy => 720.0,
            Self::Aluminium => 700.0,
        })
    }

    /// A force to start from for [`torque_by_chip_area`](crate::torque_by_chip_area), that of one steel or
    /// iron of the group; `None` where the table has none. Which steel stands for its group is a judgement:
    /// St 44-2, Ck 45 (188 HB), 42CrMo4 (30 HRC), C105W2 (175 HB), X6CrNi18-10 (209 HB), GG-25 (193 HB).
    ///
    /// # Source
    /// A tap maker's published table for tan(theta) kc K (D − Do)² (D + 2 Do) / 24000.
    #[must_use]
    pub const fn force_by_chip_area(self) -> Option<ForceByChipArea> {
        Some(ForceByChipArea::starting(match self {
            Self::StructuralSteel => 3700.0,
            Self::TemperedSteel => 3900.0,
            Self::HighStrengthSteel => 4900.0,
            Self::ToolSteel => 5300.0,
            Self::AusteniticStainless => 4200.0,
            Self::GreyCastIron => 2900.0,
            _ => return None,
        }))
    }

    /// The tensile strength that the weakest usual material of the group has, and 0.6 of it as shear strength,
    /// which iron, austenitic steel and aluminium exceed: for the threads of a tapped part, where nothing better
    /// is known.
    ///
    /// The groups with a range stand at its lower end. Of the others: free-cutting steel 11SMn30, grey cast iron
    /// EN-GJL-150, copper alloy leaded gunmetal as cast, aluminium EN AW-5754 soft. A harder temper carries more,
    /// pure aluminium and castings of aluminium less: the material's certificate comes first.
    ///
    /// ```
    /// use threadcalc_core::Material;
    ///
    /// assert_eq!(Material::Aluminium.starting_strength().shear_mpa, 114.0);
    /// ```
    ///
    /// # Source
    /// EN 10087, EN 1561, EN 485-2 and the ranges of the groups, from memory; shear: common practice.
    #[must_use]
    pub const fn starting_strength(self) -> StartingStrength {
        let tensile_mpa = match self {
            Self::FreeCuttingSteel => 380.0,
            Self::StructuralSteel | Self::TemperedSteel | Self::AusteniticStainless => 500.0,
            Self::HighStrengthSteel | Self::ToolSteel => 950.0,
            Self::GreyCastIron => 150.0,
            Self::MalleableCastIron => 350.0,
            Self::CopperAlloy => 200.0,
            Self::Aluminium => 190.0,
        };
        StartingStrength::of_tensile(tensile_mpa, "weakest of its group, from memory; shear 0.6 of it, common practice")
    }

    /// Whether the starting forces were read in a published table; false: from memory of the trade.
    #[must_use]
    pub const fn is_read(self) -> bool {
        !matches!(self, Self::Aluminium)
    }
}
