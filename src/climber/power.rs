//! The power of the arms.

use super::{Grip, Trunk};
use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{Dimension, Force, KILOGRAM_FORCE, Power, WATT};

/// The greatest power of somebody's arms for a minute or two, over that of people of their grip.
///
/// # Source
/// Judged: 30 % either way.
pub const PEAK_OVER_GRIP: Spread = Spread::new(0.7, 1.0, 1.3);

/// The share of the greatest power that arms keep up for 20 to 30 minutes.
///
/// # Source
/// Judged, about half, of somebody untrained; its range is judged too.
pub const KEPT_UP: Spread = Spread::new(0.4, 0.5, 0.6);

/// As long as that is kept up, in seconds.
pub const KEPT_UP_FOR: f64 = 1800.0;

/// The greatest power of able-bodied men at the arm crank, in watts.
///
/// # Source
/// Judged from Aminoff 1996.
pub const ABLE_POWER: f64 = 107.0;

/// The same with paraplegia, in watts.
///
/// # Source
/// Haisma 2006.
pub const PARAPLEGIC_POWER: f64 = 74.0;

/// The same with tetraplegia, in watts.
///
/// # Source
/// Haisma 2006.
pub const TETRAPLEGIC_POWER: f64 = 40.0;

/// The grip of both hands that such a power goes with (judged).
pub const USUAL_GRIP: Force = Force::newtons(KILOGRAM_FORCE.si(95.0));

/// The greatest power of somebody's arms, in watts, as their grip foretells it, and
/// `over_grip` times that.
///
/// # Source
/// 107 W of able-bodied men at the arm crank (judged from Aminoff 1996), at 95 kgf of grip of both hands, in proportion
/// (judged); 74 W with paraplegia, and at most 40 W with tetraplegia (Haisma 2006).
///
/// # Example
/// ```
/// use boughline::climber::{Grip, Trunk, peak_power};
/// use boughline::quantity::Force;
///
/// let hand = Force::kilograms_force(47.5).in_newtons();
/// assert_eq!(peak_power(Grip { left: hand, right: hand }, Trunk::Steady, 1.0).round(), 107.0);
/// ```
#[must_use]
pub fn peak_power(grip: Grip, trunk: Trunk, over_grip: f64) -> f64 {
    let by_grip = over_grip * (grip.left + grip.right) / USUAL_GRIP.in_newtons();
    match trunk {
        Trunk::Steady => ABLE_POWER * by_grip,
        Trunk::Unsteady => PARAPLEGIC_POWER * by_grip,
        Trunk::Cervical => (PARAPLEGIC_POWER * by_grip).min(TETRAPLEGIC_POWER),
    }
}

/// What somebody's arms can do for a minute or two.
pub static ARM_POWER: Field<Power> = Field::new(Row {
    id: "armPower",
    noun: "greatest power of your arms",
    hint: "Only if you have it from an arm crank, in a test that rose until you stopped.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Power,
        least: 5.0,
        most: 400.0,
        example: 100.0,
        likely: None,
        bare: Some([WATT, WATT]),
    }),
    why: "Rowers and paddlers reach some 300 W (from memory); the rest is room (judged).",
    private: true,
});
