//! A measured row, its budget, and how it is shown.

use serde::Serialize;

/// The row of an entry on a disk that is no quicker than flash.
pub const SLOW_DISK: &str = "one confirmed entry against one INSERT, a sync taking 1 ms more";

/// The budgets: a row's name and the most it may be.
const BUDGETS: &[(&str, f64)] = &[
    ("opening and round, 50 years against 1", 1.2),
    // Three databases are opened, the rows decoded, and 200 trays forecast and
    // judged; a SELECT does none of it.
    ("opening and round against SELECT of the living rows", 20.0),
    (SLOW_DISK, 1.3),
    ("taking in 100,000 entries against a bulk INSERT", 2.0),
    ("the slowest search of 50 years, ms", 100.0),
    ("10,000 verdicts against NumPy and SciPy", 0.1),
    // An empty window has no script to read, no journal and nothing to draw.
    ("cold start to the picture against an empty window's", 2.0),
    // SQLite, PDF and fonts, pictures, archives, the message bus: an empty app
    // has none of them, and the packages alone are twice what it weighs.
    ("release binary against an empty app's", 5.5),
    ("UI bundle at the start, kB gzip", 80.0),
    ("a tap to its picture, ms", 100.0),
    ("a key in the seed box to its picture, ms", 100.0),
    ("exponent of the round's cost against living sowings", 1.1),
    ("exponent of the round's cost against years", 0.1),
    (
        "a market grower's round, a living sowing, against a year's",
        1.2,
    ),
];

/// A row of the table.
#[derive(Debug, Serialize)]
pub struct Row {
    name: String,
    /// The median of the runs.
    ratio: f64,
    /// The most it may be; none where it is only told.
    budget: Option<f64>,
    runs: usize,
    /// Between the lowest and the highest run.
    spread: [f64; 2],
    note: String,
}

fn budget(name: &str) -> Option<f64> {
    let found = BUDGETS.iter().find(|(of, _)| *of == name);
    found.map(|(_, most)| *most)
}

impl Row {
    /// A row from its runs.
    ///
    /// # Errors
    /// When there is no run, or one is not a number.
    pub fn new(name: &str, mut ratios: Vec<f64>, note: String) -> Result<Self, String> {
        ratios.sort_by(f64::total_cmp);
        let (Some(low), Some(high)) = (ratios.first(), ratios.last()) else {
            return Err(format!("{name}: nothing was measured"));
        };
        if !ratios.iter().all(|ratio| ratio.is_finite()) {
            return Err(format!("{name}: not a number among {ratios:?}"));
        }
        Ok(Self {
            name: name.to_owned(),
            ratio: ratios.get(ratios.len() / 2).copied().unwrap_or(*low),
            budget: budget(name),
            runs: ratios.len(),
            spread: [*low, *high],
            note,
        })
    }

    /// The same under another name, with the budget of that.
    pub fn named(self, name: &str) -> Self {
        Self {
            name: name.to_owned(),
            budget: budget(name),
            ..self
        }
    }

    /// Whether it is inside its budget.
    pub fn holds(&self) -> bool {
        self.budget.is_none_or(|most| self.ratio <= most)
    }

    /// What it came to, in short.
    pub fn line(&self) -> String {
        let [name, measured, most, held, ..] = self.cells();
        format!("  {measured} of {most}  {held}  {name}")
    }

    fn cells(&self) -> [String; 6] {
        let [low, high] = self.spread;
        [
            self.name.clone(),
            figure(self.ratio),
            self.budget.map_or_else(|| "-".to_owned(), figure),
            if self.holds() { "inside" } else { "OVER" }.to_owned(),
            format!("{} to {}, {} runs", figure(low), figure(high), self.runs),
            self.note.clone(),
        ]
    }
}

const HEAD: [&str; 6] = ["what", "measured", "at most", "", "spread", "how"];

/// Three figures that count.
fn figure(value: f64) -> String {
    let decimals = match value.abs() {
        size if size >= 100.0 => 0,
        size if size >= 10.0 => 1,
        size if size >= 0.995 => 2,
        _ => 3,
    };
    format!("{value:.decimals$}")
}

/// A table for the terminal.
pub fn table(rows: &[Row]) -> String {
    let mut lines = vec![HEAD.map(str::to_owned)];
    lines.extend(rows.iter().map(Row::cells));
    let width = |column: usize| {
        let widths = lines.iter().filter_map(|line| line.get(column));
        widths.map(|cell| cell.chars().count()).max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..HEAD.len()).map(width).collect();
    let line = |cells: &[String; 6]| {
        let padded = cells.iter().zip(&widths);
        let padded = padded.map(|(cell, width)| format!("{cell:<width$}"));
        padded.collect::<Vec<_>>().join("  ").trim_end().to_owned()
    };
    lines.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// All rows as one JSON array.
///
/// # Errors
/// When they cannot be written so.
pub fn json(rows: &[Row]) -> Result<String, String> {
    serde_json::to_string_pretty(rows).map_err(|e| e.to_string())
}

/// The page for readers.
pub fn page(intro: &str, rows: &[Row]) -> String {
    let mut page = intro.to_owned();
    let line = |cells: [String; 6]| format!("| {} |\n", cells.join(" | "));
    page += &line(HEAD.map(str::to_owned));
    page += &line(HEAD.map(|_| "---".to_owned()));
    for row in rows {
        page += &line(row.cells());
    }
    page
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(name: &str, ratios: &[f64]) -> Row {
        Row::new(name, ratios.to_vec(), String::new()).unwrap()
    }

    #[test]
    fn a_row_is_held_to_its_budget_by_its_median() {
        let name = SLOW_DISK;
        assert!(row(name, &[1.2, 9.0, 1.3]).holds());
        assert!(!row(name, &[1.31, 1.0, 1.4]).holds());
        assert!(row("memory, of an empty app's", &[99.0]).holds());
    }

    #[test]
    fn under_another_name_it_has_the_budget_of_that() {
        assert!(row("x", &[1.4]).holds());
        assert!(!row("x", &[1.4]).named(SLOW_DISK).holds());
    }

    #[test]
    fn nothing_measured_is_an_error() {
        assert!(Row::new("x", vec![], String::new()).is_err());
        assert!(Row::new("x", vec![f64::NAN], String::new()).is_err());
    }

    #[test]
    fn the_page_has_a_line_a_row() {
        let rows = [row("a", &[1.0]), row("b", &[0.05])];
        assert_eq!(
            page("", &rows)
                .lines()
                .filter(|it| it.starts_with("| "))
                .count(),
            4
        );
        assert!(table(&rows).contains("0.050"));
    }
}
