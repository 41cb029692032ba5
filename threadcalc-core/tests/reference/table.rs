//! One table of `tests/reference`: its head, its rows, and the comparison of a row with a result.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::path::Path;

use approx::abs_diff_eq;
use threadcalc_core::{Error, Length};

/// Columns that say something about a row and are neither input nor result.
const ABOUT: [&str; 4] = ["id", "status", "origin", "source"];

/// Why an operation has no result.
pub enum Failure {
    /// The core says so.
    Core(Error),
    /// A required input is absent, which the types of the Rust door do not let a caller write.
    ByType,
    /// What should have been refused was read as this.
    Read(String),
}

impl From<Error> for Failure {
    fn from(error: Error) -> Self {
        Self::Core(error)
    }
}

/// One result of an operation.
pub enum Got {
    /// Compared unless the cell is empty.
    Text(String),
    /// Compared always: an empty cell is "none".
    TextOrNone(String),
    /// Compared by value unless the cell is empty; None, `-` in the cell, where there is no value.
    Exact(Option<Length>),
    /// Compared within the head's tolerance unless the cell is empty; NaN, `-` in the cell, is no value.
    Double(f64),
}

/// The results of one row by column.
pub type Results = Vec<(&'static str, Got)>;

pub struct Table {
    name: String,
    heads: Vec<(String, String)>,
    columns: Vec<String>,
    rows: Vec<Vec<String>>,
    used: RefCell<BTreeSet<String>>,
}

#[derive(Clone, Copy)]
pub struct Row<'t> {
    table: &'t Table,
    cells: &'t [String],
}

impl Table {
    pub fn open(name: &str) -> Self {
        let folder = std::env::var("THREADCALC_REFERENCE")
            .unwrap_or_else(|_| String::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/reference")));
        let path = Path::new(&folder).join(format!("{name}.csv"));
        let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let cells = |line: &str| line.split(',').map(String::from).collect::<Vec<_>>();
        let (heads, body): (Vec<&str>, Vec<&str>) = text.lines().partition(|line| line.starts_with('#'));
        let head = |line: &&str| line.trim_start_matches("# ").split_once(": ").map(|(k, v)| (k.into(), v.into()));
        Self {
            name: format!("{name}.csv"),
            heads: heads.iter().filter_map(head).collect(),
            columns: cells(body[0]),
            rows: body[1..].iter().map(|line| cells(line)).collect(),
            used: RefCell::default(),
        }
    }

    /// Runs every row and panics with all that differ.
    pub fn check(&self, operation: impl Fn(Row<'_>) -> Result<Results, Failure>) {
        let (mut run, mut faults) = (0, Vec::new());
        for cells in &self.rows {
            let row = Row { table: self, cells };
            let differences = match operation(row) {
                Ok(results) => row.differences(results),
                Err(failure) => row.failure_differences(&failure),
            };
            let place = format!("{}:{}", self.name, row.cell("id"));
            faults.extend(differences.into_iter().map(|difference| format!("{place} {difference}")));
            run += 1;
        }
        assert!(faults.is_empty(), "{} differences:\n{}", faults.len(), faults.join("\n"));
        assert_eq!(run.to_string(), self.head("rows"), "{}: rows run against the head's count", self.name);
        let used = self.used.borrow();
        let ignored: Vec<_> = self.columns.iter().filter(|c| !used.contains(*c) && !ABOUT.contains(&&***c)).collect();
        assert!(ignored.is_empty(), "{}: columns that no check looks at: {ignored:?}", self.name);
    }

    fn head(&self, key: &str) -> &str {
        self.heads.iter().find(|(known, _)| known == key).map_or("", |(_, value)| value)
    }

    /// The tolerance of a column: a number, or half a unit of the decimals another column counts.
    fn tolerance(&self, column: &str, row: Row<'_>) -> f64 {
        let words = |value: &str| value.splitn(3, ' ').map(String::from).collect::<Vec<_>>();
        let lines = self.heads.iter().filter(|(key, _)| key == "tolerance").map(|(_, value)| words(value));
        let line = lines.into_iter().find(|words| words[0] == column);
        let line = line.unwrap_or_else(|| panic!("{}: no tolerance for {column}", self.name));
        line[1].parse().unwrap_or_else(|_| 0.5 * 0.1_f64.powi(row.cell(&line[1]).parse().unwrap()))
    }
}

impl<'t> Row<'t> {
    /// The cell of a column as it stands in the file.
    pub fn cell(self, column: &str) -> &'t str {
        let place = self.table.columns.iter().position(|known| known == column);
        let place = place.unwrap_or_else(|| panic!("{}: no column {column}", self.table.name));
        self.table.used.borrow_mut().insert(column.into());
        &self.cells[place]
    }

    /// The bytes a cell stands for: `\xHH` is one byte.
    pub fn bytes(self, column: &str) -> Vec<u8> {
        let mut parts = self.cell(column).split("\\x");
        let mut bytes = parts.next().unwrap_or("").as_bytes().to_vec();
        for part in parts {
            bytes.push(u8::from_str_radix(&part[..2], 16).unwrap());
            bytes.extend_from_slice(&part.as_bytes()[2..]);
        }
        bytes
    }

    /// A cell that the Rust door cannot leave out.
    pub fn required(self, column: &str) -> Result<&'t str, Failure> {
        let cell = self.cell(column);
        if cell.is_empty() { Err(Failure::ByType) } else { Ok(cell) }
    }

    fn failure_differences(self, failure: &Failure) -> Vec<String> {
        let (code, at) = match failure {
            Failure::Core(error) => (error.code().name(), error.at()),
            Failure::ByType => ("missing", None),
            Failure::Read(text) => return vec![format!("want {} got {text}", self.cell("status"))],
        };
        let mut differences = Vec::new();
        if self.cell("status") != code {
            let detail = if let Failure::Core(error) = failure { error.to_string() } else { String::new() };
            differences.push(format!("want {} got {code} ({detail})", self.cell("status")));
        }
        if self.table.columns.iter().any(|column| column == "at") {
            let want = self.cell("at");
            let got = at.map(|at| at.to_string()).unwrap_or_default();
            if !want.is_empty() && want != got {
                differences.push(format!("at: want {want} got {got}"));
            }
        }
        differences
    }

    fn differences(self, results: Results) -> Vec<String> {
        if self.cell("status") != "ok" {
            return vec![format!("want {} got a result", self.cell("status"))];
        }
        results.into_iter().filter_map(|(column, got)| self.difference(column, got)).collect()
    }

    fn difference(self, column: &str, got: Got) -> Option<String> {
        let want = self.cell(column);
        let (same, shown) = match got {
            Got::TextOrNone(got) => (want == got, got),
            _ if want.is_empty() => return None,
            Got::Text(got) => (want == got, got),
            Got::Exact(got) if want == "-" => (got.is_none(), format!("{got:?}")),
            Got::Double(got) if want == "-" => (got.is_nan(), got.to_string()),
            Got::Exact(got) => (got.is_some_and(|got| equals(want, got)), format!("{got:?}")),
            Got::Double(got) => {
                let tolerance = self.table.tolerance(column, self);
                (abs_diff_eq!(want.parse::<f64>().unwrap(), got, epsilon = tolerance), got.to_string())
            }
        };
        (!same).then(|| format!("{column}: want {want} got {shown}"))
    }
}

/// Whether a cell, decimal or fraction, is this value; read here without the library's own reader.
fn equals(cell: &str, value: Length) -> bool {
    let (top, bottom) = cell.split_once('/').unwrap_or((cell, "1"));
    let (whole, behind) = top.split_once('.').unwrap_or((top, ""));
    let units: i128 = format!("{whole}{behind}").parse().unwrap();
    let parts = 10_i128.pow(behind.len() as u32) * bottom.parse::<i128>().unwrap();
    units * i128::from(value.denominator()) == i128::from(value.numerator()) * parts
}
