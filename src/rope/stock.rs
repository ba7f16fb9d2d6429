//! The lengths that ropes are sold in, and the rope somebody has.

use crate::field::{Field, Form, Kind, Limits, Reading, Refusal, Row, Said, Value};
use crate::quantity::{Dimension, FOOT, Length, METRE, System, is_blank, joined, trimmed};

const fn length(id: &'static str, noun: &'static str, hint: &'static str, why: &'static str) -> Row {
    let limits = Limits {
        dimension: Dimension::Length,
        least: 2.0,
        most: 400.0,
        example: 45.0,
        likely: None,
        bare: Some([METRE, FOOT]),
    };
    Row { id, noun, hint, kind: Kind::Quantity(limits), why, private: false }
}

/// The rope somebody has.
pub static ROPE_OWNED: Field<Length> = Field::new(length(
    "ropeOwned",
    "rope you have",
    "Its length as you measured it. The answer says how high it goes, and whether it reaches the ground.",
    "Three times the tallest tree is 360 m; less than 2 m goes over no crotch (judged).",
));

/// One of the lengths to choose from.
pub static STOCK_LENGTH: Row = length("ropeStock", "length", "", "");

/// The lengths one can buy.
pub static ROPE_STOCK: Field<Ladder> = Field::new(Row {
    id: "ropeStock",
    noun: "lengths one can buy",
    hint: "With their units and a semicolon between. Left empty: 20, 30, 40, 45, 50 and 60 m, or 50, 75, 100, 120, 150 and 200 ft.",
    kind: Kind::Text(&FORM),
    why: "50, 75 and 100 ft are what recreational tree ropes are sold in (read); the others are from memory.",
    private: false,
});

static FORM: Form = Form { canonical, tidied, example: "20 m; 30 m; 45 m; 200 ft" };

/// Lengths to choose from, in metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Ladder(pub Vec<f64>);

impl Ladder {
    /// The lengths that ropes are sold in where feet or metres are.
    ///
    /// # Source
    /// 50, 75 and 100 ft: read; the others from memory; see [`ROPE_LADDER`](crate::source::ROPE_LADDER).
    #[must_use]
    pub fn usual(system: System) -> Self {
        let (unit, lengths) = match system {
            System::Si => (METRE, [20.0, 30.0, 40.0, 45.0, 50.0, 60.0]),
            System::Us => (FOOT, [50.0, 75.0, 100.0, 120.0, 150.0, 200.0]),
        };
        Self(lengths.map(|length| unit.si(length)).to_vec())
    }

    /// The shortest that is as long as this, if one is.
    #[must_use]
    pub fn enough(&self, need: f64) -> Option<f64> {
        let mut enough: Option<f64> = None;
        for length in &self.0 {
            if *length >= need - ADDING_UP && enough.is_none_or(|shortest| *length < shortest) {
                enough = Some(*length);
            }
        }
        enough
    }

    /// The longest of them.
    #[must_use]
    pub fn longest(&self) -> f64 {
        let mut longest: f64 = 0.0;
        for length in &self.0 {
            longest = longest.max(*length);
        }
        longest
    }
}

/// What is more by less than this, in metres, came of adding up.
pub const ADDING_UP: f64 = 1e-6;

impl Value for Ladder {
    fn of(reading: Reading) -> Option<Self> {
        match reading {
            Reading::Text(text) => read(&text).ok(),
            Reading::Si(_) | Reading::Choice(_) => None,
        }
    }

    fn into_said(self) -> Said {
        let mut text = String::new();
        for length in self.0 {
            if !text.is_empty() {
                text.push_str("; ");
            }
            text.push_str(&STOCK_LENGTH.linked(&Said::Number(length)).unwrap_or_default());
        }
        Said::Text(text)
    }
}

/// The lengths that a text says, with semicolons, line ends or two hyphens between; a comma with a blank behind it will
/// do as well.
///
/// # Errors
/// The first piece that is no length, and why.
pub fn read(text: &str) -> Result<Ladder, (String, Refusal)> {
    let mut lengths = Vec::new();
    for piece in pieces(text) {
        match STOCK_LENGTH.reading(&Said::Text(piece.clone())) {
            Ok(Reading::Si(si)) => lengths.push(si),
            Ok(_) => {}
            Err(refusal) => return Err((piece, refusal)),
        }
    }
    Ok(Ladder(lengths))
}

fn pieces(text: &str) -> Vec<String> {
    let (mut pieces, mut piece) = (Vec::new(), String::new());
    for letter in text.chars() {
        let joins = match (letter, piece.chars().next_back()) {
            ('-', Some('-')) => true,
            (blank, Some(',')) => is_blank(blank),
            _ => false,
        };
        if joins {
            piece.pop();
        }
        if joins || matches!(letter, ';' | '\n') {
            pieces.push(trimmed(&piece).to_owned());
            piece.clear();
        } else {
            piece.push(letter);
        }
    }
    // A separator behind the last of them is none between two.
    if pieces.is_empty() || !trimmed(&piece).is_empty() {
        pieces.push(trimmed(&piece).to_owned());
    }
    pieces
}

fn each(text: &str, between: &str, written: impl Fn(&str) -> Option<String>) -> Option<String> {
    let mut whole = String::new();
    for piece in pieces(text) {
        let before = if whole.is_empty() { "" } else { between };
        whole = joined(&[&whole, before, &written(&piece)?]);
    }
    Some(whole)
}

fn canonical(text: &str) -> Option<String> {
    each(text, "--", |piece| STOCK_LENGTH.linked(&Said::Text(piece.to_owned())))
}

fn tidied(text: &str, system: System) -> String {
    let tidy = each(text, "; ", |piece| Some(STOCK_LENGTH.tidied(piece, system)));
    tidy.filter(|tidy| read(tidy).is_ok()).unwrap_or_else(|| text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_read_however_they_are_parted() {
        for text in ["20 m; 30,5 m; 100 ft", "20m--30.5m--100ft", "20 m, 30,5 m, 100 ft;", "20 m\n30.5 m\n100 ft\n"] {
            assert_eq!(read(text), Ok(Ladder(vec![20.0, 30.5, 30.48])), "{text}");
            assert_eq!(canonical(text).as_deref(), Some("20m--30.5m--100ft"), "{text}");
        }
        assert_eq!(tidied("20 ;30;75 ft", System::Si), "20 m; 30 m; 75 ft");
        assert_eq!(tidied("20; thirty", System::Si), "20; thirty");
    }

    #[test]
    fn what_is_no_length_is_told_apart() {
        for (text, piece) in
            [("20 m; thirty", "thirty"), ("20 m;; 30 m", ""), ("20 m; 3 km", "3 km"), (";", ""), ("1 m", "1 m")]
        {
            assert_eq!(read(text).map_err(|(piece, _)| piece), Err(piece.to_owned()), "{text}");
        }
    }

    #[test]
    fn the_shortest_that_is_enough_is_taken_whatever_their_order() {
        let ladder = Ladder(vec![45.0, 20.0, 30.0]);
        assert_eq!(
            [10.0, 20.0, 20.1, 45.0, 45.1].map(|need| ladder.enough(need)),
            [Some(20.0), Some(20.0), Some(30.0), Some(45.0), None]
        );
        assert_eq!(ladder.longest(), 45.0);
    }
}
