//! The length of one coil.

/// The thickness of a connector's metal, in metres.
///
/// # Source
/// Judged: carabiners of 10 to 13 mm are usual.
pub const CONNECTOR_STOCK: f64 = 0.012;

/// The girth on which the middle of a cord goes round a rope, with a bar beside it or without. In metres.
///
/// ```text
///    .--------.        half a circle round each, and straight across between them
///   (  O    o  )
///    '--------'
/// ```
///
/// # Source
/// Geometry, for a bar about as thick as the rope.
#[must_use]
pub fn girth(rope: f64, beside: f64, cord: f64) -> f64 {
    let across = if beside > 0.0 { rope + beside } else { 0.0 };
    let mean = if beside > 0.0 { (rope + beside) / 2.0 } else { rope };
    std::f64::consts::PI * (mean + cord) + across
}

/// One coil of a helix: once round, and so far along. In metres.
///
/// # Source
/// Geometry: a helix unrolled is the long side of a triangle.
///
/// # Example
/// ```
/// use boughline::hitch::{coil, girth};
///
/// // 6 mm cord on 11 mm rope.
/// assert_eq!((coil(girth(0.011, 0.0, 0.006), 0.006) * 1e5).round(), 5374.0);
/// ```
#[must_use]
pub fn coil(girth: f64, along: f64) -> f64 {
    (girth * girth + along * along).sqrt()
}
