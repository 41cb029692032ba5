//! Reading and writing thread designations.
//!
//! | form | read | written |
//! |---|---|---|
//! | metric | `M8`, `M8X1.25`, `M 8 x 1,25`, `M8×1.25`, `MF10x1`, `M16xPh3P1.5-6H-LH` | `M8x1.25-6H` |
//! | Unified | `1/4-20`, `.250-20 UNC 2B`, `#10-32`, `No. 10-32`, `1-1/4-7`, `2-4 1/2 UNC` | `1/4-20 UNC-2B` |
//!
//! Lone bytes 0xD7 and 0xD8 (Latin-1 × and Ø) are read like their UTF-8 forms.

mod metric;
mod read;
mod unified;
mod write;

pub(crate) use read::read;
pub(crate) use unified::unified_diameter;
pub(crate) use write::size_text;
