//! The reverse: which height a rope goes to.

/// The greatest height whose need is not more than the rope, in metres; none where even a crotch at the ground needs more.
///
/// # Guarantees
/// Total. For a need that only grows with the height, and by no less than it, the answer is exact to a millionth of a
/// millimetre; never a height that needs more than the rope.
#[must_use]
pub fn highest(rope: f64, need: &dyn Fn(f64) -> f64) -> Option<f64> {
    if need(0.0) > rope {
        return None;
    }
    // Whatever its need, a height is no more than the rope.
    let (mut enough, mut too_high) = (0.0, rope);
    for _ in 0..STEPS {
        let middle = (enough + too_high) / 2.0;
        if need(middle) <= rope {
            enough = middle;
        } else {
            too_high = middle;
        }
    }
    Some(enough)
}

/// 400 m halved so often is less than a millionth of a millimetre.
const STEPS: u32 = 40;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_straight_need_is_turned_round() {
        let need = |height: f64| 3.0 * height + 2.7;
        assert!((highest(38.7, &need).unwrap() - 12.0).abs() < 1e-9);
        assert_eq!(highest(2.0, &need), None);
    }
}
