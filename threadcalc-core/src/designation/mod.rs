//! Reading and writing thread designations.
//!
//! | form | read | written |
//! |---|---|---|
//! | metric | `M8`, `M8X1.25`, `M 8 x 1,25`, `M8×1.25`, `M8-1.25`, `MF10x1`, `M16xPh3P1.5-6H-LH` | `M8x1.25-6H` |
//! | Unified | `1/4-20`, `¼-20`, `.250-20 UNC 2B`, `1/4 UNC`, `#10-32`, `No. 10-32`, `1-1/4-7` | `1/4-20 UNC-2B` |
//! | pipe | `G1/2A`, `G ½ A`, `RC1/2`, `1/2 BSPT`, `1/4-18 NPT`, `NPT 1/4`, `14 O.D. NPT` | `G1/2A`, `1/4-18 NPT` |
//!
//! Behind size and pitch stand class, hand (`LH`, `L.H.`, `LEFT HAND`) and `2 START`, in any order. Lone
//! Latin-1 bytes (0xD7 ×, 0xBC ¼ 0xBD ½ 0xBE ¾, 0xA0) are read like their UTF-8 forms, typographic
//! dashes, quotes and blanks like the plain ones.

mod fit;
mod metric;
mod pipe;
mod read;
mod unified;
mod write;

pub use fit::read_fit;
pub(crate) use read::read;
pub(crate) use unified::unified_diameter;
pub(crate) use write::size_text;
