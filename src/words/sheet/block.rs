//! A piece of a sheet.

use crate::words::record::records;

records! {
    /// A piece of a sheet.
    pub struct Block {
        /// `verdict`, `paragraph`, `list`, `steps`, `blanks` or `table`.
        pub kind: &'static str,
        /// The paragraph, or what leads in.
        pub text: String,
        /// The items of a list, steps in order, or lines with blanks (`____________`) to fill in.
        pub items: Vec<String>,
        /// The rows of a table; the first is its head.
        pub rows: Vec<Vec<String>>,
    }
}

impl Block {
    pub(super) fn paragraph(text: &str) -> Self {
        Self { kind: "paragraph", text: text.to_owned(), items: Vec::new(), rows: Vec::new() }
    }

    pub(super) fn verdict(text: &str) -> Self {
        Self { kind: "verdict", ..Self::paragraph(text) }
    }

    pub(super) fn list(text: &str, items: Vec<String>) -> Self {
        Self { kind: "list", text: text.to_owned(), items, rows: Vec::new() }
    }

    pub(super) fn steps(text: &str, items: Vec<String>) -> Self {
        Self { kind: "steps", ..Self::list(text, items) }
    }

    pub(super) fn blanks(items: Vec<String>) -> Self {
        Self { kind: "blanks", ..Self::list("", items) }
    }

    /// A table without the columns in which nothing stands; none without a row.
    pub(super) fn table(text: &str, head: &[&str], lines: &[Vec<String>]) -> Self {
        let mut rows = vec![Vec::new()];
        rows.resize(if lines.is_empty() { 0 } else { lines.len() + 1 }, Vec::new());
        for (column, name) in head.iter().enumerate() {
            if lines.iter().all(|line| line.get(column).is_none_or(String::is_empty)) {
                continue;
            }
            for (at, row) in rows.iter_mut().enumerate() {
                let cell = if at == 0 { None } else { lines.get(at - 1).and_then(|line| line.get(column)) };
                row.push(cell.map_or(if at == 0 { *name } else { "" }, String::as_str).to_owned());
            }
        }
        Self { kind: "table", rows, ..Self::paragraph(text) }
    }
}
