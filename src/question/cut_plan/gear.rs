//! The rig of the plan, and what it takes beside rope and cords: turns and connectors.

use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::gear::{LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS};
use crate::reeving::{BACKUP, Backup, BackupKind, BodyKind, OWN_RIG, RIG, Rig, RigName, What};
use std::sync::Arc;

/// What a rig takes beside rope, harness and cords.
#[derive(Debug, Clone, PartialEq)]
pub struct Gear {
    /// How many turns of each kind; bark is no gear.
    pub turns: Vec<(TurnKind, usize)>,
    /// How many hitches it has, each with a cord of its own.
    pub hitches: usize,
    /// How many connectors at the most: one for each hitch and each pulley or ring.
    pub connectors: usize,
}

/// The rig that was said, and what its ropes turn round; none where none was said.
pub(super) fn rigged(reader: &mut Reader<'_>) -> Option<(Arc<Rig>, Vec<TurnKind>)> {
    let mut kinds: Vec<[Option<TurnKind>; 3]> = Vec::new();
    for fields in [std::slice::from_ref(&TOP_TURN), &UPPER_TURNS, &LOWER_TURNS] {
        kinds.push(chosen(reader, fields));
    }
    let (own, backup) = (reader.maybe(&OWN_RIG), reader.chosen(&BACKUP));
    let name = reader.maybe(&RIG)?;
    if name == RigName::Own {
        if !reader.says(&OWN_RIG.row) {
            reader.note(Error::of(OWN_RIG.row.id, Reason::Needed));
        }
        let own = own?;
        let mut turns = Vec::new();
        for turn in own.turns {
            turns.push(turn.kind);
        }
        return Some((own.rig, turns));
    }
    // A knot takes no cord.
    let second = backup == Some(BackupKind::SecondHitch);
    let rig = name.rig(if second { Backup::SecondHitch } else { Backup::None }).ok()?;
    let turns = turns(&rig, &kinds);
    Some((Arc::new(rig), turns))
}

/// What was chosen for the turns of a body, from the hand; further ones are like the first unless said.
fn chosen(reader: &mut Reader<'_>, fields: &'static [TurnFields]) -> [Option<TurnKind>; 3] {
    let mut kinds = [None; 3];
    let mut first = None;
    for (kind, field) in kinds.iter_mut().zip(fields) {
        *kind = if first.is_none() { reader.chosen(&field.kind) } else { reader.maybe(&field.kind).or(first) };
        first = first.or(*kind);
    }
    kinds
}

/// What the turns of a rig are.
fn turns(rig: &Rig, kinds: &[[Option<TurnKind>; 3]]) -> Vec<TurnKind> {
    let (mut turns, mut met) = (Vec::new(), [0; 3]);
    for (rope, at) in rig.turns_from_hand() {
        let stop = rig.ropes().get(rope).and_then(|rope| rope.stops.get(at));
        let body = match stop.and_then(|stop| rig.kind_at(stop)) {
            Some(BodyKind::Tree) => 0,
            Some(BodyKind::Carriage) => 1,
            _ => 2,
        };
        if let (Some(kinds), Some(met)) = (kinds.get(body), met.get_mut(body)) {
            let [first, ..] = kinds;
            turns.extend(kinds.get(*met).copied().flatten().or(*first));
            *met += 1;
        }
    }
    turns
}

/// What the rig takes beside rope, harness and cords.
pub(super) fn counted(rig: &Rig, turns: &[TurnKind]) -> Gear {
    let mut gear = Gear { turns: Vec::new(), hitches: 0, connectors: 0 };
    for kind in turns {
        if *kind == TurnKind::Bark {
            continue;
        }
        // A carabiner is its own connector.
        gear.connectors += usize::from(*kind != TurnKind::Carabiner);
        match gear.turns.iter_mut().find(|(known, _)| known == kind) {
            Some((_, count)) => *count += 1,
            None => gear.turns.push((*kind, 1)),
        }
    }
    for stop in rig.stops() {
        gear.hitches += usize::from(matches!(stop.what, What::Hitch(_)));
    }
    gear.connectors += gear.hitches;
    gear
}
