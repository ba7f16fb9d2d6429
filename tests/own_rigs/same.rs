//! What is written down is the rig of the catalogue that it is like.

use super::{CATALOGUE, climb, climbing, rope};
use boughline::reeving::notation::read;
use boughline::reeving::{Backup, Drive, Losses, Phase, Rig, RigName, is_held, kinematics, single_parts, statics};

fn texts() -> impl Iterator<Item = (RigName, &'static str)> {
    RigName::CATALOGUE.iter().map(|name| {
        let row = CATALOGUE.iter().find(|(id, _)| *id == name.named().id).expect("every rig of the catalogue is here");
        (*name, row.1)
    })
}

/// Losses that tell every turn and hitch apart.
fn losses(rig: &Rig) -> Losses {
    let mut losses = Losses::none(rig);
    for (at, kept) in losses.turns.iter_mut().chain(&mut losses.hitches).enumerate() {
        *kept = 0.95 - 0.03 * at as f64;
    }
    losses
}

#[test]
fn every_rig_of_the_catalogue_can_be_written_down() {
    let mut met = 0;
    for (name, text) in texts() {
        let (own, named) = (read(text).expect(text).rig, name.rig(Backup::None).expect("of the catalogue"));
        let [own_motion, motion] = [&own, &named].map(|rig| kinematics(rig, &Phase::pull(rig)).expect(text));
        assert_eq!(own_motion, motion, "{text}");
        let drive = Drive::Pull(300.0, Vec::new());
        let forces = |rig: &Rig, motion| statics(rig, motion, &losses(rig), &drive).expect(text);
        assert_eq!(forces(&own, &own_motion), forces(&named, &motion), "{text}");
        assert_eq!((is_held(&own), single_parts(&own)), (is_held(&named), single_parts(&named)), "{text}");
        assert_eq!(own.is_hauled(), named.is_hauled());
        let kinds = |rig: &Rig| rig.bodies().iter().map(|body| body.kind).collect::<Vec<_>>();
        assert_eq!(kinds(&own), kinds(&named));
        met += 1;
    }
    assert_eq!(met, 13);
}

/// The same turns draw by the same numbers, so every figure has the same bits. Every sliding hitch is the same too.
#[test]
fn a_rig_of_the_catalogue_that_is_written_down_has_the_same_answer() {
    for (name, text) in texts() {
        let id = name.named().id;
        let (mut own, named) = (climb(&climbing("own", text)), climb(&climbing(id, text)));
        assert_eq!(own.rig_name, RigName::Own);
        own.rig_name = named.rig_name;
        // Parts of the catalogue's have names of their own, and what was taken for granted of it was written down here.
        own.rig = named.rig.clone();
        own.assumed = named.assumed.clone();
        assert_eq!(own, named, "{text}");
    }
}

#[test]
fn a_backup_that_is_written_down_is_that_of_the_catalogue() {
    let second = "tied tree, hitch upper, backup climber, hitch climber, turn climber, turn upper, hand climber";
    let knot = "tied tree, hitch upper, hitch climber, turn climber, turn upper, knot upper 3 m, hand climber";
    for (text, backup) in [(second, "second-hitch"), (knot, "tail-knot")] {
        let named = climb(&climbing("tail-3", text).set("backup", backup).set("knotSlack", "3 m"));
        let own = climb(&climbing("own", text));
        assert_eq!((own.parts, own.cautions, own.need), (named.parts, named.cautions, named.need), "{text}");
    }
}

#[test]
fn its_rope_is_as_long() {
    for (name, text) in texts() {
        let (own, named) = (rope("own", text), rope(name.named().id, text));
        assert_eq!((own.courses, own.need, own.anchor), (named.courses, named.need, named.anchor), "{text}");
    }
}

/// Which end is written first is of no account.
#[test]
fn a_rope_can_be_written_from_either_end() {
    for (_, text) in texts() {
        let turned: Vec<String> = text
            .lines()
            .map(|line| line.split(',').map(str::trim).rev().collect::<Vec<_>>().join(", "))
            .rev()
            .collect();
        let turned = turned.join("\n");
        let (one, other) = (climb(&climbing("own", text)), climb(&climbing("own", &turned)));
        let tolerance = 1e-9 * one.need.likely;
        assert!((one.need.likely - other.need.likely).abs() < tolerance, "{text}: {:?} {:?}", one.need, other.need);
        assert_eq!((one.ideal.to_bits(), one.drags, one.hauled), (other.ideal.to_bits(), other.drags, other.hauled));
        assert_eq!(rope("own", text).need, rope("own", &turned).need, "{text}");
    }
}
