//! From the words of the notation to a rig.

use super::super::{Body, BodyKind, Fault, Rig, Rope, Stop};
use super::names::{name_turns, ordinal};
use super::pieces::said;
use super::stop::{Does, OwnRope, OwnStop, Place};
use super::{Mistake, Wrong, written};
use crate::field::{Reading, Said, Value};
use crate::gear::TurnKind;
use crate::quantity::{Length, Quantity, Ratio};
use std::sync::Arc;

/// What a turn of somebody's own rig is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OwnTurn {
    /// What the rope turns round.
    pub kind: TurnKind,
    /// The share it keeps, where that was said in place of the kind.
    pub own: Option<Ratio>,
}

/// Somebody's own rig.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnRig {
    /// The rig.
    pub rig: Arc<Rig>,
    /// What it was said in, with the kinds of turns of which nothing was said.
    pub ropes: Vec<OwnRope>,
    /// Its turns, in the order they are numbered.
    pub turns: Vec<OwnTurn>,
    /// What its helpers pull, in newtons, in the order they are numbered.
    pub help: Vec<f64>,
}

impl Value for OwnRig {
    fn of(reading: Reading) -> Option<Self> {
        match reading {
            Reading::Text(text) => read(&text).ok(),
            _ => None,
        }
    }

    fn into_said(self) -> Said {
        Said::Text(written(&self.ropes))
    }
}

/// The rig that a text says, in either form.
///
/// # Errors
/// The first [`Mistake`], by lines and stops; one of the whole last.
///
/// # Example
/// ```
/// use boughline::reeving::notation::{Wrong, read};
///
/// assert_eq!(read("tied tree, hitch climber, hand climber").map(|own| own.rig.ropes().len()), Ok(1));
/// let mistake = read("tied trea, hand climber").unwrap_err();
/// assert_eq!((mistake.word.as_str(), mistake.wrong), ("trea", Wrong::NotAPlace));
/// ```
pub fn read(text: &str) -> Result<OwnRig, Mistake> {
    rig_of(said(text)?)
}

/// The rig that words of the notation say.
pub(super) fn rig_of(mut ropes: Vec<OwnRope>) -> Result<OwnRig, Mistake> {
    let mut named = [false; Place::ALL.len()];
    for stop in ropes.iter().flat_map(|rope| &rope.stops) {
        if let Some(named) = named.get_mut(stop.on as usize) {
            *named = true;
        }
    }
    let mut own = Making { named, turns: Vec::new(), help: Vec::new(), has_hand: false };
    let mut made = Vec::new();
    for rope in &mut ropes {
        let far = rope.stops.iter().any(|stop| matches!(stop.on, Place::Tree | Place::Ground));
        let noun = match made.len() {
            0 => "climbing rope".into(),
            // What comes down from the tree is no haul cord.
            before if far => ordinal(before, "rope"),
            before => ordinal(before - 1, "haul cord"),
        };
        made.push(Rope::new(noun, own.stops(rope)?));
    }
    let mut bodies = Vec::new();
    let mut kinds: &[BodyKind] = &[BodyKind::Tree, UPPER, UPPER, UPPER, UPPER, BodyKind::Climber, BodyKind::Ground];
    for (place, named) in Place::OPTIONS.iter().zip(&named) {
        if let Some((kind, rest)) = kinds.split_first() {
            kinds = rest;
            if *named {
                bodies.push(Body::new(*kind, if *kind == BodyKind::Tree { "crotch" } else { place.noun }));
            }
        }
    }
    let whole = |wrong| Mistake { line: 1, stop: 1, word: String::new(), wrong };
    match Rig::new(bodies, made) {
        Ok(mut rig) => {
            name_turns(&mut rig);
            Ok(OwnRig { rig: Arc::new(rig), ropes, turns: own.turns, help: own.help })
        }
        Err(Fault::TooLarge) => Err(whole(Wrong::TooLarge)),
        // Everything else has been looked at.
        Err(_) => Err(whole(Wrong::NoClimber)),
    }
}

const UPPER: BodyKind = BodyKind::Carriage;

/// A rig that is being made.
struct Making {
    /// Which places any stop is on.
    named: [bool; Place::ALL.len()],
    turns: Vec<OwnTurn>,
    help: Vec<f64>,
    has_hand: bool,
}

impl Making {
    /// The stops of a rope, with its loose tails.
    fn stops(&mut self, rope: &mut OwnRope) -> Result<Vec<Stop>, Mistake> {
        let mut stops = Vec::new();
        let count = rope.stops.len();
        for (at, own) in rope.stops.iter_mut().enumerate() {
            let is_end = at == 0 || at + 1 == count;
            if at == 0 && own.does != Does::Tied {
                stops.push(Stop::free());
            }
            let made = if own.does == Does::Tied && !is_end { Err(Wrong::TiedOnTheWay) } else { self.stop(own) };
            stops.push(made.map_err(|wrong| Mistake {
                line: rope.line,
                stop: at + 1,
                word: culprit(own, &wrong),
                wrong,
            })?);
            if at + 1 == count && (own.does != Does::Tied || count == 1) {
                stops.push(Stop::free());
            }
        }
        Ok(stops)
    }

    /// One stop; the kind of a turn of which nothing was said is written down in it.
    fn stop(&mut self, own: &mut OwnStop) -> Result<Stop, Wrong> {
        let body = self.body(own.on)?;
        if own.does.amount().is_none() && !own.with.is_empty() {
            return Err(Wrong::TooMuch);
        }
        Ok(match own.does {
            Does::Tied => Stop::tied(body, own.on.tie()),
            Does::Hitch => Stop::hitch(body, own.on.hitch()),
            Does::Backup => Stop::backup_hitch(body, "second hitch"),
            Does::Hand => {
                if !matches!(own.on, Place::Climber | Place::Ground) {
                    return Err(Wrong::NotByHand);
                }
                if std::mem::replace(&mut self.has_hand, true) {
                    return Err(Wrong::SecondHand);
                }
                Stop::hand(body, if own.on == Place::Ground { "helper" } else { "hands" })
            }
            Does::Helper => {
                if !matches!(own.on, Place::Tree | Place::Ground) {
                    return Err(Wrong::NotByHelper);
                }
                self.help.push(amount(own)?);
                Stop::helper(body, "helper")
            }
            Does::Knot => Stop::knot(body, Length::from_si(amount(own)?), "knot"),
            Does::Turn => {
                self.turns.push(turn(own)?);
                Stop::turn(body, "turn")
            }
        })
    }

    /// The body of a place, by its place among those that are named.
    fn body(&self, on: Place) -> Result<usize, Wrong> {
        let mut body = 0;
        for (place, named) in self.named.iter().enumerate().take(on as usize) {
            body += usize::from(*named);
            let moves = place >= Place::Upper as usize && place < Place::Climber as usize;
            if moves && !named && (on as usize) < Place::Climber as usize {
                return Err(Wrong::Skips);
            }
        }
        Ok(body)
    }
}

/// The word that is wrong in a stop.
fn culprit(stop: &OwnStop, wrong: &Wrong) -> String {
    match wrong {
        Wrong::Skips | Wrong::NotByHand | Wrong::NotByHelper => stop.on.named().id.to_owned(),
        Wrong::NotATurn | Wrong::NotAnAmount { .. } | Wrong::TooMuch => stop.with.clone(),
        _ => stop.does.named().id.to_owned(),
    }
}

/// What a turn is.
fn turn(own: &mut OwnStop) -> Result<OwnTurn, Wrong> {
    let usual = if own.on == Place::Tree { TurnKind::Bark } else { TurnKind::BearingPulley };
    if own.with.is_empty() {
        usual.named().id.clone_into(&mut own.with);
    }
    if own.with.bytes().next().is_some_and(|first| first.is_ascii_alphabetic()) {
        let kind = own.kind().ok_or(Wrong::NotATurn)?;
        kind.named().id.clone_into(&mut own.with);
        return Ok(OwnTurn { kind, own: None });
    }
    Ok(OwnTurn { kind: usual, own: Some(Ratio::new(amount(own)?)) })
}

/// The amount of a stop, in SI.
fn amount(own: &OwnStop) -> Result<f64, Wrong> {
    let Some(row) = own.does.amount() else { return Err(Wrong::TooMuch) };
    if own.with.is_empty() {
        return Err(Wrong::NoAmount { row });
    }
    match row.reading(&Said::Text(own.with.clone())) {
        Ok(Reading::Si(si)) => Ok(si),
        Ok(_) => Err(Wrong::NoAmount { row }),
        Err(refusal) => Err(Wrong::NotAnAmount { row, refusal: Box::new(refusal) }),
    }
}
