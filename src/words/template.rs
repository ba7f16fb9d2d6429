//! Sentences with slots, and what is written into them.
//!
//! A template is a sentence as it will be read, with a slot wherever something is written in. Slots take their numbers
//! and their words in the order they were given; `n` stands for a digit.
//!
//! | slot | writes |
//! |---|---|
//! | `{}` | the next word |
//! | `{N}` `{M}` `{K}` `{S}` `{J}` `{W}` `{V}` | force, length, mass, duration, energy, power, speed |
//! | `{P}` | a pull, also as scales show it: "321 N (33 kgf)", "72 lbf" |
//! | `{cn}` | a short length in one small unit, with `n` decimals |
//! | `{F}` | a short length with one figure more than people need, so that a sum with it comes out as shown |
//! | `{T}` | a temperature |
//! | `{%}` | so many in a hundred |
//! | `{C}` | so many in a hundred, and never as certain |
//! | `{A}` | so many in a hundred, or "a little" where they would be nought |
//! | `{n}` | the number with `n` decimals |
//! | `{rn}` | "0.70 (0.65 to 0.74)", each with `n` decimals, or one number where there is no range |
//! | `{I}` | a number of whole things, the last one begun |
//!
//! A slot that is not known or gets nothing is left as `{?}`, and what gets no slot is told as `{+}`: no sentence that
//! is meant for people has a brace in it, and tests look for them.

use crate::field::Spread;
use crate::quantity::{
    CENTIMETRE, Dimension, INCH, KILOGRAM_FORCE, System, View, percent, plain, temperature, written,
};

/// Goes on with a template.
pub(super) fn say(text: &mut String, template: &str, numbers: &[&Spread], words: &[&str], view: View) {
    let (mut numbers, mut words) = (numbers.iter(), words.iter());
    // What the slot that is open asks for: its letter, and the digit after it or instead of it.
    let mut slot = None;
    for letter in template.chars() {
        match (letter, slot) {
            ('{', _) => slot = Some((' ', 0)),
            ('}', Some((' ', _))) => {
                text.push_str(words.next().copied().unwrap_or(UNFILLED));
                slot = None;
            }
            ('}', Some((kind, decimals))) => {
                match numbers.next() {
                    Some(number) => text.push_str(&figure(kind, decimals, number, view)),
                    None => text.push_str(UNFILLED),
                }
                slot = None;
            }
            (digit @ '0'..='9', Some((kind, _))) => {
                slot = Some((if kind == ' ' { 'n' } else { kind }, digit as usize - '0' as usize));
            }
            (kind, Some(_)) => slot = Some((kind, 0)),
            (letter, None) => text.push(letter),
        }
    }
    if slot.is_some() || numbers.next().is_some() || words.next().is_some() {
        text.push_str("{+}");
    }
}

const UNFILLED: &str = "{?}";

/// The template with its slots filled.
pub(super) fn said(template: &str, numbers: &[&Spread], words: &[&str], view: View) -> String {
    let mut text = String::new();
    say(&mut text, template, numbers, words, view);
    text
}

/// The template with only words in its slots.
pub(super) fn worded(template: &str, words: &[&str]) -> String {
    said(template, &[], words, View::default())
}

/// What a slot for a number writes.
fn figure(kind: char, decimals: usize, spread: &Spread, view: View) -> String {
    let value = spread.likely;
    let dimension = match kind {
        'P' if view.system == System::Si => {
            return said("{N} ({0} kgf)", &[spread, &Spread::point(KILOGRAM_FORCE.count(value))], &[], view);
        }
        'N' | 'P' => Dimension::Force,
        'M' => Dimension::Length,
        'K' => Dimension::Mass,
        'S' => Dimension::Duration,
        'J' => Dimension::Energy,
        'W' => Dimension::Power,
        'V' => Dimension::Speed,
        'F' => return figure('c', if view.system == System::Si { 1 } else { 2 }, spread, view),
        'c' => {
            let unit = if view.system == System::Si { CENTIMETRE } else { INCH };
            return said("{} {}", &[], &[&plain(unit.count(value), decimals, view), unit.symbol], view);
        }
        'T' => return temperature(value, view),
        'A' if value < 0.05 => return "a little".to_owned(),
        'C' if value > 0.995 => return "over 99 %".to_owned(),
        'C' if value < 0.005 => return "under 1 %".to_owned(),
        'A' | 'C' | '%' => return percent(value, view),
        'I' => return plain(value.ceil(), 0, view),
        'r' if spread.low < spread.high => {
            let [low, likely, high] =
                [spread.low, spread.likely, spread.high].map(|value| plain(value, decimals, view));
            return said("{} ({} to {})", &[], &[&likely, &low, &high], view);
        }
        'n' | 'r' => return plain(value, decimals, view),
        _ => return UNFILLED.to_owned(),
    };
    written(value, dimension, view)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Decimal;

    const SI: View = View { system: System::Si, decimal: Decimal::Point };
    const US: View = View { system: System::Us, decimal: Decimal::Comma };

    fn one(template: &str, value: f64, view: View) -> String {
        said(template, &[&Spread::point(value)], &[], view)
    }

    #[test]
    fn every_slot_writes_its_number_in_either_system() {
        for (slot, value, si, us) in [
            ("{N}", 321.0, "321 N", "72 lbf"),
            ("{P}", 321.0, "321 N (33 kgf)", "72 lbf"),
            ("{M}", 11.0, "11 m", "36 ft 1 in"),
            ("{F}", 0.1234, "12.3 cm", "4,86 in"),
            ("{c0}", 0.15, "15 cm", "6 in"),
            ("{c2}", 0.15, "15.00 cm", "5,91 in"),
            ("{K}", 100.0, "100 kg", "220 lb"),
            ("{S}", 560.0, "9 min", "9 min"),
            ("{J}", 500.0, "500 J", "369 ft-lbf"),
            ("{W}", 80.0, "80 W", "80 W"),
            ("{V}", 0.1, "6 m/min", "20 ft/min"),
            ("{T}", 20.0, "20 °C", "68 °F"),
            ("{%}", 0.667, "67 %", "67 %"),
            ("{A}", 0.049, "a little", "a little"),
            ("{A}", 0.05, "5 %", "5 %"),
            ("{C}", 0.996, "over 99 %", "over 99 %"),
            ("{C}", 0.004, "under 1 %", "under 1 %"),
            ("{C}", 0.5, "50 %", "50 %"),
            ("{0}", 2.6, "3", "3"),
            ("{4}", 2.6, "2.6000", "2,6000"),
            ("{I}", 2.1, "3", "3"),
            ("{r2}", 0.7, "0.70", "0,70"),
        ] {
            assert_eq!((one(slot, value, SI).as_str(), one(slot, value, US).as_str()), (si, us), "{slot}");
        }
    }

    #[test]
    fn a_range_is_written_where_there_is_one() {
        assert_eq!(said("× {r2}.", &[&Spread::new(0.65, 0.7, 0.74)], &[], SI), "× 0.70 (0.65 to 0.74).");
    }

    #[test]
    fn slots_take_numbers_and_words_in_order() {
        let (one, two) = (Spread::point(1.0), Spread::point(2.0));
        assert_eq!(said("{} {0}; {0} {}, “÷”", &[&one, &two], &["a", "b"], SI), "a 1; 2 b, “÷”");
    }

    #[test]
    fn a_template_that_does_not_fit_shows_a_brace() {
        let number = Spread::point(1.0);
        for (template, numbers, words, told) in [
            ("{} and {}", &[][..], &["a"][..], "a and {?}"),
            ("{N}", &[], &[], "{?}"),
            ("{Q}", &[&number], &[], "{?}"),
            ("none", &[&number], &[], "none{+}"),
            ("none", &[], &["a"], "none{+}"),
            ("{N", &[&number], &[], "{+}"),
        ] {
            assert_eq!(said(template, numbers, words, SI), told);
        }
    }
}
