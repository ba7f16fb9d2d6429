//! The method as the page shows it: numbers as digits, sources by id.

use super::record::records;
use crate::method::{Chapter, Formula, Table, Term, chapters, digits};
use crate::source::{SOURCES, Source};

records! {
    /// A symbol or figure of a formula.
    pub struct TermLine {
        /// The symbol; empty of a figure that stands beside the formula.
        pub symbol: &'static str,
        /// What it means.
        pub means: &'static str,
        /// The unit.
        pub unit: &'static str,
        /// The low end, the likely value and the high end; none of what is given.
        pub figure: Option<Vec<String>>,
        /// Where the figure comes from.
        pub sources: Vec<&'static str>,
    }

    /// A number of an example.
    pub struct GivenLine {
        /// The symbol.
        pub symbol: &'static str,
        /// The number.
        pub value: String,
        /// The unit.
        pub unit: &'static str,
    }

    /// An example of a formula.
    pub struct ExampleLine {
        /// What is given.
        pub given: Vec<GivenLine>,
        /// What it comes to.
        pub gives: GivenLine,
    }

    /// A formula.
    pub struct FormulaLine {
        /// Its id.
        pub id: &'static str,
        /// What it gives.
        pub gives: &'static str,
        /// The formula in words.
        pub words: &'static str,
        /// Its equations.
        pub symbols: Vec<&'static str>,
        /// Its symbols and figures.
        pub terms: Vec<TermLine>,
        /// All that it rests on.
        pub sources: Vec<&'static str>,
        /// Where it is used.
        pub used: &'static str,
        /// An example.
        pub example: Option<ExampleLine>,
    }

    /// A table of figures.
    pub struct TableLine {
        /// Its id.
        pub id: &'static str,
        /// What it shows.
        pub caption: &'static str,
        /// The heads of its columns.
        pub heads: Vec<&'static str>,
        /// Its rows.
        pub rows: Vec<Vec<String>>,
        /// What it rests on.
        pub sources: Vec<&'static str>,
    }

    /// Something said without a formula.
    pub struct NoteLine {
        /// What it is about.
        pub about: &'static str,
        /// What is said.
        pub says: &'static str,
        /// What it rests on.
        pub sources: Vec<&'static str>,
    }

    /// A source.
    pub struct MethodSource {
        /// Its id.
        pub id: &'static str,
        /// Author, title, edition, page or table.
        pub title: &'static str,
        /// How its figures were obtained.
        pub obtained: &'static str,
    }

    /// All of it.
    pub struct Method {
        /// The chapters, in the order they are read.
        pub chapters: Vec<ChapterLine>,
        /// Every source, in the order of the table.
        pub sources: Vec<MethodSource>,
    }

    /// A chapter.
    pub struct ChapterLine {
        /// Its id.
        pub id: &'static str,
        /// Its title.
        pub title: &'static str,
        /// What it is about.
        pub about: &'static str,
        /// Its formulas.
        pub formulas: Vec<FormulaLine>,
        /// Its tables.
        pub tables: Vec<TableLine>,
        /// What is said without a formula.
        pub notes: Vec<NoteLine>,
    }
}

fn ids(sources: &[Source]) -> Vec<&'static str> {
    sources.iter().map(|source| source.id).collect()
}

/// Five digits: what an example comes to, beside numbers that were typed.
fn rounded(value: f64) -> String {
    digits(format!("{value:.4e}").parse().unwrap_or(value))
}

fn term(term: &Term) -> TermLine {
    TermLine {
        symbol: term.symbol,
        means: term.means,
        unit: term.unit.symbol,
        figure: term.ends().map(|ends| ends.map(digits).to_vec()),
        sources: ids(term.sources),
    }
}

fn formula(formula: &Formula) -> FormulaLine {
    let unit =
        |symbol: &str| formula.terms.iter().find(|term| term.symbol == symbol).map_or("", |term| term.unit.symbol);
    let symbols: Vec<&'static str> = formula.symbols.lines().collect();
    let result = symbols.last().and_then(|line| line.split(" = ").next()).unwrap_or_default();
    let example = formula.example.as_ref().map(|example| {
        let mut given = Vec::new();
        for (symbol, value) in &example.given.0 {
            given.push(GivenLine { symbol, value: rounded(*value), unit: unit(symbol) });
        }
        ExampleLine {
            given,
            gives: GivenLine { symbol: result, value: rounded(example.gives), unit: formula.unit.symbol },
        }
    });
    FormulaLine {
        id: formula.id,
        gives: formula.gives,
        words: formula.words,
        symbols,
        terms: formula.terms.iter().map(term).collect(),
        sources: ids(&formula.sources()),
        used: formula.used,
        example,
    }
}

fn table(table: &Table) -> TableLine {
    let Table { id, caption, heads, rows, sources } = table.clone();
    TableLine { id, caption, heads, rows, sources: ids(&sources) }
}

fn chapter(chapter: &Chapter) -> ChapterLine {
    let note = |note: &crate::method::Note| NoteLine { about: note.about, says: note.says, sources: ids(note.sources) };
    ChapterLine {
        id: chapter.id,
        title: chapter.title,
        about: chapter.about,
        formulas: chapter.formulas.iter().map(formula).collect(),
        tables: chapter.tables.iter().map(table).collect(),
        notes: chapter.notes.iter().map(note).collect(),
    }
}

/// How it is reckoned.
#[must_use]
pub fn method() -> Method {
    let source =
        |source: &Source| MethodSource { id: source.id, title: source.title, obtained: source.obtained.words() };
    Method { chapters: chapters().iter().map(chapter).collect(), sources: SOURCES.iter().map(source).collect() }
}
