//! Reading and writing thread designations.
//!
//! | form | read | written |
//! |---|---|---|
//! | metric | `M8`, `M8X1.25`, `M 8 x 1,25`, `M8×1.25`, `M8-1.25`, `M8 P1.25`, `MF10x1`, `M16xPh3P1.5-6H-LH`, `M16x3(P1.5)` | `M8x1.25-6H` |
//! | Unified | `1/4-20`, `¼-20`, `.250-20 UNC 2B`, `1/4 UNC`, `UNC 1/4-20`, `#10-32`, `No. 10 (.190)-32`, `1-1/4-7` | `1/4-20 UNC-2B` |
//! | MJ, S, Tr | `MJ6`, `MJ 6 X 1-4H5H`, `S 0,8`, `TR40X7 LH`, `Tr 40 x 14 (P7)` | `MJ6x1-4H5H`, `S0.8`, `Tr40x14P7-LH` |
//! | UNR, UNJ | `1/4 UNRC`, `UNJF 1/4-28 3B` | `1/4-20 UNRC`, `1/4-28 UNJF-3B` |
//! | ACME, buttress | `1 1/2-4 ACME-2G`, `ACME 1 1/2-4`, `STUB ACME 1-5`, `2.5-8 BUTT-2A`, `PULL-BUTT` | `1.500-4-ACME-2G`, `1.000-5 STUB ACME`, `2.500-8 BUTT-2A` |
//! | Whitworth, BA | `1/2 BSW`, `BSF 3/8`, `W1/2`, `1/2-20 WHIT`, `2BA`, `No. 4 B.A.` | `1/2-12 BSW`, `1/2-20 Whit.`, `2 BA` |
//! | wire inserts | `STI M8`, `M8x1.25-5H STI`, `EG M8`, `1/4-20 UNC-2B STI` | `M8x1.25-5H STI` |
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
