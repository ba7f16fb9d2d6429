//! Somebody's own rig, worked out as far as it does not depend on figures that vary.

use super::reeved::{By, Reeved, TurnFact, drags, draw, give, places};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::{Said, Spread};
use crate::gear::kept_by;
use crate::reeving::{Balance, Drive, Fault, Losses, OWN_RIG, OwnRig, Phase, RigName, kinematics};

/// The rig, if it moves and balances whether its turns lose much, something or little.
pub(super) fn own_rig(own: &OwnRig, drag: Spread) -> Result<Reeved, Fault> {
    let rig = &own.rig;
    let motion = kinematics(rig, &Phase::pull(rig))?;
    let (mut turns, mut draws) = (Vec::new(), Vec::new());
    for (turn, (body, place)) in own.turns.iter().zip(places(rig)) {
        let by = if turn.own.is_some() { By::Own } else { By::Kind };
        turns.push(TurnFact { kind: turn.kind, kept: kept_by(turn.kind, turn.own), by });
        draws.push(draw(body, place));
    }
    let balance = Balance::of(rig, &motion);
    let ends: [fn(Spread) -> f64; 3] = [|spread| spread.likely, |spread| spread.low, |spread| spread.high];
    for end in ends {
        let mut losses = Losses::none(rig);
        for (kept, turn) in losses.turns.iter_mut().zip(&turns) {
            *kept = end(turn.kept);
        }
        for kept in &mut losses.hitches {
            *kept = end(drag);
        }
        balance.forces(&losses, &Drive::Pull(1.0, Vec::new()))?;
        if !own.help.is_empty() {
            balance.forces(&losses, &Drive::Pull(0.0, own.help.clone()))?;
        }
    }
    Ok(Reeved {
        name: RigName::Own,
        drags: drags(rig, &motion, &balance),
        give: give(rig, &balance),
        rig: own.rig.clone(),
        motion,
        balance,
        help: own.help.clone(),
        turns,
        places: draws,
        // A knot has the rope that was said.
        slack: Spread::point(1.0),
        drag,
    })
}

/// Notes what keeps somebody's own rig from being worked out, where its text does not.
pub(super) fn needed(reader: &mut Reader<'_>, own: Option<&OwnRig>, drag: Option<Spread>) {
    if !reader.says(&OWN_RIG.row) {
        reader.note(Error::of(OWN_RIG.row.id, Reason::Needed));
    }
    if let (Some(own), Some(drag)) = (own, drag)
        && let Err(fault) = own_rig(own, drag)
        && let Some(Said::Text(said)) = reader.said(&OWN_RIG.row)
    {
        let said = said.clone();
        reader.note(Error::of(OWN_RIG.row.id, Reason::ImpossibleRig { said, fault }));
    }
}
