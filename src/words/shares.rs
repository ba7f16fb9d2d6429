//! Lengths that add up as they are written, in either system of units.

use crate::quantity::{CENTIMETRE, INCH, METRE, System, View, written};
use crate::quantity::{Dimension, FOOT};

/// A whole and its parts, in SI, each a whole number of the steps in which the whole is written.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Shares {
    pub(super) whole: f64,
    pub(super) parts: Vec<f64>,
}

/// The step in which people read a length of this size, in SI: a centimetre, from ten metres on ten; an inch, below two
/// feet a tenth of one.
fn step(length: f64, view: View) -> f64 {
    match view.system {
        System::Si if length < METRE.si(10.0) => CENTIMETRE.si(1.0),
        System::Si => CENTIMETRE.si(10.0),
        System::Us if length < FOOT.si(2.0) => INCH.si(0.1),
        System::Us => INCH.si(1.0),
    }
}

/// The parts of a whole as they are written: each a step up or down from its place, so that they add up to the whole, which is
/// rounded to the nearest step.
pub(super) fn shares(parts: &[f64], view: View) -> Shares {
    let mut sum = 0.0;
    for part in parts {
        sum += part;
    }
    let step = step(sum, view);
    let whole = (sum / step).round();
    let mut left = whole;
    let mut steps = Vec::new();
    for part in parts {
        let down = (part / step + 1e-9).floor();
        left -= down;
        steps.push((down, part / step - down));
    }
    while left > 0.5 {
        let mut most: Option<&mut (f64, f64)> = None;
        for part in &mut steps {
            if most.as_ref().is_none_or(|most| part.1 > most.1) {
                most = Some(part);
            }
        }
        let Some((down, rest)) = most else { break };
        *down += 1.0;
        *rest -= 1.0;
        left -= 1.0;
    }
    let mut shares = Shares { whole: whole * step, parts: Vec::new() };
    for (down, _) in steps {
        shares.parts.push(down * step);
    }
    shares
}

/// A length that is a whole number of steps, as people read it.
pub(super) fn share(si: f64, view: View) -> String {
    written(si, Dimension::Length, view)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 33.4 + 33.3 + 33.3 is 100 cm, and the one that is left goes where most was cut off.
    #[test]
    fn what_is_left_goes_where_most_was_cut_off() {
        let told = |parts: &[f64]| {
            let shares = shares(parts, View::default());
            let mut texts = vec![share(shares.whole, View::default())];
            texts.extend(shares.parts.iter().map(|part| share(*part, View::default())));
            texts.join(" ")
        };
        assert_eq!(told(&[0.333, 0.334, 0.333]), "1 m 33 cm 34 cm 33 cm");
        assert_eq!(told(&[0.104, 0.106]), "21 cm 10 cm 11 cm");
        assert_eq!(told(&[0.102, 0.101]), "20 cm 10 cm 10 cm");
        assert_eq!(told(&[0.104, 0.104, 0.104]), "31 cm 11 cm 10 cm 10 cm");
        assert_eq!(told(&[]), "0 m");
    }
}
