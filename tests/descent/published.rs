//! Published figures through the whole answer, and those worked out by hand.

use super::{down, stuck};
use crate::plans::Plan;
use boughline::field::Said;
use boughline::question::coming_down::Slowest;
use boughline::question::rescue::{How, Why};

fn plan(said: &[(&'static str, &str)]) -> Plan {
    let mut plan = vec![("bodyMass", "80 kg"), ("kitMass", "0 kg"), ("rig", "tail-3"), ("climbHeight", "20 m")];
    plan.extend_from_slice(said);
    plan.into_iter().map(|(id, text)| (id, Said::Text(text.to_owned()))).collect()
}

/// 80 kg at 2 m/s are 1.57 kW; 20 m are 15.7 kJ.
#[test]
fn eighty_kilograms_make_the_heat_that_is_published() {
    let answer = down(&plan(&[("descentSpeed", "2 m/s")]));
    assert!((answer.power.likely / 1e3 - 1.57).abs() <= 0.005);
    assert!((answer.energy.likely / 1e3 - 15.7).abs() <= 0.05);
}

/// A Munter multiplies a hand 5 to 14 times, planned on 5; a hand is usually taken to hold 222 N (50 lbf).
#[test]
fn a_munter_keeps_to_its_band_and_a_usual_hand_holds_it() {
    let answer = down(&plan(&[("brake", "munter")]));
    let (hold, run) = (answer.hold.expect("held"), answer.run.expect("held"));
    assert!((answer.weight.likely / hold.likely - 5.0).abs() < 1e-9);
    assert!((answer.weight.likely / run.likely - 14.0).abs() < 1e-9);
    assert!(hold.high < 222.0, "{hold:?}");
    let alone = down(&plan(&[("brake", "none")])).hold.expect("held");
    assert!((alone.likely - answer.weight.likely).abs() < 1e-9, "a hitch held in the hand counts as nothing");
}

/// 0.5 m/s at the most, whatever the sum says.
#[test]
fn a_cool_cord_is_no_leave_to_go_faster() {
    let cool = plan(&[("heatShare", "0"), ("hitchCord", "10 mm"), ("ropeDiameter", "12 mm"), ("cordUse", "prusik")]);
    assert_eq!(down(&cool).sensible, (0.5, Slowest::Sensible));
}

/// On a canopy anchor nobody is let down; on one that pays out the hand holds W e / r. By hand: bark at its least friction
/// keeps e^(-0.20 pi), 0.53 as its row rounds it; a Munter 5.
#[test]
fn who_can_be_let_down_hangs_on_the_anchor() {
    let way = |anchor: &str| {
        let answer = stuck(&plan(&[("anchor", anchor), ("secondPerson", "rescuer")]));
        let stages = answer.ways.iter().find(|way| way.how == How::LetDown).expect("told").stages.clone();
        (stages.map(|stages| stages.len()), answer.lowering)
    };
    for canopy in ["canopy", "canopy-cord", "canopy-link", "canopy-hitch"] {
        assert_eq!(way(canopy), (Err(Why::NothingOnTheGround), None));
    }
    assert_eq!(way("base"), (Err(Why::PlainTie), None));
    let (stages, lowering) = way("base-lowerable");
    assert_eq!(stages, Ok(3));
    assert!((lowering.expect("held").likely - 784.532 * 0.53 / 5.0).abs() < 1e-9);
}

/// Three times the height, geometry; 7 minutes, Turner 2008.
#[test]
fn the_clock_and_the_rope_are_as_published() {
    let answer = stuck(&plan(&[("anchor", "base-lowerable"), ("crotchHeight", "21 m")]));
    assert_eq!((answer.rescue_clock / 60.0, answer.lowering_rope), (7.0, Some(63.0)));
}

/// By hand, over a pulley that keeps 0.9 with pulleys of 0.9: W / (0.9 x (1 + 0.9 + 0.81)).
#[test]
fn hauling_comes_to_the_table_made_by_hand() {
    let answer = stuck(&plan(&[("anchor", "base"), ("topTurn", "bearing-pulley")]));
    let three = answer.hauls.iter().find(|haul| haul.haul.rig.named().id == "ground-3").expect("told");
    assert!((three.pull.likely - 784.532 / (0.9 * 2.71)).abs() < 1e-9);
    assert!((three.rope - 60.0).abs() < 1e-9 && (three.people.likely - three.pull.likely / 250.0).abs() < 1e-9);
}

/// By hand: over a crotch at 12 m a base anchor takes 12 + 12 + 0.3 over it + 2.5 in the tie + 0.4 for the stopper, 27.2 m:
/// 25 m end 2.2 m above the ground.
#[test]
fn a_rope_that_is_too_short_ends_above_the_ground() {
    let end = |more: &[(&'static str, &str)]| down(&plan(more)).end;
    let said = [("crotchHeight", "12 m"), ("anchor", "base"), ("climbHeight", "10 m")];
    assert_eq!(end(&said), None);
    let short = end(&[&said[..], &[("ropeOwned", "25 m")]].concat()).expect("known").expect("short");
    assert!((short.likely - 2.2).abs() < 1e-9, "{short:?}");
    assert_eq!(end(&[&said[..], &[("ropeOwned", "40 m")]].concat()), Some(None));
    // So short that it does not even come down from the crotch.
    let stub = end(&[&said[..], &[("ropeOwned", "5 m")]].concat()).expect("known").expect("short");
    assert!((stub.high - 12.0).abs() < 1e-9, "{stub:?}");
    assert_eq!(end(&[("crotchHeight", "12 m"), ("ropeOwned", "40 m")]), None, "without an anchor nobody knows");
}

/// By hand: 3 x 14 m are 42 m; 41 m let nobody down from the top.
#[test]
fn a_rope_of_less_than_three_heights_lets_nobody_down() {
    let said =
        [("anchor", "base-lowerable"), ("secondPerson", "rescuer"), ("crotchHeight", "14 m"), ("climbHeight", "10 m")];
    let way = |rope: &'static str| {
        let answer = stuck(&plan(&[&said[..], &[("ropeOwned", rope)]].concat()));
        answer.ways.iter().find(|way| way.how == How::LetDown).expect("told").stages.clone().err()
    };
    assert_eq!([way("41 m"), way("42 m")], [Some(Why::ShortRope), None]);
}
