//! Which length of rope to buy.

use super::{Course, Ladder, need_begun};
use crate::field::Spread;
use crate::quantity::{CENTIMETRE, INCH, System};

/// What one can buy. In metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Stock {
    /// What is needed, as it is measured out.
    pub need: Spread,
    /// The lengths to choose from.
    pub ladder: Ladder,
    /// The shortest that reaches if everything takes the most it may.
    pub buy: Option<f64>,
    /// The shortest that reaches as likely as not, where that is a shorter one.
    pub might_do: Option<f64>,
}

/// What one can buy for these courses, where metres and where feet are sold; of the lengths that were said, if they were.
#[must_use]
pub fn stock(courses: &[Course], said: Option<&Ladder>) -> [Stock; 2] {
    [(System::Si, CENTIMETRE), (System::Us, INCH)].map(|(system, unit)| {
        let need = need_begun(courses, unit);
        let ladder = said.cloned().unwrap_or_else(|| Ladder::usual(system));
        let buy = ladder.enough(need.high);
        let might_do = ladder.enough(need.likely).filter(|length| Some(*length) != buy);
        Stock { need, ladder, buy, might_do }
    })
}
