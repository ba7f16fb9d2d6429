//! What is wrong with a text that should say a quantity, in words.

use super::phrase::short;
use super::template::worded;
use crate::field::Row;
use crate::quantity::{Dimension, KILOGRAM, Misread, POUND, System, Unit, View, plain, read, trimmed};

/// What is wrong with a text, and whether that already says what to write.
pub(super) fn misread_words(said: &str, misread: &Misread, row: Option<&Row>, view: View) -> (String, bool) {
    let said = trimmed(said);
    let (before, quoted, after) = match misread {
        Misread::Empty => ("it is empty, and empty is not nought.", "", ""),
        Misread::TooLong => ("this is too long to be a number.", "", ""),
        Misread::NotANumber => ("“", said, "” is not a number with a unit."),
        Misread::NotFinite => ("“", said, "” is too large for a number here."),
        Misread::Exponent => ("write “", said, "” out without a power of ten."),
        Misread::TwoSeparators => ("“", said, "” has more than one comma or point."),
        Misread::UnknownUnit { said } => ("the unit “", said.as_str(), "” is not known here."),
        Misread::Unordered => ("write the larger unit of “", said, "” first, and each only once."),
        Misread::BrokenWhole { unit } => {
            ("with a smaller unit after it, the number of ", plural(unit), " must be a whole one.")
        }
        Misread::Ambiguous { said, whole, decimal } => {
            return (worded("“{}” can be read two ways. Write {} or {}.", &[said, whole, decimal]), true);
        }
        Misread::NoUnit { dimension } => return no_unit(said, *dimension, row),
        Misread::WrongDimension { said: unit, wanted } => return wrong_dimension(said, unit, *wanted, view),
        Misread::Unpaired { first, second } => {
            return (worded("{} and {} do not go together; use one of them.", &[plural(first), plural(second)]), false);
        }
        Misread::Overflow { part, whole } => {
            let count = part.bigger().map_or(0.0, |(_, count)| count);
            let count = plain(count, 0, view);
            return (worded("{} {} make 1 {}; carry them over.", &[&count, part.symbol, whole.symbol]), false);
        }
    };
    (worded("{}{}{}", &[before, quoted, after]), false)
}

/// A number without a unit, or one beside another's.
fn no_unit(said: &str, dimension: Dimension, row: Option<&Row>) -> (String, bool) {
    let mut ways = String::new();
    for system in [System::Si, System::Us] {
        let tidied = row.map_or_else(String::new, |row| row.tidied(said, system));
        // It is left as it is where one unit more does not make it readable.
        if tidied.len() > said.len() && tidied != ways {
            let before = if ways.is_empty() { "" } else { " or " };
            ways = ways + before + &tidied;
        }
    }
    match dimension {
        _ if !ways.is_empty() => (worded("write the unit too: {}.", &[&ways]), true),
        Dimension::Length => ("put a unit after every number, like 36 ft 6 in.".to_owned(), true),
        Dimension::Mass => ("put a unit after every number, like 15 st 4 lb.".to_owned(), true),
        _ => ("put a unit after every number.".to_owned(), false),
    }
}

/// A unit of something else. What a scale shows is nearly always a mass, and a force is meant.
fn wrong_dimension(said: &str, unit: &Unit, wanted: Dimension, view: View) -> (String, bool) {
    let mass = if wanted == Dimension::Force { read(said, Dimension::Mass, None).ok() } else { None };
    match mass.filter(|mass| mass.abs() < NO_SCALE) {
        Some(mass) => {
            let (unit, force) = if unit.symbol == KILOGRAM.symbol { (KILOGRAM, "kgf") } else { (POUND, "lbf") };
            let number = short(unit.count(mass), view);
            (
                worded(
                    "“{}” is a mass, and a pull is a force. If it is the reading of a scale, write {} {}.",
                    &[said, &number, force],
                ),
                true,
            )
        }
        None => (worded("“{}” is {}, and {} is wanted.", &[said, &one(unit.dimension), &one(wanted)]), false),
    }
}

/// No scale shows a million kilograms, and of far more there is no figure (judged).
const NO_SCALE: f64 = 1e6;

/// "a length", "an angle".
fn one(dimension: Dimension) -> String {
    let noun = dimension.noun();
    let article = if matches!(noun.bytes().next(), Some(b'a' | b'e')) { "an " } else { "a " };
    article.to_owned() + noun
}

/// More than one of a unit, spelt out.
fn plural(unit: &Unit) -> &str {
    const SPELT: &[(&str, &str)] = &[
        ("m", "metres"),
        ("cm", "centimetres"),
        ("mm", "millimetres"),
        ("ft", "feet"),
        ("in", "inches"),
        ("kg", "kilograms"),
        ("lb", "pounds"),
        ("h", "hours"),
        ("min", "minutes"),
        ("s", "seconds"),
    ];
    SPELT.iter().find(|(symbol, _)| *symbol == unit.symbol).map_or(unit.symbol, |(_, spelt)| spelt)
}
