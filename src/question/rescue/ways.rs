//! Every way to the ground for somebody who is stuck.

use super::answer::{Hauling, How, Way, Why};
use super::inputs::{Inputs, SecondRope};
use crate::ascent::SecondPerson;
use crate::descent::{NoChangeOver, Stage, change_over, total};
use crate::rope::Anchor;

/// Every way, in the order they are tried.
pub(super) fn ways(inputs: &Inputs, hauls: &[Hauling]) -> Vec<Way> {
    let mut ways = Vec::new();
    for how in [How::Oneself, How::LetDown, How::LiftedOff, How::SecondRope] {
        let stages = stages(inputs, hauls, how);
        let total = stages.as_ref().ok().map(|stages| total(stages, inputs.height));
        ways.push(Way { how, stages, total });
    }
    ways
}

fn stages(inputs: &Inputs, hauls: &[Hauling], how: How) -> Result<Vec<Stage>, Why> {
    let rig = &inputs.rig.rig;
    let hauled = rig.is_hauled();
    // Whoever hauls is there.
    let rescuer = hauled || inputs.second_person == Some(SecondPerson::Rescuer);
    let pays_out = inputs.pays_out();
    match how {
        How::Oneself => match change_over(rig) {
            Ok(_) => Ok(vec![Stage::ChangeOver, Stage::ComeDown]),
            Err(NoChangeOver::Hauled) => Err(Why::Hauled),
            Err(NoChangeOver::NoHitch) => Err(Why::NoHitch),
        },
        How::LetDown if inputs.anchor == Some(Anchor::Base) => Err(Why::PlainTie),
        How::LetDown if !pays_out => Err(Why::NothingOnTheGround),
        How::LetDown if !rescuer => Err(Why::Nobody),
        How::LetDown if inputs.is_too_short() => Err(Why::ShortRope),
        How::LetDown => Ok(vec![Stage::Notice, Stage::Unlock, Stage::Lower]),
        How::LiftedOff if pays_out => Err(Why::PaysOut),
        How::LiftedOff if inputs.anchor != Some(Anchor::Base) => Err(Why::NothingOnTheGround),
        How::LiftedOff if !rescuer => Err(Why::Nobody),
        How::LiftedOff if hauls.iter().all(|haul| haul.people.likely > 1.0) => Err(Why::TooHeavy),
        How::LiftedOff if inputs.is_too_short() => Err(Why::ShortRope),
        How::LiftedOff => Ok(vec![Stage::Notice, Stage::RigHaul, Stage::Lower]),
        How::SecondRope if !rescuer => Err(Why::Nobody),
        How::SecondRope => {
            let mut stages = vec![Stage::Notice];
            if inputs.second_rope != Some(SecondRope::InTheTree) {
                stages.push(Stage::SetRope);
            }
            stages.extend([Stage::GearUp, Stage::Climb, Stage::TakeOver, Stage::Lower]);
            Ok(stages)
        }
    }
}

/// The quickest that does not count on the climber.
pub(super) fn best(ways: &[Way]) -> Option<usize> {
    let mut best: Option<(usize, f64)> = None;
    for (at, way) in ways.iter().enumerate() {
        if let Some(total) = way.total.filter(|_| way.how != How::Oneself)
            && best.is_none_or(|(_, least)| total.likely < least)
        {
            best = Some((at, total.likely));
        }
    }
    best.map(|(at, _)| at)
}
