//! What a knot leaves of the strength of its cord or rope.

use super::Fibre;
use crate::field::Spread;

/// A knot, as far as published strengths tell them apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Knot {
    /// Any knot but those below: figure-eights, bowlines, fisherman's knots, hitches round a bar.
    Any,
    /// An overhand knot.
    Overhand,
    /// A sewn or spliced eye.
    Eye,
}

impl Knot {
    /// The share of strength that is kept.
    ///
    /// # Source
    /// To plan on 0.50 for any knot (Delaney 2022, p. 30), 0.45 for an overhand (FM 3-05.70, appendix G), and 0.40 of any
    /// in aramid or HMPE (a figure-eight in aramid: Moyer, Tusting and Harmston, ITRS 2000). Up to 0.92 was measured (a
    /// figure-eight in 7 mm nylon, the same), 0.618 for the best of five (Saez and others, Symmetry 16(2):167, 2024).
    /// An eye 0.95 (1964 US table, natural fibre, quoted), as low as 0.85 (judged). Material moves it more than the knot.
    #[must_use]
    pub const fn kept(self, fibre: Fibre) -> Spread {
        match (self, fibre) {
            (Self::Eye, _) => Spread::new(0.85, 0.95, 0.95),
            (_, Fibre::Aramid | Fibre::Hmpe) => Spread::new(0.40, 0.40, 0.62),
            (Self::Overhand, _) => Spread::new(0.45, 0.45, 0.62),
            (Self::Any, _) => Spread::new(0.50, 0.50, 0.92),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_knot_keeps_more_than_all_and_stiff_fibres_keep_least() {
        for knot in [Knot::Any, Knot::Overhand, Knot::Eye] {
            for fibre in Fibre::ALL {
                let kept = knot.kept(*fibre);
                assert!(0.0 < kept.low && kept.low <= kept.likely && kept.likely <= kept.high && kept.high < 1.0);
            }
            assert!(knot.kept(Fibre::Aramid).likely <= knot.kept(Fibre::Nylon).likely);
        }
    }
}
