//! Climbs that climbers report: common practice, no source. A model that puts them elsewhere is wrong.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::unwrap_used, reason = "a plan that is out of order fails the test")]

use boughline::Draft;
use boughline::field::Spread;
use boughline::question::Effort;
use boughline::question::can_i_climb::{Answer, Inputs, Level, Sharper, ask};

/// A man of 45 and 176 cm with the median grip of men like him, 94 kg all-up.
fn man_of_45() -> Draft {
    Draft::new()
        .set("bodyMass", "86 kg")
        .set("kitMass", "8 kg")
        .set("stature", "176 cm")
        .set("age", "45")
        .set("sex", "male")
        .set("hold", "hand-loop")
        .set("climbHeight", "10 m")
        .set("rig", "tail-3")
}

fn answer(draft: &Draft) -> Answer {
    ask(&Inputs::of(draft).unwrap(), Effort::FULL)
}

/// A rope-only 3:1 at the real advantage of 2.3 that was measured: a man of 45 is not out of reach of it, and if he trains
/// pulling, four climbs in five and more come off, with rests that take minutes.
#[test]
fn a_man_of_45_on_a_three_to_one_is_not_out_of_reach() {
    let tested = man_of_45().set("testMass", "94 kg").set("testPull", "400.8 N");
    let untrained = answer(&tested);
    assert!((untrained.advantage.likely - 2.3).abs() < 0.001, "{:?}", untrained.advantage);
    assert_ne!(untrained.verdict.unwrap().level, Level::OutOfReach);
    let trained = answer(&tested.set("training", "trained-pulling"));
    assert!(trained.verdict.unwrap().reaches.unwrap() >= 0.9, "{:?}", trained.verdict);
    assert!(trained.lasting_time.unwrap().likely < 30.0 * 60.0, "{:?}", trained.lasting_time);
    assert!(trained.verdict.unwrap().reaches > untrained.verdict.unwrap().reaches);
    // And with everything else a plan needs it is within reach.
    let whole = answer(
        &man_of_45().set("training", "trained-pulling").set("wayDown", "descend").set("secondPerson", "rescuer"),
    );
    assert_eq!(whole.verdict.unwrap().level, Level::WithinReach);
}

/// A carabiner in a pulley's place never makes it easier.
#[test]
fn a_carabiner_for_a_pulley_never_improves_it() {
    let pulleys = answer(&man_of_45());
    for turn in ["upperTurn", "lowerTurn"] {
        let carabiner = answer(&man_of_45().set(turn, "carabiner"));
        assert!(carabiner.need.likely > pulleys.need.likely);
        assert!(carabiner.verdict.unwrap().chance <= pulleys.verdict.unwrap().chance);
        assert!(carabiner.verdict.unwrap().reaches <= pulleys.verdict.unwrap().reaches);
        assert!(carabiner.rest.unwrap().likely >= pulleys.rest.unwrap().likely);
    }
}

/// 172 kg all-up, hand over hand: out of reach without legs, and hard with them.
#[test]
fn a_heavy_climber_hand_over_hand_is_out_of_reach_and_with_legs_at_the_limit_at_best() {
    let heavy = man_of_45().set("bodyMass", "164 kg").set("rig", "hand-over-hand");
    let armed = answer(&heavy);
    assert_eq!(armed.verdict.unwrap().level, Level::OutOfReach);
    assert_eq!(armed.legs, None, "nothing is claimed of legs that nothing is said of");
    for stairs in ["yes", "no"] {
        let legged = answer(&heavy.clone().set("legs", "full").set("stairs", stairs));
        assert_eq!(legged.verdict, armed.verdict, "legs leave the arms' answer as it is");
        let legs = legged.legs.unwrap();
        let best = if stairs == "yes" { Level::AtLimit } else { Level::OutOfReach };
        assert_eq!((legs.level(), legs.is_heavy), (Some(best), true));
    }
}

/// About 15 cm a stroke sitting, 23 cm leaning back or with a hand loop; setback, stack and shares of reach were chosen so.
#[test]
fn a_stroke_gains_what_climbers_report() {
    let gain = |hold: &str, posture: &str| {
        let draft = man_of_45().set("stature", "175.6 cm").set("hold", hold).set("posture", posture);
        answer(&draft).gain.unwrap().likely
    };
    assert!((gain("bare-rope", "upright") - 0.15).abs() < 0.02);
    assert!((gain("bare-rope", "leaning-back") - 0.23).abs() < 0.02);
    assert!((gain("hand-loop", "upright") - 0.23).abs() < 0.02);
}

/// A grip narrows what sex and age tell, a pull narrows both, and nothing narrows a pull that was measured but strokes.
#[test]
fn better_evidence_narrows_what_is_known() {
    let width = |spread: Spread| (spread.high - spread.low) / spread.likely;
    let by_norm = answer(&man_of_45());
    let known = by_norm.sharper;
    let [norm, grip, pull] = [by_norm.arms.unwrap().capacity, known.by_grip.unwrap(), known.by_pull.unwrap()];
    assert!(width(pull) < 0.5 * width(grip) && width(grip) < width(norm), "{norm:?} {grip:?} {pull:?}");
    let measured = answer(&man_of_45().set("measuredPull", "600 N"));
    assert_eq!(measured.sharper, Sharper::default());
}
