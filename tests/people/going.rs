//! How the climb goes, of whole plans.

use boughline::link::read;
use boughline::question::Effort;
use boughline::question::can_i_climb::{Answer, Inputs, ask};

fn answer(plan: &str) -> Answer {
    let link = read(&format!("bodyMass=80kg&climbHeight=11m&{plan}"));
    ask(&Inputs::of(&link.draft).expect(plan), Effort::samples(1))
}

#[test]
fn it_is_told_only_where_strength_and_strokes_are_known_and_one_pull_succeeds() {
    for plan in [
        "rig=tail-3",
        "rig=tail-3&stature=1.75m",
        "rig=tail-3&measuredPull=700N",
        "rig=ground-5",
        "rig=ground-5&stature=1.75m&measuredPull=700N",
        "rig=tail-3&stature=1.75m&measuredPull=700N&handTravel=5cm&setback=30cm",
        "rig=tail-3&stature=1.75m&measuredPull=300N",
        "rig=tail-3&stature=1.75m&measuredPull=700N&pullHeld=hand-loop&trunk=cervical",
    ] {
        assert_eq!(answer(plan).going, None, "{plan}");
    }
}

/// Its pulls take what those of the published example do: 0.67 of the arms, 0.58 of the hands on bare rope.
#[test]
fn it_goes_to_the_height_in_the_strokes_of_the_answer() {
    let answer = answer("rig=tail-3&stature=1.75m&measuredPull=700N");
    let going = answer.going.expect("strength and strokes are known");
    let strokes = answer.strokes.expect("they are known").likely;
    assert_eq!(f64::from(going.end.strokes), strokes.ceil());
    assert_eq!(going.end.height, answer.height);
    let shares = going.pulls.muscles.map(|(_, share)| share);
    assert_eq!(Some(shares[0]), answer.arms.map(|gate| gate.share.likely));
    assert_eq!(Some(shares[1]), answer.grasp.map(|gate| gate.share.likely));
    assert!((shares[0] - 0.67).abs() < 0.005 && (shares[1] - 0.58).abs() < 0.005, "{shares:?}");
    // At 0.67 every 9 s lasts for sixty: here moving the upper hitch is rest enough.
    assert_eq!(going.pace.map(|pace| (pace.rest, pace.longer)), Some((8.0, None)));
}

/// Whoever is stronger is never later at the top, nor told to go down sooner.
#[test]
fn more_strength_is_never_slower() {
    for rig in ["tail-3", "tail-5", "haul-cord-2", "moving-rope"] {
        let (mut slowest, mut soonest) = (f64::INFINITY, 0);
        for pull in (500..2000).step_by(25) {
            let answer = answer(&format!("rig={rig}&stature=1.75m&measuredPull={pull}N"));
            let Some(going) = answer.going.filter(|going| going.pace.is_some()) else { continue };
            assert!(going.is_at_top() && going.end.time <= slowest + 1e-3, "{rig} {pull} N: {} s", going.end.time);
            let strokes = going.turn_back.map_or(u32::MAX, |back| back.at.strokes);
            assert!(strokes >= soonest, "{rig} {pull} N: after stroke {strokes}");
            (slowest, soonest) = (going.end.time, strokes);
        }
        assert!(slowest.is_finite());
    }
}
