//! From inputs to an answer.

use super::{Answer, Caution, Inputs};
use crate::ascent::CLIMBING_PEAK;
use crate::cord::{Asked, CordUse, Piece, Place, Told};
use crate::field::Spread;
use crate::gear::{Ends, Fibre, Knot, LEAST_LIFE_CORD, cord_minimum};
use crate::quantity::{Force, Length, MILLIMETRE, Mass, Quantity};

/// What length of cord it takes.
///
/// # Guarantees
/// Total, and the same bits for the same inputs on every machine: nothing is sampled.
#[must_use]
pub fn ask(inputs: &Inputs) -> Answer {
    let Told { cord_use, asked, make, cut, usual } = &inputs.told;
    let straight = inputs.labelled.or_else(|| cord_minimum(Length::metres(make.cord)));
    let strength = straight.map(|straight| strength(inputs, straight));
    let weight = inputs.body_mass.map(|body| {
        let all_up = |kit: f64| (body + Mass::kilograms(kit)).weight().in_newtons();
        let kit = inputs.kit_mass;
        Spread::new(all_up(kit.low), all_up(kit.likely), all_up(kit.high))
    });
    let peak = weight.map(|weight| {
        let jerk = CLIMBING_PEAK;
        Spread::new(weight.low * jerk.low, weight.likely * jerk.likely, weight.high * jerk.high)
    });
    let mut answer = Answer {
        cord_use: *cord_use,
        asked: *asked,
        make: *make,
        cut: cut.clone(),
        finished: make.finished(cut),
        assumed: inputs.assumed.clone(),
        usual: usual.clone(),
        strands: inputs.strands,
        fibre: inputs.fibre,
        straight,
        strength,
        weight,
        peak,
        cautions: Vec::new(),
    };
    answer.cautions = cautions(&answer);
    answer
}

/// What it bears as it is tied, in newtons: both strands of a loop or of a hitch's two legs, as
/// [`loop_strength`](crate::gear::loop_strength) has it; one of anything else.
fn strength(inputs: &Inputs, straight: Force) -> Spread {
    let knot = if inputs.told.make.ends == Ends::Sewn { Knot::Eye } else { Knot::Any };
    let strands = if inputs.told.make.pattern.legs > 1 { 2.0 } else { 1.0 };
    knot.kept(inputs.fibre).scaled(straight.si() * strands)
}

/// The thinnest climbing line, whose rules ask for more.
///
/// # Source
/// California Title 8, section 3422: at least 1/2 in, 7/16 in under conditions, which is 11 mm to the millimetre; working
/// rope of 10 to 14 mm: HSE leaflet AFAG401. The more cautious of the two.
pub const LEAST_LINE: f64 = 0.011;
/// Cord over rope: from memory.
pub const RATIO: [f64; 2] = [0.6, 0.8];
/// The least that cord is thinner than rope: read, see `MOUNTAIN_PAGES`.
pub const LEAST_DIFFERENCE: f64 = MILLIMETRE.si(2.0);
/// A diameter that was said in another unit comes back with a rounding.
const ROUNDING: f64 = 1e-9;

fn cautions(answer: &Answer) -> Vec<Caution> {
    let (make, cord_use) = (&answer.make, answer.cord_use);
    let mut cautions = vec![Caution::Arithmetic];
    // A garda has no coils, and whoever hangs on it hangs on how it was set all the same.
    if cord_use.is_hitch() || cord_use == CordUse::Garda {
        cautions.push(Caution::SetDressTest);
    }
    if cord_use.is_hitch() {
        let ratio = make.cord / make.rope;
        // Blake's is tied with the line's own tail, or a cord as thick (read).
        let alike = cord_use == CordUse::Blakes && ratio <= 1.0 + ROUNDING;
        let thick = ratio > RATIO[1] + ROUNDING || make.rope - make.cord < LEAST_DIFFERENCE - ROUNDING;
        if thick && !alike {
            cautions.push(Caution::TooThick(ratio));
        } else if ratio < RATIO[0] - ROUNDING {
            cautions.push(Caution::TooThin(ratio));
        }
    }
    if !cord_use.is_for_life() {
        cautions.push(Caution::NoLifeLine);
    } else if make.cord < LEAST_LIFE_CORD.si() - ROUNDING {
        cautions.push(Caution::ThinLifeCord);
    }
    if cord_use.is_hitch() {
        if make.rope < LEAST_LINE - ROUNDING {
            cautions.push(Caution::ThinRope);
        }
        cautions.push(Caution::Melts(answer.fibre));
    }
    if matches!(answer.fibre, Fibre::Aramid | Fibre::Hmpe) {
        cautions.push(Caution::Stiff);
    }
    if let (Some(strength), Some(peak)) = (answer.strength, answer.peak)
        && strength.low < peak.high
    {
        cautions.push(Caution::Weak);
    }
    if answer.straight.is_none() {
        cautions.push(Caution::NoStandard);
    }
    if cord_use.is_hitch() {
        cautions.push(Caution::Coils);
    }
    if make.ends == Ends::Sewn {
        cautions.push(Caution::SewnEyes);
    } else if answer.asked == Asked::Length && cord_use != CordUse::HaulCord {
        cautions.push(Caution::TrimLater);
    }
    let leg = |place| {
        let found = answer.cut.pieces.iter().find(|(piece, at, _)| *piece == Piece::Leg && *at == place);
        found.map_or(0.0, |(.., length)| length.likely)
    };
    let (first, second) = (leg(Place::First), leg(Place::Second));
    // A diameter more or less is none.
    if make.pattern.legs > 1 && (first - second).abs() > make.cord {
        cautions.push(Caution::UnlikeLegs);
    }
    cautions
}
