//! Worked figures of one person.

use super::{mean, prints, surveyed};
use boughline::climber::{Gloves, Hold, Norm, Sex, Training, predicted_pull};
use boughline::quantity::{Count, Length, Mass};

/// A man of 45 who pulls 401 N: 0.58 of what his hands hold on bare rope, 0.34 on a loop, 0.67 of what his arms pull.
/// Of the stature and body mass that the survey's men in their forties have.
#[test]
fn a_man_of_45_spends_so_much_of_hands_and_arms_on_401_newtons() {
    let men = surveyed(|person| person.sex == Sex::Male && (40.0..50.0).contains(&person.age) && person.body.is_some());
    let (height, mass) =
        (mean(&men, |man| man.body.map_or(0.0, |body| body.0)), mean(&men, |man| man.body.map_or(0.0, |body| body.1)));
    assert!(prints(height, "176.3") && prints(mass, "91.8"), "{height} {mass}");
    let man = Norm {
        sex: Sex::Male,
        age: Count::new(45.0),
        stature: Some(Length::centimetres(height)),
        body_mass: Mass::kilograms(mass),
    };
    let grip = man.combined_grip(0.0);
    let hand = |hold: Hold| 401.0 / (hold.over_grip(Gloves::None).likely * grip);
    assert!(prints(hand(Hold::BareRope), "0.58"), "{}", hand(Hold::BareRope));
    assert!(prints(hand(Hold::HandLoop), "0.34"), "{}", hand(Hold::HandLoop));
    let arms = 401.0 / predicted_pull(grip, Training::Untrained.pull_over_grip().likely, 0.0);
    assert!(prints(arms, "0.67"), "{arms}");
}
