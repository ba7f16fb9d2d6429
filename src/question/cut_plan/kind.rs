//! Cords of one diameter and fibre, and what they can be cut out of.

use crate::cord::cutting::{Order, Stock};
use crate::cord::list::HankRow;
use crate::gear::Fibre;

/// A cord that is wanted.
#[derive(Debug, Clone, PartialEq)]
pub struct Wanted {
    /// What it is for; empty where nothing is said.
    pub name: String,
    /// The length it is cut to, in metres.
    pub length: f64,
}

/// Cords of one diameter and fibre, and what they can be cut out of.
#[derive(Debug, Clone, PartialEq)]
pub struct Kind {
    /// How thick, in tenths of a millimetre.
    pub diameter: u32,
    /// What they are made of.
    pub fibre: Fibre,
    /// Every single cord.
    pub cords: Vec<Wanted>,
    /// The hanks they can be cut out of.
    pub hanks: Vec<HankRow>,
    /// Whether those are only the usual ones, for want of any that were said.
    pub is_usual: bool,
}

/// Tenths of a millimetre in a metre, by definition.
pub(super) const TENTHS: f64 = 10_000.0;

/// What is longer by less came of converting, in tenths of a millimetre (judged).
const CONVERTED: f64 = 1e-3;

/// A length in whole tenths of a millimetre, no shorter than it is: a cord must not come out short.
pub(super) fn at_least(metres: f64) -> u32 {
    (metres * TENTHS - CONVERTED).ceil() as u32
}

/// A length in whole tenths of a millimetre, no longer than it is: a hank must not promise more.
fn at_most(metres: f64) -> u32 {
    (metres * TENTHS + CONVERTED).floor() as u32
}

impl Kind {
    /// What is to be cut out of what.
    pub(super) fn order(&self, kerf: f64, end: f64) -> Order {
        let (mut cords, mut stocks) = (Vec::new(), Vec::new());
        for cord in &self.cords {
            cords.push(at_least(cord.length));
        }
        for hank in &self.hanks {
            stocks.push(Stock { length: at_most(hank.length), price: hank.price, limit: hank.limit });
        }
        Order { cords, stocks, kerf: at_least(kerf), end: at_least(end) }
    }
}
