//! Errors as sentences that somebody tired can act on.

use super::ErrorLine;
use super::phrase::{listed, noun, sentence};
use crate::error::{Error, Reason};
use crate::field::{Kind, Limits, Refusal, Row};
use crate::quantity::{Dimension, Misread, System, View, plain, written};

/// The errors as people read them.
#[must_use]
pub fn error_lines(errors: &[Error], view: View) -> Vec<ErrorLine> {
    errors.iter().map(|error| ErrorLine { fields: error.fields.clone(), message: message(error, view) }).collect()
}

/// The sentence for an error.
///
/// # Guarantees
/// It names the field, says what is wrong, and says what would be taken.
#[must_use]
pub fn message(error: &Error, view: View) -> String {
    let name = error.fields.iter().map(|field| noun(field)).collect::<Vec<_>>();
    let name = sentence(&listed(&name));
    let row = error.fields.first().and_then(|id| crate::question::field(id));
    match &error.reason {
        Reason::Needed => format!("{name} is needed. {}", wanted(row, view)),
        Reason::UnknownField => {
            format!("“{name}” is not a field of any question here; check how it is spelt, or leave it out.")
        }
        Reason::Refused(refusal) => refused(&name, refusal, row, view),
        Reason::TestOutOfRange { measured, ideal } => format!(
            "{name} come to a real advantage of {}, and this rig can only give between 1 and {}. Measure again, with the scale in the rope at your hand and nothing else holding you.",
            plain(measured.value(), 2, view),
            plain(ideal.value(), 0, view)
        ),
        Reason::TestWithoutTurns => {
            format!(
                "{name} tell nothing about this rig, which has no turns. Leave them empty, or choose the rig you tested."
            )
        }
        Reason::HalfATest => format!("{name} belong together. Fill in both, or leave both empty."),
        Reason::UnworkableRig => "This rig cannot be worked out. Choose another.".to_owned(),
    }
}

fn refused(name: &str, refusal: &Refusal, row: Option<&Row>, view: View) -> String {
    match refusal {
        Refusal::Empty => format!("{name} is empty, and empty is not nought. {}", wanted(row, view)),
        Refusal::WrongType { said } => format!("{name} cannot be {said}. {}", wanted(row, view)),
        Refusal::NotFinite => format!("{name} must be an ordinary number. {}", wanted(row, view)),
        Refusal::Misread { said, misread } => {
            let (what, done) = misread_words(said, misread, row);
            if done { format!("{name}: {what}") } else { format!("{name}: {what} {}", wanted(row, view)) }
        }
        Refusal::OutOfRange { si, suggestion } => {
            let Some(Kind::Quantity(limits)) = row.map(|row| row.kind) else {
                return format!("{name} is out of range.");
            };
            let (said, range) = (written(*si, limits.dimension, view), range(limits, view));
            match suggestion {
                Some(other) => format!("{name} of {said} is outside {range}. Did you mean {other}?"),
                None => format!("{name} of {said} is outside {range}."),
            }
        }
        Refusal::UnknownChoice { said, options } => {
            let ids: Vec<String> = options.iter().map(|option| format!("“{}”", option.id)).collect();
            format!("{name} cannot be “{said}”. Choose one of {}.", listed(&ids))
        }
    }
}

/// What would be taken.
fn wanted(row: Option<&Row>, view: View) -> String {
    match row.map(|row| (row, row.kind)) {
        Some((row, Kind::Quantity(limits))) => format!("Write it like “{}”.", example(row, limits, view)),
        Some((_, Kind::Choice { options, .. })) => {
            let ids: Vec<String> = options.iter().map(|option| option.noun.to_owned()).collect();
            format!("Choose one: {}.", ids.join("; "))
        }
        None => String::new(),
    }
}

/// A value of the field, in its own unit.
pub(super) fn example(row: &Row, limits: Limits, view: View) -> String {
    match row.bare_unit(view.system) {
        Some(unit) => format!("{} {}", plain(unit.count(limits.example).round().max(1.0), 0, view), unit.symbol),
        None => plain(limits.example, 2, view),
    }
}

pub(super) fn range(limits: Limits, view: View) -> String {
    let text = |si: f64| match limits.dimension {
        Dimension::Ratio => plain(si, 2, view),
        dimension => written(si, dimension, view),
    };
    format!("{} to {}", text(limits.least), text(limits.most))
}

/// What is wrong with a text, and whether that already says what to write.
fn misread_words(said: &str, misread: &Misread, row: Option<&Row>) -> (String, bool) {
    match misread {
        Misread::Empty => ("it is empty, and empty is not nought.".to_owned(), false),
        Misread::TooLong => ("this is too long to be a number.".to_owned(), false),
        Misread::NotANumber => (format!("“{said}” is not a number with a unit."), false),
        Misread::NotFinite => (format!("“{said}” is too large for a number here."), false),
        Misread::Exponent => (format!("write “{said}” out without a power of ten."), false),
        Misread::TwoSeparators => (format!("“{said}” has more than one comma or point."), false),
        Misread::Ambiguous { said, whole, decimal } => {
            (format!("“{said}” can be read two ways. Write {whole} or {decimal}."), true)
        }
        Misread::NoUnit { dimension } => {
            let units = row.map(|row| {
                let symbol = |system| row.bare_unit(system).map(|unit| format!("{} {}", said.trim(), unit.symbol));
                [symbol(System::Si), symbol(System::Us)].into_iter().flatten().collect::<Vec<_>>().join(" or ")
            });
            match units {
                Some(units) if !units.is_empty() => (format!("write the unit too: {units}."), true),
                _ => (format!("write the unit of this {} too.", dimension.noun()), false),
            }
        }
        Misread::UnknownUnit { said } => (format!("the unit “{said}” is not known here."), false),
        Misread::WrongDimension { said: unit, wanted: Dimension::Force } if unit.dimension == Dimension::Mass => (
            format!(
                "“{said}” is a mass, and a pull is a force. If it is the reading of a scale, write {}.",
                if unit.symbol == "kg" {
                    said.replace("kg", "kgf")
                } else {
                    said.replace("lbs", "lb").replace("lb", "lbf")
                }
            ),
            true,
        ),
        Misread::WrongDimension { said: unit, wanted } => {
            (format!("“{said}” is a {}, and a {} is wanted.", unit.dimension.noun(), wanted.noun()), false)
        }
        Misread::Unordered => (format!("write the larger unit of “{said}” first, and each only once."), false),
        Misread::Unpaired { first, second } => {
            (format!("{} and {} do not go together; use one of them.", first.symbol, second.symbol), false)
        }
        Misread::BrokenWhole { unit } => {
            (format!("with a smaller unit after it, the {} must be a whole number.", unit.symbol), false)
        }
        Misread::Overflow { part, whole } => {
            (format!("that many {} make another {}; carry it over.", part.symbol, whole.symbol), false)
        }
    }
}
