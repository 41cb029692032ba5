//! What a finding of a program says in one line.

use core::fmt;

use super::finding::{FindingNumber, ProgramFinding, ProgramNumberKey};
use crate::text::Rounded;

/// What will happen, in one line.
#[derive(Clone, Copy, Debug)]
pub struct Message<'a>(&'a ProgramFinding);

impl<'a> Message<'a> {
    pub(super) const fn of(finding: &'a ProgramFinding) -> Self {
        Self(finding)
    }
}

/// `{name}` is a number of the finding, `{name+}` one in millimetres with the side that its sign means, `{pitch}` and
/// `{next_pitch}` are pitches as their trade writes them; what stands in `[]` is left out where a number of it is missing.
impl fmt::Display for Message<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut rest = self.0.id().message();
        while let Some((plain, behind)) = cut(rest, b'[') {
            self.part(plain, f)?;
            let (optional, behind) = cut(behind, b']').unwrap_or((behind, ""));
            if self.knows(optional) {
                self.part(optional, f)?;
            }
            rest = behind;
        }
        self.part(rest, f)
    }
}

/// What stands before the first of a mark and behind it. The search for a character of the standard library can panic.
fn cut(text: &str, mark: u8) -> Option<(&str, &str)> {
    let place = text.bytes().position(|byte| byte == mark)?;
    Some((text.get(..place)?, text.get(place.saturating_add(1)..)?))
}

impl Message<'_> {
    fn part(&self, part: &str, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut rest = part;
        while let Some((plain, behind)) = cut(rest, b'{') {
            f.write_str(plain)?;
            let (name, behind) = cut(behind, b'}').unwrap_or((behind, ""));
            self.value(name, f)?;
            rest = behind;
        }
        f.write_str(rest)
    }

    fn value(&self, name: &str, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match name {
            "reading" => f.write_str(self.0.reading()),
            "pitch" => self.pitch(ProgramNumberKey::Tpi, ProgramNumberKey::PitchMm, f),
            "next_pitch" => self.pitch(ProgramNumberKey::NextTpi, ProgramNumberKey::NextPitchMm, f),
            _ => match (self.number(name.strip_suffix("+").unwrap_or(name)), name.ends_with("+")) {
                (Some((key, FindingNumber::Double(value))), true) => {
                    write(key, libm::fabs(value), f)?;
                    f.write_str(if value < 0.0 { " mm below" } else { " mm above" })
                }
                (Some((key, FindingNumber::Double(value))), false) => write(key, value, f),
                (Some((_, FindingNumber::Text(text))), _) => f.write_str(text),
                (None, _) => f.write_str("?"),
            },
        }
    }

    /// In threads per inch, where the pitch is one of these.
    fn pitch(&self, per_inch: ProgramNumberKey, mm: ProgramNumberKey, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (key, unit) = if self.has(per_inch.name()) { (per_inch, " TPI") } else { (mm, " mm") };
        self.value(key.name(), f)?;
        f.write_str(unit)
    }

    /// Whether every number of a part is there.
    fn knows(&self, part: &str) -> bool {
        let mut rest = part;
        while let Some((name, behind)) = cut(rest, b'{').and_then(|(_, behind)| cut(behind, b'}')) {
            if !self.has(name) {
                return false;
            }
            rest = behind;
        }
        true
    }

    fn has(&self, name: &str) -> bool {
        let name = match name.strip_suffix("+").unwrap_or(name) {
            "pitch" => ProgramNumberKey::PitchMm.name(),
            "next_pitch" => ProgramNumberKey::NextPitchMm.name(),
            name => name,
        };
        self.number(name).is_some()
    }

    fn number(&self, name: &str) -> Option<(ProgramNumberKey, FindingNumber)> {
        self.0.numbers().find(|(key, _)| key.name() == name)
    }
}

/// A number with the decimals that somebody at the machine can use; a smaller one keeps its own.
fn write(key: ProgramNumberKey, value: f64, f: &mut fmt::Formatter<'_>) -> fmt::Result {
    fmt::Display::fmt(&Rounded(value, decimals(key)), f)
}

/// Leads, feeds and factors are compared by their digits; nobody measures a depth finer than a micrometre.
const fn decimals(key: ProgramNumberKey) -> u8 {
    use ProgramNumberKey as Key;
    match key {
        Key::BottomClearanceMm
        | Key::BottomClearance130DegMm
        | Key::BottomClearance140DegMm
        | Key::DrillPointMm
        | Key::DrillZMm
        | Key::FullDiameterDepthMm
        | Key::FullThreadMm
        | Key::RMm
        | Key::TapZMm
        | Key::TravelMm
        | Key::ZMm => 3,
        Key::NominalTurns | Key::Seconds | Key::TorqueNm | Key::TorqueLimitNm | Key::Turns => 2,
        Key::Percent | Key::ReachableRpm => 1,
        Key::DriftMm => 4,
        _ => 6,
    }
}
