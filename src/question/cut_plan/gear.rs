//! What else the rig of the plan takes: turns, connectors, hitches; and its haul cord.

use super::kind::Wanted;
use crate::cord::{CordUse, HAND_END, Make, Wanted as Length, haul_strands};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::gear::{HAUL_CORD, LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS};
use crate::quantity::{MILLIMETRE, Quantity};
use crate::reeving::{Backup, BodyKind, OWN_RIG, RIG, Rig, RigName, What};

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

/// The gear of the rig that was said, and its haul cord with its diameter in tenths of a millimetre; none where no rig
/// was said, or no diameter.
pub(super) fn gear(reader: &mut Reader<'_>) -> (Option<Gear>, Option<(u32, Wanted)>) {
    let mut kinds: Vec<[Option<TurnKind>; 3]> = Vec::new();
    for fields in [std::slice::from_ref(&TOP_TURN), &UPPER_TURNS, &LOWER_TURNS] {
        kinds.push(chosen(reader, fields));
    }
    let (own, thick) = (reader.maybe(&OWN_RIG), reader.maybe(&HAUL_CORD));
    let Some(name) = reader.maybe(&RIG) else { return (None, None) };
    let made = match name {
        RigName::Own => {
            if !reader.says(&OWN_RIG.row) {
                reader.note(Error::of(OWN_RIG.row.id, Reason::Needed));
            }
            own.map(|own| {
                let mut turns = Vec::new();
                for turn in own.turns {
                    turns.push(turn.kind);
                }
                (turns, own.rig)
            })
        }
        _ => name.rig(Backup::None).ok().map(|rig| (turns(&rig, &kinds), rig.into())),
    };
    let Some((turns, rig)) = made else { return (None, None) };
    let cord = thick.and_then(|thick| {
        let (strands, section) = haul_strands(&rig)?;
        let pattern = CordUse::HaulCord.pattern();
        let make = Make {
            pattern,
            ends: pattern.ends.first().copied()?,
            rope: 0.0,
            cord: thick.si(),
            coils: 0.0,
            crossings: f64::from(pattern.crossings),
            hand_end: HAND_END,
            fit: None,
            working_end: None,
        };
        let cut = make.cut(Length::Legs(section.scaled(f64::from(strands)))).ok()?;
        // As long as it may have to be: a cord that comes out short is none.
        let name = CordUse::HaulCord.named().noun.to_owned();
        Some(((MILLIMETRE.count(thick.si()) * 10.0).round() as u32, Wanted { name, length: cut.total.high }))
    });
    (Some(counted(&rig, &turns)), cord)
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

fn counted(rig: &Rig, turns: &[TurnKind]) -> Gear {
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
