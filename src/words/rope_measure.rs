//! Lengths of rope as they are shown: whole centimetres or inches, so that items add up to their total in either.

use super::Figure;
use super::figure::figure;
use super::template::said;
use crate::field::Spread;
use crate::quantity::{CENTIMETRE, INCH, System, Unit, View, joined, plain};
use crate::rope;
use crate::source::Source;

/// What lengths of rope are shown in whole ones of.
fn unit(view: View) -> &'static Unit {
    if view.system == System::Si { CENTIMETRE } else { INCH }
}

/// The steps of what is needed, the last one begun.
///
/// # Guarantees
/// Each item is rounded up by itself and a total is the sum of its items: the same item is the same everywhere, what is
/// shown adds up to the last figure, and no total is less than what is needed.
pub(super) fn begun(si: f64, view: View) -> f64 {
    rope::begun(si, unit(view))
}

/// The steps of what there is, the last one whole.
pub(super) fn whole(si: f64, view: View) -> f64 {
    (unit(view).count(si) + 1e-4).floor().max(0.0)
}

/// Each end of a range, the last step begun.
pub(super) fn all_begun(spread: Spread, view: View) -> Spread {
    Spread::new(begun(spread.low, view), begun(spread.likely, view), begun(spread.high, view))
}

/// The metres or feet of so many steps, the last one begun.
pub(super) fn large(steps: f64, view: View) -> String {
    let to_one = if view.system == System::Si { 100.0 } else { 12.0 };
    plain((steps / to_one).ceil(), 0, view)
}

/// So many steps as people read them.
pub(super) fn text(steps: f64, view: View) -> String {
    if view.system == System::Si {
        let ends = |by: f64| steps % by == 0.0;
        let decimals = if ends(100.0) { 0 } else { 2 - usize::from(ends(10.0)) };
        return joined(&[&plain(steps / 100.0, decimals, view), " m"]);
    }
    let feet = (steps / 12.0).floor();
    let (feet, inches) = (plain(feet, 0, view), plain(steps - feet * 12.0, 0, view));
    match (feet.as_str(), inches.as_str()) {
        (feet, "0") => joined(&[feet, " ft"]),
        ("0", inches) => joined(&[inches, " in"]),
        (feet, inches) => joined(&[feet, " ft ", inches, " in"]),
    }
}

/// A figure that is shown as so many steps.
pub(super) fn measured(
    (id, noun): (&'static str, &'static str),
    spread: &Spread,
    steps: Spread,
    view: View,
    sources: &[Source],
) -> Figure {
    let mut figure = figure(id, noun, spread, "{M}", view, sources);
    let (low, high) = (text(steps.low, view), text(steps.high, view));
    figure.text = text(steps.likely, view);
    figure.range = (low != high).then(|| said("{} to {}", &[], &[&low, &high], view));
    figure
}

#[cfg(test)]
mod tests {
    use super::*;

    const SI: View = View { system: System::Si, decimal: crate::quantity::Decimal::Comma };
    const US: View = View { system: System::Us, ..SI };

    #[test]
    fn what_is_needed_is_rounded_up_and_what_there_is_down() {
        for (metres, needed, there) in [
            (11.0, "11 m", "11 m"),
            (0.33, "0,33 m", "0,33 m"),
            (2.2168, "2,22 m", "2,21 m"),
            (0.0, "0 m", "0 m"),
            (35.7 - 1e-9, "35,7 m", "35,7 m"),
        ] {
            assert_eq!((text(begun(metres, SI), SI).as_str(), text(whole(metres, SI), SI).as_str()), (needed, there));
        }
        for (inches, needed, there) in
            [(12.0, "1 ft", "1 ft"), (4.2, "5 in", "4 in"), (433.0, "36 ft 1 in", "36 ft 1 in")]
        {
            let metres = inches * 0.0254;
            assert_eq!((text(begun(metres, US), US).as_str(), text(whole(metres, US), US).as_str()), (needed, there));
        }
        assert_eq!([large(1101.0, SI), large(1100.0, SI), large(145.0, US)], ["12", "11", "13"]);
    }
}
