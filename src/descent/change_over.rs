//! The change from going up to going down.

use super::share::BRAKE_NOUN;
use super::step::{Does, Step};
use crate::quantity::Length;
use crate::reeving::{Body, BodyKind, Rig, Rope, Stop, What};

/// The rope between the hitch and the knot below it, in metres (judged, from 0.2 to 1).
pub const TO_THE_KNOT: f64 = 0.3;

/// The rope to the next knot further down, in metres: every few metres is common practice, no source.
pub const TO_THE_NEXT: f64 = 3.0;

/// Why somebody cannot change over on a rig.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoChangeOver {
    /// Somebody on the ground hauls, and lets them down again.
    Hauled,
    /// No hitch of theirs is on the climbing rope.
    NoHitch,
}

/// The climber's rope, from the tree to the hitch, without whatever moves on it.
struct Line<'a> {
    rig: &'a Rig,
    rope: usize,
    /// Its stops from the anchor on, the hitch last.
    up: Vec<Stop>,
    /// Whether the rope was written from its other end.
    turned: bool,
    /// Where the hitch is on the rope as written.
    hitch: usize,
}

fn line(rig: &Rig) -> Result<Line<'_>, NoChangeOver> {
    if rig.is_hauled() {
        return Err(NoChangeOver::Hauled);
    }
    for (rope, stops) in rig.ropes().iter().map(|rope| &rope.stops).enumerate() {
        let Some(hitch) = stops.iter().position(|stop| rig.is_main_hitch(stop)) else { continue };
        let on_tree = |stop: &Stop| rig.kind_at(stop) == Some(BodyKind::Tree);
        let turned = !stops.iter().take(hitch).any(on_tree);
        let mut up: Vec<Stop> = Vec::new();
        for at in 0..stops.len() {
            let at = if turned { stops.len() - 1 - at } else { at };
            let Some(stop) = stops.get(at) else { continue };
            let goes = matches!(stop.what, What::Hand | What::Helper(_))
                || rig.kind_at(stop) == Some(BodyKind::Carriage)
                || stop.what == What::Free && !up.is_empty();
            if !goes {
                up.push(stop.clone());
            }
            if at == hitch {
                break;
            }
        }
        return Ok(Line { rig, rope, up, turned, hitch });
    }
    Err(NoChangeOver::NoHitch)
}

impl Line<'_> {
    /// The climber, as a place among the bodies that are left.
    fn climber(&self) -> usize {
        usize::from(self.rig.body(BodyKind::Tree).is_some())
    }

    /// The rig without carriages, its rope going on below the hitch with these stops.
    fn then(&self, below: &[Stop]) -> Option<Rig> {
        let (mut bodies, mut places): (Vec<Body>, Vec<Option<usize>>) = (Vec::new(), Vec::new());
        for body in self.rig.bodies() {
            let stays = body.kind != BodyKind::Carriage;
            places.push(stays.then_some(bodies.len()));
            if stays {
                bodies.push(body.clone());
            }
        }
        let mut stops = Vec::new();
        for stop in &self.up {
            let body = stop.body.and_then(|body| places.get(body).copied().flatten());
            stops.push(Stop { body, ..stop.clone() });
        }
        stops.extend_from_slice(below);
        stops.push(Stop::free());
        let noun = self.rig.ropes().get(self.rope)?.noun.clone();
        Rig::new(bodies, vec![Rope::new(noun, stops)]).ok()
    }

    /// The rig as it is climbed on, with a knot below its hitch.
    fn backed_up(&self) -> Option<Rig> {
        let mut ropes = self.rig.ropes().to_vec();
        let climber = self.rig.body(BodyKind::Climber)?;
        let at = if self.turned { self.hitch } else { self.hitch + 1 };
        ropes.get_mut(self.rope)?.stops.insert(at, knot(climber, TO_THE_KNOT));
        Rig::new(self.rig.bodies().to_vec(), ropes).ok()
    }
}

fn knot(climber: usize, slack: f64) -> Stop {
    Stop::knot(climber, Length::metres(slack), "knot in the tail")
}

/// The rig on the way down: what moved on the rope is off, and below the hitch stands the brake, its tail in the hand.
///
/// # Errors
/// Why nobody goes down on it by themselves.
pub fn going_down(rig: &Rig) -> Result<Rig, NoChangeOver> {
    let line = line(rig)?;
    let climber = line.climber();
    line.then(&[Stop::turn(climber, BRAKE_NOUN), Stop::hand(climber, "brake hand")]).ok_or(NoChangeOver::NoHitch)
}

/// The steps from hanging at the top to going down.
///
/// # Guarantees
/// Each is sound: [`Step::is_sound`].
///
/// # Errors
/// Why nobody changes over on it.
///
/// # Source
/// Two attachments at each step, or one while nothing is moved, none of them a hand; the new one is weighted and watched
/// before the old one is opened; the upper hitch comes off first: common practice, no source.
///
/// # Example
/// ```
/// use boughline::descent::change_over;
/// use boughline::reeving::{Backup, RigName};
///
/// let steps = change_over(&RigName::TailThree.rig(Backup::None)?).unwrap_or_default();
/// assert!(steps.len() == 7 && steps.iter().all(|step| step.is_sound()));
/// # Ok::<(), boughline::reeving::Fault>(())
/// ```
pub fn change_over(rig: &Rig) -> Result<Vec<Step>, NoChangeOver> {
    let line = line(rig)?;
    steps(&line).ok_or(NoChangeOver::NoHitch)
}

fn steps(line: &Line<'_>) -> Option<Vec<Step>> {
    let climber = line.climber();
    let tied_off = || Stop::hitch(climber, "tied-off brake");
    let in_hand = [Stop::turn(climber, BRAKE_NOUN), Stop::hand(climber, "brake hand")];
    let near = || knot(climber, TO_THE_KNOT);
    let mut steps = Vec::new();
    let mut step = |does, rig: Rig, moved: &dyn Fn(&Rig, &Stop) -> bool| {
        let mut places = Vec::new();
        for (at, rope) in rig.ropes().iter().enumerate() {
            for (place, stop) in rope.stops.iter().enumerate() {
                if moved(&rig, stop) {
                    places.push((at, place));
                }
            }
        }
        steps.push(Step { does, rig, moved: places });
    };
    let nothing = |_: &Rig, _: &Stop| false;
    step(Does::Rest, line.rig.clone(), &nothing);
    step(Does::BackUp, line.rig.clone(), &nothing);
    if line.rig.body(BodyKind::Carriage).is_some() {
        step(Does::TakeOff, line.backed_up()?, &|rig, stop| rig.kind_at(stop) == Some(BodyKind::Carriage));
    }
    step(Does::SetBrake, line.then(&[near()])?, &nothing);
    // The hitch is the climber's own, the first there; what is tied off stands below it.
    step(Does::WeighBrake, line.then(&[tied_off(), near()])?, &|rig, stop| {
        matches!(stop.what, What::Hitch(_))
            && stop.noun != tied_off().noun
            && rig.kind_at(stop) == Some(BodyKind::Climber)
    });
    step(Does::FreeBrake, line.then(&[tied_off(), near()])?, &|_, stop| stop.noun == tied_off().noun);
    let [brake, hand] = in_hand;
    let next = Stop { noun: "next knot".into(), ..knot(climber, TO_THE_NEXT) };
    step(Does::MoveKnot, line.then(&[brake, hand, near(), next])?, &|_, stop| stop.noun == near().noun);
    Some(steps)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::descent::Attached;
    use crate::reeving::{Backup, RigName, is_held};

    fn own(name: RigName) -> Vec<Step> {
        change_over(&name.rig(Backup::None).unwrap()).unwrap()
    }

    #[test]
    fn every_step_on_every_rig_that_one_climbs_on_alone_is_sound() {
        let mut seen = 0;
        for name in RigName::CATALOGUE {
            let rig = name.rig(Backup::None).unwrap();
            match change_over(&rig) {
                Ok(steps) => {
                    for step in &steps {
                        assert!(step.is_sound(), "{name:?} {:?}: {:?}", step.does, step.attached());
                        seen += 1;
                    }
                }
                Err(why) => assert_eq!(why, NoChangeOver::Hauled, "{name:?}"),
            }
        }
        assert!(seen >= 9 * 6, "{seen}");
    }

    /// The three that go wrong, each at its step.
    #[test]
    fn a_wrong_order_is_caught_at_the_step_that_is_wrong() {
        let steps = own(RigName::TailThree);
        let at = |does: Does| steps.iter().find(|step| step.does == does).unwrap().clone();

        // The upper hitch comes off with no knot tied: the one hitch is all there is, and something is moved.
        let mut no_knot = at(Does::TakeOff);
        no_knot.moved.extend(places(&no_knot.rig, "knot in the tail"));
        assert_eq!((no_knot.attached(), no_knot.is_sound()), (Attached::One, false));

        // The hitch is eased over a brake that only a hand holds, and no knot: nothing holds.
        let rig = line(&RigName::TailThree.rig(Backup::None).unwrap()).map(|line| {
            let climber = line.climber();
            line.then(&[Stop::turn(climber, BRAKE_NOUN), Stop::hand(climber, "brake hand")]).unwrap()
        });
        let rig = rig.unwrap_or_else(|why| panic!("{why:?}"));
        assert!(is_held(&rig));
        let hitch = places(&rig, "lower hitch");
        assert_eq!(hitch.len(), 1);
        let by_hand = Step { does: Does::WeighBrake, rig, moved: hitch };
        assert_eq!((by_hand.attached(), by_hand.is_sound()), (Attached::None, false));

        // The knot is undone before the next is tied.
        let mut early = at(Does::MoveKnot);
        early.moved.extend(places(&early.rig, "next knot"));
        assert_eq!((early.attached(), early.is_sound()), (Attached::One, false));
    }

    fn places(rig: &Rig, noun: &str) -> Vec<(usize, usize)> {
        let mut found = Vec::new();
        for (at, rope) in rig.ropes().iter().enumerate() {
            for (place, stop) in rope.stops.iter().enumerate() {
                if stop.noun == noun {
                    found.push((at, place));
                }
            }
        }
        found
    }
}
