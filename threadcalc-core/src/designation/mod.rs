//! Reading and writing thread designations.
//!
//! | form | read | written |
//! |---|---|---|
//! | metric | `M8`, `M8X1.25`, `M 8 x 1,25`, `M8×1.25`, `M8-1.25`, `M8 P1.25`, `MF10x1`, `M16xPh3P1.5-6H-LH`, `M16x3(P1.5)` | `M8x1.25-6H` |
//! | Unified | `1/4-20`, `¼-20`, `.250-20 UNC 2B`, `1/4 UNC`, `UNC 1/4-20`, `#10-32`, `No. 10 (.190)-32`, `1-1/4-7` | `1/4-20 UNC-2B` |
//! | pipe | `G1/2A`, `G ½ A`, `RC1/2`, `1/2 BSPT`, `1/4-18 NPT`, `NPT 1/4`, `N.P.T.`, `14 O.D. NPT` | `G1/2A`, `1/4-18 NPT` |
//!
//! Behind size and pitch stand class, hand (`LH`, `L.H.`, `LEFT HAND`) and `2 START`, in any order, also in
//! brackets; the hand may stand first. Lone Latin-1 bytes (0xD7 ×, 0xBC ¼ 0xBD ½ 0xBE ¾, 0xA0) are read like
//! their UTF-8 forms, typographic dashes, quotes and blanks like the plain ones. Every way there is a test of
//! stands in `tests/reference/written_form.csv`, what is refused and where in `bad_designation.csv`.

mod fit;
mod inch;
mod metric;
mod pipe;
mod read;
mod unified;
mod unified_size;
mod write;

pub use fit::read_fit;
pub(crate) use read::read;
pub(crate) use unified_size::unified_diameter;
pub(crate) use write::size_text;
