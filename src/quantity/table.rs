//! Every dimension's row, and every unit by what people call it.

use super::unit::{Family, Unit};
use super::{Dimension, angle, count, duration, energy, force, length, mass, power, ratio, speed};

/// The row of a dimension.
pub(super) const fn family(dimension: Dimension) -> &'static Family {
    match dimension {
        Dimension::Length => &length::FAMILY,
        Dimension::Mass => &mass::FAMILY,
        Dimension::Force => &force::FAMILY,
        Dimension::Angle => &angle::FAMILY,
        Dimension::Duration => &duration::FAMILY,
        Dimension::Energy => &energy::FAMILY,
        Dimension::Power => &power::FAMILY,
        Dimension::Speed => &speed::FAMILY,
        Dimension::Ratio => &ratio::FAMILY,
        Dimension::Count => &count::FAMILY,
    }
}

/// Every unit, by dimension.
pub fn units() -> impl Iterator<Item = &'static Unit> {
    Dimension::ALL.into_iter().flat_map(|dimension| family(dimension).units).copied()
}

/// The unit with this canonical symbol.
///
/// # Example
///
/// ```
/// use boughline::quantity::unit;
///
/// assert_eq!(unit("ft").map(|foot| foot.size), Some(0.3048));
/// assert_eq!(unit("feet"), None);
/// ```
#[must_use]
pub fn unit(symbol: &str) -> Option<&'static Unit> {
    units().find(|unit| unit.symbol == symbol)
}

/// The units of a dimension.
pub(crate) const fn units_of(dimension: Dimension) -> &'static [&'static Unit] {
    family(dimension).units
}

/// The unit of a dimension whose size is one, if it has one.
pub(crate) const fn si_unit(dimension: Dimension) -> Option<&'static Unit> {
    family(dimension).si
}

/// The unit that people write `word`: in exactly these letters, or in any case where that leaves only one.
pub(super) fn unit_written(word: &str) -> Option<&'static Unit> {
    for is_it in [Unit::is_written, Unit::is_written_in_any_case] {
        let mut found = None;
        for dimension in Dimension::ALL {
            for unit in units_of(dimension) {
                if is_it(unit, word) {
                    if found.is_some() {
                        return None;
                    }
                    found = Some(*unit);
                }
            }
        }
        if found.is_some() {
            return found;
        }
    }
    None
}
