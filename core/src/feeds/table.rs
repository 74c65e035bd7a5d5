//! Tables of values with their sources, compiled in.
//!
//! Takes CSV text with a header; gives typed rows, or the line that cannot be read. Never repairs a row.

use crate::ids;
use serde::de::DeserializeOwned;

ids!(/// How sure a value is, by where it comes from.
    Sure {
    /// Read in the source named.
    Read = "read",
    /// Reckoned from values that were read.
    Derived = "derived",
    /// A mixture of foods that were read, in shares of our choice.
    Mix = "mix",
    /// Quoted by a page that was read; the source itself was not opened.
    Secondary = "secondary",
    /// Recalled, source named or not, not opened again.
    Memory = "memory",
    /// Our estimate, because nothing else was found.
    Estimate = "estimate",
});

impl Sure {
    /// Standard deviation of the natural logarithm that a composition of this sureness carries.
    ///
    /// Source: our choice, because one kitchen's rice or one cow's dung differs from the table's by about so much.
    pub const fn spread(self) -> f64 {
        match self {
            Sure::Read => 0.10,
            Sure::Derived | Sure::Secondary => 0.15,
            Sure::Mix | Sure::Memory => 0.20,
            Sure::Estimate => 0.30,
        }
    }
}

/// A compiled-in table does not read as what it should be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum TableError {
    #[error("{table}, line {line}: {why}")]
    Row { table: &'static str, line: u64, why: String },
    #[error("{table}: {row} is missing")]
    Missing { table: &'static str, row: String },
    #[error("{table}: {row} stands there twice")]
    Twice { table: &'static str, row: String },
    #[error("{table}: {row} is read by nothing")]
    Unused { table: &'static str, row: String },
    #[error("{table}: {row}: {quantity} {value} is not between {least} and {most}")]
    Value { table: &'static str, row: String, quantity: &'static str, value: f64, least: f64, most: f64 },
}

/// All rows of a table.
///
/// Errors: [`TableError::Row`] names the first line that does not fit `T`.
pub fn rows<T: DeserializeOwned>(table: &'static str, text: &str) -> Result<Vec<T>, TableError> {
    csv::Reader::from_reader(text.as_bytes())
        .deserialize()
        .map(|row| {
            row.map_err(|error: csv::Error| TableError::Row {
                table,
                line: error.position().map_or(0, csv::Position::line),
                why: error.to_string(),
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[derive(Debug, PartialEq, serde::Deserialize)]
    struct Row {
        name: String,
        sure: Sure,
        value: Option<f64>,
    }

    #[test]
    fn rows_read_typed_and_a_bad_one_is_named_by_its_line() {
        let good: Vec<Row> = rows("t", "name,sure,value\na,read,1.5\nb,memory,\n").unwrap();
        assert_eq!(good[1], Row { name: "b".into(), sure: Sure::Memory, value: None });
        let bad = rows::<Row>("t", "name,sure,value\na,read,1.5\nb,certain,2\n");
        assert!(matches!(bad, Err(TableError::Row { table: "t", line: 3, .. })), "{bad:?}");
    }
}
