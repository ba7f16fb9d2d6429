//! A formula, with its figures and an example.

use crate::field::Spread;
use crate::quantity::Unit;
use crate::source::Source;

/// The unit a figure is shown in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shown {
    /// Its symbol; nothing for a ratio.
    pub symbol: &'static str,
    /// What it is in SI.
    pub size: f64,
}

impl Shown {
    /// A figure without a unit.
    pub const RATIO: Self = Self::si("");

    /// A unit of SI.
    #[must_use]
    pub const fn si(symbol: &'static str) -> Self {
        Self { symbol, size: 1.0 }
    }

    /// A unit that is a power of ten of one of SI, or another exact multiple of it.
    #[must_use]
    pub const fn of(unit: &Unit) -> Self {
        Self { symbol: unit.symbol, size: unit.si(1.0) }
    }
}

/// A symbol of a formula: given, or a figure with its range; or a figure that stands beside the formula and has no symbol.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Term {
    /// The symbol, as the formula has it.
    pub symbol: &'static str,
    /// What it means.
    pub means: &'static str,
    /// The unit it is shown in.
    pub unit: Shown,
    /// The figure, in SI, where it is one of the library's own.
    pub figure: Option<Spread>,
    /// Where the figure comes from.
    pub sources: &'static [Source],
}

impl Term {
    /// The low end, the likely value and the high end in the unit that is shown.
    #[must_use]
    pub fn ends(&self) -> Option<[f64; 3]> {
        let Spread { low, likely, high } = self.figure?;
        Some([low, likely, high].map(|si| si / self.unit.size))
    }
}

/// What an example is given.
#[derive(Debug, Clone, PartialEq)]
pub struct Given(pub Vec<(&'static str, f64)>);

impl Given {
    /// What a symbol stands for; not a number where it is not given.
    #[must_use]
    pub fn of(&self, symbol: &str) -> f64 {
        self.0.iter().find(|(name, _)| *name == symbol).map_or(f64::NAN, |(_, value)| *value)
    }
}

/// A formula at given numbers, reckoned by the library's own function.
#[derive(Debug, Clone, PartialEq)]
pub struct Example {
    /// What it is given, in the units of the terms.
    pub given: Given,
    /// What it comes to, in the unit of the first symbol.
    pub gives: f64,
}

/// A formula.
#[derive(Debug, Clone, PartialEq)]
pub struct Formula {
    /// Its id, which never changes.
    pub id: &'static str,
    /// What it gives.
    pub gives: &'static str,
    /// The formula in words.
    pub words: &'static str,
    /// The formula in symbols, one equation a line, the last of which gives the result; empty where it is figures alone.
    pub symbols: &'static str,
    /// The unit of the result.
    pub unit: Shown,
    /// Its symbols and figures.
    pub terms: Vec<Term>,
    /// What the formula rests on.
    pub from: &'static [Source],
    /// Where it is used.
    pub used: &'static str,
    /// An example.
    pub example: Option<Example>,
}

/// A formula that gives something, by its id.
pub(super) fn formula(id: &'static str, gives: &'static str) -> Formula {
    let (terms, from) = (Vec::new(), &[]);
    Formula { id, gives, words: "", symbols: "", unit: Shown::RATIO, terms, from, used: "", example: None }
}

impl Formula {
    pub(super) fn words(self, words: &'static str) -> Self {
        Self { words, ..self }
    }

    pub(super) fn symbols(self, unit: Shown, symbols: &'static str) -> Self {
        Self { symbols, unit, ..self }
    }

    pub(super) fn term(mut self, symbol: &'static str, means: &'static str, unit: Shown) -> Self {
        self.terms.push(Term { symbol, means, unit, figure: None, sources: &[] });
        self
    }

    pub(super) fn figure(
        mut self,
        symbol: &'static str,
        means: &'static str,
        figure: Spread,
        unit: Shown,
        sources: &'static [Source],
    ) -> Self {
        self.terms.push(Term { symbol, means, unit, figure: Some(figure), sources });
        self
    }

    pub(super) fn from(self, from: &'static [Source]) -> Self {
        Self { from, ..self }
    }

    pub(super) fn used(self, used: &'static str) -> Self {
        Self { used, ..self }
    }

    /// An example at given numbers.
    pub(super) fn example(self, given: &[(&'static str, f64)], reckoned: fn(&Given) -> f64) -> Self {
        let given = Given(given.to_vec());
        let gives = reckoned(&given);
        Self { example: Some(Example { given, gives }), ..self }
    }

    /// An example at numbers that an answer to a question holds beside the result.
    pub(super) fn answered<const N: usize>(self, figures: Option<([(&'static str, f64); N], f64)>) -> Self {
        let example = figures.map(|(given, gives)| Example { given: Given(given.to_vec()), gives });
        Self { example, ..self }
    }

    /// All that it rests on, each once.
    #[must_use]
    pub fn sources(&self) -> Vec<Source> {
        let mut all: Vec<Source> = self.from.to_vec();
        for source in self.terms.iter().flat_map(|term| term.sources) {
            if !all.contains(source) {
                all.push(*source);
            }
        }
        all
    }
}
